#include "core/drawings/dimension_rows.h"

#include "tests/core/drawings/drawn.h"
#include "tests/core/plan/small_case.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::overlapping;
using testing::textBoxes;

Measured stretch(double low, double high, std::string text) {
    return {low, high, std::move(text), std::nullopt, {}};
}

Drawing drawingOf(const DimensionRows& rows, double paperScale) {
    return {rows.marks(), {}, paperScale};
}
double offsetOf(const Mark& mark) {
    return std::abs(std::get<DimensionMark>(mark.shape).offset);
}

TEST(DimensionRows, PutAChainThatFitsInOneRow) {
    DimensionRows rows(Side::Bottom, 0, 1);
    rows.addChain({stretch(0, 40, "40"), stretch(40, 100, "60")});
    const auto marks = rows.marks();
    ASSERT_EQ(marks.size(), 2U);
    EXPECT_DOUBLE_EQ(offsetOf(marks[0]), 10);
    EXPECT_DOUBLE_EQ(offsetOf(marks[1]), 10);
}

TEST(DimensionRows, PutTheOverallDimensionFarthestOut) {
    DimensionRows rows(Side::Bottom, 0, 1);
    rows.addChain({stretch(0, 40, "40"), stretch(40, 44, "44444"), stretch(44, 100, "56")});
    rows.addOverall(stretch(0, 100, "100"));
    const auto marks = rows.marks();
    ASSERT_EQ(marks.size(), 4U);
    for (std::size_t i = 0; i < 3; ++i)
        EXPECT_LT(offsetOf(marks[i]), offsetOf(marks[3]));
}

TEST(DimensionRows, DropWhatDoesNotFitToTheNextRow) {
    DimensionRows rows(Side::Bottom, 0, 1);
    rows.addChain({stretch(0, 40, "40"), stretch(40, 44, "44"), stretch(44, 100, "56")});
    const auto marks = rows.marks();
    ASSERT_EQ(marks.size(), 3U);
    EXPECT_DOUBLE_EQ(offsetOf(marks[2]), 17);
    EXPECT_TRUE(overlapping(textBoxes(drawingOf(rows, 1))).empty());
}

TEST(DimensionRows, KeepAnOuterMembersTextInTheChainsRow) {
    DimensionRows rows(Side::Bottom, 0, 1);
    rows.addChain({stretch(0, 4, "4"), stretch(4, 96, "92"), stretch(96, 100, "4")});
    for (const Mark& mark : rows.marks())
        EXPECT_DOUBLE_EQ(offsetOf(mark), 10);
}

TEST(DimensionRows, SayThreeEqualMembersOnce) {
    DimensionRows rows(Side::Left, 0, 1);
    rows.addChain({stretch(0, 3, "3"), stretch(3, 40, "37"), stretch(40, 43, "3"),
                   stretch(43, 80, "37"), stretch(80, 83, "3")});
    std::vector<std::string> texts;
    for (const Mark& mark : rows.marks())
        texts.push_back(std::get<DimensionMark>(mark.shape).text);
    EXPECT_EQ(texts, (std::vector<std::string>{"37", "37", "3 (3×)"}));
}

TEST(DimensionRows, LieOutsideTheEdgeAtEverySide) {
    for (const Side side : allSides) {
        DimensionRows rows(side, 50, 0.5);
        rows.addChain({stretch(0, 4, "4"), stretch(4, 90, "86"), stretch(90, 94, "4")});
        rows.addOverall(stretch(0, 94, "94"));
        for (const BoxMm& box : textBoxes(drawingOf(rows, 0.5))) {
            const double low = isLeftOrRight(side) ? box.min().x() : box.min().y();
            const double high = isLeftOrRight(side) ? box.max().x() : box.max().y();
            if (side == Side::Right || side == Side::Top)
                EXPECT_GT(low, 50);
            else
                EXPECT_LT(high, 50);
        }
    }
}

TEST(DimensionRows, KeepTextsOffTheOverallsExtensionLines) {
    DimensionRows rows(Side::Left, 0, 1);
    rows.keepClear(100);
    rows.keepWithin(0, 100);
    rows.addChain({stretch(0, 94, "94"), stretch(94, 97, "33333"), stretch(97, 100, "33334")});
    rows.addOverall(stretch(0, 100, "100"));
    for (const BoxMm& box : textBoxes(drawingOf(rows, 1)))
        EXPECT_LE(box.max().y(), 100);
}

TEST(DimensionRows, LeaveOutWhatWouldTakeTooManyRows) {
    DimensionRows rows(Side::Bottom, 0, 1);
    for (int i = 0; i < 20; ++i)
        rows.addChain({stretch(i, 100 + i, std::to_string(100 + i))});
    EXPECT_EQ(rows.marks().size(), DimensionRows::defaultMostRows);
    EXPECT_EQ(rows.leftOut(), 20 - DimensionRows::defaultMostRows);
    // The overall dimension always has its row.
    rows.addOverall(stretch(0, 120, "120"));
    EXPECT_EQ(rows.marks().size(), DimensionRows::defaultMostRows + 1);
}

TEST(DimensionRows, AreAsManyAsTheDrawingHasRoomFor) {
    // Two rows: the openings, then the rails between them; what would take a third is left out.
    DimensionRows rows(Side::Left, 0, 1, DimensionRows::defaultFirstRow, 2);
    rows.addChain({stretch(0, 40, "40"), stretch(40, 43, "3"), stretch(43, 100, "57")});
    rows.addChain({stretch(0, 60, "60"), stretch(60, 100, "40")});
    EXPECT_EQ(rows.leftOut(), 2U);
    rows.addOverall(stretch(0, 100, "100"));
    double farthest = 0;
    for (const Mark& mark : rows.marks())
        farthest = std::max(farthest, offsetOf(mark));
    EXPECT_EQ(farthest, 10 + 2 * DimensionRows::rowPitch);
}

TEST(DimensionRows, PlaceACountedMemberWhereItReachesLeastFar) {
    // Of three equal rails the lowest has a text in its way in the first row; another takes it.
    DimensionRows rows(Side::Left, 0, 1);
    rows.addChain({stretch(0, 3, "3"), stretch(3, 7, "4444"), stretch(7, 10, "3"),
                   stretch(10, 90, "80"), stretch(90, 93, "3")});
    EXPECT_TRUE(overlapping(textBoxes(drawingOf(rows, 1))).empty());
    for (const Mark& mark : rows.marks())
        EXPECT_LE(offsetOf(mark), 10 + DimensionRows::rowPitch);
}

TEST(DimensionRows, NeverLetTextsMeetInRandomChains) {
    testing::Dice dice(11);
    for (int round = 0; round < 300; ++round) {
        const double scale =
            std::array{1.0, 0.5, 0.2, 0.1, 0.05}[static_cast<std::size_t>(dice.between(0, 4))];
        DimensionRows rows(static_cast<Side>(dice.between(0, 3)), 0, scale);
        for (int chain = 0; chain < 3; ++chain) {
            std::vector<Measured> measured;
            double at = static_cast<double>(dice.between(-50, 50));
            for (std::int64_t n = dice.between(1, 9); n > 0; --n) {
                const double size = static_cast<double>(dice.between(1, 300));
                measured.push_back(stretch(at, at + size, std::to_string(dice.between(1, 99999))));
                at += size;
            }
            rows.addChain(std::move(measured));
        }
        rows.addOverall(stretch(0, 1000, "1000"));
        EXPECT_TRUE(overlapping(textBoxes(drawingOf(rows, scale))).empty()) << round;
    }
}

} // namespace
} // namespace frontwright
