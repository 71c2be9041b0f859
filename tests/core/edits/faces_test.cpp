#include "core/edits/faces.h"

#include "core/edits/choices.h"
#include "core/edits/presets.h"
#include "tests/core/edits/edited.h"
#include "tests/core/plan/planned.h"
#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::across;
using testing::upright;

using namespace frontwright::testing;

TEST(DividingAFace, GivesFrontsOverOneOpening) {
    const Project project = oneOpening(in(20), in(31));
    const OpeningId id = openingAt(project, 0);
    const Project after = edited(divideFace(project, id, upright, 2, WrittenLength(in(1))));
    EXPECT_EQ(heights(after), Sizes(2, in(15))); // (31 − 1) / 2
    const Layout layout = layoutOf(after);
    ASSERT_EQ(layout.faces.size(), 1U);
    EXPECT_EQ(layout.faces[0].rect.height(), in(31));
    EXPECT_EQ(openingAt(after, 0), id);
    EXPECT_TRUE(isInFace(after, id));
    EXPECT_FALSE(isInFace(project, id));
}

TEST(DividingAFace, LeavesTheBankRoundItAlone) {
    // 30 = 14 + 1 + 15: the lower opening is divided within its own place, not by its siblings
    const Project bank = bankOf({fixed(in(14), opening()), share(opening())}, in(30));
    const Project after =
        edited(divideFace(bank, openingAt(bank, 1), upright, 2, WrittenLength(in(1))));
    EXPECT_EQ(heights(after), (Sizes{in(14), in(7), in(7)}));
    EXPECT_EQ(layoutOf(after).faces[0].rect.height(), in(15));
}

TEST(DividingAFace, DividesAFrontOfItFurther) {
    const Project once =
        edited(divideFace(oneOpening(in(41), in(31)), OpeningId{firstFreeId}, upright, 2, in(1)));
    const Project twice = edited(divideFace(once, openingAt(once, 1), across, 2, in(1)));
    const Layout layout = layoutOf(twice);
    ASSERT_EQ(layout.faces.size(), 1U);
    EXPECT_EQ(layout.faces[0].count, 3U);
    EXPECT_EQ(layout.openings[1].rect.width(), in(20));
}

TEST(DividingAFace, HangsAPairOfDoorsAtItsOuterSides) {
    const Project door = withOpenings(oneOpening(in(31), in(20)), [](Opening& leaf, std::size_t) {
        leaf.use = OpeningUse::Door;
        leaf.hinge = HingeSide::Right;
    });
    const Project pair = edited(divideFace(door, openingAt(door, 0), across, 2, in(1)));
    EXPECT_EQ(findOpening(pair, openingAt(pair, 0))->hinge, HingeSide::Left);
    EXPECT_EQ(findOpening(pair, openingAt(pair, 1))->hinge, HingeSide::Right);
    const Project stacked = edited(divideFace(door, openingAt(door, 0), upright, 2, in(1)));
    EXPECT_EQ(findOpening(stacked, openingAt(stacked, 1))->hinge, HingeSide::Right);
}

TEST(DividingAFace, LetsAPairOfDoorsMeetWithASmallGap) {
    Project door = withOpenings(oneOpening(in(31), in(20)),
                                [](Opening& leaf, std::size_t) { leaf.use = OpeningUse::Door; });
    const auto gapWith = [&](SideFit fit) {
        door.fronts.fit = FrontFit::all(fit);
        const auto between = betweenLeaves(door, openingAt(door, 0));
        const Planned pair(
            edited(divideFace(door, openingAt(door, 0), across, 2, between.value())));
        return pair.front(1).rect.left - pair.front(0).rect.right;
    };
    EXPECT_EQ(gapWith({Fit::Overlay, in(0, 24)}), in(0, 8));
    EXPECT_EQ(gapWith({Fit::Inset, in(0, 2)}), in(0, 8)); // 1/16 between and 1/32 at each side
    door.fronts.fit = FrontFit::all({Fit::Gap, in(0, 8)});
    EXPECT_EQ(betweenLeaves(door, openingAt(door, 0)), std::nullopt);
}

