// The row of system holes at full size.

#include "tests/core/plan/round_case.h"
#include "tests/core/sheets/laid_sheets.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::framelessBanks;
using testing::mm;
using testing::shopWith;
using testing::titled;

Project bored() {
    Project project = framelessBanks();
    project.casework.systemHoles = usualSystemHoles(mm(18));
    return project;
}

std::vector<CircleMark> circlesOf(const Template& stick) {
    std::vector<CircleMark> circles;
    for (const Mark& mark : stick.drawing.marks)
        if (const auto* circle = std::get_if<CircleMark>(&mark.shape))
            circles.push_back(*circle);
    return circles;
}

TEST(RowSticks, HaveEveryHoleAtItsHeightAndSetback) {
    const auto shop = shopWith(bored());
    const auto circles = circlesOf(titled(*shop, "System holes, Left side panel, right face"));
    ASSERT_EQ(circles.size(), 21U);
    EXPECT_DOUBLE_EQ(circles.front().centre.x(), 37);
    EXPECT_DOUBLE_EQ(circles.front().centre.y(), 41);
    EXPECT_DOUBLE_EQ(circles.back().centre.y(), 681);
    EXPECT_DOUBLE_EQ(circles.front().radius, 2.5);
}

TEST(RowSticks, TellTheTwoHandsApart) {
    // The divider is shorter than the sides: it stands between bottom and top.
    const auto shop = shopWith(bored());
    const Template& right = titled(*shop, "System holes, Right side panel, left face");
    EXPECT_DOUBLE_EQ(circlesOf(right).front().centre.x(), right.part.sizes().x() - 37);
    const Template& divider = titled(*shop, "System holes, Divider 1, left face");
    EXPECT_DOUBLE_EQ(divider.part.sizes().y(), 684);             // 720 − 2 · 18
    EXPECT_DOUBLE_EQ(circlesOf(divider).front().centre.y(), 23); // 41 − 18, from its own end
}

TEST(RowSticks, AreNotThereWithoutRows) {
    const auto shop = shopWith(framelessBanks());
    for (const Template& part : shop->templates)
        EXPECT_EQ(part.title.english().find("System holes"), std::string::npos);
}

} // namespace
} // namespace frontwright
