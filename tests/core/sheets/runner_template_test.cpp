#include "tests/core/sheets/laid_sheets.h"

#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

// Wall templates of boxes on the small catalogue's runners, read from inside the box; opening
// 12 5/8 in × 6 in.
namespace frontwright {
namespace {

using testing::exactly;
using testing::inch;

using testing::says;
using testing::shopWith;
using testing::titled;

Project on(const char* runner) {
    Project project = testing::oneOpening(Length::inches(12, 40), Length::inches(6));
    project.fronts.box.runner = runner;
    project.fronts.box.depthRule = BoxDepthRule::AsRunner;
    return project;
}

BoxMm partOf(const Template& part, const std::string& name) {
    BoxMm box;
    for (const Mark& mark : part.drawing.marks)
        if (const auto* path = std::get_if<PathMark>(&mark.shape))
            if (mark.part.name == name)
                for (const PointMm& p : path->points)
                    box.extend(p);
    return box;
}
std::size_t hatchesOn(const Template& part, Layer layer) {
    return static_cast<std::size_t>(
        std::count_if(part.drawing.marks.begin(), part.drawing.marks.end(), [&](const Mark& mark) {
            return mark.layer == layer && std::holds_alternative<HatchMark>(mark.shape);
        }));
}

TEST(WallTemplate, HatchesTheClearZonesOfItsRunners) {
    const auto shop = shopWith(on("hidden"));
    const Template& part = titled(*shop, "Box wall A1");
    // The box is 12 1/4 in wide; the first zone, at the left seen from the front, is at the right.
    const BoxMm first = partOf(part, "clear zone 1"), second = partOf(part, "clear zone 2");
    EXPECT_NEAR(first.min().x(), 10.25 * inch, exactly);
    EXPECT_NEAR(first.max().x(), 12.25 * inch, exactly);
    EXPECT_NEAR(first.max().y(), 1 * inch, exactly);
    EXPECT_NEAR(second.max().x(), 2 * inch, exactly);
    EXPECT_EQ(hatchesOn(part, Layer::AllowedRegion), 2U);
    EXPECT_TRUE(says(part, "runner: no screw here"));
    EXPECT_TRUE(says(part, "2 in × 1 in"));
}

TEST(WallTemplate, CountsTheRunnersSetbackFromTheCasesEdgeWhereItHasNoFrame) {
    Project project = on("hidden");
    project.casework.construction = Construction::Frameless;
    const auto shop = shopWith(project);
    EXPECT_TRUE(says(titled(*shop, "Box wall A1"), "behind the case's front edge."));
    EXPECT_FALSE(says(titled(*shop, "Box wall A1"), "frame's face"));
}

TEST(WallTemplate, TellsWhatItsBoxRunsOnAndHowTheBackIsNotched) {
    const auto shop = shopWith(on("hidden"));
    const Template& part = titled(*shop, "Box wall A1");
    EXPECT_TRUE(says(part, "Runners: Hidden runners, a pair 18 in long, front ends 1/8 in behind "
                           "the frame's face."));
    EXPECT_TRUE(says(part, "Notch the box's back 1 3/8 in × 1/2 in at both lower ends, from the "
                           "sides' inner faces."));
}

TEST(WallTemplate, ShowsTheNotchForACentreRunner) {
    const auto shop = shopWith(on("middle"));
    const Template& part = titled(*shop, "Box wall A1");
    const BoxMm notch = partOf(part, "notch 1"); // the box is 12 3/8 in wide
    EXPECT_NEAR(notch.center().x(), 12.375 / 2 * inch, exactly);
    EXPECT_NEAR(notch.sizes().x(), 1.5 * inch, exactly);
    EXPECT_NEAR(notch.max().y(), 0.25 * inch, exactly);
    EXPECT_EQ(hatchesOn(part, Layer::Waste), 5U) << "round the wall, and the notch";
    EXPECT_TRUE(says(part, "cut out 1 1/2 in × 1/4 in"));
}

TEST(WallTemplate, IsSharedOnlyByBoxesOnAlikeRunners) {
    Project project = testing::bank(2);
    project.fronts.box.runner = "hidden";
    const auto walls = [](const Project& of) {
        const auto shop = shopWith(of);
        return std::count_if(
            shop->templates.begin(), shop->templates.end(),
            [](const Template& part) { return part.kind == TemplateKind::BoxWall; });
    };
    EXPECT_EQ(walls(project), 1);
    const Project longer = testing::withChoices(project, 1, [&](FrontChoices& choices) {
        choices.box = project.fronts.box;
        choices.box->depthRule = BoxDepthRule::AsRunner;
    });
    EXPECT_EQ(walls(longer), 2);
}

} // namespace
} // namespace frontwright