TEST(APairOfDoors, IsMadeOfADrawersOpeningInOneStep) {
    const Project drawer = oneOpening(in(31), in(20));
    const std::array opening{openingAt(drawer, 0)};
    const Planned pair(edited(makePairOfDoors(drawer, opening)));
    ASSERT_EQ(pair.plan.fronts.size(), 2U);
    for (const FrontPlan& leaf : pair.plan.fronts)
        EXPECT_EQ(leaf.use, OpeningUse::Door);
    EXPECT_EQ(pair.front(0).hinge, HingeSide::Left);
    EXPECT_EQ(pair.front(1).hinge, HingeSide::Right);
    EXPECT_EQ(pair.front(1).rect.left - pair.front(0).rect.right, in(0, 8));
    EXPECT_FALSE(makePairOfDoors(pair.project, opening).ok()) << "it is one already";
    EXPECT_FALSE(makePairOfDoors(drawer, std::array{OpeningId{999}}).ok());
}

TEST(APairOfDoors, KeepsItsOwnGapWhereTheFrontsHaveOne) {
    Project drawer = oneOpening(in(31), in(20));
    drawer.fronts.fit = FrontFit::all({Fit::Gap, in(0, 8)});
    const Planned pair(edited(makePairOfDoors(drawer, std::array{openingAt(drawer, 0)})));
    EXPECT_EQ(pair.front(1).rect.left - pair.front(0).rect.right, in(0, 8));
}

TEST(DividingAFace, IsRefusedWhereNoFrontLies) {
    const Project space = withOpenings(oneOpening(in(20), in(30)), [](Opening& leaf, std::size_t) {
        leaf.use = OpeningUse::OpenSpace;
    });
    EXPECT_EQ(refusal(divideFace(space, openingAt(space, 0), upright, 2, in(1))),
              "no front lies over the opening; make it a drawer, a door or a fixed front first");
}

/// Left a bank of 4, 12 and 12 with rails of 1; right 4 and one opening of 25.
Project deskWithADeepDrawer(Length upperRight = in(4)) {
    return projectWith(
        columns({share(rows({fixed(in(4), opening()), share(opening()), share(opening())}, in(1))),
                 share(rows({fixed(upperRight, opening()), share(opening())}, in(1)))},
                in(1)),
        in(36), in(33));
}

TEST(AFaceLikeTheBankBesideIt, LinesUpWithItsOpenings) {
    const Project desk = deskWithADeepDrawer();
    const Project after = edited(divideFaceLike(desk, openingAt(desk, 4), openingAt(desk, 1)));
    const Layout layout = layoutOf(after);
    ASSERT_EQ(layout.openings.size(), 6U);
    ASSERT_EQ(layout.faces.size(), 1U);
    for (const std::size_t row : {1U, 2U}) {
        EXPECT_EQ(layout.openings[row + 3].rect.bottom, layout.openings[row].rect.bottom);
        EXPECT_EQ(layout.openings[row + 3].rect.top, layout.openings[row].rect.top);
    }
    EXPECT_EQ(layout.openings[4].id, openingAt(desk, 4));
}

TEST(AFaceLikeTheBankBesideIt, IsFoundByOneClick) {
    const Project desk = deskWithADeepDrawer();
    const OpeningId deep = openingAt(desk, 4);
    EXPECT_TRUE(sameLayout(edited(divideFaceLikeNeighbour(desk, deep)),
                           edited(divideFaceLike(desk, deep, openingAt(desk, 1)))));
}

TEST(AFaceLikeTheBankBesideIt, FollowsTheRulesOfABankOverTheSameStretch) {
    // Made 6 in higher, both banks grow alike: (28 + 6 − 2) / 2 … 11 fixed rails aside
    const Project desk = projectWith(
        columns({share(rows({share(opening(), 1), share(opening(), 2)}, in(1))), share(opening())},
                in(1)),
        in(36), in(34));
    const Project like = edited(divideFaceLikeNeighbour(desk, openingAt(desk, 2)));
    EXPECT_EQ(heights(like), (Sizes{in(10), in(20), in(10), in(20)}));
    const Project higher = edited(setCaseSize(like, in(36), in(40)));
    EXPECT_EQ(heights(higher), (Sizes{in(12), in(24), in(12), in(24)}));
}

