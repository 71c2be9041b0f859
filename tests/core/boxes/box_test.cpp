#include "core/boxes/box.h"

#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::in;

BoxSpec plainBox() {
    BoxSpec spec;
    spec.depth = in(16);
    spec.wallThickness = in(0, 32);
    spec.sideThickness = in(0, 40);
    spec.grooveHeight = in(0, 16);
    spec.bottomThickness = in(0, 12);
    return spec;
}
RunnerKind runner() {
    RunnerKind kind;
    kind.sideClearance = in(0, 32);
    kind.clearanceBelow = in(0, 16);
    kind.clearanceAbove = in(0, 48);
    return kind;
}

/// Opening 12 5/8 × 5 in at 1 1/2, 2; front with overlays of 1/4 in left and 3/8 in below.
const CaseRect opening{in(1, 32), in(2), in(14, 8), in(7)};
const CaseRect front{in(1, 16), in(1, 40), in(14, 24), in(7, 16)};

TEST(Box, IsTheOpeningLessTheRunnersClearances) {
    const RunnerKind kind = runner();
    const BoxPlan box = planBox(plainBox(), &kind, opening, front, {});
    EXPECT_EQ(box.width, in(11, 40)); // 12 5/8 − 2 × 1/2
    EXPECT_EQ(box.height, in(4));     // 5 − 1/4 − 3/4
    EXPECT_EQ(box.depth, in(16));
    EXPECT_EQ(box.wallThickness, in(0, 32));
    EXPECT_EQ(box.sideThickness, in(0, 40));
    EXPECT_EQ(box.sideClearance, in(0, 32));
    EXPECT_EQ(box.clearanceBelow, in(0, 16));
    EXPECT_EQ(box.clearanceAbove, in(0, 48));
    EXPECT_EQ(box.origin, (CasePoint{in(2), in(2, 16)}));
    EXPECT_EQ(box.wall, WallRect::atOrigin(in(11, 40), in(4)));
}

TEST(Box, HasItsBottomOnTheGroove) {
    const RunnerKind kind = runner();
    const BoxPlan box = planBox(plainBox(), &kind, opening, front, {});
    EXPECT_EQ(box.bottomUnderside, in(0, 16));
    EXPECT_EQ(box.bottomTop, in(0, 28)); // 1/4 + 3/16
}

TEST(Box, TakesTheMakersClearancesBeforeTheRunners) {
    BoxSpec spec = plainBox();
    spec.sideClearance = in(0, 4);
    spec.clearanceAbove = in(0, 8);
    const RunnerKind kind = runner();
    const BoxPlan box = planBox(spec, &kind, opening, front, {});
    EXPECT_EQ(box.width, in(12, 32)); // 12 5/8 − 2 × 1/16
    EXPECT_EQ(box.height, in(4, 40)); // 5 − 1/4 − 1/8
    EXPECT_EQ(box.clearanceBelow, in(0, 16)) << "still the runner's";
}

TEST(Box, NeedsNoRunnerWhereAllClearancesAreGiven) {
    BoxSpec spec = plainBox();
    spec.sideClearance = in(0, 4);
    spec.clearanceBelow = in(0, 8);
    spec.clearanceAbove = in(0, 16);
    const BoxPlan box = planBox(spec, nullptr, opening, front, {});
    EXPECT_EQ(box.width, in(12, 32));
    EXPECT_EQ(box.height, in(4, 40));
}

TEST(Box, LeavesTheRestAboveWhereItsHeightIsGiven) {
    BoxSpec spec = plainBox();
    spec.height = in(3);
    const RunnerKind kind = runner();
    EXPECT_EQ(planBox(spec, &kind, opening, front, {}).height, in(3));
    EXPECT_EQ(planBox(spec, &kind, opening, front, {}).clearanceAbove, in(1, 48));
    spec.height = in(6);
    EXPECT_EQ(planBox(spec, &kind, opening, front, {}).clearanceAbove, -in(1, 16))
        << "too tall by more than it leaves below";
}

TEST(Box, HasANegativeSizeWhereThereIsNoRoom) {
    const RunnerKind kind = runner();
    const CaseRect slit{in(0), in(0), in(0, 48), in(0, 48)};
    EXPECT_EQ(planBox(plainBox(), &kind, slit, slit, {}).width, -in(0, 16));
    EXPECT_EQ(planBox(plainBox(), &kind, slit, slit, {}).height, -in(0, 16));
}

TEST(Box, KeepsItsSetback) {
    const RunnerKind kind = runner();
    EXPECT_EQ(planBox(plainBox(), &kind, opening, front, in(0, 48)).setback, in(0, 48));
}

TEST(FrontAndWall, AreTiedByClearanceAndOverlay) {
    const RunnerKind kind = runner();
    const BoxPlan box = planBox(plainBox(), &kind, opening, front, {});
    // x: 1/2 clearance + 1/4 overlay; y: 1/4 clearance + 3/8 overlay
    EXPECT_EQ(toFront(box, WallPoint{}), (FrontPoint{in(0, 48), in(0, 40)}));
    EXPECT_EQ(toFront(box, WallPoint{in(2), in(1)}), (FrontPoint{in(2, 48), in(1, 40)}));
    EXPECT_EQ(toWall(box, FrontPoint{}), (WallPoint{-in(0, 48), -in(0, 40)}));
}

TEST(FrontAndWall, InvertEachOther) {
    const RunnerKind kind = runner();
    const BoxPlan box = planBox(plainBox(), &kind, opening, front, {});
    for (std::int64_t i = -5; i < 30; ++i) {
        const WallPoint p{in(i, 3 * i), in(7 - i, i)};
        EXPECT_EQ(toWall(box, toFront(box, p)), p);
        const FrontRect r{in(i), in(1), in(i + 4), in(2, i)};
        EXPECT_EQ(toFront(box, toWall(box, r)), r);
        EXPECT_EQ(toFront(box, toWall(box, r)).width(), r.width());
    }
}

TEST(FrontAndWall, SeeTheSamePointOfTheCase) {
    const RunnerKind kind = runner();
    const BoxPlan box = planBox(plainBox(), &kind, opening, front, {});
    const FrontPoint corner = toFront(box, WallPoint{box.width, box.height});
    EXPECT_EQ(front.left + corner.x, opening.right - box.sideClearance);
    EXPECT_EQ(front.bottom + corner.y, opening.top - box.clearanceAbove);
}

TEST(Wall, MirrorsIntoItself) {
    const RunnerKind kind = runner();
    const BoxPlan box = planBox(plainBox(), &kind, opening, front, {});
    EXPECT_EQ(mirroredAcross(box, WallPoint{in(1), in(2)}), (WallPoint{in(10, 40), in(2)}));
    const WallPoint p{in(3, 7), in(2, 1)};
    EXPECT_EQ(mirroredAcross(box, mirroredAcross(box, p)), p);
    EXPECT_EQ(mirroredAcross(box, WallPoint{}), (WallPoint{box.width, in(0)}));
}

} // namespace
} // namespace frontwright
