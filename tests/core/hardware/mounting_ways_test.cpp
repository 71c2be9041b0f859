#include "tests/core/hardware/handles.h"

#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::thousandths;

using testing::inchBolt;
using testing::knob;
using testing::metricBolt;
using testing::pull;

const Length front = Length::inches(0, 48); // 3/4 in
const Length wall = Length::inches(0, 32);  // 1/2 in

HardwareSpec withBolt(Length length) {
    HardwareSpec spec;
    spec.boltLength = length;
    return spec;
}
WayPlan inInches(MountingWay way, const HardwareSpec& spec, Length thickness = front) {
    return planWay(way, spec, knob(), inchBolt(), Limits{}, thickness, wall);
}
WayPlan inMillimetres(MountingWay way, const HardwareSpec& spec, std::int64_t t, std::int64_t w) {
    return planWay(way, spec, pull(), metricBolt(), Limits{}, Length::millimetres(t),
                   Length::millimetres(w));
}

TEST(BoltThroughTheWall, GripsWallAndFront) {
    // grip 3/4 + 1/2 = 1 1/4; + 1/4 engagement = 1 1/2; + 1/2 thread = 1 3/4
    const WayPlan plan = inInches(MountingWay::ThroughWall, {});
    EXPECT_EQ(plan.throughWood, Length::inches(1, 16));
    EXPECT_EQ(plan.counterbore, Length{});
    EXPECT_EQ(plan.grip, Length::inches(1, 16));
    EXPECT_EQ(plan.leastLength, Length::inches(1, 32));
    EXPECT_EQ(plan.greatestLength, Length::inches(1, 48));
    EXPECT_EQ(plan.length, Length::inches(1, 32)); // the shortest stocked one that fits
    EXPECT_EQ(plan.verdict, BoltVerdict::Fits);
    EXPECT_EQ(plan.leftUnderHead, plan.grip);
}

TEST(BoltThroughTheWall, GripsMetricWood) {
    // 19 + 12 = 31; 31 + 5 = 36 … 31 + 10 = 41; stocked: 40
    const WayPlan plan = inMillimetres(MountingWay::ThroughWall, {}, 19, 12);
    EXPECT_EQ(plan.leastLength, Length::millimetres(36));
    EXPECT_EQ(plan.greatestLength, Length::millimetres(41));
    EXPECT_EQ(plan.length, Length::millimetres(40));
}

TEST(ShortBolt, IsCuredByACounterbore) {
    // A 1 in bolt where 1 1/2 in is needed: 1/2 in short; counterbore 1 1/4 + 1/4 − 1 = 1/2 in,
    // which leaves 1 1/4 − 1/2 = 3/4 in under the head.
    const WayPlan plan = inInches(MountingWay::ThroughWall, withBolt(Length::inches(1)));
    EXPECT_EQ(plan.verdict, BoltVerdict::TooShort);
    EXPECT_EQ(plan.shortBy, Length::inches(0, 32));
    EXPECT_EQ(plan.curingCounterbore, Length::inches(0, 32));
    EXPECT_EQ(plan.leftUnderHead, Length::inches(0, 48));
    EXPECT_EQ(plan.curingStock, Length::inches(1, 32));
    EXPECT_FALSE(plan.curingWashers.has_value());
}

TEST(ShortBolt, FitsWithTheCounterboreThatWasSaidToCureIt) {
    HardwareSpec spec = withBolt(Length::inches(1));
    spec.counterbore = *inInches(MountingWay::ThroughWall, spec).curingCounterbore;
    const WayPlan cured = inInches(MountingWay::ThroughWall, spec);
    EXPECT_EQ(cured.verdict, BoltVerdict::Fits);
    EXPECT_EQ(cured.leastLength, Length::inches(1)); // just the least engagement
    EXPECT_EQ(cured.leftUnderHead, Length::inches(0, 48));
}

TEST(ShortBolt, IsBeyondCureWhereTooLittleWoodWouldStayUnderItsHead) {
    // 3/8 in bolt in a 3/4 in front: counterbore 3/4 + 1/4 − 3/8 = 5/8, leaves 1/8 < 1/4 in.
    const WayPlan plan = inInches(MountingWay::FrontAccessHole, withBolt(Length::inches(0, 24)));
    EXPECT_EQ(plan.verdict, BoltVerdict::TooDeep);
    EXPECT_EQ(plan.curingCounterbore, Length::inches(0, 40));
    EXPECT_EQ(plan.leftUnderHead, Length::inches(0, 8));
    // 1/2 in leaves 1/4 in: just enough.
    EXPECT_EQ(inInches(MountingWay::FrontAccessHole, withBolt(Length::inches(0, 32))).verdict,
              BoltVerdict::TooShort);
}

