#include "core/edits/divisions.h"
#include "tests/core/edits/edited.h"
#include "tests/core/plan/frameless_case.h"

#include <gtest/gtest.h>

#include <array>

namespace frontwright::testing {
namespace {

std::vector<Length> frontHeights(const Project& project) {
    const Planned planned(project);
    std::vector<Length> heights;
    for (const FrontPlan& front : planned.plan.fronts)
        heights.push_back(front.rect.height());
    return heights;
}

/// 18 mm panels, 3 mm gaps; `count` drawers with nothing between them in 720 mm.
Project framelessBank(std::size_t count, Length grid) {
    const std::vector<Child> drawers(count, share(opening()));
    Project project = framelessWith(rows(drawers, Length{}), mm(600), mm(720));
    project.casework.grid = grid;
    return project;
}

// The outer fronts lie 18 − 3 mm over top and bottom panel; each front keeps 1.5 mm from the middle
// between two openings. 720 − 2 × 3 − 3 × 3 = 705 mm are left for four fronts.
TEST(MakingFrontsEqual, SharesWhatTheGapsLeave) {
    const Project before = framelessBank(4, tenths(5));
    EXPECT_NE(frontHeights(before)[0], frontHeights(before)[1]) << "as equal openings give them";
    const std::array one{openingAt(before, 0)};
    const Project after = edited(makeFrontsEqual(before, one, Direction::Rows));
    const std::vector<Length> heights = frontHeights(after);
    Length together;
    for (const Length height : heights) {
        EXPECT_LE((height - tenths(1762)).magnitude(), tenths(8)) << "705 / 4 = 176.25";
        together += height;
    }
    EXPECT_EQ(together, mm(705));
}

TEST(MakingFrontsEqual, IsExactWhereTheGridAllows) {
    // 720 − 6 − 2 × 3 = 708 = 3 × 236; the outer openings have 236 − 13.5, the middle one 236 + 3.
    const Project before = framelessBank(3, tenths(5));
    const Project after =
        edited(makeFrontsEqual(before, std::array{openingAt(before, 1)}, Direction::Rows));
    EXPECT_EQ(frontHeights(after), (std::vector<Length>{mm(236), mm(236), mm(236)}));
    EXPECT_EQ(edited(makeFrontsEqual(after, std::array{openingAt(after, 0)}, Direction::Rows)),
              after)
        << "once more changes nothing";
}

TEST(MakingFrontsEqual, IsTheSameAsMakingOpeningsEqualOnAFaceFrame) {
    const Project before = bankOf({share(opening(), 2), share(opening(), 4)}, in(20));
    const std::array one{openingAt(before, 0)};
    EXPECT_EQ(frontHeights(edited(makeFrontsEqual(before, one, Direction::Rows))),
              frontHeights(edited(makeEqual(before, one, Direction::Rows))));
}

TEST(MakingFrontsEqual, LeavesLockedOnesAsTheyAre) {
    Project before = framelessBank(3, tenths(5));
    before = edited(setOpeningSize(before, openingAt(before, 0), Direction::Rows, mm(100)));
    const std::vector<Length> heights = frontHeights(
        edited(makeFrontsEqual(before, std::array{openingAt(before, 1)}, Direction::Rows)));
    EXPECT_EQ(heights[0], frontHeights(before)[0]);
    EXPECT_LE((heights[1] - heights[2]).magnitude(), tenths(5)) << "to the grid";
}

TEST(MakingFrontsEqual, IsRefusedWhereNothingCanBeEqual) {
    const Project alone = framelessWith(opening(), mm(600), mm(720));
    EXPECT_FALSE(makeFrontsEqual(alone, std::array{openingAt(alone, 0)}, Direction::Rows).ok());
    EXPECT_FALSE(makeFrontsEqual(alone, {}, Direction::Rows).ok());
}

} // namespace
} // namespace frontwright::testing
