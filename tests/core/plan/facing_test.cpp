#include "core/plan/facing.h"

#include "tests/core/plan/small_case.h"
#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>
#include <tuple>

namespace frontwright {
namespace {

using testing::in;

/// A rail from 0 to `length`, 1 in wide, with openings 5 in high above and below.
Layout railBetween(const std::vector<Span>& below, const std::vector<Span>& above) {
    Layout layout;
    layout.members.push_back({{5}, MemberKind::Rail, {in(0), in(5), in(40), in(6)}});
    layout.members.push_back({{6}, MemberKind::Rail, {in(0), in(20), in(40), in(21)}});
    for (const Span& s : below)
        layout.openings.push_back({{}, nullptr, {s.low, in(0), s.high, in(5)}, {1, 1, 1, 0}});
    for (const Span& s : above)
        layout.openings.push_back({{}, nullptr, {s.low, in(6), s.high, in(11)}, {1, 1, 0, 1}});
    return layout;
}
using Pairs = std::vector<std::pair<std::uint32_t, std::uint32_t>>;
/// Those across the first member.
Pairs pairsOf(const Layout& layout) {
    Pairs pairs;
    for (const Facing& f : facingOpenings(layout))
        if (f.member == 0)
            pairs.emplace_back(f.lower, f.upper);
    return pairs;
}

TEST(Facing, IsBetweenOpeningsWithACommonStretch) {
    const Layout layout =
        railBetween({{in(0), in(10)}, {in(12), in(40)}}, {{in(0), in(20)}, {in(22), in(40)}});
    EXPECT_EQ(pairsOf(layout), (Pairs{{0, 2}, {1, 2}, {1, 3}}));
}

TEST(Facing, NeedsMoreThanACornerInCommon) {
    const Layout layout = railBetween({{in(0), in(10)}}, {{in(10), in(20)}});
    EXPECT_TRUE(pairsOf(layout).empty());
}

TEST(Facing, AscendsAlongTheMemberWhateverTheOrderOfTheOpenings) {
    const Layout layout = railBetween({{in(30), in(40)}, {in(0), in(10)}, {in(15), in(25)}},
                                      {{in(20), in(40)}, {in(0), in(18)}});
    EXPECT_EQ(pairsOf(layout), (Pairs{{1, 4}, {2, 4}, {2, 3}, {0, 3}}));
}

TEST(Facing, IsFoundAcrossEveryMemberAsByBruteForce) {
    std::size_t found = 0;
    for (std::uint64_t seed = 0; seed < 60; ++seed) {
        const Project project = testing::randomProject(seed);
        const auto result = layOut(project.casework);
        ASSERT_TRUE(result.ok()) << result.error().sentence();
        const Layout& layout = result.value();
        std::set<std::tuple<std::uint32_t, std::uint32_t, std::uint32_t>> expected, actual;
        for (std::uint32_t i = 0; i < layout.openings.size(); ++i)
            for (std::uint32_t j = 0; j < layout.openings.size(); ++j)
                for (Side side : {Side::Right, Side::Top}) {
                    const PlacedOpening &a = layout.openings[i], &b = layout.openings[j];
                    const std::uint32_t member = a.bounds[side];
                    const MemberKind kind = layout.members[member].kind;
                    const Span common = alongMember(kind, a.rect).common(alongMember(kind, b.rect));
                    if (b.bounds[opposite(side)] == member && common.size() > Length{})
                        expected.emplace(member, i, j);
                }
        const auto facing = facingOpenings(layout);
        for (const Facing& f : facing)
            actual.emplace(f.member, f.lower, f.upper);
        ASSERT_EQ(actual, expected) << "seed " << seed;
        ASSERT_EQ(actual.size(), facing.size()) << "each pair once";
        found += facing.size();
    }
    EXPECT_GT(found, 300U);
}

} // namespace
} // namespace frontwright
