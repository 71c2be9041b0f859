#include "core/boards/fasteners_text.h"

#include "tests/core/boards/worked_board.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using namespace testing;

TEST(FastenersText, SaysSideDepthAndDiameter) {
    const auto read = parseFasteners("L 4 in : 1 in; r 6 1/2 : 3/4", Unit::Inch);
    ASSERT_TRUE(read.ok());
    ASSERT_EQ(read.value().size(), 2U);
    EXPECT_EQ(read.value()[0].side, Side::Left);
    EXPECT_EQ(read.value()[0].depth.length, in(4));
    EXPECT_EQ(read.value()[1].side, Side::Right);
    EXPECT_EQ(read.value()[1].depth.length, in(6, 32));
    EXPECT_EQ(read.value()[1].reach.length, in(0, 48));
    EXPECT_EQ(written(read.value(), Unit::Inch), "L 4 in : 1 in; R 6 1/2 in : 3/4 in");
}

TEST(FastenersText, IsEmptyWhereThereAreNone) {
    EXPECT_TRUE(parseFasteners(" ; ", Unit::Inch).value().empty());
    EXPECT_EQ(written(std::vector<FastenerToReach>{}, Unit::Inch), "");
}

TEST(FastenersText, SaysWhatWasExpected) {
    for (const char* typed : {"4 in : 1 in", "L", "L 4 in", "L : 1 in", "X 4 : 1", "L 4 : 1; Q"})
        EXPECT_FALSE(parseFasteners(typed, Unit::Inch).ok()) << typed;
    EXPECT_EQ(parseFasteners("4 : 1", Unit::Inch).error().sentence().english(),
              "\"4 : 1\" does not begin with L or R; write a side, a depth and a diameter, as in "
              "L 4 in : 1 in");
}

TEST(FastenersText, ReadsBackWhatItWrites) {
    RandomBoards random(77);
    for (int i = 0; i < 300; ++i) {
        const auto fasteners = random.spec().keeper.fasteners;
        EXPECT_EQ(
            written(parseFasteners(written(fasteners, Unit::Inch), Unit::Inch).value(), Unit::Inch),
            written(fasteners, Unit::Inch));
    }
}

} // namespace
} // namespace frontwright
