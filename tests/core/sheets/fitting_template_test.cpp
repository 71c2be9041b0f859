// The front's template tells all that is cut for its fittings, with size, depth and face.
#include "core/sheets/part_templates.h"
#include "tests/core/sheets/laid_sheets.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::circleOf;
using testing::says;
using testing::shopWith;
using testing::titled;

/// Opening 12 5/8 in × 6 in with 1/4 in overlays: a front of 13 1/8 in × 6 1/2 in × 3/4 in.
Project withLock() {
    Project project = testing::oneOpening(Length::inches(12, 40), Length::inches(6));
    project.fronts.hardware.form.clear();
    project.fronts.hardware.fittings.emplace_back().form = "lock";
    return project;
}

TEST(FittingTemplate, HasTheKeyHoleOfItsTrueSizeAtItsPlace) {
    const auto shop = shopWith(withLock());
    const Template& part = titled(*shop, "Front A1");
    const CircleMark hole = *circleOf(part, "F1 bore 1");
    EXPECT_DOUBLE_EQ(hole.radius, 3.96875);            // 5/16 in
    EXPECT_DOUBLE_EQ(hole.centre.x(), 166.6875);       // 6 9/16 in
    EXPECT_NEAR(hole.centre.y(), 165.1 - 19.05, 1e-9); // 3/4 in below the top
    EXPECT_TRUE(says(part, "through, from the show face"));
}

TEST(FittingTemplate, TellsEveryMortiseWithDepthAndFace) {
    const auto shop = shopWith(withLock());
    const Template& part = titled(*shop, "Front A1");
    EXPECT_TRUE(says(part, "F1 b: mortise 1 1/2 in × 1 3/8 in, 7/16 in deep, from the back."));
    EXPECT_TRUE(says(part, "F1 c: mortise in the top edge, 2 in long, 1/16 in deep, "));
    // 5/16 in from the back of a 3/4 in front
    EXPECT_TRUE(says(part, "from 7/16 in to 3/4 in behind the show face."));
}

TEST(FittingTemplate, TellsScrewsWithPilotAndLength) {
    const auto shop = shopWith(withLock());
    const Template& part = titled(*shop, "Front A1");
    EXPECT_TRUE(says(part, "9/16 in deep, from the back"));
    EXPECT_TRUE(says(part, "F1: Half-mortise lock, 2 in; 2 screws, No. 8 flat-head wood screw, "
                           "5/8 in long."));
}

TEST(FittingTemplate, IsSharedOnlyByFrontsWithTheSameFittings) {
    Project project = testing::bank(2);
    const auto one = shopWith(project);
    project = testing::withChoices(std::move(project), 1, [&](FrontChoices& choices) {
        choices.hardware = project.fronts.hardware;
        choices.hardware->fittings.emplace_back().form = "lock";
    });
    EXPECT_FALSE(
        haveSameFront(shopWith(project)->plan.fronts[0], shopWith(project)->plan.fronts[1]));
    EXPECT_TRUE(haveSameFront(one->plan.fronts[0], one->plan.fronts[1]));
}

} // namespace
} // namespace frontwright