TEST(AFaceLikeTheBankBesideIt, TakesTheColumnsAboveIt) {
    const Project sideboard = bankOf(
        {share(columns({fixed(in(12), opening()), share(opening())}, in(1))), share(opening())},
        in(21));
    const Project after = edited(divideFaceLikeNeighbour(sideboard, openingAt(sideboard, 2)));
    EXPECT_EQ(widths(after), (Sizes{in(12), in(14), in(12), in(14)})); // 27 inside
}

TEST(AFaceLikeTheBankBesideIt, IsRefusedWithHowFarOffTheBankIs) {
    const Project desk = deskWithADeepDrawer(in(5));
    const std::string why = refusal(divideFaceLike(desk, openingAt(desk, 4), openingAt(desk, 1)));
    EXPECT_NE(why.find("its nearest openings are 1 in off"), std::string::npos) << why;
}

TEST(AFaceLikeTheBankBesideIt, IsRefusedWhereThereIsNone) {
    const Project one = oneOpening(in(20), in(30));
    EXPECT_EQ(refusal(divideFaceLikeNeighbour(one, openingAt(one, 0))),
              "there is no bank beside the opening; divide the face by hand");
}

TEST(AFaceLikeTheBankBesideIt, MayBeTakenAgainAfterTheBankHasChanged) {
    const Project desk = deskWithADeepDrawer();
    const Project once = edited(divideFaceLikeNeighbour(desk, openingAt(desk, 4)));
    const Project other = edited(setOpeningSize(once, openingAt(once, 1), upright, in(10)));
    const Project again = edited(divideFaceLikeNeighbour(other, openingAt(other, 5)));
    EXPECT_EQ(heights(again), (Sizes{in(4), in(10), in(14), in(4), in(10), in(14)}));
}

TEST(JoiningAFace, GivesTheOneFrontBack) {
    const Project desk = deskWithADeepDrawer();
    const Project divided = edited(divideFaceLikeNeighbour(desk, openingAt(desk, 4)));
    const Project joined = edited(joinFace(divided, openingAt(divided, 5)));
    EXPECT_TRUE(sameLayout(joined, desk));
    EXPECT_EQ(refusal(joinFace(desk, openingAt(desk, 4))),
              "the face of the opening is not divided");
}

TEST(TheBoxOfAFace, IsChangedByAnyOfItsFronts) {
    const Project divided =
        edited(divideFace(oneOpening(in(20), in(31)), OpeningId{firstFreeId}, upright, 2, in(1)));
    const OpeningId first = openingAt(divided, 0), second = openingAt(divided, 1);
    EXPECT_EQ(decidesBox(divided, second), first);
    BoxSpec deep = divided.fronts.box;
    deep.depth = in(18);
    const Project own = edited(setBox(divided, {second}, deep));
    EXPECT_EQ(findOpening(own, first)->choices.box->depth, WrittenLength(in(18)));
    EXPECT_FALSE(findOpening(own, second)->choices.box);
    const Project kept = edited(keepAsPreset(own, {second}, PresetKind::Box, "Deep"));
    EXPECT_EQ(originOf(kept, {second}, PresetKind::Box).preset, "Deep");
    EXPECT_EQ(originOf(kept, {first}, PresetKind::Box).preset, "Deep");
    const Project cleared = edited(clearChoice(kept, second, Choice::Box));
    EXPECT_FALSE(findOpening(cleared, first)->choices.box);
}

TEST(FacesByChance, KeepEveryCaseLaidOut) {
    for (std::uint64_t seed = 1; seed <= 60; ++seed) {
        const Project project = anyProject(seed);
        const std::size_t count = layoutOf(project).openings.size();
        Dice dice(seed);
        const OpeningId id = openingAt(project, static_cast<std::size_t>(dice.between(
                                                    0, static_cast<std::int64_t>(count) - 1)));
        const auto divided = divideFace(project, id, upright, 2, in(1));
        if (!divided.ok())
            continue;
        EXPECT_EQ(layoutOf(divided.value()).openings.size(), count + 1) << seed;
        EXPECT_TRUE(sameLayout(edited(joinFace(divided.value(), id)), project)) << seed;
        if (const auto like = divideFaceLikeNeighbour(project, id); like.ok()) {
            EXPECT_TRUE(isInFace(like.value(), id)) << seed;
            EXPECT_TRUE(sameLayout(edited(joinFace(like.value(), id)), project)) << seed;
        }
    }
}

} // namespace
} // namespace frontwright
