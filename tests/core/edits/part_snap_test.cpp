#include "core/edits/part_snap.h"

#include "tests/core/drawings/drawn_case.h"
#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::in;

using testing::DrawnCase;
using Kind = PlacedPart::Kind;

constexpr Length sixteenth = Length::fromSixtyFourths(4);

/// One bank of three drawers with a hole by hand in each: 2 in from the left, 3 in up, and one
/// 3 1/4 in from the right in the first.
class SnappingAHole : public ::testing::Test {
protected:
    static Project placed() {
        Project project = testing::banks(2, 3);
        project.fronts.mounting.pattern = ScrewPattern::ByHand;
        project.fronts.mounting.placed = {{in(2), in(3)}};
        return testing::withChoices(project, 0, [&](FrontChoices& choices) {
            MountingSpec own = project.fronts.mounting;
            own.placed = {{in(5), in(2)}, {in(9), in(4)}};
            choices.mounting = own;
        });
    }
    [[nodiscard]] const FrontPlan& front(std::size_t i) const { return drawn.plan.fronts.at(i); }
    [[nodiscard]] CasePoint inCase(const FrontPlan& front, WallPoint at) const {
        return {front.box.origin.x + at.x, front.box.origin.y + at.y};
    }
    /// The first front's first hole, held at that place of the wall.
    [[nodiscard]] SnappedPart snapped(WallPoint wanted, Length reach = in(0, 6),
                                      Together together = Together::Alone) const {
        return snapPart(drawn.plan, part, inCase(front(0), wanted), {reach, reach}, sixteenth,
                        together);
    }
    [[nodiscard]] Length wallX(Length x) const { return front(0).box.origin.x + x; }
    [[nodiscard]] Length wallY(Length y) const { return front(0).box.origin.y + y; }

    DrawnCase drawn{placed()};
    PlacedPart part{Kind::MountingHole, drawn.plan.fronts[0].opening, 0};
};

TEST_F(SnappingAHole, ElsePutsItOnTheGridOfTheWallsCorner) {
    const SnappedPart got = snapped({in(3, 21), in(1, 19)}, in(0, 1));
    EXPECT_EQ(got.x, (PartSnap{wallX(in(3, 20)), PartSnapTo::Grid, {}}));
    EXPECT_EQ(got.y, (PartSnap{wallY(in(1, 20)), PartSnapTo::Grid, {}}));
}

TEST_F(SnappingAHole, FindsTheCentreLinesOfFrontAndWall) {
    const Length middle = front(0).box.width.half();
    const SnappedPart got = snapped({middle + in(0, 3), front(0).box.height.half() + in(0, 1)});
    EXPECT_EQ(got.x.at, front(0).rect.across().middle());
    EXPECT_EQ(got.x.to, PartSnapTo::FrontCentre);
    EXPECT_EQ(got.y.at, wallY(front(0).box.height.half()));
    EXPECT_EQ(got.y.to, PartSnapTo::WallCentre);
}

TEST_F(SnappingAHole, FindsTheEdgesOfTheAllowedRegion) {
    const WallRect& allowed = front(0).mounting.allowed.outer;
    const SnappedPart got = snapped({allowed.left - in(0, 2), allowed.top + in(0, 2)});
    EXPECT_EQ(got.x, (PartSnap{wallX(allowed.left), PartSnapTo::AllowedEdge, {}}));
    EXPECT_EQ(got.y, (PartSnap{wallY(allowed.top), PartSnapTo::AllowedEdge, {}}));
}

TEST_F(SnappingAHole, FindsTheSameHeightDownTheBank) {
    const SnappedPart got = snapped({in(7), in(3, 2)});
    EXPECT_EQ(got.y.at, wallY(in(3)));
    EXPECT_EQ(got.y.to, PartSnapTo::SameHeight);
    ASSERT_TRUE(got.y.like);
    EXPECT_EQ(drawn.plan.frontOf(got.y.like->opening)->bank, front(0).bank);
    EXPECT_NE(got.y.like->opening, part.opening);
}

TEST_F(SnappingAHole, FindsTheUprightOfTheHolesDownTheBank) {
    const SnappedPart got = snapped({in(2, 3), in(1, 20)});
    EXPECT_EQ(got.x.at, wallX(in(2)));
    EXPECT_EQ(got.x.to, PartSnapTo::SameLine);
}

