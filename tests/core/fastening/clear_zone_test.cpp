#include "core/fastening/bounds.h"
#include "tests/core/findings/provoking.h"

#include <gtest/gtest.h>

// Boxes on the small catalogue's runners: openings 13 in × 6 in, sides 1/2 in, the bottom's top at
// 1/2 in, heads 5/16 in across, a 5/8 in tool; rows on a grid of 1/8 in.
namespace frontwright {
namespace {

using testing::bank;
using testing::Found;
using testing::n64;

Project on(const char* runner) {
    Project project = bank(1);
    project.fronts.box.runner = runner;
    project.fronts.box.depthRule = BoxDepthRule::AsRunner;
    return project;
}

TEST(ClearZone, IsLeftOutOfTheAllowedRegionWithTheToolsRadius) {
    const Found found(on("hidden"));
    const auto& rects = found.front(0).mounting.allowed.withoutRects;
    ASSERT_EQ(rects.size(), 2U);
    // 2 in × 1 in and 5/16 in round it
    EXPECT_EQ(rects[0], (WallRect{-n64(20), -n64(20), n64(148), n64(84)}));
    // The box is 12 5/8 in wide.
    EXPECT_EQ(rects[1], (WallRect{n64(808 - 148), -n64(20), n64(828), n64(84)}));
}

TEST(ClearZone, MovesTheLowerScrewsInwardsAndLeavesTheUpperOnes) {
    const Found found(on("hidden"));
    const auto& holes = found.front(0).mounting.holes;
    ASSERT_EQ(holes.size(), 4U);
    // 2 5/16 in, up to the next 1/8 in; the bottom asks for 13/16 in, up to 7/8 in
    EXPECT_EQ(holes[0].at, (WallPoint{n64(152), n64(56)}));
    EXPECT_EQ(holes[1].at, (WallPoint{n64(808 - 152), n64(56)}));
    // Side 1/2 in + tool's radius 5/16 in, up to 7/8 in
    EXPECT_EQ(holes[2].at.x, n64(56));
    EXPECT_EQ(holes[3].at.x, n64(808 - 56));
    for (const MountingHole& hole : holes)
        EXPECT_TRUE(hole.allowed);
    EXPECT_FALSE(found.has(FindingCode::HoleAtRunner));
}

TEST(ClearZoneOfACentreRunner, MovesTheMiddleScrewOfSix) {
    Project project = on("middle");
    project.fronts.mounting.pattern = ScrewPattern::Six;
    project.fronts.hardware.form.clear();
    const Found found(project);
    for (const MountingHole& hole : found.front(0).mounting.holes)
        EXPECT_TRUE(hole.allowed);
    // The box is 12 3/4 in wide: 6 3/8 in − 1 in − 5/16 in = 5 1/16 in, down to 5 in.
    EXPECT_EQ(found.front(0).mounting.holes[1].at, (WallPoint{n64(320), n64(56)}));
}

TEST(ScrewInTheClearZone, CannotBeDriven) {
    Project project = on("hidden");
    project.fronts.mounting.fromSides = n64(64);
    project.fronts.mounting.fromBottom = n64(64);
    const Found found(project);
    const Finding* finding = found.find(FindingCode::HoleAtRunner);
    ASSERT_NE(finding, nullptr);
    EXPECT_EQ(finding->severity, Severity::WontWork);
    EXPECT_EQ(finding->where.side, Side::Left);
    // 1 in from the side and 1 in up, in a zone of 2 5/16 in by 1 5/16 in
    EXPECT_EQ(finding->figures, (std::array{n64(64), n64(64), n64(148), n64(84)}));
}

TEST(ScrewInTheClearZone, OfACentreRunnerIsToldFromTheMiddle) {
    Project project = on("middle");
    project.fronts.mounting.pattern = ScrewPattern::ByHand;
    // The middle is at 6 3/8 in; the zone reaches 1 in + 5/16 in to either side.
    project.fronts.mounting.placed = {{n64(408 + 32), n64(64)}};
    const Found found(project);
    const Finding* finding = found.find(FindingCode::HoleAtRunner);
    ASSERT_NE(finding, nullptr);
    EXPECT_EQ(finding->figures, (std::array{n64(32), n64(64), n64(84), n64(84)}));
    EXPECT_FALSE(finding->where.side);
}

TEST(ScrewsOverARunner, LieWhereNothingIsInTheWayWhateverTheBox) {
    testing::Dice dice(2'025);
    for (int i = 0; i < 60; ++i) {
        Project project = testing::oneOpening(dice.sixtyFourths(8 * 64, 30 * 64),
                                              dice.sixtyFourths(4 * 64, 12 * 64));
        project.fronts.box.runner = i % 2 == 0 ? "hidden" : "middle";
        project.fronts.box.depthRule = BoxDepthRule::AsRunner;
        project.fronts.mounting.pattern =
            dice.between(0, 1) == 0 ? ScrewPattern::Six : ScrewPattern::FourCorners;
        const Found found(project);
        for (const MountingHole& hole : found.front(0).mounting.holes)
            EXPECT_EQ(hole.allowed, found.front(0).mounting.allowed.contains(hole.at));
        EXPECT_FALSE(found.has(FindingCode::HoleAtRunner)) << i;
    }
}

} // namespace
} // namespace frontwright
