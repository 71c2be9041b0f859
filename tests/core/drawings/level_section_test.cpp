#include "core/drawings/section.h"

#include "core/lengths/format.h"
#include "tests/core/drawings/drawn_case.h"
#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::exactly;
using testing::inch;

using testing::dimensionNamed;
using testing::DrawnCase;
using testing::shapesOn;

Drawing level(const DrawnCase& drawn, std::uint32_t hole = 0,
              std::optional<std::uint32_t> handleHole = {}, double scale = 0.5) {
    SectionOptions options;
    options.style = drawn.project.style;
    options.paperScale = scale;
    options.mountingHole = hole;
    options.handleHole = handleHole;
    return levelSection(drawn.project, drawn.plan, 0, options);
}
std::vector<BoxMm> hatched(const Drawing& drawing, const std::string& name) {
    std::vector<BoxMm> boxes;
    for (const auto& [mark, hatch] : shapesOn<HatchMark>(drawing, Layer::CutHatch, name)) {
        BoxMm box;
        for (const PointMm& p : hatch.outline)
            box.extend(p);
        boxes.push_back(box);
    }
    return boxes;
}
BoxMm outlined(const Drawing& drawing, Layer layer, const std::string& name) {
    BoxMm box;
    for (const auto& [mark, path] : shapesOn<PathMark>(drawing, layer, name))
        for (const PointMm& p : path.points)
            box.extend(p);
    return box;
}
std::string text(const Drawing& drawing, const std::string& name) {
    const auto* mark = dimensionNamed(drawing, name);
    return mark != nullptr ? mark->text : "none";
}
Project withAccessHoles() {
    Project project = testing::bank(2);
    project.fronts.hardware.way = MountingWay::FrontAccessHole;
    return project;
}

// Front 13 1/2 in wide and 3/4 in thick on a 1/2 in wall; sides 1/2 in thick.
TEST(LevelSection, HasTheShowFaceBelowAndTheBoxAboveIt) {
    const DrawnCase drawn(testing::bank(2));
    const Drawing drawing = level(drawn);
    const auto front = hatched(drawing, "front"), wall = hatched(drawing, "wall");
    ASSERT_EQ(front.size(), 1U);
    EXPECT_NEAR(front[0].min().x(), 0, exactly);
    EXPECT_NEAR(front[0].max().x(), 13.5 * inch, exactly);
    EXPECT_NEAR(front[0].min().y(), -0.75 * inch, exactly);
    EXPECT_NEAR(front[0].max().y(), 0, exactly);
    ASSERT_EQ(wall.size(), 1U);
    const BoxPlan& box = drawn.plan.fronts[0].box;
    EXPECT_NEAR(wall[0].min().x(), box.wallOnFront.x.inMillimetres(), exactly);
    EXPECT_NEAR(wall[0].sizes().x(), box.width.inMillimetres(), exactly);
    EXPECT_NEAR(wall[0].max().y(), 0.5 * inch, exactly);
}

TEST(LevelSection, HasBothBoxSidesBehindTheWall) {
    const DrawnCase drawn(testing::bank(2));
    const auto sides = hatched(level(drawn), "box side");
    ASSERT_EQ(sides.size(), 2U);
    for (const BoxMm& side : sides) {
        EXPECT_NEAR(side.sizes().x(), 0.5 * inch, exactly);
        EXPECT_NEAR(side.min().y(), 0.5 * inch, exactly);
    }
    const BoxPlan& box = drawn.plan.fronts[0].box;
    EXPECT_NEAR(sides[1].max().x() - sides[0].min().x(), box.width.inMillimetres(), exactly);
}

