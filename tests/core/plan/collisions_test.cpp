#include "core/plan/collisions.h"

#include "tests/core/plan/planned.h"
#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

#include <vector>

namespace frontwright {
namespace {

using testing::mm;

using testing::Dice;
using testing::Planned;
using testing::sideBySide;

CaseRect rect(std::int64_t left, std::int64_t bottom, std::int64_t right, std::int64_t top) {
    return {mm(left), mm(bottom), mm(right), mm(top)};
}

using Pairs = std::vector<std::pair<std::uint32_t, std::uint32_t>>;

Pairs pairsOf(const std::vector<Collision>& collisions) {
    Pairs pairs;
    for (const Collision& c : collisions)
        pairs.emplace_back(c.first, c.second);
    return pairs;
}
/// Every rectangle with every other.
Pairs byBruteForce(const std::vector<CaseRect>& rects) {
    Pairs pairs;
    for (std::uint32_t i = 0; i < rects.size(); ++i)
        for (std::uint32_t j = i + 1; j < rects.size(); ++j) {
            const CaseRect common = rects[i].common(rects[j]);
            if (common.left < common.right && common.bottom < common.top)
                pairs.emplace_back(i, j);
        }
    return pairs;
}

TEST(Collision, IsACommonPartWithAnArea) {
    const std::vector<CaseRect> rects{rect(0, 0, 10, 10), rect(9, 8, 20, 20)};
    const auto collisions = collisionsAmong(rects);
    ASSERT_EQ(collisions.size(), 1U);
    EXPECT_EQ(collisions[0].first, 0U);
    EXPECT_EQ(collisions[0].second, 1U);
    EXPECT_EQ(collisions[0].common, rect(9, 8, 10, 10));
}

TEST(Collision, IsNoneWhereFrontsOnlyTouch) {
    EXPECT_TRUE(collisionsAmong(std::vector{rect(0, 0, 10, 10), rect(10, 0, 20, 10),
                                            rect(0, 10, 10, 20), rect(10, 10, 20, 20)})
                    .empty());
}

TEST(Collision, IsFoundBetweenFrontsThatDoNotLieSideBySide) {
    const std::vector<CaseRect> rects{rect(0, 0, 25, 10), rect(10, 0, 19, 10), rect(20, 0, 30, 10)};
    EXPECT_EQ(pairsOf(collisionsAmong(rects)), (Pairs{{0, 1}, {0, 2}}));
}

TEST(Collision, IsNoneOfNothing) {
    EXPECT_TRUE(collisionsAmong({}).empty());
    EXPECT_TRUE(collisionsAmong(std::vector{rect(0, 0, 10, 10)}).empty());
    EXPECT_TRUE(collisionsAmong(std::vector{rect(0, 0, 10, 10), rect(8, 2, 2, 8), rect(3, 3, 3, 9)})
                    .empty())
        << "a front without an area meets nothing";
}

TEST(Collision, IsFoundAmongRectanglesOfAnySizeAsByBruteForce) {
    Dice dice(3);
    std::size_t found = 0;
    for (int round = 0; round < 300; ++round) {
        std::vector<CaseRect> rects;
        const std::int64_t count = dice.between(2, 60), largest = dice.between(1, 400);
        for (std::int64_t i = 0; i < count; ++i) {
            // Some are empty or turned inside out; now and then one is very large.
            const std::int64_t size = dice.between(0, 15) == 0 ? 3'000 : largest;
            const std::int64_t x = dice.between(-500, 2'000), y = dice.between(-500, 900);
            rects.push_back(rect(x, y, x + dice.between(-2, size), y + dice.between(-2, size)));
        }
        const Pairs pairs = pairsOf(collisionsAmong(rects));
        ASSERT_EQ(pairs, byBruteForce(rects)) << "round " << round;
        found += pairs.size();
    }
    EXPECT_GT(found, 1'000U) << "the rounds must have something to find";
}

TEST(Collision, IsFoundAmongCrowdedSmallRectanglesBesideALargeOne) {
    Dice dice(5);
    std::vector<CaseRect> rects{rect(0, 0, 100'000, 100'000)};
    for (int i = 0; i < 300; ++i) {
        const std::int64_t x = 100'001 + dice.between(0, 60), y = dice.between(0, 60);
        rects.push_back(rect(x, y, x + 2, y + 2));
    }
    EXPECT_EQ(pairsOf(collisionsAmong(rects)), byBruteForce(rects));
}

TEST(Collision, ListsNoMoreThanAnyoneReads) {
    const std::vector<CaseRect> rects(450, rect(0, 0, 10, 10)); // 101 025 pairs
    EXPECT_EQ(collisionsAmong(rects).size(), mostCollisions);
}

TEST(Collision, IsToldOfFrontsWhoseOverlaysExceedTheMember) {
    const Planned chest(sideBySide({Fit::Overlay, mm(30)}, {Fit::Overlay, mm(25)}, mm(50)));
    ASSERT_EQ(chest.plan.collisions.size(), 1U);
    EXPECT_EQ(chest.plan.collisions[0].common.width(), mm(5));
    EXPECT_TRUE(Planned(sideBySide({Fit::Overlay, mm(25)}, {Fit::Overlay, mm(25)}, mm(50)))
                    .plan.collisions.empty());
}

} // namespace
} // namespace frontwright
