#include "core/plan/quantity.h"
#include "tests/core/plan/planned.h"
#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::in;

using namespace frontwright::testing;

/// Three openings, each 13 × 6 at 7 1/4 from the next, the middle one for something else.
Project withMiddle(OpeningUse use) {
    return withOpenings(bank(3), [use](Opening& opening, std::size_t index) {
        if (index == 1)
            opening.use = use;
    });
}

TEST(AnOpenSpace, HasNoFrontAndKeepsItsPlaceInTheBank) {
    const Planned chest(withMiddle(OpeningUse::OpenSpace));
    ASSERT_EQ(chest.plan.fronts.size(), 2U);
    ASSERT_EQ(chest.plan.spaces.size(), 1U);
    EXPECT_EQ(chest.labelOf(0), "A1");
    EXPECT_EQ(label(chest.plan.spaces[0]), "A2");
    EXPECT_EQ(chest.labelOf(1), "A3");
    const SpacePlan& space = chest.plan.spaces[0];
    EXPECT_EQ(chest.plan.spaceOf(space.opening), &space);
    EXPECT_EQ(chest.plan.frontOf(space.opening), nullptr);
    EXPECT_EQ(chest.plan.spaceOf(chest.front(0).opening), nullptr);
    EXPECT_EQ(brokenInvariant(chest.plan), "");
}

TEST(AnOpenSpace, TellsItsOwnSizes) {
    // Inside the frame the bank is 13 wide; each opening is 6 high.
    const Planned chest(withMiddle(OpeningUse::OpenSpace));
    EXPECT_EQ(valueOf(chest.plan, {QuantityKind::SpaceWidth, 0}), in(13));
    EXPECT_EQ(valueOf(chest.plan, {QuantityKind::SpaceHeight, 0}), in(6));
    const auto height =
        derive(chest.project, chest.plan, {QuantityKind::SpaceHeight, 0}, {Unit::Inch, 16});
    ASSERT_TRUE(height);
    // Above the bottom rail of 1 1/2, an opening of 6 and a rail of 1 1/4
    EXPECT_EQ(height->figures, "14 3/4 in − 8 3/4 in = 6 in");
    EXPECT_FALSE(valueOf(chest.plan, {QuantityKind::SpaceHeight, 1}));
}

TEST(AnOpenSpace, LeavesTheMemberBesideItToBeSeen) {
    // Rail 1 1/4, one overlay of 1/4: 1 in shows, and nothing needs a spacer
    const Planned chest(withMiddle(OpeningUse::OpenSpace));
    const MemberPlan& rail = chest.beside(0, Side::Bottom);
    EXPECT_EQ(rail.reveal, (Reveal{in(1), in(1)}));
    EXPECT_FALSE(chest.front(0).neighbours.bottom.front);
    EXPECT_TRUE(chest.plan.spacers.empty());
}

TEST(AnOpenSpace, LetsAFrontThatAsksForAGapCoverAllButThat) {
    // To the rail's far edge: 1 1/4 − 1/8 = 1 1/8
    Project project = withMiddle(OpeningUse::OpenSpace);
    project.fronts.fit = FrontFit::all({Fit::Gap, in(0, 8)});
    const Planned chest(std::move(project));
    EXPECT_EQ(chest.front(0).overlay.bottom, in(1, 8));
    EXPECT_EQ(chest.front(1).overlay.top, in(1, 8));
}

TEST(ADoor, IsSizedAndSpacedLikeTheFrontsBesideIt) {
    const Planned drawers(bank(3));
    const Planned chest(withMiddle(OpeningUse::Door));
    ASSERT_EQ(chest.plan.fronts.size(), 3U);
    EXPECT_EQ(chest.front(1).rect, drawers.front(1).rect);
    EXPECT_EQ(chest.front(1).thickness, drawers.front(1).thickness);
    EXPECT_EQ(chest.plan.spacers.size(), 2U);
    EXPECT_EQ(brokenInvariant(chest.plan), "");
}