TEST(LongBolt, BottomsOutByWhatWashersMustTakeUp) {
    // 2 in where at most 1 3/4 in goes in: 1/4 in too long; 1 1/2 in would fit as it is.
    HardwareSpec spec = withBolt(Length::inches(2));
    const WayPlan plan = inInches(MountingWay::ThroughWall, spec);
    EXPECT_EQ(plan.verdict, BoltVerdict::BottomsOut);
    EXPECT_EQ(plan.shortBy, Length::inches(0, 16));
    EXPECT_EQ(plan.curingWashers, Length::inches(0, 16));
    EXPECT_EQ(plan.curingStock, Length::inches(1, 32));
    EXPECT_FALSE(plan.curingCounterbore.has_value());
    // The stack is as good as so much more wood.
    EXPECT_EQ(inInches(MountingWay::ThroughWall, spec, front + *plan.curingWashers).verdict,
              BoltVerdict::Fits);
}

TEST(BoltInACounterbore, HasItsHeadFlushWithTheFrontsBack) {
    // 0.750 − 0.120 = 0.630; 0.880 … 1.130: the 1 in bolt fits.
    const WayPlan plan = inInches(MountingWay::FrontCounterbore, {});
    EXPECT_EQ(plan.counterbore, thousandths(120));
    EXPECT_EQ(plan.grip, thousandths(630));
    EXPECT_EQ(plan.leastLength, thousandths(880));
    EXPECT_EQ(plan.greatestLength, thousandths(1'130));
    EXPECT_EQ(plan.length, Length::inches(1));
    EXPECT_EQ(plan.verdict, BoltVerdict::Fits);
}

TEST(BoltInACounterbore, GoesAsDeepAsTheGivenBoltNeeds) {
    // 3/4 in bolt: 3/4 + 1/4 − 3/4 = 1/4 in deep, deeper than its head; leaves 1/2 in.
    const WayPlan plan = inInches(MountingWay::FrontCounterbore, withBolt(Length::inches(0, 48)));
    EXPECT_EQ(plan.counterbore, Length::inches(0, 16));
    EXPECT_EQ(plan.leastLength, Length::inches(0, 48));
    EXPECT_EQ(plan.leftUnderHead, Length::inches(0, 32));
    EXPECT_EQ(plan.verdict, BoltVerdict::Fits);
}

TEST(BoltInACounterbore, IsRefusedWhereTheNeededDepthLeavesTooLittle) {
    // 10 mm bolt in 19 mm: 19 + 5 − 10 = 14 mm deep, leaves 5 mm < 6.35 mm.
    const WayPlan plan =
        inMillimetres(MountingWay::FrontCounterbore, withBolt(Length::millimetres(10)), 19, 12);
    EXPECT_EQ(plan.counterbore, Length::millimetres(14));
    EXPECT_EQ(plan.leftUnderHead, Length::millimetres(5));
    EXPECT_EQ(plan.verdict, BoltVerdict::TooDeep);
}

TEST(BoltInACounterbore, IsSetDeeperWhereNoStockedLengthFitsAtHeadHeight) {
    // 22 − 3.1 + 5 = 23.9 … 28.9 with 20 and 30 in stock only: 22 + 5 − 20 = 7 mm for the 20.
    Bolt bolt = metricBolt();
    bolt.lengths = {Length::millimetres(20), Length::millimetres(30)};
    const WayPlan plan = planWay(MountingWay::FrontCounterbore, {}, pull(), bolt, Limits{},
                                 Length::millimetres(22), Length::millimetres(12));
    EXPECT_EQ(plan.counterbore, Length::millimetres(7));
    EXPECT_EQ(plan.length, Length::millimetres(20));
    EXPECT_EQ(plan.verdict, BoltVerdict::Fits);
}

TEST(BoltInACounterbore, StaysAtHeadHeightWhereDeeperWouldLeaveTooLittle) {
    Bolt bolt = metricBolt();
    bolt.lengths = {Length::millimetres(10), Length::millimetres(40)};
    const WayPlan plan = planWay(MountingWay::FrontCounterbore, {}, pull(), bolt, Limits{},
                                 Length::millimetres(22), Length::millimetres(12));
    EXPECT_EQ(plan.counterbore, bolt.headHeight);
    EXPECT_EQ(plan.verdict, BoltVerdict::NoneStocked);
    EXPECT_FALSE(plan.length.has_value());
}

TEST(BoltInACounterbore, LeavesTooLittleInAThinFrontEvenAtHeadHeight) {
    // 9 − 3.1 = 5.9 mm < 6.35 mm
    const WayPlan plan =
        inMillimetres(MountingWay::FrontCounterbore, withBolt(Length::millimetres(12)), 9, 12);
    EXPECT_EQ(plan.leftUnderHead, Length::fromMicrometres(5'900));
    EXPECT_EQ(plan.verdict, BoltVerdict::TooDeep);
}

TEST(BoltBehindAnAccessHole, GripsTheFrontAlone) {
    const WayPlan plan = inInches(MountingWay::FrontAccessHole, withBolt(Length::inches(1)));
    EXPECT_EQ(plan.throughWood, front);
    EXPECT_EQ(plan.counterbore, Length{});
    EXPECT_EQ(plan.leastLength, Length::inches(1));
    EXPECT_EQ(plan.greatestLength, Length::inches(1, 16));
    EXPECT_EQ(plan.verdict, BoltVerdict::Fits);
}

TEST(NoBoltInStock, IsSaidWhereNoneWasGiven) {
    Bolt bolt = inchBolt();
    bolt.lengths = {Length::inches(0, 32)};
    const WayPlan plan = planWay(MountingWay::ThroughWall, {}, knob(), bolt, Limits{}, front, wall);
    EXPECT_EQ(plan.verdict, BoltVerdict::NoneStocked);
    EXPECT_FALSE(plan.length.has_value());
    EXPECT_EQ(plan.shortBy, Length{});
}

TEST(MountingWays, AreJudgedTheSameWhicheverIsChosen) {
    for (Length given : {Length::inches(0, 32), Length::inches(1), Length::inches(2)}) {
        HardwareSpec spec = withBolt(given);
        for (MountingWay judged : allMountingWays) {
            spec.way = MountingWay::ThroughWall;
            const WayPlan first = inInches(judged, spec);
            EXPECT_EQ(first.way, judged);
            for (MountingWay chosen : allMountingWays) {
                spec.way = chosen;
                EXPECT_EQ(inInches(judged, spec), first);
            }
        }
    }
}

TEST(MountingWays, SayTheSameOfEveryLengthAsTheInequality) {
    // grip + least engagement <= L <= grip + thread depth, and enough wood: then and only then.
    for (MountingWay way : {MountingWay::ThroughWall, MountingWay::FrontAccessHole})
        for (std::int64_t t = 24; t <= 80; t += 4)
            for (std::int64_t n = 8; n <= 160; n += 4) {
                const Length thickness = Length::fromSixtyFourths(t);
                const Length length = Length::fromSixtyFourths(n);
                const Length grip = way == MountingWay::ThroughWall ? thickness + wall : thickness;
                const bool inside = grip + Length::inches(0, 16) <= length &&
                                    length <= grip + Length::inches(0, 32);
                const WayPlan plan = inInches(way, withBolt(length), thickness);
                EXPECT_EQ(plan.verdict == BoltVerdict::Fits, inside) << t << " " << n;
                if (plan.curingCounterbore) {
                    EXPECT_EQ(*plan.curingCounterbore, plan.shortBy);
                    EXPECT_EQ(plan.leftUnderHead, grip - plan.shortBy);
                }
            }
}

TEST(MountingWays, NeedOneMoreLengthUnitForOneMoreOfWood) {
    const Length more = Length::fromSixtyFourths(3);
    for (MountingWay way : allMountingWays) {
        const WayPlan thin = inInches(way, {}), thick = inInches(way, {}, front + more);
        if (thin.counterbore == thick.counterbore) {
            EXPECT_EQ(thick.leastLength - thin.leastLength, more);
            EXPECT_EQ(thick.greatestLength - thin.greatestLength, more);
        }
    }
}

} // namespace
} // namespace frontwright
