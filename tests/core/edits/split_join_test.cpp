#include "core/edits/tree_paths.h"
#include "tests/core/edits/edited.h"
#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

#include <array>
#include <set>

namespace frontwright {
namespace {

using testing::across;
using testing::upright;

using namespace frontwright::testing;

TEST(SplittingAnOpening, GivesEqualOpeningsWithMembersBetween) {
    const Project project = oneOpening(in(20), in(30));
    const Project after =
        edited(splitOpening(project, openingAt(project, 0), upright, 4, WrittenLength(in(1, 16))));
    EXPECT_EQ(heights(after), Sizes(4, in(6, 36))); // (30 − 3 × 1 1/4) / 4
    EXPECT_EQ(widths(after), Sizes(4, in(20)));
    EXPECT_EQ(layoutOf(after).members.size(), 7U);
}

TEST(SplittingAnOpening, KeepsItsIdNameAndChoices) {
    Project project = oneOpening(in(20), in(30));
    const OpeningId id = openingAt(project, 0);
    project = withOpenings(project, [](Opening& leaf, std::size_t) {
        leaf.name = "linen";
        leaf.choices.thickness = in(1);
    });
    const Project after = edited(splitOpening(project, id, upright, 3, in(1)));
    ASSERT_EQ(openingAt(after, 0), id);
    EXPECT_EQ(findOpening(after, id)->name, "linen");
    EXPECT_EQ(findOpening(after, openingAt(after, 1))->name, "");
    EXPECT_EQ(findOpening(after, openingAt(after, 2))->choices.thickness, WrittenLength(in(1)));
}

TEST(SplittingAnOpening, GivesEveryNewPartAnIdOfItsOwn) {
    const Project project = banks(2, 3);
    const Project after = edited(splitOpening(project, openingAt(project, 2), upright, 2, in(1)));
    std::set<std::int32_t> ids;
    const Layout layout = layoutOf(after);
    for (const PlacedOpening& opening : layout.openings)
        ids.insert(opening.id.number);
    for (const PlacedMember& member : layout.members)
        ids.insert(member.id.number);
    EXPECT_EQ(ids.size(), layout.openings.size() + layout.members.size());
    EXPECT_LT(*ids.rbegin(), after.nextId);
}

TEST(SplittingInTheDirectionOfABank, TakesThePartsIntoTheBank) {
    const Project project = bankOf({share(opening()), share(opening()), share(opening())}, in(29));
    const Project after = edited(splitOpening(project, openingAt(project, 1), upright, 2, in(1)));
    EXPECT_EQ(heights(after), (Sizes{in(9), in(4), in(4), in(9)}));
    EXPECT_EQ(splitAt(after.casework.divisions).children.size(), 4U);
    // Its members stand in order, from the top down.
    const Layout layout = layoutOf(after);
    for (std::size_t i = 5; i < layout.members.size(); ++i)
        EXPECT_LT(layout.members[i].rect.top, layout.members[i - 1].rect.bottom);
}

TEST(SplittingAcrossABank, DividesTheOneOpening) {
    const Project project = bankOf({share(opening()), share(opening())}, in(29));
    const Project after = edited(splitOpening(project, openingAt(project, 0), across, 3, in(1)));
    EXPECT_EQ(splitAt(after.casework.divisions).children.size(), 2U);
    EXPECT_EQ(widths(after).size(), 4U);
    EXPECT_EQ(widths(after)[3], in(27));
    EXPECT_EQ(widths(after)[0], in(8, 20)); // 25 / 3 = 8.333: 8 5/16
}

TEST(SplittingAnOpeningOfALockedSize, KeepsTheOthersExactly) {
    const Project project =
        bankOf({share(opening()), fixed(in(9), opening()), share(opening(), 3)}, in(31));
    const Project after = edited(splitOpening(project, openingAt(project, 1), upright, 2, in(1)));
    EXPECT_EQ(heights(after), (Sizes{in(5), in(4), in(4), in(15)}));
}

TEST(SplittingAPlaceOfARun, KeepsTheRun) {
    Project project = bankOf({place(opening()), place(opening())}, in(31));
    project.casework.divisions = graduated(project.casework.divisions, ArithmeticRun{in(2)});
    const Project after = edited(splitOpening(project, openingAt(project, 1), upright, 2, in(2)));
    EXPECT_EQ(heights(after), (Sizes{in(14), in(7), in(7)}));
    EXPECT_EQ(splitAt(after.casework.divisions).children.size(), 2U);
}

TEST(AShareBesideARun, IsDividedWithinItsPlaceAndNotJoinedAtTheRunsCost) {
    Project project =
        bankOf({place(opening()), share(opening()), share(opening()), place(opening())}, in(31));
    project.casework.divisions = graduated(project.casework.divisions, ArithmeticRun{in(2)});
    ASSERT_EQ(heights(project), (Sizes{in(6), in(7), in(7), in(8)}));
    const Project after = edited(splitOpening(project, openingAt(project, 1), upright, 2, in(1)));
    EXPECT_EQ(heights(after), (Sizes{in(6), in(3), in(3), in(7), in(8)}));
    EXPECT_EQ(refusal(removeMember(project, memberAt(project, 1))),
              "the graduated run in the same split would change its sizes; end the graduation "
              "first");
}

TEST(Splitting, IsRefusedWithTheReason) {
    Project project = oneOpening(in(20), in(30));
    const OpeningId id = openingAt(project, 0);
    project.limits.leastOpening = in(3);
    EXPECT_EQ(refusal(splitOpening(project, id, upright, 10, in(1))),
              "each opening would be 2 1/16 in high, under the least of 3 in; split into fewer, or "
              "take narrower members");
    EXPECT_NE(refusal(splitOpening(project, id, upright, 40, in(1))).find("of room is missing"),
              std::string::npos);
    EXPECT_FALSE(splitOpening(project, id, upright, 1, in(1)).ok());
    EXPECT_FALSE(splitOpening(project, id, upright, 2, in(0)).ok());
    EXPECT_FALSE(splitOpening(project, id, upright, 10'001, in(1)).ok());
    EXPECT_FALSE(splitOpening(project, OpeningId{99}, upright, 2, in(1)).ok());
}

TEST(Splitting, StopsSixtyFourDeep) {
    Project project = oneOpening(in(30), in(30));
    project.limits.leastOpening = Length::fromNanometres(1);
    project.casework.grid = Length::fromNanometres(1);
    const OpeningId id = openingAt(project, 0);
    const WrittenLength member(Length::fromNanometres(1));
    RegionPtr region = project.casework.divisions;
    for (int level = 0; level < deepestDivisions; ++level) {
        Split split =
            splitAt(level % 2 == 0 ? rows({share(region, 1'000), share(opening())}, in(0, 1))
                                   : columns({share(region, 1'000), share(opening())}, in(0, 1)));
        region = std::make_shared<const Region>(Region{std::move(split)});
    }
    project.casework.divisions = region;
    ASSERT_TRUE(layOut(project.casework).ok());
    EXPECT_EQ(refusal(splitOpening(project, id, upright, 2, member)), "");
    EXPECT_EQ(refusal(splitOpening(project, id, across, 2, member)),
              "divisions lie at most 64 deep");
}

TEST(TakingARailAway, JoinsWhatWasAboveAndBelow) {
    const Project project =
        bankOf({share(opening({}, "top")), share(opening()), share(opening())}, in(29));
    const Project after = edited(removeMember(project, memberAt(project, 0)));
    EXPECT_EQ(heights(after), (Sizes{in(19), in(9)}));
    EXPECT_EQ(openingAt(after, 0), openingAt(project, 0));
    EXPECT_EQ(openingAt(after, 1), openingAt(project, 2));
    EXPECT_EQ(findOpening(after, openingAt(after, 0))->name, "top");
}

TEST(TakingTheOnlyMemberAway, LeavesOneOpening) {
    const Project project = banks(2, 2);
    const MemberId rail = splitAt(childRegion(project.casework.divisions, 0)).members[0].id;
    const Project after = edited(removeMember(project, rail));
    EXPECT_EQ(widths(after).size(), 3U);
    EXPECT_TRUE(std::holds_alternative<Opening>(childRegion(after.casework.divisions, 0)->content));
    EXPECT_EQ(childRegion(project.casework.divisions, 1), childRegion(after.casework.divisions, 1));
    const MemberId stile = splitAt(project.casework.divisions).members[0].id;
    EXPECT_EQ(widths(edited(removeMember(project, stile))), Sizes{in(28)});
}

TEST(TakingAMemberAway, JoinsTwoLockedSizesToALockedOne) {
    const Project project =
        bankOf({fixed(in(5), opening()), fixed(in(6), opening()), share(opening())}, in(30));
    const Project after = edited(removeMember(project, memberAt(project, 0)));
    EXPECT_EQ(splitAt(after.casework.divisions).children[0].rule, SizeRule(FixedSize{in(12)}));
    const Project flexible = edited(removeMember(project, memberAt(project, 1)));
    EXPECT_EQ(heights(flexible), (Sizes{in(5), in(24)}));
    EXPECT_EQ(holdOf(flexible, openingAt(flexible, 1), upright), Hold::Flexible);
}

TEST(TakingAMemberOutOfARun, EndsItAndKeepsTheOtherSizes) {
    Project project =
        bankOf({place(opening()), place(opening()), place(opening()), place(opening())}, in(31));
    project.casework.divisions = graduated(project.casework.divisions, ArithmeticRun{in(2)});
    ASSERT_EQ(heights(project), (Sizes{in(4), in(6), in(8), in(10)}));
    const Project after = edited(removeMember(project, memberAt(project, 1)));
    EXPECT_EQ(heights(after), (Sizes{in(4), in(15), in(10)}));
    EXPECT_FALSE(splitAt(after.casework.divisions).graduation);
}

TEST(TheFramesMembers, CannotBeTakenAway) {
    const Project project = bank(2);
    for (const MemberId id : {leftStile, rightStile, bottomRail, topRail})
        EXPECT_FALSE(removeMember(project, id).ok());
    EXPECT_FALSE(removeMember(project, MemberId{99}).ok());
}

TEST(JoiningOpenings, TakesNeighboursInAnyOrder) {
    const Project project =
        bankOf({share(opening()), share(opening()), share(opening()), share(opening())}, in(27));
    const std::array three{openingAt(project, 3), openingAt(project, 1), openingAt(project, 2)};
    const Project after = edited(joinOpenings(project, three));
    EXPECT_EQ(heights(after), (Sizes{in(6), in(20)}));
    EXPECT_EQ(openingAt(after, 1), openingAt(project, 1));
}

TEST(JoiningOpenings, TakesWholeBanksTogether) {
    const Project project = banks(3, 2); // 13 in each, stiles 2 in
    const std::array four{openingAt(project, 0), openingAt(project, 1), openingAt(project, 2),
                          openingAt(project, 3)};
    const Project after = edited(joinOpenings(project, four));
    EXPECT_EQ(widths(after), (Sizes{in(28), in(13), in(13)}));
    const std::array inside{openingAt(project, 4), openingAt(project, 5)};
    EXPECT_EQ(widths(edited(joinOpenings(project, inside))).size(), 5U);
    std::vector<OpeningId> all;
    for (std::size_t i = 0; i < 6; ++i)
        all.push_back(openingAt(project, i));
    EXPECT_EQ(widths(edited(joinOpenings(project, all))), Sizes{in(43)});
}

TEST(JoiningOpenings, RefusesWhatDoesNotFillAStretch) {
    const Project project = banks(2, 3);
    const auto joined = [&](std::vector<std::size_t> indices) {
        std::vector<OpeningId> ids;
        for (const std::size_t i : indices)
            ids.push_back(openingAt(project, i));
        return joinOpenings(project, ids);
    };
    EXPECT_EQ(refusal(joined({0, 2})), "the openings do not fill one stretch of a split; choose "
                                       "neighbours with everything between them");
    EXPECT_FALSE(joined({0, 3}).ok());
    EXPECT_FALSE(joined({0, 1, 2, 3}).ok());
    EXPECT_FALSE(joined({1, 1}).ok());
    EXPECT_FALSE(joined({}).ok());
    const std::array missing{openingAt(project, 0), OpeningId{999}};
    EXPECT_FALSE(joinOpenings(project, missing).ok());
    EXPECT_TRUE(joined({2, 1}).ok());
}

TEST(SplitAndJoin, GiveBackTheLayout) {
    std::size_t exact = 0;
    std::size_t tried = 0;
    for (std::uint64_t seed = 1; seed <= 60; ++seed) {
        const Project project = anyProject(seed);
        const Layout layout = layoutOf(project);
        const PlacedOpening& chosen = layout.openings[seed % layout.openings.size()];
        const Direction direction = seed % 2 == 0 ? across : upright;
        const auto parted = splitOpening(project, chosen.id, direction, 2, in(0, 24));
        if (!parted.ok())
            continue;
        const Layout now = layoutOf(parted.value());
        const auto first = std::ranges::find(now.openings, chosen.id, &PlacedOpening::id);
        const std::array parts{first->id, std::next(first)->id};
        const Project again = edited(joinOpenings(parted.value(), parts));
        EXPECT_TRUE(nearlySameLayout(project, again, project.casework.grid)) << seed;
        exact += sameLayout(project, again) ? 1 : 0;
        ++tried;
    }
    EXPECT_GT(exact, 30U);
    EXPECT_LT(tried - exact, 6U);
}

TEST(ChangingAnOpening, SharesAllOtherRegionsAndKeepsTheId) {
    const Project project = banks(3, 2);
    const OpeningId id = openingAt(project, 2);
    const Project after = edited(changeOpening(project, id, [](Opening opening) {
        opening.name = "linen";
        opening.id = OpeningId{1'000};
        return opening;
    }));
    EXPECT_EQ(findOpening(after, id)->name, "linen");
    EXPECT_EQ(findOpening(after, OpeningId{1'000}), nullptr);
    EXPECT_EQ(childRegion(project.casework.divisions, 0), childRegion(after.casework.divisions, 0));
    EXPECT_EQ(childRegion(project.casework.divisions, 2), childRegion(after.casework.divisions, 2));
    EXPECT_NE(project, after);
    const auto unnamed = [](Opening opening) {
        opening.name.clear();
        return opening;
    };
    EXPECT_EQ(edited(changeOpening(after, id, unnamed)), project);
    EXPECT_FALSE(changeOpening(project, OpeningId{999}, unnamed).ok());
}

TEST(TenThousandOpenings, AreSplitInOneGoAndJoinedAgain) {
    const Project project = oneOpening(in(20), in(10'000) * 4);
    const OpeningId id = openingAt(project, 0);
    const Project after = edited(splitOpening(project, id, upright, 10'000, in(1)));
    const Layout layout = layoutOf(after);
    ASSERT_EQ(layout.openings.size(), 10'000U);
    std::vector<OpeningId> all;
    for (const PlacedOpening& opening : layout.openings)
        all.push_back(opening.id);
    EXPECT_EQ(heights(edited(makeEqual(after, all, upright))), heights(after));
    EXPECT_EQ(edited(joinOpenings(after, all)).casework, project.casework);
    EXPECT_FALSE(splitOpening(after, id, upright, 2, in(0, 1)).ok());
}

} // namespace
} // namespace frontwright