TEST(ADoor, HasNoBoxNoScrewsAndNoHandle) {
    const Planned chest(withMiddle(OpeningUse::Door));
    EXPECT_FALSE(chest.front(1).hasBox());
    EXPECT_EQ(chest.front(1).box, BoxPlan{});
    EXPECT_TRUE(chest.front(1).mounting.holes.empty());
    EXPECT_TRUE(chest.front(1).holding);
    EXPECT_FALSE(chest.front(1).hardware);
    EXPECT_EQ(chest.front(1).load.front, chest.front(0).load.front);
    EXPECT_FALSE(chest.front(1).load.box);
    EXPECT_TRUE(chest.front(0).hasBox());
}

TEST(ADoor, MovesAwayFromItsHinges) {
    // Grain upright: all of its movement comes at the side that opens
    for (const HingeSide hinge : {HingeSide::Left, HingeSide::Right}) {
        Project project = withOpenings(oneOpening(in(12), in(20)), [&](Opening& door, std::size_t) {
            door.use = OpeningUse::Door;
            door.hinge = hinge;
        });
        project.fronts.stock.grain = Grain::AlongHeight;
        project.air = Air{};
        const Planned chest(std::move(project));
        EXPECT_EQ(chest.front(0).season->held,
                  hinge == HingeSide::Left ? Length{} : chest.front(0).rect.width());
    }
}

TEST(FrontsOnOneBox, AreSizedAsIfEachHadAnOpening) {
    const Planned alone(bank(2));
    Project project = bank(2);
    Region region = *project.casework.divisions;
    std::get<Split>(region.content).divides = Divides::Face;
    project.casework.divisions = std::make_shared<const Region>(std::move(region));
    const Planned joined(std::move(project));
    ASSERT_EQ(joined.plan.faces.size(), 1U);
    for (std::size_t i = 0; i < 2; ++i) {
        EXPECT_EQ(joined.front(i).rect, alone.front(i).rect);
        EXPECT_EQ(joined.front(i).face, 0U);
    }
    EXPECT_EQ(joined.plan.spacers.front().width, alone.plan.spacers.front().width);
    EXPECT_EQ(brokenInvariant(joined.plan), "");
}

TEST(FrontsOnOneBox, HaveTheBoxOfTheWholeOpening) {
    // Two openings of 6 with a rail of 1 1/4 that is not built: 13 1/4 high behind
    Project project = bank(2);
    Region region = *project.casework.divisions;
    std::get<Split>(region.content).divides = Divides::Face;
    project.casework.divisions = std::make_shared<const Region>(std::move(region));
    const Planned chest(std::move(project));
    EXPECT_EQ(chest.plan.faces[0].rect.height(), in(13, 16));
    const BoxPlan& upper = chest.front(0).box;
    const BoxPlan& lower = chest.front(1).box;
    EXPECT_EQ(upper.height + upper.clearanceBelow + upper.clearanceAbove, in(13, 16));
    EXPECT_EQ(upper.origin, lower.origin);
    EXPECT_EQ(upper.wall, lower.wall);
    // The wall begins far below the upper front: 7 1/4 (opening and rail) − the lower front's
    EXPECT_EQ(lower.wallOnFront.y - upper.wallOnFront.y, in(7, 16));
}

TEST(FrontsOnOneBox, HaveTheirScrewsWhereWallAndFrontMeet) {
    Project project = bank(2);
    Region region = *project.casework.divisions;
    std::get<Split>(region.content).divides = Divides::Face;
    project.casework.divisions = std::make_shared<const Region>(std::move(region));
    const Planned chest(std::move(project));
    for (std::size_t i = 0; i < 2; ++i) {
        const FrontPlan& front = chest.front(i);
        ASSERT_EQ(front.mounting.holes.size(), 4U);
        for (const MountingHole& hole : front.mounting.holes) {
            EXPECT_TRUE(hole.allowed);
            const FrontPoint at = toFront(front.box, hole.at);
            EXPECT_GE(at.y, Length{});
            EXPECT_LE(at.y, front.rect.height());
        }
    }
}

} // namespace
} // namespace frontwright
