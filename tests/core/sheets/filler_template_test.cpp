// The template of a wall with several fronts shows the filler strips between them.

#include "tests/core/plan/faced.h"
#include "tests/core/sheets/laid_sheets.h"
#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

namespace frontwright::testing {
namespace {

BoxMm stripOn(const Template& part, const std::string& name) {
    BoxMm box;
    for (const Mark& mark : part.drawing.marks)
        if (const auto* path = std::get_if<PathMark>(&mark.shape); path && mark.part.name == name)
            for (const PointMm& p : path->points)
                box.extend(p);
    return box;
}

// Two fronts of 6 1/2 in with 3/4 in between them, on a wall that they overlap at all four edges.
TEST(WallTemplateOfAFace, ShowsTheFillerStripWhereItIsGluedOn) {
    const auto shop = shopWith(faced(bank(2)));
    ASSERT_EQ(shop->plan.fillers.size(), 1U);
    const Template& part = titled(*shop, "Box wall A1 and A2");
    const BoxMm strip = stripOn(part, "filler strip above A2");
    const FrontPlan& lower = shop->plan.fronts[shop->plan.fillers[0].lower];
    EXPECT_NEAR(strip.sizes().y(), 0.75 * inch, 1e-6);
    // From the wall's lower edge: the lower front less what it overlaps there.
    EXPECT_NEAR(strip.min().y(), 6.5 * inch - lower.box.wallOnFront.y.inMillimetres(), 1e-6);
    EXPECT_NEAR(strip.sizes().x(), lower.box.width.inMillimetres(), 1e-6)
        << "it runs over the wall at both ends";
    EXPECT_TRUE(says(part, "filler strip 13 1/2 in × 3/4 in, 5/8 in thick"));
}

TEST(WallTemplateOfAFace, HasNoStripThatHasNoThickness) {
    Project project = faced(bank(2));
    project.limits.fillerShadow = Length::inches(1);
    const auto shop = shopWith(project);
    EXPECT_TRUE(stripOn(titled(*shop, "Box wall A1 and A2"), "filler strip above A2").isEmpty());
}

} // namespace
} // namespace frontwright::testing
