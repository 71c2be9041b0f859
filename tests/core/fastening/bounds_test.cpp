#include "core/fastening/bounds.h"

#include "tests/core/fastening/walls.h"
#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::thousandths;

using testing::handleWith;
using testing::Mounted;

MountingBounds boundsFor(const Mounted& m) {
    return boundsOf(m.spec, m.screw, m.limits, m.place());
}

TEST(MountingBounds, KeepHeadAndToolOffTheBottomEachByItself) {
    // Bottom's top 0.500; head radius 0.166; margin 0.125; tool radius 0.375.
    const MountingBounds bounds = boundsFor({});
    EXPECT_EQ(bounds.forHead, thousandths(666));
    EXPECT_EQ(bounds.forMargin, thousandths(791));
    EXPECT_EQ(bounds.forTool, thousandths(875));
    EXPECT_EQ(bounds.bottom(), thousandths(875));
}

TEST(MountingBounds, GoByTheMarginWhereTheToolIsSmall) {
    Mounted mounted;
    mounted.spec.toolDiameter = Length::inches(0, 32);
    EXPECT_EQ(boundsFor(mounted).bottom(), thousandths(791));
    EXPECT_EQ(boundsFor(mounted).top, Length::inches(5) - thousandths(291));
}

TEST(MountingBounds, KeepTheToolOffSidesAndUpperEdge) {
    // Sides 1/2 in + 3/8 in: 7/8 in … 12 − 7/8 in; 5 − 3/8 in.
    const MountingBounds bounds = boundsFor({});
    EXPECT_EQ(bounds.sides, (Span{Length::inches(0, 56), Length::inches(11, 8)}));
    EXPECT_EQ(bounds.top, Length::inches(4, 40));
}

TEST(MountingBounds, NeverTakeAToolSmallerThanTheHead) {
    Mounted mounted;
    mounted.spec.toolDiameter = Length{};
    EXPECT_EQ(toolRadius(mounted.spec, mounted.screw), thousandths(166));
    EXPECT_EQ(boundsFor(mounted).sides.low, thousandths(666));
}

TEST(MountingBounds, CutOffTheProfilesThinRim) {
    // 3/8 + 1/8 = 1/2 in of 3/4 must be there. A chamfer 2 in wide that loses 1/2 in at the edge
    // has it from 1 in on, which is 1/2 in on the wall; the front ends 13 in − 1 in to the right.
    Mounted mounted;
    mounted.profile = {ProfileFamily::Chamfer, Length::inches(2), Length::inches(0, 32), {}};
    const WallRect thick = boundsFor(mounted).thick;
    const Length near = Length::fromNanometres(2);
    EXPECT_LE((thick.left - Length::inches(0, 32)).magnitude(), near);
    EXPECT_LE((thick.right - Length::inches(11, 32)).magnitude(), near);
    EXPECT_LE((thick.bottom - Length::inches(0, 32)).magnitude(), near);
    EXPECT_LE((thick.top - Length::inches(4, 32)).magnitude(), near);
}

TEST(MountingBounds, TakeARimThatWasSolvedBefore) {
    Mounted mounted;
    mounted.profile = {ProfileFamily::Cove, Length::inches(1), Length::inches(0, 40), {}};
    const ThinRim rim = thinRim(mounted.profile, mounted.thickness, Length::inches(0, 32));
    MountingPlace place = mounted.place();
    place.rim = &rim;
    EXPECT_EQ(planMounting(mounted.spec, mounted.screw, mounted.limits, place), mounted.plan());
}

TEST(MountingBounds, LeaveNothingWhereTheFrontIsTooThin) {
    Mounted mounted;
    mounted.thickness = Length::inches(0, 31); // 1/2 in is asked for
    EXPECT_TRUE(boundsFor(mounted).common().isEmpty());
    mounted.thickness = Length::inches(0, 32);
    EXPECT_FALSE(boundsFor(mounted).common().isEmpty());
}

// Tool radius 3/8 in, 1/4 in of wood between holes.
std::vector<WallDisc> discsFor(MountingWay way, Length counterbore = {}) {
    Mounted mounted;
    mounted.hardware = handleWith({{Length::inches(6, 32), Length::inches(3)}}, way);
    mounted.hardware->ways[static_cast<std::size_t>(way)].counterbore = counterbore;
    return discsRoundHardware(mounted.spec, mounted.screw, mounted.limits, mounted.place());
}

TEST(DiscRoundHardware, LiesBehindTheHandlesHole) {
    const auto discs = discsFor(MountingWay::ThroughWall);
    ASSERT_EQ(discs.size(), 1u);
    EXPECT_EQ(discs[0].centre, (WallPoint{Length::inches(6), Length::inches(2, 32)}));
}

TEST(DiscRoundHardware, IsAsLargeAsWhatIsCutIntoTheWall) {
    // Bolt hole 3/32 + 3/8 + 1/4; counterbore in the wall 1/4 + 3/8 + 1/4; access hole 5/16 + ….
    EXPECT_EQ(discsFor(MountingWay::ThroughWall)[0].radius, Length::inches(0, 46));
    EXPECT_EQ(discsFor(MountingWay::ThroughWall, Length::inches(0, 8))[0].radius,
              Length::inches(0, 56));
    EXPECT_EQ(discsFor(MountingWay::FrontAccessHole)[0].radius, Length::inches(0, 60));
}

TEST(DiscRoundHardware, LeavesTheToolOutWhereTheCounterboreIsInTheFrontOnly) {
    // Counterbore 0.250 + screw 0.082 + 0.250
    EXPECT_EQ(discsFor(MountingWay::FrontCounterbore)[0].radius, thousandths(582));
}

TEST(DiscRoundHardware, IsNoneWhereThereIsNoHandle) {
    const Mounted mounted;
    EXPECT_TRUE(
        discsRoundHardware(mounted.spec, mounted.screw, mounted.limits, mounted.place()).empty());
}

} // namespace
} // namespace frontwright
