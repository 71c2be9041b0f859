// What stands round a case, as it is drawn and dimensioned.

#include "tests/core/drawings/drawn_case.h"
#include "tests/core/plan/round_case.h"

#include <gtest/gtest.h>

namespace frontwright::testing {
namespace {

BoxMm boxOf(const std::vector<PointMm>& points) {
    BoxMm box;
    for (const PointMm& point : points)
        box.extend(point);
    return box;
}

BoxMm boxNamed(const Drawing& drawing, const std::string& name) {
    const auto found = shapesOn<PathMark>(drawing, Layer::Surrounding, name);
    return found.empty() ? BoxMm() : boxOf(found.front().second.points);
}

TEST(Surroundings, AreDrawnWhereTheyStand) {
    const DrawnCase drawn(roundedWith(framelessBanks()));
    const Drawing drawing = drawn.elevation();
    EXPECT_TRUE(boxNamed(drawing, "top").isApprox(BoxMm(PointMm(-2, 720), PointMm(900, 750))));
    EXPECT_TRUE(
        boxNamed(drawing, "lip of the top").isApprox(BoxMm(PointMm(0, 712), PointMm(900, 720))));
    EXPECT_TRUE(boxNamed(drawing, "plinth").isApprox(BoxMm(PointMm(0, -100), PointMm(900, 0))));
    EXPECT_DOUBLE_EQ(boxNamed(drawing, "neighbouring case").min().x(), 900);
    EXPECT_DOUBLE_EQ(boxNamed(drawing, "neighbour's front").min().x(), 901.5);
    const auto wall = shapesOn<LineMark>(drawing, Layer::Surrounding, "wall");
    ASSERT_EQ(wall.size(), 1U);
    EXPECT_DOUBLE_EQ(wall.front().second.from.x(), -2);
}

TEST(Surroundings, OfLegsAreTwoSeenFromTheFront) {
    Project project = framelessBanks();
    project.casework.surroundings.bottom = Legs{mm(120), mm(40), mm(30)};
    const DrawnCase drawn(std::move(project));
    const auto legs = shapesOn<PathMark>(drawn.elevation(), Layer::Surrounding, "leg");
    ASSERT_EQ(legs.size(), 2U);
    EXPECT_TRUE(boxOf(legs[0].second.points).isApprox(BoxMm(PointMm(30, -120), PointMm(70, 0))));
    EXPECT_TRUE(boxOf(legs[1].second.points).isApprox(BoxMm(PointMm(830, -120), PointMm(870, 0))));
}

TEST(Dimensions, AddUpCaseAndSurroundingsToTheWhole) {
    const DrawnCase drawn(roundedWith(framelessBanks()));
    const Drawing drawing = drawn.elevation();
    const DimensionMark* total = dimensionNamed(drawing, "total height");
    ASSERT_NE(total, nullptr);
    EXPECT_EQ(total->text, "850");
    EXPECT_EQ(dimensionNamed(drawing, "case height")->text, "720");
    EXPECT_EQ(dimensionNamed(drawing, "total width")->text, "902");
    std::vector<std::string> added;
    for (const auto& [mark, dimension] :
         shapesOn<DimensionMark>(drawing, Layer::Dimension, "round the case"))
        added.push_back(dimension.text);
    EXPECT_EQ(added, (std::vector<std::string>{"100", "30", "2"}));
}

TEST(Dimensions, DoNotMeetWhatStandsRoundTheCase) {
    const DrawnCase drawn(roundedWith(framelessBanks()));
    for (const double scale : {0.1, 0.2}) {
        const Drawing drawing = drawn.elevation(scale);
        BoxMm round;
        for (const auto& [mark, path] : shapesOn<PathMark>(drawing, Layer::Surrounding))
            round.extend(boxOf(path.points));
        for (const BoxMm& text : textBoxes(drawing))
            EXPECT_FALSE(haveCommonArea(text, round)) << scale;
        EXPECT_TRUE(overlapping(textBoxes(drawing)).empty()) << scale;
    }
}

TEST(Dimensions, AreAsTheyWereWhereNothingStandsRoundTheCase) {
    const DrawnCase drawn(framelessBanks());
    EXPECT_EQ(dimensionNamed(drawn.elevation(), "total height"), nullptr);
    // Nothing is measured where no shelf lies between drawers.
    for (const auto& [mark, dimension] :
         shapesOn<DimensionMark>(drawn.elevation(), Layer::Dimension, "member width"))
        EXPECT_NE(dimension.text, "0");
}

TEST(SystemHoles, AreDrawnWhereTheyAreAskedFor) {
    const DrawnCase drawn(roundedWith(framelessBanks()));
    EXPECT_TRUE(shapesOn<PathMark>(drawn.elevation(), Layer::SystemHole).empty());
    ElevationOptions options = drawn.at(0.1);
    options.systemHoles = Shown::Yes;
    const Drawing drawing = caseElevation(drawn.project, drawn.plan, options);
    // 21 heights in each of four faces: 41, 73 … 681
    EXPECT_EQ(shapesOn<PathMark>(drawing, Layer::SystemHole).size(), 4U * 21);
}

TEST(TheSection, CutsThePanelAsDeepAsItIsDrawnAndShowsTheRowBehindIt) {
    const DrawnCase drawn(roundedWith(framelessBanks()));
    const Drawing section = drawn.section(0); // A1, scale 1:2
    const auto top = shapesOn<PathMark>(section, Layer::Surrounding, "top");
    ASSERT_EQ(top.size(), 1U);
    EXPECT_DOUBLE_EQ(boxOf(top[0].second.points).min().x(), -25); // over the front
    const auto holes = shapesOn<CircleMark>(section, Layer::SystemHole);
    ASSERT_FALSE(holes.empty());
    for (const auto& [mark, circle] : holes) {
        EXPECT_DOUBLE_EQ(circle.centre.x(), 37);
        EXPECT_DOUBLE_EQ(circle.radius, 2.5);
    }
    // A1 begins 475.5 above the case's lower edge; the first hole in its opening is 9 + 15 · 32.
    EXPECT_DOUBLE_EQ(holes.front().second.centre.y(), 489 - 475.5);
}

} // namespace
} // namespace frontwright::testing
