// Fittings that wood screws hold: where they lie, how deep their screws go, what is left of the
// front. All by hand, in 64ths of an inch, on fronts 20 in × 6 in × 3/4 in.
#include "core/hardware/fittings.h"

#include "tests/core/hardware/handles.h"
#include "tests/core/plan/small_catalogue.h"
#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

#include <random>

namespace frontwright {
namespace {

using testing::n64;

using testing::profiledFront;
using testing::smallCatalogue;
using testing::squareFront;

const FrontStock& stock() {
    static const FrontStock front = squareFront(Length::inches(20), Length::inches(6));
    return front;
}

std::vector<FittingPlan> planned(const FittingSpec& spec, const FrontStock& front = stock()) {
    static const Catalogue catalogue = smallCatalogue();
    HardwareSpec hardware;
    hardware.fittings = {spec};
    return planFittings(hardware, catalogue, Limits{}, front).value();
}

FittingSpec named(const char* form) {
    FittingSpec spec;
    spec.form = form;
    return spec;
}
FittingSpec label() {
    return named("label-holder");
}

TEST(FittingPlaces, LieInTheMiddleWhereNothingIsSaid) {
    EXPECT_EQ(planned(label()).front().centre, (FrontPoint{Length::inches(10), Length::inches(3)}));
}

TEST(FittingPlaces, AreTakenFromTheEdgesThatTheyAreGivenFrom) {
    FittingSpec spec = label();
    spec.across = FittingAcross::FromRight;
    spec.fromSide = Length::inches(4);
    spec.upright = FittingUpright::FromTop;
    spec.fromEdge = Length::inches(2);
    EXPECT_EQ(planned(spec).front().centre, (FrontPoint{Length::inches(16), Length::inches(4)}));
    spec.across = FittingAcross::FromLeft;
    spec.upright = FittingUpright::FromBottom;
    EXPECT_EQ(planned(spec).front().centre, (FrontPoint{Length::inches(4), Length::inches(2)}));
}

TEST(FittingPlaces, AtBothSidesAreTwoAlike) {
    FittingSpec spec = label();
    spec.across = FittingAcross::BothSides;
    spec.fromSide = Length::inches(5);
    const auto two = planned(spec);
    ASSERT_EQ(two.size(), 2U);
    EXPECT_EQ(two[0].centre.x, Length::inches(5));
    EXPECT_EQ(two[1].centre.x, Length::inches(15));
    EXPECT_EQ(two[0].spec, two[1].spec);
}

TEST(FittingPlaces, OfALockAreItsOwnBelowTheTop) {
    FittingSpec lock = named("lock");
    lock.upright = FittingUpright::FromBottom;
    lock.fromEdge = Length::inches(1);
    // 6 in − 3/4 in
    EXPECT_EQ(planned(lock).front().centre.y, Length::inches(5, 16));
}

TEST(FittingScrews, AreTheLongestThatLeaveWoodBeforeTheirTip) {
    const FittingPlan plan = planned(label()).front();
    // plate 1/16 + least penetration 3/8 in; plate 1/16 + front 3/4 − least tip cover 1/8 in
    EXPECT_EQ(plan.leastLength, n64(28));
    EXPECT_EQ(plan.greatestLength, n64(44));
    EXPECT_EQ(plan.screwLength, n64(40)); // 5/8 in; 3/4 in is stocked next
    EXPECT_EQ(plan.worstScrew()->penetration, n64(36));
    EXPECT_EQ(plan.worstScrew()->tipCover, n64(12));
}

TEST(FittingScrews, AsGivenAreKeptAndJudged) {
    FittingSpec spec = label();
    spec.screwLength = n64(64);
    const FittingPlan plan = planned(spec).front();
    EXPECT_EQ(plan.screwLength, n64(64));
    EXPECT_EQ(plan.worstScrew()->tipCover, n64(-12)); // 48 − (64 − 4)
}

TEST(FittingScrews, OnAThinRimHaveTheWoodOfTheRim) {
    // A chamfer 2 in wide and 1/4 in deep: 1 in from the edge it takes 1/8 in; the shank of 5/32 in
    // reaches 5/64 in further out, there 8/64 + 5/64 · 16/128 = 8.6/64.
    const Profile bevel{ProfileFamily::Chamfer, n64(128), n64(16), {}, PerSide<bool>::all(true)};
    FittingSpec spec = label();
    spec.upright = FittingUpright::FromTop;
    spec.fromEdge = n64(64);
    const FrontStock front = profiledFront(Length::inches(20), Length::inches(6), bevel);
    const Length wood = planned(spec, front).front().worstScrew()->wood;
    EXPECT_LT((wood - (n64(48) - n64(8) - Length::fromNanometres(248'047))).magnitude(),
              Length::fromNanometres(10));
}

TEST(FittingScrews, OfALockStandInItsPlatesRecess) {
    const FittingPlan lock = planned(named("lock")).front();
    // front 3/4 in − recess 1/16 in; beside the deeper body
    EXPECT_EQ(lock.worstScrew()->wood, n64(44));
    EXPECT_EQ(lock.greatestLength, n64(40));
    EXPECT_EQ(lock.screwLength, n64(40));
}

TEST(Mortises, LeaveWhatIsBeforeTheShowFace) {
    const FittingPlan lock = planned(named("lock")).front();
    ASSERT_EQ(lock.mortises.size(), 3U);
    EXPECT_EQ(lock.mortises[0].woodLeft, n64(44)); // 3/4 − 1/16 in
    EXPECT_EQ(lock.mortises[1].woodLeft, n64(20)); // 3/4 − 7/16 in
    // The selvedge lies 5/16 in deep from the back: 48 − 20 are left before it.
    EXPECT_EQ(lock.mortises[2].woodLeft, n64(28));
    EXPECT_EQ(lock.mortises[2].cut.place.bottom, n64(28));
    EXPECT_EQ(lock.mortises[2].cut.place.top, n64(48));
    EXPECT_EQ(lock.leastWoodLeft(), n64(20));
}

TEST(Mortises, InATopEdgeWithABevelHaveLessBeforeThem) {
    const Profile bevel{ProfileFamily::Chamfer, n64(32), n64(16), {}, PerSide<bool>::all(true)};
    const auto lock =
        planned(named("lock"), profiledFront(Length::inches(20), Length::inches(6), bevel)).front();
    EXPECT_EQ(lock.mortises[2].woodLeft, n64(12)); // 28 − 16 that the bevel takes at the edge
}

TEST(Cuts, AreScrewsBoresAndMortisesOfBothFaces) {
    EXPECT_EQ(cutsOf(planned(label())).size(), 2U);
    // two screws, the key-hole, two mortises in the back; the selvedge is no screw's matter
    EXPECT_EQ(cutsOf(planned(named("lock"))).size(), 5U);
}

TEST(Fittings, ThatAreNotThereAreNamed) {
    HardwareSpec hardware;
    hardware.fittings = {named("hasp")};
    const auto result = planFittings(hardware, smallCatalogue(), Limits{}, stock());
    ASSERT_FALSE(result.ok());
    EXPECT_EQ(result.error().what.english(), "there is no fitting \"hasp\" in the catalogue");
}

TEST(Fittings, KeepToTheirSumsWhereverTheyLie) {
    // Penetration and what is left before the tip are the wood; both sides mirror each other.
    std::mt19937 random(20'260);
    std::uniform_int_distribution<std::int64_t> places(0, 640);
    for (int i = 0; i < 200; ++i) {
        FittingSpec spec = label();
        spec.across = FittingAcross::BothSides;
        spec.fromSide = n64(places(random));
        spec.upright = FittingUpright::FromTop;
        spec.fromEdge = n64(places(random) / 2);
        const auto two = planned(spec);
        ASSERT_EQ(two.size(), 2U);
        EXPECT_EQ(two[0].centre.x + two[1].centre.x, Length::inches(20));
        for (const FittingPlan& fitting : two)
            for (const FittingScrew& screw : fitting.screws)
                EXPECT_EQ(screw.penetration + screw.tipCover, screw.wood);
    }
}

HardwareForm boredAt(Length spacing) {
    HardwareForm form;
    form.holes = {{{}, {}}, {spacing, {}}};
    return form;
}

TEST(UsualPlaces, OfFittingsAreWellInsideTheFrontInItsOwnUnit) {
    EXPECT_EQ(usualFromSide(Length::inches(12), Unit::Inch), Length::inches(2));
    EXPECT_EQ(usualFromSide(Length::inches(24), Unit::Inch), Length::inches(4));
    EXPECT_EQ(usualFromSide(Length::millimetres(399), Unit::Millimetre), Length::millimetres(50));
    EXPECT_EQ(usualFromSide(Length::millimetres(400), Unit::Millimetre), Length::millimetres(100));
    EXPECT_EQ(usualFromEdge(Unit::Inch), Length::inches(1, 32));
    EXPECT_EQ(usualFromEdge(Unit::Millimetre), Length::millimetres(40));
}

TEST(HoleSpacing, TellsInchFromMetric) {
    EXPECT_EQ(holeSpacing(boredAt(Length::millimetres(96)))->unit, Unit::Millimetre);
    EXPECT_EQ(holeSpacing(boredAt(Length::inches(3, 48)))->unit, Unit::Inch);
    EXPECT_TRUE(holeSpacing(boredAt(Length::millimetres(128)))->isPattern);
    EXPECT_FALSE(holeSpacing(boredAt(Length::fromMicrometres(96'250)))->isPattern);
    EXPECT_FALSE(holeSpacing(testing::knob()).has_value());
}

TEST(HoleSpacing, OfBothPatternsThatLookAlikeAreTold) {
    const auto mistakable = [](std::int64_t mm, Length inch) {
        return isMistakable(Length::millimetres(mm), inch);
    };
    EXPECT_TRUE(mistakable(96, Length::inches(3, 48)));  // 95.25 mm
    EXPECT_TRUE(mistakable(76, Length::inches(3)));      // 76.2 mm
    EXPECT_TRUE(mistakable(128, Length::inches(5)));     // 127 mm
    EXPECT_TRUE(mistakable(64, Length::inches(2, 32)));  // 63.5 mm
    EXPECT_TRUE(mistakable(160, Length::inches(6, 16))); // 158.75 mm
    EXPECT_FALSE(mistakable(96, Length::inches(4)));     // 101.6 mm
    EXPECT_FALSE(mistakable(254, Length::inches(10)));   // the same
}

} // namespace
} // namespace frontwright
