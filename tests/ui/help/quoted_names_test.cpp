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
    int count = 0;
    for (const QDockWidget* dock : window.findChildren<QDockWidget*>())
        for (const HelpSection& section : helpSections())
            if (section.topic() == helpTopicAt(dock)) {
                EXPECT_EQ(section.title, withoutMnemonic(dock->windowTitle()));
                ++count;
            }
    EXPECT_GE(count, 6);
}

INSTANTIATE_TEST_SUITE_P(Language, HelpQuotes, ::testing::Values("en", "de"));

} // namespace
} // namespace frontwright::testing
