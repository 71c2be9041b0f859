#include "tests/core/boards/fitted.h"
#include "tests/core/shorthand.h"
#include "tests/core/words/untold.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::sixtyFourths;

using namespace testing;

struct Expected {
    std::string_view name, value, formula, figures;
};
const std::vector<Expected> expectedNumbers{
    {"Board width", "17 7/8 in", "opening − 2 × side play", "18 in − 2 × 1/16 in = 17 7/8 in"},
    {"Furring on the left, thickness", "23/32 in",
     "side panel to the opening's edge − working allowance", "3/4 in − 1/32 in = 23/32 in"},
    {"Setup block for the runner: its top above the opening's lower edge", "1/8 in",
     "(opening's height − board) / 2", "(1 in − 3/4 in) / 2 = 1/8 in"},
    {"Setup block for the keeper strip: its underside above the runner", "25/32 in",
     "board + play in height", "3/4 in + 1/32 in = 25/32 in"},
    {"Left behind the closed board", "3/4 in", "frame + depth inside − board's depth",
     "3/4 in + 18 in − 18 in = 3/4 in"},
    {"Keeper strip on the right, piece 1", "18 in",
     "its end − its beginning, behind the frame's face", "18 3/4 in − 3/4 in = 18 in"},
    {"Jams at this length in the case", "8 15/16 in",
     "2 × friction × how far from the middle it is pulled", "2 × 0.5 × 8 15/16 in = 8 15/16 in"},
    {"Times as hard to pull as straight, closed", "1.99",
     "1 / (1 − length at which it jams / length in the case)",
     "1 / (1 − 8 15/16 in / 18 in) = 1.99"},
    {"Safe pull-out", "9 in", "until it jams", "9 in"},
    {"Keeper strip left over the board", "11 1/4 in", "all pieces before the board's back",
     "11 1/4 in"},
    // 1/32 × 6 3/4 / 11 1/4
    {"Droop at the front edge", "0.019 in", "play in height × (pull-out + frame) / lever",
     "1/32 in × (6 in + 3/4 in) / 11 1/4 in = 0.019 in"},
    {"Brad in the left side panel", "17/32 in", "brad + set − furring",
     "1 1/4 in + 0 in − 23/32 in = 17/32 in"},
    {"Keeper's screw in the left side panel", "17/32 in", "screw + recess − keeper strip − furring",
     "2 in + 0 in − 1 15/32 in = 17/32 in"},
    {"Play in height in the wettest air", "0.027 in", "play in height − what the thickness swells",
     "0.031 in − 0.005 in = 0.027 in"}};

TEST(BoardNumbers, TellTheirFormulasWithFigures) {
    const BoardCase board;
    for (const Expected& expected : expectedNumbers) {
        const BoardNumber row = board.number(expected.name, sixtyFourths);
        EXPECT_EQ(row.name, expected.name);
        EXPECT_EQ(row.value, expected.value) << expected.name;
        EXPECT_EQ(row.formula, expected.formula);
        EXPECT_EQ(row.figures, expected.figures) << expected.name;
        EXPECT_FALSE(row.source.title.empty());
    }
}

TEST(BoardNumbers, TellTheMomentWithTheBoardsWeight) {
    BoardCase board;
    EXPECT_NE(board.number("Moment about the runners' front end", sixtyFourths)
                  .figures.find("50 lbf × (6 in + 3/4 in) + 6.2 lb"),
              std::string::npos);
    board.wood.gravity = std::nullopt;
    // 50 × 6 3/4 = 337.5
    EXPECT_EQ(board.number("Moment about the runners' front end", sixtyFourths).figures,
              "50 lbf × (6 in + 3/4 in) = 338 lbf·in");
    EXPECT_TRUE(board.number("Use of the most loaded screw").name.empty());
}

TEST(BoardNumbers, KeepTheRunnersHeightThatIsGiven) {
    BoardCase board;
    board.spec.runnerRise = in(0, 4);
    EXPECT_EQ(
        board.number("Setup block for the runner: its top above the opening's lower edge").formula,
        "as given");
}

TEST(BoardNumbers, HaveNoFurringWhereNoneIsNeeded) {
    BoardCase board;
    board.place.leftPanel = board.place.opening.left;
    EXPECT_TRUE(board.number("Furring on the left, thickness").name.empty());
    EXPECT_FALSE(board.number("Furring on the right, thickness").name.empty());
    EXPECT_TRUE(board.number("Brad in the left side panel").name.empty());
}

TEST(BoardNumbers, CanBeToldInEveryLanguageAndUnit) {
    for (const Unit unit : {Unit::Inch, Unit::Millimetre})
        for (const auto& [fault, board] : faultyBoards())
            for (const BoardNumber& row : board.numbers({unit, 16, DecimalMark::Comma})) {
                EXPECT_EQ(untold(row.name), std::vector<std::string>{}) << row.name;
                EXPECT_EQ(untold(row.formula), std::vector<std::string>{}) << row.name;
                EXPECT_EQ(row.value.find('.'), std::string::npos) << row.value;
                EXPECT_EQ(row.figures.find('.'), std::string::npos) << row.figures;
            }
}

} // namespace
} // namespace frontwright
