#include "tests/core/fastening/walls.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::fourMillimetre;
using testing::Mounted;

const WallPoint wellInside{Length::inches(6), Length::inches(2, 32)};

/// In millimetres: wall 12, front 19, at least 10 in the front and 3 before the tip.
Mounted inMillimetres() {
    Mounted mounted;
    mounted.screw = fourMillimetre();
    mounted.wall.wallThickness = Length::millimetres(12);
    mounted.thickness = Length::millimetres(19);
    mounted.limits.leastPenetration = Length::millimetres(10);
    mounted.limits.leastTipCover = Length::millimetres(3);
    return mounted;
}

TEST(ScrewWindow, IsFromLeastPenetrationToLeastTipCover) {
    // w − r + least penetration = 1/2 − 0 + 3/8 = 7/8
    // w − r + t − least cover   = 1/2 − 0 + 3/4 − 1/8 = 1 1/8; the longest stocked up to it: 1 in
    const MountingPlan plan = Mounted{}.plan();
    EXPECT_EQ(plan.leastLength, Length::inches(0, 56));
    EXPECT_EQ(plan.greatestLength, Length::inches(1, 8));
    EXPECT_EQ(plan.length, Length::inches(1));
    EXPECT_EQ(plan.wall, Length::inches(0, 32));
    EXPECT_EQ(plan.recess, Length{});
}

TEST(ScrewWindow, MovesDownByTheRecess) {
    // r = 1/8: 7/8 − 1/8 = 3/4 … 1 1/8 − 1/8 = 1; 1 in just fits
    Mounted mounted;
    mounted.spec.recess = Length::inches(0, 8);
    const MountingPlan plan = mounted.plan();
    EXPECT_EQ(plan.leastLength, Length::inches(0, 48));
    EXPECT_EQ(plan.greatestLength, Length::inches(1));
    EXPECT_EQ(plan.length, Length::inches(1));
    // p = 1 + 1/8 − 1/2 = 5/8; cover 3/4 − 5/8 = 1/8
    EXPECT_EQ(plan.holes.at(0).penetration, Length::inches(0, 40));
    EXPECT_EQ(plan.holes.at(0).tipCover, Length::inches(0, 8));
}

TEST(ScrewWindow, IsWorkedInMillimetresAlike) {
    // 12 + 10 = 22 … 12 + 19 − 3 = 28: the 25 of 20, 25, 30. p = 13, cover 6.
    const MountingPlan plan = inMillimetres().plan();
    EXPECT_EQ(plan.leastLength, Length::millimetres(22));
    EXPECT_EQ(plan.greatestLength, Length::millimetres(28));
    EXPECT_EQ(plan.length, Length::millimetres(25));
    EXPECT_EQ(plan.holes.at(0).penetration, Length::millimetres(13));
    EXPECT_EQ(plan.holes.at(0).tipCover, Length::millimetres(6));
}

TEST(ScrewWindow, HoldsNoStockedLengthWhereItFallsBetweenTwo) {
    // 12 − 3 + 12 = 21 … 12 − 3 + 19 − 4 = 24: neither 20 nor 25
    Mounted mounted = inMillimetres();
    mounted.spec.recess = Length::millimetres(3);
    mounted.limits.leastPenetration = Length::millimetres(12);
    mounted.limits.leastTipCover = Length::millimetres(4);
    const MountingPlan plan = mounted.plan();
    EXPECT_EQ(plan.leastLength, Length::millimetres(21));
    EXPECT_EQ(plan.greatestLength, Length::millimetres(24));
    EXPECT_FALSE(plan.length.has_value());
    EXPECT_EQ(plan.holes.at(0).penetration, Length{});
    EXPECT_EQ(plan.holes.at(0).tipCover, Length::millimetres(19));
}