TEST_F(SnappingAHole, FindsItsNeighbourOnTheSameFrontAndItsMirrorImage) {
    const SnappedPart level = snapped({in(6), in(4, 3)});
    EXPECT_EQ(level.y, (PartSnap{wallY(in(4)), PartSnapTo::SameLine,
                                 PlacedPart{Kind::MountingHole, part.opening, 1}}));
    const Length mirror = front(0).box.width - in(9);
    const SnappedPart mirrored = snapped({mirror + in(0, 1), in(1, 20)}, in(0, 2));
    EXPECT_EQ(mirrored.x.at, wallX(mirror));
    EXPECT_EQ(mirrored.x.to, PartSnapTo::Mirrored);
}

TEST_F(SnappingAHole, FindsTheLevelOfTheNeighbourFrontsHole) {
    // Only the front beside: the bank's own are moved along.
    const SnappedPart got = snapped({in(7), in(3, 2)}, in(0, 6), Together::DownTheBank);
    EXPECT_EQ(got.y.to, PartSnapTo::SameLine);
    ASSERT_TRUE(got.y.like);
    EXPECT_NE(drawn.plan.frontOf(got.y.like->opening)->bank, front(0).bank);
}

TEST_F(SnappingAHole, HoldsOnlyToTheGridWithoutReach) {
    const WallRect& allowed = front(0).mounting.allowed.outer;
    const SnappedPart got = snapped({allowed.left, in(2)}, {});
    EXPECT_EQ(got.x.to, PartSnapTo::Grid);
    EXPECT_EQ(got.y.to, PartSnapTo::Grid);
}

TEST_F(SnappingAHole, NeverGoesFurtherThanItsReachOrHalfTheGrid) {
    testing::Dice dice(11);
    for (int round = 0; round < 400; ++round) {
        const WallPoint wanted{dice.sixtyFourths(0, 800), dice.sixtyFourths(0, 400)};
        const Length reach = dice.sixtyFourths(0, 20);
        const SnappedPart got = snapped(wanted, reach);
        const CasePoint from = inCase(front(0), wanted);
        EXPECT_LE((got.x.at - from.x).magnitude(), greatest(reach, in(0, 2)));
        EXPECT_LE((got.y.at - from.y).magnitude(), greatest(reach, in(0, 2)));
    }
}

TEST_F(SnappingAHole, IsExactToTheNanometreOnTheDocumentsGrid) {
    testing::Dice dice(12);
    for (int round = 0; round < 200; ++round) {
        const SnappedPart got =
            snapped({dice.sixtyFourths(0, 800), dice.sixtyFourths(0, 400)}, in(0, 4));
        if (got.x.to == PartSnapTo::Grid)
            EXPECT_EQ((got.x.at - front(0).box.origin.x).nanometres() % sixteenth.nanometres(), 0);
    }
}

TEST(SnappingAHandle, FindsTheFieldsEdgeForItsBase) {
    Project project = testing::bank(1);
    project.fronts.profile.family = ProfileFamily::Chamfer;
    project.fronts.profile.width = in(0, 32);
    project.fronts.profile.depth = in(0, 16);
    const DrawnCase drawn(project);
    const FrontPlan& front = drawn.plan.fronts[0];
    ASSERT_FALSE(front.field.isEmpty());
    const PlacedPart part{Kind::Handle, front.opening, 0};
    const Length half = Length::millimetres(10); // knob of 20 mm
    const CasePoint wanted{front.rect.left + front.field.left + half + in(0, 2),
                           front.rect.bottom + in(2, 3)};
    const SnappedPart got = snapPart(drawn.plan, part, wanted, {in(0, 6), in(0, 1)}, sixteenth);
    EXPECT_EQ(got.x.to, PartSnapTo::FieldEdge);
    EXPECT_EQ(got.x.at, front.rect.left + front.field.left + half);
}

TEST(SnappingAHandle, FindsTheHeightFromTheTopDownTheBank) {
    Project project =
        testing::projectWith(testing::rows({testing::fixed(in(5), testing::opening()),
                                            testing::fixed(in(8), testing::opening())},
                                           in(1, 16)),
                             in(16), in(3) + in(14, 16));
    project = testing::withChoices(project, 1, [&](FrontChoices& choices) {
        HardwareSpec own = project.fronts.hardware;
        own.placing = Placing::FromTop;
        own.distance = in(2);
        choices.hardware = own;
    });
    const DrawnCase drawn(project);
    const FrontPlan& upper = drawn.plan.fronts[0];
    const SnappedPart got = snapPart(drawn.plan, {Kind::Handle, upper.opening, 0},
                                     {upper.rect.across().middle(), upper.rect.top - in(2, 3)},
                                     {in(0, 6), in(0, 6)}, sixteenth);
    EXPECT_EQ(got.y.to, PartSnapTo::SameHeight);
    EXPECT_EQ(got.y.at, upper.rect.top - in(2));
}

} // namespace
} // namespace frontwright
