#include "core/geometry/region.h"

#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::mm;

constexpr Length oneNanometre = Length::fromNanometres(1);

/// A wall of 100 × 60 with a strip cut out at the bottom and a hole in the middle.
WallRegion wallWithStripAndHole() {
    return {WallRect::atOrigin(mm(100), mm(60)),
            {{mm(0), mm(0), mm(100), mm(12)}},
            {{{mm(50), mm(30)}, mm(10)}}};
}

TEST(Region, IsTheWallLessItsStripsAndHoles) {
    const WallRegion region = wallWithStripAndHole();
    EXPECT_TRUE(region.contains({mm(10), mm(30)}));
    EXPECT_FALSE(region.contains({mm(10), mm(5)})) << "in the strip";
    EXPECT_FALSE(region.contains({mm(55), mm(33)})) << "in the hole";
    EXPECT_FALSE(region.contains({mm(101), mm(30)})) << "off the wall";
}

TEST(Region, IncludesItsBorders) {
    const WallRegion region = wallWithStripAndHole();
    EXPECT_TRUE(region.contains({mm(20), mm(12)})) << "on the strip's edge";
    EXPECT_FALSE(region.contains({mm(20), mm(12) - oneNanometre}));
    EXPECT_TRUE(region.contains({mm(60), mm(30)})) << "on the hole's circle";
    EXPECT_FALSE(region.contains({mm(60) - oneNanometre, mm(30)}));
    EXPECT_TRUE(region.contains({mm(100), mm(60)})) << "the wall's corner";
}

TEST(Region, HasNoPointWhereItsOuterIsEmpty) {
    WallRegion region;
    region.outer = {mm(10), mm(0), mm(5), mm(20)};
    EXPECT_FALSE(region.contains({mm(7), mm(10)}));
    EXPECT_FALSE(region.contains({mm(10), mm(10)}));
}

} // namespace
} // namespace frontwright
