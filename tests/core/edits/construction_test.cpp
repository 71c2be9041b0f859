#include "core/case/layout.h"
#include "core/edits/banks.h"
#include "core/edits/construction.h"
#include "core/edits/divisions.h"
#include "tests/core/edits/edited.h"
#include "tests/core/plan/frameless_case.h"

#include <gtest/gtest.h>

namespace frontwright::testing {
namespace {

TEST(SettingTheConstruction, KeepsEverySize) {
    const Project framed = bank(3);
    Project after = edited(setConstruction(framed, Construction::Frameless));
    EXPECT_EQ(after.casework.construction, Construction::Frameless);
    after = edited(setConstruction(after, Construction::FaceFrame));
    EXPECT_EQ(after, framed);
}

// Drawers one above the other need no shelf between them; a face frame has its rails.
TEST(SplittingAFramelessCase, MayLeaveOutTheShelf) {
    Project whole = oneOpening(Length::millimetres(400), Length::millimetres(700));
    const OpeningId opening = openingAt(whole, 0);
    EXPECT_EQ(refusal(splitOpening(whole, opening, Direction::Rows, 3, Length{})),
              "the width of a member must be more than 0");
    whole.casework.construction = Construction::Frameless;
    const Project split = edited(splitOpening(whole, opening, Direction::Rows, 3, Length{}));
    const Layout layout = layOut(split.casework).value();
    ASSERT_EQ(layout.openings.size(), 3U);
    Length heights;
    for (const PlacedOpening& one : layout.openings)
        heights += one.rect.height();
    EXPECT_EQ(heights, Length::millimetres(700)) << "nothing is lost between them";
    const MemberId shelf = layout.members.back().id;
    const Project with = edited(setMemberWidth(split, shelf, Length::millimetres(19)));
    EXPECT_EQ(edited(setMemberWidth(with, shelf, Length{})), split);
    EXPECT_EQ(refusal(setMemberWidth(split, bottomRail, Length{})),
              "the width of a member must be more than 0");
    EXPECT_EQ(refusal(setMemberWidth(split, shelf, Length::millimetres(-1))),
              "the width of a member cannot be negative");
}

TEST(SettingASurround, TakesItAtItsSideOnly) {
    const Project before = framelessBanks();
    const Project after = edited(setSurround(before, Side::Left, Wall{{}, mm(5)}));
    EXPECT_EQ(after.casework.surroundings.left, Surround(Wall({}, mm(5))));
    EXPECT_EQ(after.casework.surroundings.right, Surround());
    EXPECT_EQ(edited(setSurround(after, Side::Left, OpenSide{})), before);
}

TEST(SettingASurround, RefusesWhatCannotStandThere) {
    EXPECT_EQ(refusal(setSurround(framelessBanks(), Side::Top, Legs{})),
              "that cannot stand at this side of the case; a top lies above, a plinth and legs "
              "stand below");
    EXPECT_EQ(refusal(setSurround(framelessBanks(), Side::Left, Wall{mm(-1), {}})),
              "the distance from the case cannot be negative");
}

TEST(SettingSystemHoles, RefusesRowsThatCannotBe) {
    const Project before = framelessBanks();
    SystemHoles holes = usualSystemHoles(mm(18));
    EXPECT_TRUE(edited(setSystemHoles(before, holes)).casework.systemHoles.has_value());
    holes.pitch = Length{};
    EXPECT_EQ(refusal(setSystemHoles(before, holes)),
              "the pitch of the system holes must be more than 0");
    holes.pitch = mm(5); // as wide as a hole
    EXPECT_EQ(refusal(setSystemHoles(before, holes)),
              "holes at this pitch run into one another; the pitch is from centre to centre: 32 mm "
              "is usual");
    holes = usualSystemHoles(mm(18));
    holes.rear = mm(37);
    EXPECT_EQ(refusal(setSystemHoles(before, holes)),
              "the rear row must stand behind the front row; measure both from the panels' front "
              "edge");
    EXPECT_EQ(edited(setSystemHoles(edited(setSystemHoles(before, usualSystemHoles(mm(18)))),
                                    std::nullopt)),
              before);
}

TEST(MirroringACase, TakesItsSurroundingsAlong) {
    Project project = framelessBanks();
    project.casework.surroundings.left = Wall{{}, mm(5)};
    const Planned planned(project);
    const Project once = edited(mirrorCase(project, planned.plan));
    EXPECT_EQ(once.casework.surroundings.right, project.casework.surroundings.left);
    EXPECT_EQ(once.casework.surroundings.left, Surround());
    const Planned turned(once);
    EXPECT_EQ(edited(mirrorCase(once, turned.plan)), project);
}

} // namespace
} // namespace frontwright::testing
