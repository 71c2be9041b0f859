#include "core/drawings/elevation.h"
#include "core/drawings/section.h"
#include "core/sheets/sheets.h"
#include "tests/core/drawings/drawn_case.h"
#include "tests/core/plan/faced.h"
#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

// Several fronts on one box, and fronts without one, as they are drawn.
namespace frontwright {
namespace {

using testing::exactly;
using testing::inch;

using testing::DrawnCase;
using testing::faced;
using testing::fixedFronts;
using testing::shapesOn;

std::size_t countOf(const Drawing& drawing, const std::string& name) {
    return static_cast<std::size_t>(std::ranges::count_if(
        drawing.marks, [&](const Mark& mark) { return mark.part.name == name; }));
}

BoxMm hatched(const Drawing& drawing, const std::string& name) {
    BoxMm box;
    for (const auto& [mark, hatch] : shapesOn<HatchMark>(drawing, Layer::CutHatch, name))
        for (const PointMm& p : hatch.outline)
            box.extend(p);
    return box;
}

ElevationOptions withBoxes() {
    ElevationOptions options;
    options.boxes = options.bottoms = Shown::Yes;
    return options;
}

TEST(TheElevationOfAFace, ShowsItsBoxOnce) {
    const DrawnCase two(testing::bank(2)), one(faced(testing::bank(2)));
    const Drawing apart = elevation(two.project, two.plan, withBoxes());
    const Drawing joined = elevation(one.project, one.plan, withBoxes());
    EXPECT_EQ(countOf(apart, "bottom"), 2 * countOf(joined, "bottom"));
    EXPECT_EQ(countOf(apart, "box edge"), 2 * countOf(joined, "box edge"));
}

TEST(TheElevationOfAFace, ShowsTheEndsOfItsFillerStrips) {
    const DrawnCase one(faced(testing::bank(2)));
    EXPECT_EQ(countOf(elevation(one.project, one.plan, {}), "filler strip end"), 2U);
    const DrawnCase two(testing::bank(2));
    EXPECT_EQ(countOf(elevation(two.project, two.plan, {}), "filler strip end"), 0U);
}

TEST(TheElevationOfAFace, ShowsNoOpeningsEdgeWhereNoneIs) {
    const DrawnCase two(testing::bank(2)), one(faced(testing::bank(2)));
    // Of eight edges the two at the rail that is not built are gone.
    EXPECT_EQ(countOf(elevation(two.project, two.plan, {}), "opening edge"), 8U);
    EXPECT_EQ(countOf(elevation(one.project, one.plan, {}), "opening edge"), 6U);
}

TEST(TheSectionOfAFace, ShowsTheWholeWallAndTheFillerStrip) {
    const DrawnCase drawn(faced(testing::bank(2)));
    const Drawing section = frontSection(drawn.project, drawn.plan, 1, {}); // the lower front
    const BoxMm wall = hatched(section, "wall");
    EXPECT_NEAR(wall.max().y() - wall.min().y(), 12.875 * inch, exactly);
    // 6 1/2 high, a gap of 3/4, 5/8 thick
    const BoxMm strip = hatched(section, "filler strip above");
    EXPECT_NEAR(strip.min().y(), 6.5 * inch, exactly);
    EXPECT_NEAR(strip.max().y(), 7.25 * inch, exactly);
    EXPECT_NEAR(strip.min().x(), -0.625 * inch, exactly);
    EXPECT_NEAR(strip.max().x(), 0, exactly);
    // The other front whole, for it is on the same wall
    const BoxMm above = hatched(section, "front above");
    EXPECT_NEAR(above.max().y(), (7.25 + 6.5) * inch, exactly);
    EXPECT_EQ(countOf(section, "member above"), 0U);
    EXPECT_GT(countOf(section, "member below"), 0U);
}

TEST(TheSectionOfAFixedFront, HasNoBoxButTheFrameThatItIsScrewedThrough) {
    const DrawnCase drawn(fixedFronts(testing::bank(1), Length::inches(1)));
    const Drawing section = frontSection(drawn.project, drawn.plan, 0, {});
    EXPECT_EQ(countOf(section, "wall"), 0U);
    EXPECT_EQ(countOf(section, "bottom"), 0U);
    const BoxMm member = hatched(section, "member below");
    EXPECT_NEAR(member.min().x(), 0, exactly);
    EXPECT_NEAR(member.max().x(), 0.75 * inch, exactly);
    EXPECT_GT(countOf(section, "screw 1"), 0U);
    const Drawing level = levelSection(drawn.project, drawn.plan, 0, {});
    EXPECT_EQ(countOf(level, "box side"), 0U);
}

std::vector<Template> wallsOf(const DrawnCase& drawn) {
    std::vector<Template> walls = templates(drawn.project, drawn.plan, {});
    std::erase_if(walls, [](const Template& t) { return t.kind != TemplateKind::BoxWall; });
    return walls;
}

TEST(TheWallTemplateOfAFace, ServesAllItsFrontsAndNamesThem) {
    const DrawnCase drawn(faced(testing::bank(2)));
    const std::vector<Template> walls = wallsOf(drawn);
    ASSERT_EQ(walls.size(), 1U);
    EXPECT_EQ(walls[0].title.english(), "Box wall A1 and A2");
    EXPECT_EQ(walls[0].parts.size(), 2U);
    std::set<std::string> holes;
    for (const Mark& mark : walls[0].drawing.marks)
        if (mark.part.name.find("mounting hole") != std::string::npos &&
            std::holds_alternative<CircleMark>(mark.shape))
            holes.insert(mark.part.name);
    EXPECT_EQ(holes.size(), 8U);
    EXPECT_EQ(countOf(walls[0].drawing, "A1 bolt hole 1") > 0, true);
    EXPECT_EQ(countOf(walls[0].drawing, "A2 bolt hole 1") > 0, true);
}

TEST(TheTemplateBehindAFixedFront, IsOfTheFrameAsSeenFromInside) {
    const DrawnCase drawn(fixedFronts(testing::bank(1), Length::inches(1)));
    const std::vector<Template> walls = wallsOf(drawn);
    ASSERT_EQ(walls.size(), 1U);
    EXPECT_EQ(walls[0].title.english(), "Frame behind A1");
    EXPECT_EQ(walls[0].parts.size(), 1U);
    EXPECT_GT(countOf(walls[0].drawing, "opening"), 0U);
    EXPECT_NEAR(walls[0].part.max().x(), 15 * inch, exactly);
}

TEST(TheTemplateBehindAFixedFront, IsNotThereWithoutScrews) {
    EXPECT_TRUE(wallsOf(DrawnCase(fixedFronts(testing::bank(1), Length::inches(0, 16)))).empty());
}

} // namespace
} // namespace frontwright
