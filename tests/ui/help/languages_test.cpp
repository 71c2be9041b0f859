// In every language the help has the same places in the same order, in that language's own words.

#include "ui/help/pages.h"
#include "ui/language/language.h"

#include "core/drawings/glossary.h"

#include <QDir>
#include <QFile>
#include <QRegularExpression>
#include <QTextDocumentFragment>
#include <gtest/gtest.h>

#include <map>

namespace frontwright::testing {
namespace {

QString pageIn(const QString& language, const QString& page) {
    helpHtml(page); // the program's resources are there from then on
    QFile file(QStringLiteral(":/help/%1/%2.html").arg(language, page));
    return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()) : QString();
}

/// All that the pattern's first group holds, in the order of the page.
QStringList allIn(const QString& html, const char* pattern) {
    const QRegularExpression wanted(QString::fromLatin1(pattern),
                                    QRegularExpression::DotMatchesEverythingOption);
    QStringList found;
    auto matches = wanted.globalMatch(html);
    while (matches.hasNext())
        found << matches.next().captured(1);
    return found;
}

class HelpInLanguage : public ::testing::TestWithParam<const char*> {
protected:
    const QString language = QString::fromLatin1(GetParam());

    QString page(const QString& name) const { return pageIn(language, name); }
    QString wholeText() const {
        QString text;
        for (const QString& name : helpPages())
            text += QTextDocumentFragment::fromHtml(page(name)).toPlainText();
        return text;
    }
};

class HelpTranslated : public HelpInLanguage {
protected:
    QString original(const QString& name) const { return pageIn(QStringLiteral("en"), name); }
    void expectSame(const char* pattern) const {
        qsizetype count = 0;
        for (const QString& name : helpPages()) {
            EXPECT_EQ(allIn(page(name), pattern), allIn(original(name), pattern))
                << name.toStdString();
            count += allIn(original(name), pattern).size();
        }
        EXPECT_GT(count, 0);
    }
};

TEST(HelpLanguages, AreThoseOfTheWindow) {
    QStringList spoken;
    for (const WindowLanguage& each : windowLanguages())
        spoken << each.code;
    spoken.sort();
    helpHtml(helpPages().front());
    EXPECT_EQ(QDir(QStringLiteral(":/help")).entryList(QDir::Dirs, QDir::Name), spoken);
}

TEST(HelpLanguages, AreChosenWithTheWindows) {
    EXPECT_EQ(helpHtml(QStringLiteral("start")),
              pageIn(QStringLiteral("en"), QStringLiteral("start")));
    const SpokenLanguage german(QStringLiteral("de"));
    EXPECT_EQ(helpHtml(QStringLiteral("start")),
              pageIn(QStringLiteral("de"), QStringLiteral("start")));
}

TEST_P(HelpInLanguage, CallsEachDrawingAsTheWordAboveIt) {
    const QString glossary = page(QStringLiteral("glossary"));
    EXPECT_EQ(allIn(glossary, "alt=\"([^\"]*)\""), allIn(glossary, "</a>([^<]*)</h3>"));
    EXPECT_EQ(allIn(glossary, "src=\"drawing:([^\"]*)\"").size(), termCount);
}

TEST_P(HelpInLanguage, ExplainsEachWordOnce) {
    QStringList words = allIn(page(QStringLiteral("glossary")), "</a>([^<]*)</h3>");
    EXPECT_EQ(words.size(), termCount);
    EXPECT_EQ(words.removeDuplicates(), 0);
}

TEST_P(HelpInLanguage, HasWordsUnderEveryHeading) {
    int count = 0;
    for (const QString& name : helpPages())
        for (const QString& body : allIn(page(name), "</h3>(.*?)(?=<h3>|</body>)")) {
            EXPECT_GT(QTextDocumentFragment::fromHtml(body).toPlainText().simplified().size(), 9)
                << name.toStdString() << body.toStdString();
            ++count;
        }
    EXPECT_GT(count, 120);
}

TEST_P(HelpInLanguage, NamesThePageAsItsFirstHeading) {
    for (const QString& name : helpPages()) {
        EXPECT_EQ(allIn(page(name), "<title>([^<]*)</title>"),
                  allIn(page(name), "<h1>([^<]*)</h1>"))
            << name.toStdString();
        EXPECT_EQ(allIn(page(name), "<title>([^<]*)</title>").size(), 1) << name.toStdString();
    }
}

TEST_P(HelpInLanguage, UsesTheQuotationMarksOfItsLanguage) {
    static const std::map<QString, std::pair<QChar, QChar>> marks = {
        {QStringLiteral("en"), {u'“', u'”'}}, {QStringLiteral("de"), {u'„', u'“'}}};
    const auto [opening, closing] = marks.at(language);
    const QString text = wholeText();
    EXPECT_GT(text.count(opening), 2);
    EXPECT_EQ(text.count(opening), text.count(closing));
    for (const QChar foreign : QStringLiteral("„“”«»"))
        if (foreign != opening && foreign != closing)
            EXPECT_FALSE(text.contains(foreign)) << QString(foreign).toStdString();
}

TEST_P(HelpTranslated, StandsAtTheSamePlacesInTheSameOrder) {
    expectSame("<a name=\"([^\"]*)\"");
}

TEST_P(HelpTranslated, ShowsTheSameDrawings) {
    expectSame("src=\"([^\"]*)\"");
}

TEST_P(HelpTranslated, LeavesRoomForWhatTheProgramPutsIn) {
    expectSame("<!--(.*?)-->");
}

TEST_P(HelpTranslated, IsSetInTheSameWay) {
    expectSame("<(/?[a-z0-9]+)");
}

TEST_P(HelpTranslated, LeadsToTheSamePlaces) {
    for (const QString& name : helpPages()) {
        QStringList links = allIn(page(name), "href=\"([^\"]*)\"");
        QStringList originals = allIn(original(name), "href=\"([^\"]*)\"");
        links.sort(); // another language says things in another order
        originals.sort();
        EXPECT_EQ(links, originals) << name.toStdString();
    }
}

TEST_P(HelpTranslated, LeavesNoSentenceAndNoHeadingUntranslated) {
    for (const QString& name : helpPages())
        for (const char* pattern : {"<p>(.*?)</p>", "</a>([^<]*)</h3>", "<li>(.*?)</li>"}) {
            const QStringList originals = allIn(original(name), pattern);
            for (const QString& text : allIn(page(name), pattern))
                EXPECT_FALSE(originals.contains(text)) << text.toStdString();
        }
}

INSTANTIATE_TEST_SUITE_P(Languages, HelpInLanguage, ::testing::Values("en", "de"));
INSTANTIATE_TEST_SUITE_P(Languages, HelpTranslated, ::testing::Values("de"));

} // namespace
} // namespace frontwright::testing