// Overlay 1/4 in: the stile's edge lies 1/4 in inside the front's.
TEST(LevelSection, HasTheMembersBesideTheFront) {
    const DrawnCase drawn(testing::bank(2));
    const Drawing drawing = level(drawn);
    const auto left = hatched(drawing, "member left"), right = hatched(drawing, "member right");
    ASSERT_EQ(left.size(), 1U);
    ASSERT_EQ(right.size(), 1U);
    EXPECT_NEAR(left[0].max().x(), 0.25 * inch, exactly);
    EXPECT_NEAR(right[0].min().x(), 13.25 * inch, exactly);
    EXPECT_NEAR(left[0].min().y(), 0, exactly);
    EXPECT_NEAR(left[0].max().y(), 0.75 * inch, exactly);
}

TEST(LevelSection, ShowsTheWholeRowOfScrewsAtTheSelectedHeight) {
    const DrawnCase drawn(testing::bank(2));
    const Drawing low = level(drawn, 0), high = level(drawn, 2);
    EXPECT_FALSE(shapesOn<PathMark>(low, Layer::Fastener, "screw 1").empty());
    EXPECT_FALSE(shapesOn<PathMark>(low, Layer::Fastener, "screw 2").empty());
    EXPECT_TRUE(shapesOn<PathMark>(low, Layer::Fastener, "screw 3").empty());
    EXPECT_FALSE(shapesOn<PathMark>(high, Layer::Fastener, "screw 3").empty());
    const FrontPlan& front = drawn.plan.fronts[0];
    EXPECT_NEAR(outlined(low, Layer::Fastener, "screw 1").center().x(),
                toFront(front.box, front.mounting.holes[0].at).x.inMillimetres(), exactly);
}

TEST(LevelSection, ThroughTheHandleShowsNoScrew) {
    const DrawnCase drawn(testing::bank(2));
    const Drawing drawing = level(drawn, 0, 0);
    EXPECT_TRUE(shapesOn<PathMark>(drawing, Layer::Fastener, "screw 1").empty());
    EXPECT_FALSE(shapesOn<PathMark>(drawing, Layer::Fastener, "bolt").empty());
    EXPECT_EQ(text(drawing, "screw length"), "none");
    EXPECT_EQ(text(drawing, "grip"), "grip 1 1/4");
}

TEST(LevelSection, SaysClearanceDepthsAndWidths) {
    Project project = testing::bank(2);
    project.fronts.mounting.length = Length::inches(1);
    const DrawnCase drawn(project);
    const Drawing drawing = level(drawn);
    const FrontPlan& front = drawn.plan.fronts[0];
    EXPECT_EQ(text(drawing, "front width"), "front width 13 1/2");
    EXPECT_EQ(text(drawing, "side clearance"),
              "side clearance " + shownBare(front.box.sideClearance, project.style));
    EXPECT_EQ(text(drawing, "tip cover"), "tip cover 1/8");     // 3/4 − 5/8
    EXPECT_EQ(text(drawing, "drill depth"), "drill depth 5/8"); // 1 + 1/8 − 1/2
    EXPECT_EQ(text(drawing, "recess"), "recess 1/8");
    EXPECT_EQ(text(drawing, "web"), "web ≈ 5/16"); // 1/2 − 1/8 − 3/32 = 9/32
    EXPECT_EQ(text(drawing, "hole at"),
              "hole at " + shownBare(front.mounting.holes[0].at.x, project.style));
}

TEST(LevelSection, ReachesTheBoltThroughItsAccessHole) {
    const DrawnCase drawn(withAccessHoles());
    const Drawing drawing = level(drawn, 0, 0);
    const HardwarePlan& hardware = *drawn.plan.fronts[0].hardware;
    const BoxMm access = outlined(drawing, Layer::AccessHole, "access hole");
    EXPECT_NEAR(access.sizes().x(), hardware.accessDiameter.inMillimetres(), exactly);
    EXPECT_NEAR(access.max().y(), 0.5 * inch, exactly);
    const auto driver = shapesOn<LineMark>(drawing, Layer::BoxEdge, "driver");
    ASSERT_EQ(driver.size(), 2U);
    for (const auto& [mark, line] : driver) {
        EXPECT_GT(line.to.y(), 0.5 * inch);
        EXPECT_TRUE(access.min().x() < line.from.x() && line.from.x() < access.max().x());
    }
    // Head of 3/32 in on the front's back, wall 1/2 in: 13/32 in.
    EXPECT_EQ(text(drawing, "driver reaches in"), "driver reaches in ≈ 7/16");
    EXPECT_NE(dimensionNamed(drawing, "access hole"), nullptr);
    EXPECT_EQ(dimensionNamed(level(DrawnCase(testing::bank(2)), 0, 0), "access hole"), nullptr);
}

