// What the help calls a menu, an action or a panel is what the window calls it.

#include "ui/help/pages.h"
#include "ui/help/shortcut_list.h"
#include "ui/help/topics.h"

#include "tests/ui/elevation/open_window.h"

#include <QDockWidget>
#include <QMenuBar>
#include <QRegularExpression>

namespace frontwright::testing {
namespace {

class HelpQuotes : public OpenWindow, public ::testing::WithParamInterface<const char*> {
public:
    HelpQuotes() : OpenWindow(QLatin1String(GetParam())) {}
};

QString titleOf(const HelpTopic& topic) {
    for (const HelpSection& section : helpSections())
        if (section.topic() == topic)
            return section.title;
    return {};
}

TEST_P(HelpQuotes, ActionsByTheirWayThroughTheMenus) {
    static const QRegularExpression way(QStringLiteral("<b>([^<,]{3,}, [^<]*)</b>"));
    const QString actions = shortcutTable(*window.menuBar());
    int count = 0;
    for (const QString& page : {QStringLiteral("start"), QStringLiteral("window")}) {
        auto ways = way.globalMatch(helpHtml(page));
        while (ways.hasNext()) {
            const QString quoted = ways.next().captured(1);
            EXPECT_TRUE(actions.contains(QStringLiteral("<td>%1</td>").arg(quoted)))
                << quoted.toStdString();
            ++count;
        }
    }
    EXPECT_EQ(count, 4);
}

TEST_P(HelpQuotes, PanelsByTheirTitles) {
    const auto docks = window.findChildren<QDockWidget*>();
    EXPECT_GE(docks.size(), 6);
    for (const QDockWidget* dock : docks)
        EXPECT_EQ(titleOf(helpTopicAt(dock)), withoutMnemonic(dock->windowTitle()));
}

TEST_P(HelpQuotes, ItsOwnPlacesAsTheHelpMenuDoes) {
    const QString actions = shortcutTable(*window.menuBar());
    for (const char* topic : {"keys", "glossary", "printing#wrong-size", "printing#cautions"}) {
        const QString title = titleOf(QString::fromLatin1(topic));
        EXPECT_FALSE(title.isEmpty()) << topic;
        EXPECT_TRUE(actions.contains(QStringLiteral(", %1</td>").arg(title)))
            << title.toStdString();
    }
}

INSTANTIATE_TEST_SUITE_P(Language, HelpQuotes, ::testing::Values("en", "de"),
                         [](const auto& each) { return std::string(each.param); });

} // namespace
} // namespace frontwright::testing
