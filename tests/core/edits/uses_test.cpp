#include "core/edits/banks.h"
#include "core/edits/divisions.h"
#include "core/edits/uses.h"
#include "tests/core/plan/planned.h"

#include <gtest/gtest.h>

#include <array>

namespace frontwright {
namespace {

using namespace frontwright::testing;

Project faced(Project project) {
    Region region = *project.casework.divisions;
    std::get<Split>(region.content).divides = Divides::Face;
    project.casework.divisions = std::make_shared<const Region>(std::move(region));
    return project;
}

std::vector<OpeningId> idsOf(const Project& project) {
    std::vector<OpeningId> ids;
    const Planned chest(project);
    for (const FrontPlan& front : chest.plan.fronts)
        ids.push_back(front.opening);
    return ids;
}

TEST(SetUse, MakesADoorOfADrawerAndADrawerOfItAgain) {
    const Project project = bank(3);
    const std::array middle{idsOf(project)[1]};
    const auto door = setUse(project, middle, OpeningUse::Door);
    ASSERT_TRUE(door.ok());
    EXPECT_EQ(findOpening(door.value(), middle[0])->use, OpeningUse::Door);
    const auto drawer = setUse(door.value(), middle, OpeningUse::Drawer);
    ASSERT_TRUE(drawer.ok());
    EXPECT_EQ(drawer.value(), project);
}

TEST(SetUse, KeepsWhatWasDecidedForTheFront) {
    Project project = withChoices(bank(2), 0, [](FrontChoices& choices) {
        choices.thickness = WrittenLength(Length::inches(1));
    });
    const std::array first{idsOf(project)[0]};
    const auto open = setUse(project, first, OpeningUse::OpenSpace);
    ASSERT_TRUE(open.ok());
    const auto again = setUse(open.value(), first, OpeningUse::Drawer);
    ASSERT_TRUE(again.ok());
    EXPECT_EQ(again.value(), project);
}

TEST(SetUse, GivesAllFrontsOfADividedFaceTheSame) {
    const Project project = faced(bank(2));
    const auto ids = idsOf(project);
    const auto doors = setUse(project, std::array{ids[1]}, OpeningUse::Door);
    ASSERT_TRUE(doors.ok()) << doors.error().sentence().english();
    for (const OpeningId id : ids)
        EXPECT_EQ(findOpening(doors.value(), id)->use, OpeningUse::Door);
}

TEST(SetUse, RefusesAnOpenSpaceUnderADividedFace) {
    const Project project = faced(bank(2));
    EXPECT_FALSE(setUse(project, std::array{idsOf(project)[0]}, OpeningUse::OpenSpace).ok());
}

TEST(SetUse, RefusesAnOpeningThatIsNotThere) {
    EXPECT_FALSE(setUse(bank(2), std::array{OpeningId{9999}}, OpeningUse::Door).ok());
}

TEST(SetUse, KeepsABoardExactlyWhereAnOpeningIsForOne) {
    const Project project = bank(2);
    const std::array first{idsOf(project)[0]};
    const auto board = setUse(project, first, OpeningUse::Board);
    ASSERT_TRUE(board.ok());
    EXPECT_TRUE(findOpening(board.value(), first[0])->board);
    const auto open = setUse(board.value(), first, OpeningUse::OpenSpace);
    ASSERT_TRUE(open.ok());
    EXPECT_FALSE(findOpening(open.value(), first[0])->board);
}

TEST(SetHinge, TurnsDoorsOnly) {
    const Project project = bank(2);
    const auto ids = idsOf(project);
    const auto door = setUse(project, std::array{ids[0]}, OpeningUse::Door);
    ASSERT_TRUE(door.ok());
    const auto hung = setHinge(door.value(), ids, HingeSide::Right);
    ASSERT_TRUE(hung.ok());
    EXPECT_EQ(findOpening(hung.value(), ids[0])->hinge, HingeSide::Right);
    EXPECT_EQ(findOpening(hung.value(), ids[1])->hinge, HingeSide::Left);
}

TEST(Mirroring, HangsDoorsOnTheOtherSideAndTwiceOnTheFirst) {
    const Project project = banks(2, 2);
    const auto door = setUse(project, std::array{idsOf(project)[0]}, OpeningUse::Door);
    ASSERT_TRUE(door.ok());
    const Planned before(door.value());
    const auto once = mirrorCase(before.project, before.plan);
    ASSERT_TRUE(once.ok());
    EXPECT_EQ(findOpening(once.value(), idsOf(project)[0])->hinge, HingeSide::Right);
    const Planned between(once.value());
    const auto twice = mirrorCase(between.project, between.plan);
    ASSERT_TRUE(twice.ok());
    EXPECT_EQ(findOpening(twice.value(), idsOf(project)[0])->hinge, HingeSide::Left);
}

TEST(Splitting, GivesAllPartsTheOpeningsUse) {
    const Project project = bank(2);
    const std::array first{idsOf(project)[0]};
    const auto door = setUse(project, first, OpeningUse::Door);
    const auto split =
        splitOpening(door.value(), first[0], Direction::Columns, 2, Length::inches(0, 48));
    ASSERT_TRUE(split.ok());
    const Planned chest(split.value());
    EXPECT_EQ(chest.front(0).use, OpeningUse::Door);
    EXPECT_EQ(chest.front(1).use, OpeningUse::Door);
    EXPECT_EQ(chest.front(2).use, OpeningUse::Drawer);
}

} // namespace
} // namespace frontwright
