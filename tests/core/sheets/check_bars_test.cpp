#include "core/sheets/check_bars.h"
#include "tests/core/sheets/laid_sheets.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::coveredBy;
using testing::marksOfKind;

double longest(double room, Unit unit) {
    double length = 0;
    for (const auto& line : barLines(room, unit))
        for (const CheckBar& bar : line)
            length = std::max(length, bar.length);
    return length;
}

TEST(CheckBars, AreAlways100MillimetresAnd4Inches) {
    for (double room : {103.0, 150.0, 190.0, 277.0, 1000.0}) {
        const auto lines = barLines(room, Unit::Millimetre);
        ASSERT_FALSE(lines.empty()) << room;
        EXPECT_DOUBLE_EQ(lines[0][0].length, 100);
        const CheckBar& second = lines[0].size() > 1 ? lines[0][1] : lines[1][0];
        EXPECT_DOUBLE_EQ(second.length, 101.6); // 4 × 25.4 mm
    }
}

// A4 leaves 190 mm across and 277 mm up.
TEST(LongCheckBar, IsAsLongAsThePageAllowsUpTo250MillimetresOr10Inches) {
    EXPECT_DOUBLE_EQ(longest(190, Unit::Millimetre), 180);
    EXPECT_DOUBLE_EQ(longest(190, Unit::Inch), 7 * 25.4);
    EXPECT_DOUBLE_EQ(longest(277, Unit::Millimetre), 250);
    EXPECT_DOUBLE_EQ(longest(277, Unit::Inch), 254);
    EXPECT_DOUBLE_EQ(longest(2000, Unit::Inch), 254);
}

TEST(LongCheckBar, IsLeftOutWhereItWouldProveNoMore) {
    EXPECT_EQ(barLines(103, Unit::Inch).size(), 2U);
    EXPECT_DOUBLE_EQ(longest(105, Unit::Inch), 101.6);
}

TEST(CheckBars, NeedRoomForFourInches) {
    EXPECT_TRUE(barLines(102, Unit::Inch).empty());
    EXPECT_TRUE(barLines(0, Unit::Millimetre).empty());
}

TEST(CheckBars, NeverTakeMoreThanThreeLinesNorMoreThanTheirRoom) {
    for (double room = 103; room < 600; room += 1)
        for (Unit unit : {Unit::Inch, Unit::Millimetre}) {
            const auto lines = barLines(room, unit);
            EXPECT_LE(lines.size(), mostBarLines);
            for (const auto& line : lines) {
                double used = 0;
                for (const CheckBar& bar : line)
                    used += bar.length;
                EXPECT_LT(used, room);
            }
        }
}

TEST(DrawnCheckBars, StayInTheirStripAndMeasureWhatTheySay) {
    for (BarDirection direction : {BarDirection::Level, BarDirection::Upright})
        for (double room : {104.0, 190.0, 420.0}) {
            const bool isLevel = direction == BarDirection::Level;
            const double breadth = barStripBreadth(barLines(room, Unit::Inch).size());
            const PointMm size = isLevel ? PointMm(room, breadth) : PointMm(breadth, room);
            const BoxMm strip(PointMm(10, 20), PointMm(10, 20) + size);
            Page page;
            drawBars(page, strip, {direction, "here"}, Unit::Inch);
            for (const Mark& mark : page.drawing.marks)
                EXPECT_TRUE(strip.contains(coveredBy(mark))) << room;
            const auto ends = marksOfKind(page, "check-bar");
            ASSERT_GE(ends.size(), 4U);
            const auto measured = [&](std::size_t i) {
                return isLevel ? ends[i + 1].x - ends[i].x : ends[i + 1].y - ends[i].y;
            };
            EXPECT_NEAR(measured(0), 100, 1e-9);
            EXPECT_NEAR(measured(2), 101.6, 1e-9);
            EXPECT_EQ(ends[0].part, "100 mm here / from");
            EXPECT_EQ(ends[3].part, "4 in here / to");
        }
}

TEST(DrawnCheckBars, SayWhereToMeasure) {
    Page page;
    drawBars(page, BoxMm(PointMm(0, 0), PointMm(190, 21)), {BarDirection::Level, "across"},
             Unit::Millimetre);
    for (const char* words :
         {"100 mm: measure outer tick to outer tick", "4 in: measure outer tick to outer tick",
          "180 mm: measure outer tick to outer tick"})
        EXPECT_TRUE(testing::says(page, words)) << words;
}

} // namespace
} // namespace frontwright
