#include "core/project/project.h"

#include "core/case/layout.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

TEST(ANewCaseInInches, IsAFaceFrameWithOneOpening) {
    const Project project = newProject(Unit::Inch);
    const auto layout = layOut(project.casework);
    ASSERT_TRUE(layout.ok());
    ASSERT_EQ(layout.value().openings.size(), 1U);
    EXPECT_EQ(layout.value().openings[0].rect.width(), Length::inches(33));  // 36 − 2 × 1 1/2
    EXPECT_EQ(layout.value().openings[0].rect.height(), Length::inches(31)); // 34 − 2 × 1 1/2
    EXPECT_EQ(project.style.unit, Unit::Inch);
    EXPECT_EQ(project.limits, Limits{});
}

TEST(ANewCaseInMillimetres, IsOneToo) {
    const Project project = newProject(Unit::Millimetre);
    const auto layout = layOut(project.casework);
    ASSERT_TRUE(layout.ok());
    ASSERT_EQ(layout.value().openings.size(), 1U);
    EXPECT_EQ(layout.value().openings[0].rect.width(), Length::millimetres(824)); // 900 − 2 × 38
    EXPECT_EQ(project.style.unit, Unit::Millimetre);
}

TEST(ANewCase, HasFrontsThatCanBeMadeAndMounted) {
    for (const Unit unit : {Unit::Inch, Unit::Millimetre}) {
        const Project project = newProject(unit);
        const FrontDefaults& fronts = project.fronts;
        for (const Side side : allSides) {
            EXPECT_EQ(fronts.fit[side].fit, Fit::Overlay);
            EXPECT_LT(fronts.fit[side].amount.length, project.casework.frame[side].length);
        }
        EXPECT_LT(fronts.profile.depth.length, fronts.thickness.length);
        EXPECT_EQ(fronts.profile.depth, fronts.profile.width); // eased
        EXPECT_LT(fronts.box.depth.length, project.casework.depth.length);
        EXPECT_EQ(fronts.mounting.screw, unit == Unit::Inch ? "wood-screw-8" : "wood-screw-4mm");
        EXPECT_TRUE(fronts.mounting.recess.length.isZero());
        EXPECT_EQ(fronts.hardware.form, unit == Unit::Inch ? "knob-32" : "knob-32-m4");
        EXPECT_EQ(fronts.box.runner, unit == Unit::Inch ? "side-mounted" : "side-mounted-mm");
        EXPECT_GT(fronts.mounting.toolDiameter.length, Length());
    }
}

TEST(ANewCase, LeavesItsIdsFree) {
    const Project project = newProject(Unit::Inch);
    const auto& opening = std::get<Opening>(project.casework.divisions->content);
    EXPECT_GE(opening.id.number, firstFreeId);
    EXPECT_LT(opening.id.number, project.nextId);
    EXPECT_EQ(newProject(Unit::Inch), project);
    EXPECT_NE(newProject(Unit::Millimetre), project);
}

} // namespace
} // namespace frontwright
