// Whatever can be asked leads to a page that is there.

#include "ui/help/topics.h"

#include "ui/help/help_browser.h"
#include "ui/help/pages.h"
#include "ui/language/language.h"

#include "tests/ui/window/every_dialog.h"

#include <QApplication>
#include <QDockWidget>
#include <QRegularExpression>

namespace frontwright::testing {
namespace {

bool isThere(const QString& topic) {
    const auto& all = helpSections();
    return std::any_of(all.begin(), all.end(),
                       [&](const HelpSection& s) { return s.topic() == topic; });
}

/// In each language that the window speaks.
class HelpIn : public ::testing::TestWithParam<const char*> {
private:
    const SpokenLanguage m_language{QString::fromLatin1(GetParam())};
};
using HelpTopics = HelpIn;
using HelpPages = HelpIn;
INSTANTIATE_TEST_SUITE_P(Language, HelpTopics, ::testing::Values("en", "de"));
INSTANTIATE_TEST_SUITE_P(Language, HelpPages, ::testing::Values("en", "de"));

TEST_P(HelpTopics, AreThereForEveryDecision) {
    for (int i = 0; i <= static_cast<int>(InputPlace::Catalogue); ++i) {
        const HelpTopic topic = topicOf(static_cast<InputPlace>(i));
        EXPECT_TRUE(isThere(topic)) << topic.toStdString();
    }
}

TEST_P(HelpTopics, AreThereForEveryFinding) {
    for (int i = 0; i <= static_cast<int>(lastFindingCode); ++i) {
        const HelpTopic topic = topicOf(static_cast<FindingCode>(i));
        EXPECT_TRUE(isThere(topic)) << topic.toStdString();
    }
    EXPECT_EQ(topicOf(FindingCode::TipCoverThin), QStringLiteral("findings#tip-cover-thin"));
}

TEST_P(HelpTopics, AreThereForEveryNumber) {
    for (int i = 0; i <= static_cast<int>(lastQuantityKind); ++i) {
        const HelpTopic topic = topicOf(static_cast<QuantityKind>(i));
        EXPECT_TRUE(isThere(topic)) << topic.toStdString();
    }
}

TEST_P(HelpTopics, AreThereForEveryWordWithItsDrawing) {
    const QString glossary = helpHtml(QStringLiteral("glossary"));
    for (int i = 0; i < termCount; ++i) {
        const auto term = static_cast<Term>(i);
        EXPECT_TRUE(isThere(topicOf(term))) << nameOf(term);
        const std::string image = "drawing:" + std::string(key(term)) + '"';
        EXPECT_TRUE(glossary.contains(QString::fromStdString(image))) << nameOf(term);
    }
}

TEST_P(HelpTopics, AreThereForWhatIsSelected) {
    Selection hole = Selection::of(OpeningId{16});
    hole.mountingHole = 0;
    Selection handle = Selection::of(OpeningId{16});
    handle.handleHole = 0;
    std::set<QString> topics;
    for (const Selection& selection :
         {Selection(), Selection::of(OpeningId{16}), Selection::of(MemberId{1}), hole, handle}) {
        EXPECT_TRUE(isThere(topicOf(selection)));
        topics.insert(topicOf(selection));
    }
    EXPECT_EQ(topics.size(), 5U);
}

TEST_P(HelpPages, HaveNoDeadLinks) {
    static const QRegularExpression link(QStringLiteral("href=\"([^\"]*)\""));
    int count = 0;
    for (const QString& page : helpPages()) {
        auto links = link.globalMatch(helpHtml(page));
        while (links.hasNext()) {
            const QString target = links.next().captured(1);
            const QUrl url = helpUrl(page).resolved(QUrl(target));
            const QString topic = topicAt(url);
            EXPECT_TRUE(isThere(topic)) << page.toStdString() << ": " << target.toStdString();
            ++count;
        }
    }
    EXPECT_GT(count, 40);
}

TEST_P(HelpPages, ShowOnlyDrawingsThatThereAre) {
    static const QRegularExpression image(QStringLiteral("src=\"([^\"]*)\""));
    HelpBrowser browser([] { return QString(); });
    int count = 0;
    for (const QString& page : helpPages()) {
        auto images = image.globalMatch(helpHtml(page));
        while (images.hasNext()) {
            const QUrl source(images.next().captured(1));
            const auto picture =
                browser.loadResource(QTextDocument::ImageResource, source).value<QImage>();
            EXPECT_FALSE(picture.isNull()) << source.toString().toStdString();
            ++count;
        }
    }
    EXPECT_EQ(count, termCount);
}

TEST_P(HelpPages, HaveTitlesAndWordsUnderEveryHeading) {
    EXPECT_GT(helpSections().size(), 120U);
    std::set<QString> topics;
    for (const HelpSection& section : helpSections()) {
        EXPECT_FALSE(section.title.isEmpty()) << section.topic().toStdString();
        if (!section.anchor.isEmpty())
            EXPECT_FALSE(section.text.isEmpty() && section.anchor != QStringLiteral("shortcuts"))
                << section.topic().toStdString();
        EXPECT_TRUE(topics.insert(section.topic()).second) << section.topic().toStdString();
    }
}

TEST(HelpSearch, FindsWhatHoldsEveryWordTitlesFirst) {
    const auto found = foundInHelp(QStringLiteral("TIP cover"));
    ASSERT_GT(found.size(), 2U);
    EXPECT_TRUE(found.front().title.contains(QStringLiteral("tip cover"), Qt::CaseInsensitive));
    EXPECT_TRUE(foundInHelp(QStringLiteral("tip zzzz")).empty());
    EXPECT_TRUE(foundInHelp(QStringLiteral("  ")).empty());
}

TEST(HelpSearch, FindsTheWordsOfTheWindowsLanguage) {
    const SpokenLanguage german(QStringLiteral("de"));
    const auto found = foundInHelp(QStringLiteral("ÖFFNUNG höhe"));
    ASSERT_GT(found.size(), 2U);
    EXPECT_EQ(found.front().topic(), QStringLiteral("numbers#opening"));
    EXPECT_TRUE(foundInHelp(QStringLiteral("tip cover")).empty());
}

using HelpTopicsInTheWindow = OpenWindow;

TEST_F(HelpTopicsInTheWindow, AreThereForEveryPanel) {
    const auto docks = window.findChildren<QDockWidget*>();
    EXPECT_GE(docks.size(), 6);
    for (const QDockWidget* dock : docks) {
        EXPECT_NE(helpTopicAt(dock), firstTopic()) << dock->objectName().toStdString();
        EXPECT_TRUE(isThere(helpTopicAt(dock))) << dock->objectName().toStdString();
    }
}

TEST_F(HelpTopicsInTheWindow, AreThereForAllThatTakesTheKeyboard) {
    openSample(QStringLiteral("first-try"));
    for (const Selection& selection : {Selection(), Selection::of(plan().fronts[0].opening),
                                       Selection::of(plan().members[4].id)}) {
        session().select(selection);
        QApplication::processEvents();
        for (const QWidget* widget : window.findChildren<QWidget*>())
            if (widget->focusPolicy() != Qt::NoFocus)
                EXPECT_TRUE(isThere(helpTopicAt(widget))) << helpTopicAt(widget).toStdString();
    }
}

TEST_F(HelpTopicsInTheWindow, AreThereForEveryDialog) {
    for (const auto& dialog : everyDialog(session(), settings)) {
        EXPECT_NE(helpTopicAt(dialog.get()), firstTopic()) << dialog->windowTitle().toStdString();
        EXPECT_TRUE(isThere(helpTopicAt(dialog.get()))) << dialog->windowTitle().toStdString();
    }
}

} // namespace
} // namespace frontwright::testing
