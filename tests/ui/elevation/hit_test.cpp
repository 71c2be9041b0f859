// What a press would grab, by places in the case.

#include "ui/elevation/hit.h"

#include "tests/ui/elevation/open_window.h"

#include "ui/files/built_in_catalogue.h"

namespace frontwright::testing {
namespace {

class HitAt : public ::testing::Test {
protected:
    HitAt() : work(workOut(threeRows(), builtInCatalogue()).value()) {}
    std::shared_ptr<const Work> work;

    [[nodiscard]] const Plan& plan() const { return work->plan; }
    [[nodiscard]] const MemberPlan& rail() const {
        for (const MemberPlan& member : plan().members)
            if (member.kind == MemberKind::Rail)
                return member;
        std::abort();
    }
};

TEST_F(HitAt, MiddleOfARailIsTheRail) {
    EXPECT_EQ(hitAt(plan(), toMm(rail().rect.centre()), 3).member, rail().id);
}

TEST_F(HitAt, ReachWidensTheGrabZoneOverTheFront) {
    // 1 1/2 in rail, two overlays of 1/4 in: 1 in of it shows, half of it on each side.
    const PointMm middle = toMm(rail().rect.centre());
    EXPECT_EQ(hitAt(plan(), middle + PointMm(0, 12.5), 3).member, rail().id);
    EXPECT_EQ(hitAt(plan(), middle + PointMm(0, 14), 3).member, std::nullopt);
    EXPECT_EQ(hitAt(plan(), middle + PointMm(0, 14), 15).member, rail().id);
}

TEST_F(HitAt, MiddleOfAFrontIsItsOpening) {
    for (const FrontPlan& front : plan().fronts) {
        const PointMm beside = toMm(front.rect.centre()) + PointMm(60, 0);
        const Hit hit = hitAt(plan(), beside, 3);
        EXPECT_EQ(hit.opening, front.opening);
        EXPECT_EQ(hit.member, std::nullopt);
        EXPECT_EQ(hit.mountingHole, std::nullopt);
        EXPECT_EQ(hit.handleHole, std::nullopt);
    }
}

TEST_F(HitAt, EachMountingHoleIsItself) {
    for (const FrontPlan& front : plan().fronts) {
        ASSERT_FALSE(front.mounting.holes.empty());
        for (std::uint32_t i = 0; i < front.mounting.holes.size(); ++i) {
            const PointMm at = toMm(front.box.origin) + toMm(front.mounting.holes[i].at);
            EXPECT_EQ(hitAt(plan(), at, 2).mountingHole, i);
        }
    }
}

TEST_F(HitAt, HandleHoleIsFoundAtItsPlace) {
    const FrontPlan& front = plan().fronts[0];
    ASSERT_TRUE(front.hardware);
    const PointMm at = toMm(front.rect.lowerLeft()) + toMm(front.hardware->holes.at(0));
    EXPECT_EQ(hitAt(plan(), at, 2).handleHole, 0U);
    EXPECT_EQ(hitAt(plan(), at + PointMm(5, 0), 2).handleHole, std::nullopt);
}

TEST_F(HitAt, AHoleIsGrabbedWithinTheWholeReach) {
    const FrontPlan& front = plan().fronts[0];
    const PointMm hole = toMm(front.box.origin) + toMm(front.mounting.holes[0].at);
    const PlacedPart part{PlacedPart::Kind::MountingHole, front.opening, 0};
    for (const PointMm& by : {PointMm(5.9, 0), PointMm(0, -5.9), PointMm(-4, 4)})
        EXPECT_EQ(hitAt(plan(), hole + by, 6).part, part);
    EXPECT_EQ(hitAt(plan(), hole + PointMm(0, 30), 6).part, std::nullopt);
    EXPECT_EQ(hitAt(plan(), hole, 6, 0, Shown::No).part, std::nullopt);
}

TEST_F(HitAt, AHandleIsGrabbedByItsBaseAndRoundIt) {
    const FrontPlan& front = plan().fronts[0];
    ASSERT_TRUE(front.hardware);
    const BoxMm base = toMm(front.hardware->handles[0].footprint);
    const PointMm corner = toMm(front.rect.lowerLeft());
    const PlacedPart part{PlacedPart::Kind::Handle, front.opening, 0};
    EXPECT_EQ(hitAt(plan(), corner + base.center(), 6).part, part);
    EXPECT_EQ(hitAt(plan(), corner + PointMm(base.max().x() + 5.5, base.center().y()), 6).part,
              part);
    EXPECT_EQ(hitAt(plan(), corner + PointMm(base.max().x() + 6.5, base.center().y()), 6).part,
              std::nullopt);
}

TEST_F(HitAt, BesideTheCaseIsNothing) {
    EXPECT_EQ(hitAt(plan(), {-50, -50}, 3), Hit());
    EXPECT_EQ(hitAt(plan(), {10'000, 100}, 3), Hit());
}

TEST_F(HitAt, SkippingGoesRoundTheMembersUnderThePointer) {
    // Where the rail meets the left stile both can be grabbed with a long reach.
    PointMm at = toMm(rail().rect.centre());
    at.x() = toMm(rail().rect).min().x();
    const double reach = 60;
    const Hit first = hitAt(plan(), at, reach, 0, Shown::No);
    const Hit second = hitAt(plan(), at, reach, 1, Shown::No);
    ASSERT_TRUE(first.member && second.member);
    EXPECT_NE(first.member, second.member);
    EXPECT_EQ(first.member, rail().id) << "the nearer one first";
    EXPECT_EQ(second.member, leftStile);
}

} // namespace
} // namespace frontwright::testing
