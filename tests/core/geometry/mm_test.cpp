#include "core/geometry/mm.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

TEST(Millimetres, AreTheSameLengthsAsDoubles) {
    const FrontPoint p{Length::inches(1), Length::fromMicrometres(-1500)};
    EXPECT_DOUBLE_EQ(toMm(p).x(), 25.4);
    EXPECT_DOUBLE_EQ(toMm(p).y(), -1.5);
}

TEST(Millimetres, KeepARectanglesCorners) {
    const BoxMm box = toMm(CaseRect{Length::millimetres(1), Length::millimetres(2),
                                    Length::millimetres(31), Length::millimetres(42)});
    EXPECT_EQ(box.min(), PointMm(1, 2));
    EXPECT_EQ(box.max(), PointMm(31, 42));
    EXPECT_EQ(box.sizes(), PointMm(30, 40));
}

} // namespace
} // namespace frontwright
