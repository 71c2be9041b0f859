#include "core/boards/board_faults.h"
#include "core/plan/boards.h"

#include "tests/core/plan/board_case.h"
#include "tests/core/plan/planned.h"
#include "tests/core/plan/seasons.h"
#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::in;

using namespace frontwright::testing;

Project changedBoard(Project project, const std::function<void(BoardSpec&)>& change) {
    return withOpenings(std::move(project), [&](Opening& opening, std::size_t) {
        if (opening.board)
            change(*opening.board);
    });
}

TEST(PlannedBoards, RunBetweenPanelsAtTheStilesOuterEdges) {
    // Stiles 1 1/2, panels 3/4: 3/4 from panel to opening, less 1/32 of allowance: 23/32 furring
    const Planned desk(boardOverDrawer());
    ASSERT_EQ(desk.plan.boards.size(), 1U);
    const PlannedBoard& board = desk.plan.boards[0];
    EXPECT_EQ(board.place.leftPanel, in(0, 48));
    EXPECT_EQ(board.place.rightPanel, in(20, 16));
    EXPECT_EQ(board.place.panelThickness, in(0, 48));
    EXPECT_EQ(board.place.frameThickness, in(0, 48));
    EXPECT_EQ(board.place.caseDepth, in(20));
    EXPECT_EQ(board.fitted.board.furring.left, in(0, 46));
    EXPECT_EQ(board.fitted.board.furring.right, in(0, 46));
    // 18 − 2 × 1/16
    EXPECT_EQ(board.fitted.board.width, in(17, 56));
    EXPECT_EQ(desk.plan.boardOf(desk.plan.spaces[0].opening), &board);
    EXPECT_EQ(desk.plan.boardOf(desk.front(0).opening), nullptr);
    EXPECT_EQ(titleOf(desk.plan, board).english(), "Pull-out board A1");
    EXPECT_EQ(brokenInvariant(desk.plan), "");
}

TEST(PlannedBoards, RunBetweenThickerPanelsWithThinnerFurring) {
    // 1 1/2 − 1 − 1/32 = 15/32
    const Planned desk(
        changedBoard(boardOverDrawer(), [](BoardSpec& spec) { spec.sidePanel = in(1); }));
    EXPECT_EQ(desk.plan.boards[0].fitted.board.furring.left, in(0, 30));
}

TEST(PlannedBoards, RunBesideAPanelInTheMiddleOfAStileBetweenColumns) {
    // The stile of 2 in begins at 1 1/2 + 13 = 14 1/2; a panel of 3/4 in its middle from 15 1/8
    const Planned chest(withBoard(banks(2, 1), 0));
    const BoardPlace& place = chest.plan.boards[0].place;
    EXPECT_EQ(place.opening.right, in(14, 32));
    EXPECT_EQ(place.rightPanel, in(15, 8));
    const Planned other(withBoard(banks(2, 1), 1));
    EXPECT_EQ(other.plan.boards[0].place.leftPanel, in(15, 56));
    EXPECT_EQ(other.plan.boards[0].place.opening.left, in(16, 32));
}

TEST(PlannedBoards, AreGuidedByTheOpeningsOwnPanelsWhereThereIsNoFrame) {
    Project project = bank(2);
    project.casework.construction = Construction::Frameless;
    project.casework.frame = PerSide<WrittenLength>::all(in(0, 48));
    const Planned chest(withBoard(std::move(project), 0));
    const PlannedBoard& board = chest.plan.boards[0];
    EXPECT_EQ(board.place.leftPanel, board.place.opening.left);
    EXPECT_EQ(board.place.rightPanel, board.place.opening.right);
    EXPECT_EQ(board.place.panelThickness, in(0, 48));
    EXPECT_EQ(board.place.frameThickness, Length{});
    EXPECT_LT(board.fitted.board.furring.left, Length{});
    EXPECT_EQ(board.fitted.board.insideGap.left, in(0, 4)) << "the side play";
    EXPECT_FALSE(board.fitted.brads.left);
}

