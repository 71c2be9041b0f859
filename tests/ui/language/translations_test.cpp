// What the translation files hold: every text, whole, with all its places.

#include "tests/ui/language/translation_file.h"

#include <QMap>
#include <QRegularExpression>

#include <gtest/gtest.h>

#include <map>

namespace frontwright::testing {
namespace {

QMap<QString, int> placesOf(const QString& text) {
    static const QRegularExpression place(QStringLiteral("%L?[1-9n]"));
    QMap<QString, int> places;
    for (auto found = place.globalMatch(text); found.hasNext();)
        places[found.next().captured()] = 1;
    return places;
}

class Translations : public ::testing::TestWithParam<const char*> {
protected:
    static QStringList files() { return translationFiles(QLatin1String(GetParam())); }
};

TEST_P(Translations, AreFinished) {
    std::size_t count = 0;
    for (const QString& file : files())
        for (const TranslationEntry& entry : entriesOf(file)) {
            ++count;
            EXPECT_FALSE(entry.isUnfinished)
                << entry.context.toStdString() << ": " << entry.source.toStdString();
            for (const QString& told : entry.told)
                EXPECT_FALSE(told.trimmed().isEmpty()) << entry.source.toStdString();
        }
    EXPECT_GT(count, 0U);
}

TEST_P(Translations, HaveThePlacesOfTheirSource) {
    for (const QString& file : files())
        for (const TranslationEntry& entry : entriesOf(file))
            for (const QString& told : entry.told)
                EXPECT_EQ(placesOf(told).keys(), placesOf(entry.source).keys())
                    << entry.source.toStdString() << " → " << told.toStdString();
}

TEST_P(Translations, EndAsTheirSourceEnds) {
    const auto endOf = [](const QString& text) {
        static const QString marks = QStringLiteral("….:?! ");
        return text.isEmpty() || !marks.contains(text.back()) ? QChar() : text.back();
    };
    for (const QString& file : files())
        for (const TranslationEntry& entry : entriesOf(file))
            for (const QString& told : entry.told)
                EXPECT_EQ(endOf(told), endOf(entry.source))
                    << entry.source.toStdString() << " → " << told.toStdString();
}

TEST_P(Translations, SayTheSameForTheSameInOneContext) {
    std::map<std::pair<QString, QString>, QStringList> seen;
    for (const QString& file : files())
        for (const TranslationEntry& entry : entriesOf(file)) {
            const auto [at, isNew] = seen.try_emplace({entry.context, entry.source}, entry.told);
            EXPECT_EQ(at->second, entry.told)
                << entry.source.toStdString() << " in " << file.toStdString();
        }
}

INSTANTIATE_TEST_SUITE_P(All, Translations, ::testing::Values("de", "en"),
                         [](const auto& each) { return std::string(each.param); });

} // namespace
} // namespace frontwright::testing
