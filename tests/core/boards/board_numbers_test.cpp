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
     "its end − its beginning, from the case's front", "18 3/4 in − 3/4 in = 18 in"},
    {"Jams at this length in the case", "8 15/16 in",
     "2 × friction × how far from the middle it is pulled", "2 × 0.5 × 8 15/16 in = 8 15/16 in"},
    {"Times as hard to pull as straight, closed", "1.99",
     "1 / (1 − length at which it jams / length in the case)",
     "1 / (1 − 8 15/16 in / 18 in) = 1.99"},
    {"Safe pull-out", "6 13/16 in",
     "depth − 5/4 × length at which it jams: a quarter more is kept guided, so that it does not "
     "jam",
     "18 in − 5/4 × 8 15/16 in = 6 53/64 in ≥ 6 13/16 in"},
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

TEST(ASetting, IsToldAsTheTemplatesDrawIt) {
    const BoardCase board;
    const LengthStyle sixteenths{Unit::Inch, 16};
    EXPECT_EQ(board.number("Furring on the left, thickness", sixteenths).value, "23/32 in");
    EXPECT_EQ(
        board.number("Setup block for the keeper strip: its underside above the runner", sixteenths)
            .value,
        "25/32 in");
}

BoardNumber safeOf(const BoardCase& board) {
    return board.number("Safe pull-out", sixtyFourths);
}

// Pulled in its middle nothing jams. 3/32 in of play × (x + 3/4) / (17 1/4 − x) is 1/4 in where
// x + 3/4 = 8/3 × (17 1/4 − x), at 12.34 in; at 12 5/16 in 3/32 × 13.0625 / 4.9375 = 0.248.
TEST(TheSafePullOut, SaysThatTheBoardDroops) {
    BoardCase board;
    board.spec.pullOffCentre = Length{};
    board.spec.playInHeight = in(0, 6);
    board.spec.load = Force{};
    board.wood.gravity = std::nullopt;
    EXPECT_EQ(safeOf(board).value, "12 5/16 in");
    EXPECT_EQ(safeOf(board).formula,
              "until its front edge sinks too far: play in height × (pull-out + frame) / lever");
    EXPECT_EQ(safeOf(board).figures,
              "3/32 in × (12 5/16 in + 3/4 in) / 4 15/16 in = 0.248 in ≤ 1/4 in");
}

TEST(TheSafePullOut, SaysThatAScrewYields) {
    BoardCase board;
    board.spec.pullOffCentre = Length{};
    board.spec.load = Force::nearestToPoundsForce(200);
    const BoardNumber safe = safeOf(board);
    EXPECT_TRUE(safe.formula.english().starts_with("until the most loaded screw")) << safe.formula;
    EXPECT_TRUE(safe.figures.ends_with(" > 1")) << safe.figures;
    EXPECT_TRUE(safe.figures.starts_with(safe.value + ": ")) << safe.figures;
}

// 18 in − 3/4 in: the strip begins behind the frame.
// A No. 8 screw of 0.164 in and 1 1/4 in goes 1/2 in past the strip of 3/4 in, less than 4 × 0.164
// = 0.656 in.
TEST(TheSafePullOut, SaysThatShortScrewsAreNotCountedOn) {
    BoardCase board;
    board.spec.keeper.screwLength = in(1, 16);
    board.spec.pullOffCentre = Length{};
    const BoardNumber row = board.number("Safe pull-out", sixtyFourths);
    EXPECT_TRUE(row.formula.english().starts_with("until it would tip by itself"))
        << row.formula.english();
    EXPECT_NE(row.figures.find("< 4 × D"), std::string::npos) << row.figures;
}

TEST(TheSafePullOut, SaysThatTheStripEnds) {
    BoardCase board;
    board.spec.pullOffCentre = Length{};
    board.spec.playInHeight = Length{};
    board.spec.load = Force{};
    board.wood.gravity = std::nullopt;
    EXPECT_EQ(safeOf(board).figures, "18 in − 3/4 in = 17 1/4 in ≥ 17 3/16 in");
}

TEST(TheSafePullOut, SaysThatTheBoardIsTooShallow) {
    BoardCase board;
    board.spec.depth = in(10); // guided over 10 in, less than 11 11/64
    board.spec.pullOut = Length{};
    EXPECT_EQ(safeOf(board).value, "0 in");
    EXPECT_EQ(safeOf(board).figures, "10 in < 5/4 × 8 15/16 in = 11 11/64 in");
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
