// Rows of system holes in the panels' faces.

#include "core/plan/panel_holes.h"
#include "tests/core/plan/faced.h"
#include "tests/core/plan/frameless_case.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::columns;
using testing::faced;
using testing::framelessBanks;
using testing::framelessWith;
using testing::mm;
using testing::opening;
using testing::Planned;
using testing::rows;
using testing::share;

Project bored(Project project) {
    project.casework.systemHoles = usualSystemHoles(project.casework.frame.bottom);
    return project;
}

const PanelHoles& at(const Plan& plan, std::uint32_t member, Side face) {
    for (const PanelHoles& holes : plan.systemHoles)
        if (holes.member == member && holes.face == face)
            return holes;
    throw std::runtime_error("no holes there");
}

TEST(UsualSystemHoles, AreFiveMillimetresWideEvery32MillimetresBehind37) {
    const SystemHoles usual = usualSystemHoles(mm(18));
    EXPECT_EQ(usual.pitch.length, mm(32));
    EXPECT_EQ(usual.setback.length, mm(37));
    EXPECT_EQ(usual.diameter.length, mm(5));
    EXPECT_EQ(usual.first.length, mm(9)); // half of the bottom panel
}

TEST(SystemHoles, StandAtThePitchBetweenBottomAndTop) {
    const Planned one(bored(framelessWith(opening(), mm(600), mm(720))));
    // First 9 + 32 = 41, for 9 lies in the bottom panel; inside from 18 to 702:
    // 9 + 21 · 32 = 681 is the last, for 713 lies in the top panel.
    const auto& heights = at(one.plan, 0, Side::Right).heights;
    ASSERT_EQ(heights.size(), 21U);
    EXPECT_EQ(heights.front(), mm(41));
    EXPECT_EQ(heights.back(), mm(681));
}

TEST(SystemHoles, AreInBothFacesOfADividerAndTheInnerFacesOfTheSides) {
    const Planned banks(bored(framelessBanks()));
    ASSERT_EQ(banks.plan.systemHoles.size(), 4U);
    EXPECT_EQ(at(banks.plan, 0, Side::Right).heights, at(banks.plan, 4, Side::Left).heights);
    EXPECT_EQ(at(banks.plan, 1, Side::Left).heights, at(banks.plan, 4, Side::Right).heights);
}

TEST(SystemHoles, RunOnWhereNoShelfLiesBetweenDrawers) {
    const Planned banks(bored(framelessBanks()));
    const auto& heights = at(banks.plan, 0, Side::Right).heights;
    ASSERT_EQ(heights.size(), 21U);
    for (std::size_t i = 1; i < heights.size(); ++i)
        EXPECT_EQ(heights[i] - heights[i - 1], mm(32));
}

TEST(SystemHoles, AreNotBoredWhereSeveralFrontsHaveOneOpening) {
    // Nothing is built between them: the panels are bored as behind one front.
    const auto two = columns({share(opening()), share(opening())}, mm(18));
    const Planned one(bored(framelessWith(opening(), mm(600), mm(720))));
    const Planned beside(bored(faced(framelessWith(two, mm(600), mm(720)))));
    EXPECT_EQ(beside.plan.systemHoles, one.plan.systemHoles);
    const auto stacked = rows({share(opening()), share(opening())}, mm(40));
    const Planned above(bored(faced(framelessWith(stacked, mm(600), mm(720)))));
    EXPECT_EQ(above.plan.systemHoles, one.plan.systemHoles);
}

TEST(SystemHoles, KeepClearOfAShelf) {
    const Planned banks(bored(framelessBanks(mm(18))));
    for (const PanelHoles& panel : banks.plan.systemHoles)
        for (const Length height : panel.heights)
            for (const MemberPlan& member : banks.plan.members)
                if (member.kind == MemberKind::Rail || member.kind == MemberKind::OuterRail) {
                    EXPECT_FALSE(member.rect.bottom < height + Length::fromMicrometres(2'500) &&
                                 height - Length::fromMicrometres(2'500) < member.rect.top);
                }
}

TEST(SystemHoles, CountFromTheInsideBottomWhereTheMakerWantsIt) {
    Project project = bored(framelessWith(opening(), mm(600), mm(720)));
    project.casework.systemHoles->datum = HoleDatum::InsideBottom;
    project.casework.systemHoles->first = mm(50);
    const Planned one(std::move(project));
    EXPECT_EQ(at(one.plan, 0, Side::Right).heights.front(), mm(68)); // 18 + 50
}

TEST(SystemHoles, AreNotBoredBehindAFaceFrameNorWhereNobodyAskedForThem) {
    Project framed = bored(framelessBanks());
    framed.casework.construction = Construction::FaceFrame;
    EXPECT_TRUE(Planned(framed).plan.systemHoles.empty());
    EXPECT_TRUE(Planned(framelessBanks()).plan.systemHoles.empty());
}

} // namespace
} // namespace frontwright