TEST(LevelSection, LetsBoltsGiveWayToTheRowOfScrews) {
    Project project = testing::bank(1);
    project.fronts.mounting.pattern = ScrewPattern::ByHand;
    const DrawnCase before(project = testing::bank(1));
    const FrontPlan& front = before.plan.fronts[0];
    const WallPoint below = toWall(front.box, front.hardware->holes[0]);
    project.fronts.mounting.pattern = ScrewPattern::ByHand;
    project.fronts.mounting.placed = {{below.x, below.y - Length::inches(2)}};
    const DrawnCase drawn(project);
    EXPECT_TRUE(shapesOn<PathMark>(level(drawn), Layer::Fastener, "bolt").empty());
    EXPECT_FALSE(shapesOn<PathMark>(level(drawn, 0, 0), Layer::Fastener, "bolt").empty());
}

TEST(LevelSection, HasAProfiledEndAtEitherSide) {
    Project project = testing::bank(2);
    project.fronts.profile.family = ProfileFamily::Chamfer;
    project.fronts.profile.width = Length::inches(0, 32);
    project.fronts.profile.depth = Length::inches(0, 16);
    const DrawnCase drawn(project);
    for (const auto& [mark, hatch] : shapesOn<HatchMark>(level(drawn), Layer::CutHatch, "front")) {
        double atEnd = 0, inside = 0;
        for (const PointMm& p : hatch.outline) {
            if (p.x() < exactly)
                atEnd = std::min(atEnd, p.y());
            inside = std::min(inside, p.y());
        }
        EXPECT_NEAR(atEnd, -0.5 * inch, 1e-3);
        EXPECT_NEAR(inside, -0.75 * inch, exactly);
    }
}

TEST(LevelSection, HasNoFigureUponAnother) {
    for (std::uint64_t seed = 500; seed < 506; ++seed) {
        const DrawnCase drawn(testing::randomProject(seed));
        for (const double scale : {1.0, 0.5, 0.2})
            for (std::uint32_t hole = 0; hole < drawn.plan.fronts[0].mounting.holes.size(); ++hole)
                EXPECT_TRUE(
                    testing::overlapping(testing::textBoxes(level(drawn, hole, {}, scale))).empty())
                    << seed << ' ' << scale;
    }
}

TEST(LevelSection, DimensionsAreAsLongAsTheQuantityTheyCarry) {
    for (std::uint64_t seed = 300; seed < 306; ++seed) {
        const DrawnCase drawn(testing::randomProject(seed));
        for (const DimensionMark& mark : testing::dimensionsOf(level(drawn))) {
            if (!mark.quantity)
                continue;
            const auto value = valueOf(drawn.plan, *mark.quantity);
            ASSERT_TRUE(value.has_value()) << mark.text;
            EXPECT_NEAR((mark.to - mark.from).norm(), value->magnitude().inMillimetres(), exactly)
                << mark.text;
        }
    }
}

TEST(LevelSection, IsNamedForItsScrew) {
    const DrawnCase drawn(testing::bank(2));
    const auto lines = testing::textsOn(level(drawn, 1), Layer::Note);
    ASSERT_FALSE(lines.empty());
    EXPECT_EQ(lines[0], "A1, level section through screw 2");
}

} // namespace
} // namespace frontwright
