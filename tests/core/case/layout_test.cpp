#include "core/case/layout.h"
#include "tests/core/case/laid_out.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using namespace frontwright::testing;

TEST(TheFrame, RunsItsStilesThroughAndItsRailsBetweenThem) {
    const Layout layout = layoutOf(projectWith(opening(), in(36), in(34)));
    ASSERT_EQ(layout.members.size(), 4U);
    EXPECT_EQ(layout.members[0].id, leftStile);
    EXPECT_EQ(layout.members[0].rect, (CaseRect{in(0), in(0), in(1, 32), in(34)}));
    EXPECT_EQ(layout.members[1].id, rightStile);
    EXPECT_EQ(layout.members[1].rect, (CaseRect{in(34, 32), in(0), in(36), in(34)}));
    EXPECT_EQ(layout.members[2].id, bottomRail);
    EXPECT_EQ(layout.members[2].rect, (CaseRect{in(1, 32), in(0), in(34, 32), in(1, 32)}));
    EXPECT_EQ(layout.members[3].id, topRail);
    EXPECT_EQ(layout.members[3].rect, (CaseRect{in(1, 32), in(32, 32), in(34, 32), in(34)}));
    ASSERT_EQ(layout.openings.size(), 1U);
    EXPECT_EQ(layout.openings[0].rect, (CaseRect{in(1, 32), in(1, 32), in(34, 32), in(32, 32)}));
}

TEST(Rows, AreListedFromTheTopAndColumnsFromTheLeft) {
    // Inside 33 × 31: left bank 16 wide (33 − 1 = 32 / 2); its rows 10 (top) and 20
    const Project project =
        projectWith(columns({share(rows({fixed(in(10), opening()), share(opening())}, in(1))),
                             share(opening())},
                            in(1)),
                    in(36), in(34));
    const Layout layout = layoutOf(project);
    ASSERT_EQ(layout.openings.size(), 3U);
    EXPECT_EQ(layout.openings[0].rect, (CaseRect{in(1, 32), in(22, 32), in(17, 32), in(32, 32)}));
    EXPECT_EQ(layout.openings[1].rect, (CaseRect{in(1, 32), in(1, 32), in(17, 32), in(21, 32)}));
    EXPECT_EQ(layout.openings[2].rect, (CaseRect{in(18, 32), in(1, 32), in(34, 32), in(32, 32)}));
    const auto& bankAndOpening = std::get<Split>(project.casework.divisions->content);
    EXPECT_EQ(layout.openings[2].opening,
              &std::get<Opening>(bankAndOpening.children[1].region->content));
}

TEST(Members, BoundTheOpeningsBesideThem) {
    const Layout layout = layoutOf(banks(2, 2));

    ASSERT_EQ(layout.members.size(), 7U);
    for (const PlacedOpening& opening : layout.openings) {
        const auto& m = layout.members;
        EXPECT_EQ(m[opening.bounds.left].rect.right, opening.rect.left);
        EXPECT_EQ(m[opening.bounds.right].rect.left, opening.rect.right);
        EXPECT_EQ(m[opening.bounds.bottom].rect.top, opening.rect.bottom);
        EXPECT_EQ(m[opening.bounds.top].rect.bottom, opening.rect.top);
    }
    const auto stiles = std::ranges::count(layout.members, MemberKind::Stile, &PlacedMember::kind);
    const auto rails = std::ranges::count(layout.members, MemberKind::Rail, &PlacedMember::kind);
    EXPECT_EQ(stiles, 1);
    EXPECT_EQ(rails, 2);
}

TEST(Errors, NameTheSplitThatHasNoRoom) {
    const auto tight = rows({fixed(in(30), opening()), fixed(in(10), opening())}, in(1));
    const auto error = [](const RegionPtr& region) {
        const auto layout = layOut(projectWith(region, in(36), in(34)).casework);
        return layout.ok() ? std::string() : layout.error().place.english();
    };
    EXPECT_EQ(error(tight), "rows of the case");
    EXPECT_EQ(error(columns({share(opening()), share(tight)}, in(1))),
              "rows of column 2 of the case");
    EXPECT_EQ(error(rows({fixed(in(1), opening()),
                          share(columns({share(tight), share(opening())}, in(1)))},
                         in(1))),
              "rows of column 1 of row 2 of the case");
}

