#include "core/edits/boards.h"

#include "core/edits/divisions.h"
#include "tests/core/plan/board_case.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using namespace frontwright::testing;

constexpr OpeningId theBoard{firstFreeId};
constexpr OpeningId theDrawer{firstFreeId + 2};

BoardSpec boardOf(const Project& project) {
    return *findOpening(project, theBoard)->board;
}

TEST(SetBoard, ChangesThatBoardOnly) {
    const Project before = boardOverDrawer();
    BoardSpec spec = boardOf(before);
    spec.pullOut = Length::inches(6);
    const Project after = setBoard(before, theBoard, spec).value();
    EXPECT_EQ(boardOf(after), spec);
    EXPECT_EQ(*findOpening(after, theDrawer), *findOpening(before, theDrawer));
    EXPECT_EQ(setBoard(after, theBoard, boardOf(before)).value(), before);
}

TEST(SetBoard, IsRefusedWhereNoBoardRuns) {
    const Project desk = boardOverDrawer();
    EXPECT_EQ(setBoard(desk, theDrawer, boardOf(desk)).error().sentence().english(),
              "the opening is not for a board; make it one for a board");
    EXPECT_FALSE(setBoard(desk, OpeningId{999}, boardOf(desk)).ok());
}

TEST(SetBoard, RefusesWhatCannotBe) {
    const Project desk = boardOverDrawer();
    const auto refused = [&](const std::function<void(BoardSpec&)>& change) {
        BoardSpec spec = boardOf(desk);
        change(spec);
        return !setBoard(desk, theBoard, spec).ok();
    };
    const WrittenLength less = -Length::inches(1), nothing;
    EXPECT_TRUE(refused([&](BoardSpec& s) { s.thickness = nothing; }));
    EXPECT_TRUE(refused([&](BoardSpec& s) { s.depth = nothing; }));
    EXPECT_TRUE(refused([&](BoardSpec& s) { s.keeper.screwSpacing = nothing; }));
    EXPECT_TRUE(refused([&](BoardSpec& s) { s.sidePlay = less; }));
    EXPECT_TRUE(refused([&](BoardSpec& s) { s.pullOut = less; }));
    EXPECT_TRUE(refused([&](BoardSpec& s) { s.keeper.width = less; }));
    EXPECT_TRUE(refused([&](BoardSpec& s) { s.load = Force::fromMicronewtons(-1); }));
    EXPECT_TRUE(refused([&](BoardSpec& s) { s.keeper.fasteners = {{Side::Top, {}, {}}}; }));
    EXPECT_TRUE(refused([&](BoardSpec& s) { s.keeper.fasteners = {{Side::Left, less, {}}}; }));
    EXPECT_FALSE(refused([&](BoardSpec& s) { s.sidePlay = nothing; }));
}

} // namespace
} // namespace frontwright
