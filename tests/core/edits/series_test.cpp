// A geometric series between a given first and last height.
#include "core/edits/series.h"

#include "tests/core/edits/edited.h"
#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

#include <random>

namespace frontwright {
namespace {

using testing::upright;

using namespace frontwright::testing;

/// Four openings, one above the other, with room for them.
Project fourIn(Length caseHeight) {
    return bankOf({share(opening()), share(opening()), share(opening()), share(opening())},
                  caseHeight);
}
Length sumOf(const Sizes& sizes) {
    Length sum;
    for (const Length size : sizes)
        sum += size;
    return sum;
}

TEST(Series, HasTheRatioThatFollowsFromItsEnds) {
    // 3, 6, 12 and 24 in: each twice the one above it, the cube root of 24 / 3.
    const Project project = fourIn(in(60));
    const auto series = seriesBetween(project, openingAt(project, 0), upright, in(3), in(24));
    ASSERT_TRUE(series.ok());
    EXPECT_EQ(series.value().ratioMillionths, 2'000'000);
    EXPECT_EQ(series.value().ideal, (Sizes{in(3), in(6), in(12), in(24)}));
    EXPECT_EQ(series.value().needed, in(45));
    EXPECT_EQ(series.value().room, sumOf(heights(project)));
}

TEST(Series, KeepsItsEndsAndSharesWhatIsLeftBetween) {
    const Project project = fourIn(in(60));
    const Length room = sumOf(heights(project));
    const Project after =
        edited(fitSeries(project, openingAt(project, 1), upright, in(3), in(24), SeriesRoom::Kept));
    const Sizes sizes = heights(after);
    EXPECT_EQ(sizes.front(), in(3));
    EXPECT_EQ(sizes.back(), in(24));
    EXPECT_EQ(sumOf(sizes), room);
    // The two between share the rest 1 to 2.
    EXPECT_LE((sizes[2] - 2 * sizes[1]).magnitude(), in(0, 12));
    EXPECT_EQ(after.casework.height, project.casework.height);
}

TEST(Series, LetsTheCaseFollowToBeExact) {
    const Project project = fourIn(in(60));
    const Length room = sumOf(heights(project));
    const Project after = edited(
        fitSeries(project, openingAt(project, 0), upright, in(3), in(24), SeriesRoom::CaseFollows));
    EXPECT_EQ(heights(after), (Sizes{in(3), in(6), in(12), in(24)}));
    EXPECT_EQ(after.casework.height.length, in(63) - room + in(45));
}

TEST(Series, MadeAgainIsTheSame) {
    const Project project = fourIn(in(60));
    const auto fit = [](const Project& from) {
        return edited(
            fitSeries(from, openingAt(from, 0), upright, in(4), in(12), SeriesRoom::CaseFollows));
    };
    const Project once = fit(project);
    EXPECT_EQ(fit(once), once);
}

TEST(Series, LeavesALockedOneBetweenAlone) {
    const Project project = bankOf(
        {share(opening()), fixed(in(5), opening()), share(opening()), share(opening())}, in(50));
    const Project after = edited(
        fitSeries(project, openingAt(project, 0), upright, in(4), in(9), SeriesRoom::CaseFollows));
    // 4, 6 and 9 in: each half as high again
    EXPECT_EQ(heights(after), (Sizes{in(4), in(5), in(6), in(9)}));
}

TEST(Series, ThatHasNoRoomSaysSo) {
    const Project project = fourIn(in(30));
    const auto kept =
        fitSeries(project, openingAt(project, 0), upright, in(12), in(24), SeriesRoom::Kept);
    ASSERT_FALSE(kept.ok());
    EXPECT_EQ(kept.error().what.english(),
              "there is no room between a first of 12 in and a last of 24 in");
    EXPECT_FALSE(seriesBetween(project, openingAt(project, 0), upright, in(0), in(4)).ok());
    const Project two = bankOf({share(opening()), share(opening())}, in(30));
    EXPECT_FALSE(seriesBetween(two, openingAt(two, 0), upright, in(3), in(4)).ok());
}

TEST(Series, OfABankBesideAnotherKeepsToTheCase) {
    // The case's height follows only where the bank spans it.
    const RegionPtr bank = rows({share(opening()), share(opening()), share(opening())}, in(1));
    const Project project =
        projectWith(rows({share(bank), share(opening())}, in(1)), in(30), in(50));
    const auto follows =
        fitSeries(project, openingAt(project, 0), upright, in(3), in(6), SeriesRoom::CaseFollows);
    ASSERT_FALSE(follows.ok());
    EXPECT_EQ(follows.error().what.english(), "the bank does not span the case");
}

TEST(Series, OfAnyEndsSumUpAndKeepThem) {
    std::mt19937 random(77);
    std::uniform_int_distribution<std::int64_t> sixteenths(32, 160);
    for (int i = 0; i < 100; ++i) {
        const Project project = fourIn(in(60));
        const Length first = in(0, 4) * sixteenths(random), last = in(0, 4) * sixteenths(random);
        const auto after = fitSeries(project, openingAt(project, 0), upright, first, last,
                                     SeriesRoom::CaseFollows);
        ASSERT_TRUE(after.ok());
        const Sizes sizes = heights(after.value());
        EXPECT_EQ(sizes.front(), first);
        EXPECT_EQ(sizes.back(), last);
        // Each step has the same ratio, to the grid of a sixteenth.
        const double ratio = sizes[2].inMillimetres() / sizes[1].inMillimetres();
        EXPECT_NEAR(sizes[1].inMillimetres(), sizes[0].inMillimetres() * ratio, 8);
    }
}

} // namespace
} // namespace frontwright