TEST(PlannedBoards, AreOfTheFrontsWoodAndHeldByTheScrewThatIsNamed) {
    Project project = boardOverDrawer();
    project.fronts.stock.species = "oak";
    const Planned desk(std::move(project));
    const FittedBoard& fitted = desk.plan.boards[0].fitted;
    EXPECT_TRUE(fitted.weight);
    EXPECT_EQ(fitted.isRunnerSofter, false) << "one wood";
    EXPECT_FALSE(fitted.season) << "no air is given";
}

TEST(PlannedBoards, MoveFromTheMoistureWhenCutToTheWettest) {
    Project project = boardOverDrawer();
    oakInAir(project, 6, 6, 10);
    const Planned desk(std::move(project));
    ASSERT_TRUE(desk.plan.boards[0].fitted.season);
    EXPECT_EQ(desk.plan.boards[0].fitted.season->widthChange, Length{}) << "grain side to side";
    EXPECT_GT(desk.plan.boards[0].fitted.season->thicknessChange, Length{});
}

TEST(PlannedBoards, SayWhatIsNotInTheCatalogue) {
    const Catalogue catalogue = smallCatalogue();
    const auto screw =
        makePlan(changedBoard(boardOverDrawer(), [](BoardSpec& s) { s.keeper.screw = "no-such"; }),
                 catalogue);
    ASSERT_FALSE(screw.ok());
    EXPECT_EQ(screw.error().sentence().english(),
              "board A1: no wood screw \"no-such\" in the catalogue; choose one that is there");
    EXPECT_FALSE(
        makePlan(changedBoard(boardOverDrawer(), [](BoardSpec& s) { s.runnerWood = "no-such"; }),
                 catalogue)
            .ok());
}

TEST(PlannedBoards, TellTheirNumbersSizesFirst) {
    const Planned desk(boardOverDrawer());
    const auto numbers = numbersOf(desk.plan.boards[0], {Unit::Inch, 16});
    ASSERT_GT(numbers.size(), 10U);
    EXPECT_EQ(numbers.front().name.english(), "Board width");
    EXPECT_EQ(numbers.front().figures, "18 in − 2 × 1/16 in = 17 7/8 in");
}

TEST(ANewBoard, LeavesHalfAnInchBehindAndHasFastenersThatStayInThePanel) {
    // Case 20 3/4 with its frame. Furring 23/32, panel 3/4, cover 1/8. The brad, set 1/32:
    //   at most 23/32 − 1/32 + 3/4 − 1/8 = 1 5/16. The screw through a strip of 3/4, sunk 1/8:
    //   at most 3/4 + 23/32 − 1/8 + 3/4 − 1/8 = 1 31/32
    const Project project = boardOverDrawer();
    BoardSpec board;
    withOpenings(project, [&](const Opening& opening, std::size_t) {
        if (opening.board)
            board = *opening.board;
    });
    EXPECT_EQ(board.depth.length, in(20, 16));
    EXPECT_EQ(board.bradLength.length, in(1, 16));
    EXPECT_EQ(board.keeper.screwLength.length, in(1, 48));
}

TEST(ANewBoard, HasNothingSaidAgainstItInEveryUnit) {
    for (const Unit unit : {Unit::Inch, Unit::Millimetre}) {
        Project project = newProject(unit);
        const BoardSpec spec = newBoardFor(project, OpeningId{firstFreeId}).value();
        project.fronts.stock.species.clear();
        const auto layout = layOut(project.casework);
        const BoardPlace place = boardPlace(project.casework, layout.value(),
                                            layout.value().openings[0], spec.sidePanel);
        const FittedBoard fitted = fitBoard(spec, place, {}, project.limits, in(0, 4));
        for (const BoardFault fault : faultsOf(spec, fitted))
            EXPECT_GE(gravityOf(fault), BoardGravity::WillNotWork) << key(fault);
        for (const Side side : {Side::Left, Side::Right}) {
            EXPECT_EQ(fitted.brads[side]->passage, Passage::Holds);
            EXPECT_EQ(fitted.keeperScrews[side]->passage, Passage::Holds);
        }
    }
}

TEST(ANewBoard, IsRefusedWhereThereIsNoSuchOpening) {
    EXPECT_FALSE(newBoardFor(bank(2), OpeningId{999}).ok());
}

} // namespace
} // namespace frontwright
