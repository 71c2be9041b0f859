#include "core/drawings/glossary.h"
#include "core/drawings/season_chart.h"
#include "tests/core/drawings/drawn_case.h"
#include "tests/core/plan/seasons.h"
#include "tests/core/words/untold.h"

#include <gtest/gtest.h>

#include <array>

namespace frontwright {
namespace {

/// Words in a drawing that another language could not have told. A drawing's texts are told
/// already: whoever made it in the mute language leaves only names that the maker gave.
std::vector<std::string> wordsLeft(const Drawing& drawing) {
    std::vector<std::string> left;
    const auto look = [&](const std::string& told) {
        for (std::string& word : testing::untold(Phrase(told)))
            left.push_back(std::move(word));
    };
    for (const Mark& mark : drawing.marks) {
        if (const auto* text = std::get_if<TextMark>(&mark.shape))
            look(text->text);
        if (const auto* dimension = std::get_if<DimensionMark>(&mark.shape))
            look(dimension->text);
    }
    return left;
}

const std::vector<std::string> none;

Project chest(MountingWay way) {
    Project project = testing::bank(3);
    project.fronts.hardware.way = way;
    testing::oakInAir(project, 8, 6, 12);
    return project;
}

constexpr std::array ways{MountingWay::ThroughWall, MountingWay::FrontCounterbore,
                          MountingWay::FrontAccessHole};

TEST(ToldDrawings, HoldNoWordThatAnotherLanguageCouldNotTell) {
    for (const MountingWay way : ways) {
        const testing::DrawnCase made(chest(way));
        for (const double scale : {0.02, 0.1, 0.5}) {
            ElevationOptions options;
            options.language = testing::mute();
            options.paperScale = scale;
            options.emphasised = made.plan.fronts.front().opening;
            EXPECT_EQ(wordsLeft(elevation(made.project, made.plan, options)), none);
            options.emphasisedPart =
                PlacedPart{PlacedPart::Kind::MountingHole, made.plan.fronts.front().opening, 0};
            EXPECT_EQ(wordsLeft(elevation(made.project, made.plan, options)), none);
            SectionOptions section;
            section.language = testing::mute();
            section.paperScale = scale;
            for (const std::uint32_t hole : {0U, 99U}) {
                section.mountingHole = hole;
                EXPECT_EQ(wordsLeft(frontSection(made.project, made.plan, 0, section)), none);
                EXPECT_EQ(wordsLeft(levelSection(made.project, made.plan, 0, section)), none);
            }
        }
    }
}

TEST(ToldDrawings, OfTheSeasonHoldNoWordThatAnotherLanguageCouldNotTell) {
    const testing::DrawnCase made(chest(MountingWay::ThroughWall));
    SeasonChartOptions options;
    options.language = testing::mute();
    options.today = AirState::meter(Percent::whole(9));
    const auto chart = seasonChart(made.project, made.plan, options);
    ASSERT_TRUE(chart.has_value());
    EXPECT_EQ(wordsLeft(*chart), none);
}

// The same drawing in English has words, so that the test above can fail; its parts keep the names
// that files use.
TEST(ToldDrawings, KeepTheNamesOfTheirPartsInEveryLanguage) {
    const testing::DrawnCase made(chest(MountingWay::ThroughWall));
    SectionOptions english, other;
    other.language = testing::mute();
    const Drawing said = frontSection(made.project, made.plan, 0, english);
    EXPECT_FALSE(wordsLeft(said).empty());
    const auto namesOf = [](const Drawing& drawing) {
        std::set<std::string> names;
        for (const Mark& mark : drawing.marks)
            names.insert(mark.part.name);
        return names;
    };
    EXPECT_EQ(namesOf(frontSection(made.project, made.plan, 0, other)), namesOf(said));
}

TEST(ToldDrawings, TellTheWordsOfTheTrade) {
    for (int i = 0; i < termCount; ++i)
        EXPECT_TRUE(testing::untold(nameOf(static_cast<Term>(i))).empty());
}

} // namespace
} // namespace frontwright