TEST(ScrewWindow, TakesStockedLengthsAtBothItsEnds) {
    Mounted mounted = inMillimetres();
    mounted.limits.leastPenetration = Length::millimetres(13); // 25 …
    mounted.limits.leastTipCover = Length::millimetres(6);     // … 25
    EXPECT_EQ(mounted.plan().length, Length::millimetres(25));
    mounted.limits.leastTipCover = Length::fromMicrometres(6'001);
    EXPECT_FALSE(mounted.plan().length.has_value());
}

TEST(GivenScrew, IsKeptAndJudgedWhateverComesOfIt) {
    // 1 1/4 in: p = 1 1/4 − 1/2 = 3/4 = t: cover 0, it shows. 1 1/2 in: cover −1/4.
    Mounted mounted;
    mounted.spec.length = Length::inches(1, 16);
    EXPECT_EQ(mounted.plan().length, Length::inches(1, 16));
    EXPECT_EQ(mounted.holeAt(wellInside).tipCover, Length{});
    mounted.spec.length = Length::inches(1, 32);
    EXPECT_EQ(mounted.holeAt(wellInside).tipCover, -Length::inches(0, 16));
}

TEST(ScrewWindow, IsThatOfTheThinnestPlaceWithAHole) {
    // A chamfer of 2 in that loses 1/4 in: 1 in from the edge 1/8 in is lost, so t = 5/8 there.
    Mounted mounted;
    mounted.profile = {ProfileFamily::Chamfer, Length::inches(2), Length::inches(0, 16), {}};
    mounted.spec.pattern = ScrewPattern::ByHand;
    mounted.spec.placed = {wellInside, {Length::inches(6), Length::inches(0, 32)}};
    const MountingPlan plan = mounted.plan();
    EXPECT_EQ(plan.holes[0].thickness, Length::inches(0, 48));
    EXPECT_EQ(plan.holes[1].thickness, Length::inches(0, 40));
    EXPECT_EQ(plan.greatestLength, Length::inches(1)); // 1/2 + 5/8 − 1/8
    EXPECT_EQ(plan.holes[0].tipCover, Length::inches(0, 16));
    EXPECT_EQ(plan.holes[1].tipCover, Length::inches(0, 8));
}

TEST(HoleOffTheFront, HasNoWoodBehindItAndDoesNotNarrowTheWindow) {
    Mounted mounted;
    mounted.front = FrontRect::atOrigin(Length::inches(5), Length::inches(6));
    const MountingHole hole = mounted.holeAt(wellInside); // 6 1/2 in on a front of 5 in
    EXPECT_EQ(hole.thickness, Length{});
    EXPECT_FALSE(hole.allowed);
    EXPECT_EQ(mounted.plan().greatestLength, Length::inches(1, 8));
}

TEST(ScrewLength, TakesAwayTipCoverOneForOne) {
    Mounted mounted;
    const auto coverWith = [&](Length length) {
        mounted.spec.length = length;
        return mounted.holeAt(wellInside).tipCover;
    };
    for (std::int64_t n = 32; n < 128; n += 5)
        EXPECT_EQ(coverWith(Length::fromSixtyFourths(n)) -
                      coverWith(Length::fromSixtyFourths(n + 3)),
                  Length::fromSixtyFourths(3));
}

TEST(Recess, CountsAsSoMuchLongerAScrew) {
    Mounted deeper, longer;
    for (std::int64_t n = 0; n < 24; ++n) {
        const Length d = Length::fromSixtyFourths(n);
        deeper.spec.length = Length::inches(0, 56);
        deeper.spec.recess = d;
        longer.spec.length = Length::inches(0, 56) + d;
        const MountingHole a = deeper.holeAt(wellInside), b = longer.holeAt(wellInside);
        EXPECT_EQ(a.penetration, b.penetration);
        EXPECT_EQ(a.tipCover, b.tipCover);
    }
}

TEST(PenetrationAndTipCover, MakeUpTheThickness) {
    Mounted mounted;
    mounted.profile = {ProfileFamily::Round, Length::inches(1, 32), Length::inches(0, 20), {}};
    mounted.spec.pattern = ScrewPattern::Six;
    for (std::int64_t n = 40; n < 100; n += 7) {
        mounted.spec.length = Length::fromSixtyFourths(n);
        for (const MountingHole& hole : mounted.plan().holes)
            EXPECT_EQ(hole.penetration + hole.tipCover, hole.thickness);
    }
}

TEST(ChosenScrew, IsTheLongestThatKeepsBothLimitsInEveryHole) {
    for (std::int64_t t = 36; t <= 72; ++t)
        for (std::int64_t r = 0; r <= 20; r += 5) {
            Mounted mounted;
            mounted.thickness = Length::fromSixtyFourths(t);
            mounted.spec.recess = Length::fromSixtyFourths(r);
            const MountingPlan plan = mounted.plan();
            std::optional<Length> expected;
            for (Length length : mounted.screw.lengths) {
                const Length p = length + mounted.spec.recess - mounted.wall.wallThickness;
                if (p >= mounted.limits.leastPenetration &&
                    mounted.thickness - p >= mounted.limits.leastTipCover)
                    expected = length;
            }
            EXPECT_EQ(plan.length, expected) << t << "/64 in, recess " << r << "/64 in";
        }
}

} // namespace
} // namespace frontwright