TEST(Errors, SayThatTheFrameLeavesNothing) {
    const auto layout = layOut(projectWith(opening(), in(2), in(34)).casework);
    ASSERT_FALSE(layout.ok());
    EXPECT_EQ(layout.error().sentence(),
              "case: 1 1/16 in of width is missing: the frame leaves nothing open; make the case "
              "larger or its frame narrower");
    EXPECT_FALSE(layOut(projectWith(opening(), in(20), in(3)).casework).ok());
    Project negative = projectWith(opening(), in(36), in(34));
    negative.casework.frame.top = -in(1);
    EXPECT_FALSE(layOut(negative.casework).ok());
}

TEST(Divisions, MayLieSixtyFourDeepAndNotDeeper) {
    const auto deep = [](int levels) {
        RegionPtr region = opening();
        for (int level = 0; level < levels; ++level)
            region = level % 2 == 0
                         ? rows({fixed(in(0, 4), opening()), share(region)}, in(0, 4))
                         : columns({fixed(in(0, 4), opening()), share(region)}, in(0, 4));
        return projectWith(region, in(36), in(34));
    };
    EXPECT_TRUE(layOut(deep(deepestDivisions).casework).ok());
    const auto layout = layOut(deep(deepestDivisions + 1).casework);
    ASSERT_FALSE(layout.ok());
    EXPECT_EQ(layout.error().what, "divisions lie more than 64 deep");
}

__extension__ typedef __int128 Area;
Area area(const CaseRect& rect) {
    return Area{rect.width().nanometres()} * rect.height().nanometres();
}

TEST(RandomDivisions, TileTheCaseExactly) {
    std::size_t openings = 0;
    for (std::uint64_t seed = 1; seed <= 150; ++seed) {
        const Project project = anyProject(seed);
        const Layout layout = layoutOf(project);
        std::vector<CaseRect> parts;
        for (const PlacedMember& member : layout.members)
            parts.push_back(member.rect);
        for (const PlacedOpening& opening : layout.openings)
            parts.push_back(opening.rect);
        const CaseRect whole = CaseRect::atOrigin(project.casework.width, project.casework.height);
        Area sum = 0;
        for (std::size_t i = 0; i < parts.size(); ++i) {
            ASSERT_LT(parts[i].left, parts[i].right);
            ASSERT_LT(parts[i].bottom, parts[i].top);
            ASSERT_TRUE(whole.contains(parts[i])) << seed;
            sum += area(parts[i]);
            for (std::size_t j = 0; j < i; ++j) {
                const CaseRect common = parts[i].common(parts[j]);
                ASSERT_TRUE(common.isEmpty() || area(common) == 0) << seed;
            }
        }
        ASSERT_TRUE(sum == area(whole)) << seed;
        openings += layout.openings.size();
    }
    EXPECT_GT(openings, 1500U);
}

TEST(RandomDivisions, BoundEveryOpeningByMembersThatTouchIt) {
    for (std::uint64_t seed = 1; seed <= 150; ++seed) {
        const Layout layout = layoutOf(anyProject(seed));
        for (const PlacedOpening& opening : layout.openings) {
            const auto& m = layout.members;
            ASSERT_EQ(m[opening.bounds.left].rect.right, opening.rect.left);
            ASSERT_EQ(m[opening.bounds.right].rect.left, opening.rect.right);
            ASSERT_EQ(m[opening.bounds.bottom].rect.top, opening.rect.bottom);
            ASSERT_EQ(m[opening.bounds.top].rect.bottom, opening.rect.top);
            ASSERT_TRUE(m[opening.bounds.left].rect.upright().contains(opening.rect.bottom));
            ASSERT_TRUE(m[opening.bounds.bottom].rect.across().contains(opening.rect.left));
        }
    }
}

RegionPtr balanced(int levels) {
    if (levels == 0)
        return opening();
    const RegionPtr half = balanced(levels - 1);
    return levels % 2 == 0 ? rows({share(half), share(half)}, in(1))
                           : columns({share(half), share(half)}, in(1));
}

TEST(TenThousandOpenings, AreLaidOutFlatOrBalanced) {
    EXPECT_EQ(layoutOf(bank(10'000)).openings.size(), 10'000U);
    EXPECT_EQ(layoutOf(projectWith(balanced(13), in(2000), in(2000))).openings.size(), 8'192U);
}

} // namespace
} // namespace frontwright
