#include "core/holding/lateral.h"

#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

#include <array>

namespace frontwright {
namespace {

using testing::in;

constexpr Length numberEight = Length::fromNanometres(164 * 25'400);

double poundsOf(double gravity, WoodKind kind, Length penetration = Length::inches(2)) {
    return designLateral(gravity, kind, numberEight, penetration)->inPoundsForce();
}

struct Group {
    WoodKind kind;
    double from, to, coefficient;
};
// Wood Handbook, chapter 8, older editions, p = c D² in lb and in; from memory.
constexpr std::array<Group, 6> groups{{{WoodKind::Hardwood, 0.33, 0.47, 3360},
                                       {WoodKind::Hardwood, 0.48, 0.56, 4640},
                                       {WoodKind::Hardwood, 0.57, 0.74, 6400},
                                       {WoodKind::Softwood, 0.29, 0.42, 3360},
                                       {WoodKind::Softwood, 0.43, 0.47, 4320},
                                       {WoodKind::Softwood, 0.48, 0.52, 5280}}};

TEST(DesignLateral, GivesTheHandbooksGroupsInBothUnitSystems) {
    for (const Group& group : groups)
        for (const double gravity : {group.from, (group.from + group.to) / 2, group.to})
            EXPECT_NEAR(poundsOf(gravity, group.kind), group.coefficient * 0.164 * 0.164,
                        group.coefficient * 1e-5)
                << gravity;
}

TEST(DesignLateral, LessensWithShortPenetration) {
    const double whole = poundsOf(0.63, WoodKind::Hardwood);
    EXPECT_NEAR(poundsOf(0.63, WoodKind::Hardwood, 7 * numberEight), whole, 1e-3);
    EXPECT_NEAR(poundsOf(0.63, WoodKind::Hardwood, 5 * numberEight), whole * 5 / 7, 1e-3);
    EXPECT_NEAR(poundsOf(0.63, WoodKind::Hardwood, 4 * numberEight), whole * 4 / 7, 1e-3);
    EXPECT_EQ(poundsOf(0.63, WoodKind::Hardwood, Length::inches(0, 32)), 0);
    EXPECT_EQ(poundsOf(0.63, WoodKind::Hardwood, -in(1)), 0);
}

TEST(DesignLateral, IsNotKnownOfWoodLighterThanTheTable) {
    EXPECT_FALSE(designLateral(0.20, WoodKind::Hardwood, numberEight, in(1)));
    EXPECT_FALSE(designLateral(0.25, WoodKind::Softwood, numberEight, in(1)));
    EXPECT_TRUE(designLateral(0.95, WoodKind::Hardwood, numberEight, in(1)));
}

TEST(DesignLateral, GrowsWithTheShankSquared) {
    const auto of = [](Length shank) {
        return designLateral(0.63, WoodKind::Hardwood, shank, Length::inches(4))->inNewtons();
    };
    EXPECT_NEAR(of(2 * numberEight), 4 * of(numberEight), 1e-4);
}

} // namespace
} // namespace frontwright
