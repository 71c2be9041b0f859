#include "core/plan/exaggerated.h"

#include "tests/core/plan/planned.h"
#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::inch;

using namespace testing;

/// The front at that place of the only bank.
std::size_t placed(const Plan& plan, std::uint32_t place) {
    for (std::size_t i = 0; i < plan.fronts.size(); ++i)
        if (plan.fronts[i].place == place)
            return i;
    ADD_FAILURE() << "no such front";
    return 0;
}

TEST(PlacesAsPlanned, AreThePlansOwn) {
    const Planned planned(bank(3));
    const FrontPlaces places = placesAsPlanned(planned.plan);
    ASSERT_EQ(places.fronts.size(), 3U);
    for (std::size_t i = 0; i < 3; ++i)
        EXPECT_TRUE(places.fronts[i].isApprox(toMm(planned.plan.fronts[i].rect)));
    EXPECT_EQ(places.reveals, 1);
}

// By hand: fronts 13 1/2 × 6 1/2 in; between them 3/4 in shows, at the case's edge 1 1/4 in. Ten
// times: 7 1/2 and 12 1/2 in. The case is 13.5 + 2 · 12.5 = 38.5 in wide and 3 · 6.5 + 2 · 7.5 +
// 2 · 12.5 = 59.5 in high; the lowest front begins at 12.5, the next at 12.5 + 6.5 + 7.5 = 26.5 in.
TEST(ExaggeratedReveals, OfABankAreTenTimesAsWideAndFrontsKeepTheirSize) {
    const Planned planned(bank(3));
    const FrontPlaces places = placesExaggerated(planned.project, planned.plan, 10);
    EXPECT_NEAR(places.outline.sizes().x(), 38.5 * inch, 1e-6);
    EXPECT_NEAR(places.outline.sizes().y(), 59.5 * inch, 1e-6);
    const BoxMm lowest = places.fronts[placed(planned.plan, 2)];
    EXPECT_NEAR(lowest.min().x(), 12.5 * inch, 1e-6);
    EXPECT_NEAR(lowest.min().y(), 12.5 * inch, 1e-6);
    EXPECT_NEAR(lowest.sizes().x(), 13.5 * inch, 1e-6);
    EXPECT_NEAR(lowest.sizes().y(), 6.5 * inch, 1e-6);
    EXPECT_NEAR(places.fronts[placed(planned.plan, 1)].min().y(), 26.5 * inch, 1e-6);
}

// By hand: an opening of 10 × 8 in, gap 3/32 in all round, frame 1 1/2 in: 1.5 + 10 · 3/32 = 2.4375
// in from the case's edge to the front.
TEST(ExaggeratedReveals, RoundAnInsetFrontLeaveTheMembersAsTheyAre) {
    Project project = oneOpening(Length::inches(10), Length::inches(8));
    project.fronts.fit = FrontFit::all({Fit::Inset, Length::fromSixtyFourths(6)});
    const Planned planned(project);
    const FrontPlaces places = placesExaggerated(planned.project, planned.plan, 10);
    EXPECT_NEAR(places.fronts[0].min().x(), 2.4375 * inch, 1e-6);
    EXPECT_NEAR(places.fronts[0].sizes().x(), 9.8125 * inch, 1e-6);
}

// The left column has one rail more, so its reveals take more room; the right one's fronts grow, by
// one part for all, and both end at the same height.
TEST(ExaggeratedReveals, LetBanksOfFewerFrontsGrowInProportion) {
    const Planned planned(projectWith(
        columns({share(rows({share(opening()), share(opening()), share(opening())},
                            Length::inches(1, 16))),
                 share(rows({share(opening(), 1), share(opening(), 2)}, Length::inches(1, 16)))},
                Length::inches(2)),
        Length::inches(40), Length::inches(36)));
    const FrontPlaces places = placesExaggerated(planned.project, planned.plan, 10);
    const auto& fronts = planned.plan.fronts;
    const auto growth = [&](std::size_t i) {
        return places.fronts[i].sizes().y() / fronts[i].rect.height().inMillimetres();
    };
    for (std::size_t i = 0; i < 3; ++i)
        EXPECT_NEAR(growth(i), 1, 1e-9);
    EXPECT_GT(growth(3), 1.01);
    EXPECT_NEAR(growth(3), growth(4), 1e-9);
    EXPECT_NEAR(places.fronts[0].max().y(), places.fronts[3].max().y(), 1e-6);
    EXPECT_NEAR(places.fronts[2].min().y(), places.fronts[4].min().y(), 1e-6);
}

TEST(ExaggeratedReveals, OnceAreThePlanItself) {
    for (std::uint64_t seed = 0; seed < 40; ++seed) {
        const Planned planned(randomProject(seed));
        const FrontPlaces places = placesExaggerated(planned.project, planned.plan, 1);
        EXPECT_TRUE(places.outline.isApprox(toMm(planned.plan.outline), 1e-9)) << seed;
        for (std::size_t i = 0; i < places.fronts.size(); ++i)
            EXPECT_TRUE(places.fronts[i].isApprox(toMm(planned.plan.fronts[i].rect), 1e-9))
                << seed << ", front " << i;
    }
}

/// Law: between any two fronts that face each other across a member of their own split, what shows
/// is ten times as wide, and none gets smaller than planned.
TEST(ExaggeratedReveals, AreTenTimesAsWideInEveryBankAndShrinkNoFront) {
    for (std::uint64_t seed = 100; seed < 140; ++seed) {
        const Planned planned(randomProject(seed));
        const FrontPlaces places = placesExaggerated(planned.project, planned.plan, 10);
        for (std::size_t i = 0; i < places.fronts.size(); ++i) {
            const CaseRect& rect = planned.plan.fronts[i].rect;
            EXPECT_GE(places.fronts[i].sizes().x(), rect.width().inMillimetres() - 1e-6) << seed;
            EXPECT_GE(places.fronts[i].sizes().y(), rect.height().inMillimetres() - 1e-6) << seed;
        }
        for (const Spacer& spacer : planned.plan.spacers) {
            const MemberPlan& member = planned.plan.members[spacer.member];
            const int axis = member.kind == MemberKind::Stile ? 0 : 1;
            const double shows =
                places.fronts[spacer.upper].min()[axis] - places.fronts[spacer.lower].max()[axis];
            EXPECT_NEAR(shows, 10 * spacer.width.inMillimetres(), 1e-6) << seed;
        }
    }
}

} // namespace
} // namespace frontwright
