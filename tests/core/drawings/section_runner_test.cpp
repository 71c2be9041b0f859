#include "core/drawings/section.h"
#include "tests/core/drawings/drawn_case.h"
#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

// Boxes on the small catalogue's runners: fronts overlay by 1/4 in, walls 1/2 in, frame 3/4 in;
// at 1:2 the box is broken off 60 mm behind its wall.
namespace frontwright {
namespace {

using testing::exactly;
using testing::inch;

using testing::DrawnCase;
using testing::shapesOn;

Project on(const char* runner) {
    Project project = testing::bank(1);
    project.fronts.box.runner = runner;
    project.fronts.box.depthRule = BoxDepthRule::AsRunner;
    project.fronts.box.grooveHeight = Length::inches(0, 32);
    return project;
}

std::vector<BoxMm> boxesOf(const Drawing& drawing, Layer layer, const std::string& name) {
    std::vector<BoxMm> boxes;
    for (const auto& [mark, path] : shapesOn<PathMark>(drawing, layer, name)) {
        BoxMm box;
        for (const PointMm& p : path.points)
            box.extend(p);
        boxes.push_back(box);
    }
    return boxes;
}

Drawing level(const DrawnCase& drawn, std::uint32_t hole = 0) {
    return levelSection(drawn.project, drawn.plan, 0, {drawn.project.style, 0.5, hole});
}

TEST(SectionOfARunner, HidesASideMountedOneBehindTheBoxsSide) {
    const DrawnCase drawn(on("hung"));
    const double foot = drawn.plan.fronts[0].box.wallOnFront.y.inMillimetres();
    const auto runners = boxesOf(drawn.section(), Layer::HiddenRunner, "runner");
    ASSERT_EQ(runners.size(), 1U);
    EXPECT_NEAR(runners[0].min().x(), 0.125 * inch, exactly); // behind the box's face
    EXPECT_NEAR(runners[0].max().x(), 0.5 * inch + 60, exactly);
    EXPECT_NEAR(runners[0].min().y(), foot + 0.25 * inch, exactly); // 2 in − 1 3/4 in
    EXPECT_NEAR(runners[0].max().y(), foot + 2 * inch, exactly);
}

TEST(SectionOfARunner, ShowsAnUnderMountedOneUnderTheBottomBehindTheWall) {
    const DrawnCase drawn(on("hidden"));
    const double foot = drawn.plan.fronts[0].box.wallOnFront.y.inMillimetres();
    const Drawing drawing = drawn.section();
    const auto shapes = shapesOn<PathMark>(drawing, Layer::Runner, "runner");
    ASSERT_EQ(shapes.size(), 1U);
    const auto& points = shapes[0].second.points;
    ASSERT_EQ(points.size(), 6U);
    EXPECT_NEAR(points[1].x(), 0.125 * inch, exactly); // below the box it begins there
    EXPECT_NEAR(points[1].y(), foot - 0.5 * inch, exactly);
    EXPECT_NEAR(points[2].y(), foot, exactly);
    EXPECT_NEAR(points[3].x(), 0.5 * inch, exactly); // above its lower edge behind the wall
    EXPECT_NEAR(points[4].y(), foot + 0.5 * inch, exactly);
    EXPECT_EQ(drawing.marks.empty(), false);
}

TEST(SectionOfARunner, ShowsRailAndKickerOfWoodenOnes) {
    const DrawnCase drawn(on("rails"));
    const FrontPlan& front = drawn.plan.fronts[0];
    const double foot = front.box.wallOnFront.y.inMillimetres();
    const Drawing drawing = drawn.section();
    const auto rails = boxesOf(drawing, Layer::Runner, "runner");
    const auto kickers = boxesOf(drawing, Layer::Runner, "kicker");
    ASSERT_EQ(rails.size(), 1U);
    ASSERT_EQ(kickers.size(), 1U);
    EXPECT_NEAR(rails[0].min().x(), 0.75 * inch, exactly) << "behind the frame";
    EXPECT_NEAR(rails[0].max().y(), foot, exactly);
    EXPECT_NEAR(rails[0].min().y(), foot - 0.75 * inch, exactly);
    // Box 5 5/8 in, play 1/4 in
    EXPECT_NEAR(kickers[0].min().y(), foot + 5.875 * inch, exactly);
    EXPECT_NEAR(kickers[0].sizes().y(), 0.75 * inch, exactly);
    EXPECT_EQ(boxesOf(drawing, Layer::HiddenRunner, "guide").size(), 1U);
}

TEST(SectionOfARunner, HasNoneWhereOnlyClearancesAreKnown) {
    const DrawnCase drawn(on("wooden"));
    for (const Layer layer : {Layer::Runner, Layer::HiddenRunner}) {
        EXPECT_TRUE(shapesOn<PathMark>(drawn.section(), layer).empty());
        EXPECT_TRUE(shapesOn<PathMark>(level(drawn), layer).empty());
    }
}

TEST(SectionOfARunner, DimensionsItsTopAndSetback) {
    const DrawnCase drawn(on("hung"));
    const Drawing drawing = drawn.section();
    const DimensionMark* top = testing::dimensionNamed(drawing, "runner to");
    const DimensionMark* back = testing::dimensionNamed(drawing, "runner back");
    ASSERT_NE(top, nullptr);
    ASSERT_NE(back, nullptr);
    EXPECT_EQ(top->quantity, (Quantity{QuantityKind::RunnerTop, 0, 0}));
    EXPECT_EQ(top->text, "runner to 2");
    EXPECT_EQ(back->text, "runner back 1/8");
    const DrawnCase wooden(on("rails"));
    const Drawing section = wooden.section();
    const auto* play = testing::dimensionNamed(section, "play under the kicker");
    ASSERT_NE(play, nullptr);
    EXPECT_FALSE(play->quantity) << "the kicker's height is another number";
}

TEST(SectionOfARunner, CountsItsSetbackFromWhatTheCaseHas) {
    const auto says = [](Project project, const std::string& words) {
        for (const std::string& line :
             testing::textsOn(DrawnCase(std::move(project)).section(), Layer::Note))
            if (line.find(words) != std::string::npos)
                return true;
        return false;
    };
    Project project = on("hung");
    EXPECT_TRUE(says(project, "behind the frame's face"));
    project.casework.construction = Construction::Frameless;
    EXPECT_TRUE(says(project, "behind the case's front edge"));
    EXPECT_FALSE(says(project, "the frame's face"));
}

// Opening 13 in, its edges 1/4 in inside the front's.
TEST(LevelSectionOfARunner, PutsSideMountedOnesBetweenBoxAndOpening) {
    Project project = on("hung");
    project.fronts.box.toCaseSide = Length::inches(0, 48);
    const DrawnCase drawn(project);
    const Drawing drawing = level(drawn);
    const auto runners = boxesOf(drawing, Layer::Runner, "runner");
    ASSERT_EQ(runners.size(), 2U);
    EXPECT_NEAR(runners[0].min().x(), 0.25 * inch, exactly);
    EXPECT_NEAR(runners[0].max().x(), 0.75 * inch, exactly);
    EXPECT_NEAR(runners[0].min().y(), 0.125 * inch, exactly);
    const auto furring = boxesOf(drawing, Layer::Runner, "furring");
    ASSERT_EQ(furring.size(), 2U);
    EXPECT_NEAR(furring[0].min().x(), -0.5 * inch, exactly);
    EXPECT_NEAR(furring[0].max().x(), 0.25 * inch, exactly);
    EXPECT_NEAR(furring[0].min().y(), 0.75 * inch, exactly) << "behind the frame";
    EXPECT_NE(testing::dimensionNamed(drawing, "furring"), nullptr);
}

TEST(LevelSectionOfARunner, HidesWhatLiesUnderTheBox) {
    EXPECT_EQ(boxesOf(level(DrawnCase(on("hidden"))), Layer::HiddenRunner, "runner").size(), 2U);
    EXPECT_EQ(boxesOf(level(DrawnCase(on("rails"))), Layer::HiddenRunner, "runner").size(), 2U);
    const auto middle = boxesOf(level(DrawnCase(on("middle"))), Layer::HiddenRunner, "runner");
    ASSERT_EQ(middle.size(), 1U);
    EXPECT_NEAR(middle[0].sizes().x(), 1.25 * inch, exactly);
}

TEST(SectionsOfRunners, LetNoTextOverlapAnother) {
    for (const char* runner : {"rails", "hung", "hidden", "middle"})
        for (const bool withFurring : {false, true}) {
            Project project = on(runner);
            if (withFurring)
                project.fronts.box.toCaseSide = Length::inches(0, 48);
            const DrawnCase drawn(project);
            for (std::uint32_t hole = 0; hole < drawn.plan.fronts[0].mounting.holes.size(); ++hole)
                for (const Drawing& drawing : {drawn.section(0, hole), level(drawn, hole)})
                    EXPECT_TRUE(testing::overlapping(testing::allTextBoxes(drawing)).empty())
                        << runner << hole;
        }
}

} // namespace
} // namespace frontwright
