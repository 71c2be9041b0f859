#include "core/plan/reveals.h"

#include "tests/core/plan/planned.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using namespace testing;

const RevealRange* rangeOf(const std::vector<RevealRange>& all, RevealKind kind) {
    for (const RevealRange& range : all)
        if (range.kind == kind)
            return &range;
    return nullptr;
}

// By hand: rails 1 1/4 in less two overlays of 1/4 in show 3/4 in; stiles and rails of the frame,
// 1 1/2 in, less one overlay show 1 1/4 in.
TEST(Reveals, OfAnEvenBankAreAllTheSame) {
    const Planned planned(bank(4));
    const auto all = revealRanges(planned.plan);
    ASSERT_EQ(all.size(), 2U);
    const RevealRange* between = rangeOf(all, RevealKind::BetweenFronts);
    ASSERT_NE(between, nullptr);
    EXPECT_EQ(between->count, 3U);
    EXPECT_TRUE(between->isEven());
    EXPECT_EQ(between->smallest.width, Length::inches(0, 48));
    const RevealRange* edge = rangeOf(all, RevealKind::AtCaseEdge);
    ASSERT_NE(edge, nullptr);
    EXPECT_EQ(edge->count, 10U); // two sides of four fronts, top and bottom
    EXPECT_TRUE(edge->isEven());
    EXPECT_EQ(edge->largest.width, Length::inches(1, 16));
}

// The second front from the top covers 1/8 in more of the rail above it: 5/8 in show.
TEST(Reveals, TellWhereTheSmallestAndTheLargestAre) {
    const Planned planned(withChoices(bank(3), 1, [](FrontChoices& choices) {
        choices.fit.top.emplace() = {Fit::Overlay, Length::inches(0, 24)};
    }));
    const auto all = revealRanges(planned.plan);
    const RevealRange* between = rangeOf(all, RevealKind::BetweenFronts);
    ASSERT_NE(between, nullptr);
    EXPECT_FALSE(between->isEven());
    EXPECT_EQ(between->smallest.width, Length::inches(0, 40));
    EXPECT_EQ(between->largest.width, Length::inches(0, 48));
    EXPECT_EQ(between->difference(), Length::inches(0, 8));
    EXPECT_EQ(planned.plan.fronts[between->smallest.front].place, 1U);
    ASSERT_TRUE(between->smallest.other);
    EXPECT_EQ(planned.plan.fronts[*between->smallest.other].place, 0U);
    EXPECT_EQ(between->smallest.side, Side::Top);
    EXPECT_EQ(planned.plan.fronts[between->largest.front].place, 2U);
}

TEST(Reveals, RoundInsetFrontsAreTheirGaps) {
    Project project = bank(2);
    project.fronts.fit = FrontFit::all({Fit::Inset, Length::fromSixtyFourths(6)});
    const Planned planned(project);
    const auto all = revealRanges(planned.plan);
    ASSERT_EQ(all.size(), 1U);
    EXPECT_EQ(all[0].kind, RevealKind::RoundInset);
    EXPECT_EQ(all[0].count, 8U);
    EXPECT_TRUE(all[0].isEven());
    EXPECT_EQ(all[0].largest.width, Length::fromSixtyFourths(6));
    EXPECT_FALSE(all[0].smallest.other);
}

} // namespace
} // namespace frontwright
