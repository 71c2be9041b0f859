#include "core/drawings/section.h"

#include "core/lengths/format.h"
#include "tests/core/drawings/drawn_case.h"
#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::exactly;

using testing::dimensionNamed;
using testing::DrawnCase;

double lengthOf(const DimensionMark& mark) {
    return (mark.to - mark.from).norm();
}

// Two drawers: openings 6 in, overlays 1/4 in; box 1/8 in above the opening's edge, bottom's top at
// 1/2 in; wall 1/2 in, front 3/4 in.
TEST(SectionDimensions, SayWhatAMakerMeasures) {
    const DrawnCase drawn(testing::bank(2));
    const Drawing drawing = drawn.section();
    const auto text = [&](const std::string& name) {
        const auto* mark = dimensionNamed(drawing, name);
        return mark != nullptr ? mark->text : "none";
    };
    EXPECT_EQ(text("wall"), "wall 1/2");
    EXPECT_EQ(text("thickness"), "thickness 3/4");
    EXPECT_EQ(text("front height"), "front height 6 1/2");
    EXPECT_EQ(text("bottom at"), "bottom at 1/2");
    EXPECT_EQ(text("handle at"), "handle at 3 1/4");
    EXPECT_EQ(text("grip"), "grip 1 1/4");
    EXPECT_EQ(text("overlay"), "overlay 1/4");
}

TEST(SectionDimensions, AreAsLongAsTheQuantityTheyCarry) {
    for (std::uint64_t seed = 300; seed < 310; ++seed) {
        const DrawnCase drawn(testing::randomProject(seed));
        for (std::uint32_t i = 0; i < drawn.plan.fronts.size(); ++i)
            for (const DimensionMark& mark : testing::dimensionsOf(drawn.section(i))) {
                if (!mark.quantity)
                    continue;
                const auto value = valueOf(drawn.plan, *mark.quantity);
                ASSERT_TRUE(value.has_value()) << mark.text;
                EXPECT_NEAR(lengthOf(mark), value->magnitude().inMillimetres(), exactly)
                    << mark.text;
                EXPECT_TRUE(
                    mark.text.ends_with(" " + shownBare(value->magnitude(), drawn.project.style)))
                    << mark.text;
            }
    }
}

/// An extension line that runs upright through the text.
bool runsThrough(const LineMark& line, const BoxMm& text) {
    return line.from.x() == line.to.x() && text.min().x() < line.from.x() &&
           line.from.x() < text.max().x() &&
           std::min(line.from.y(), line.to.y()) < text.min().y() &&
           text.max().y() < std::max(line.from.y(), line.to.y());
}

bool runsThroughLevel(const LineMark& line, const BoxMm& text) {
    const auto turned = [](const PointMm& p) { return PointMm(p.y(), p.x()); };
    return runsThrough({turned(line.from), turned(line.to)},
                       BoxMm(turned(text.min()), turned(text.max())));
}

TEST(SectionDimensions, RunNoExtensionLineThroughABoltsFigures) {
    for (const MountingWay way : allMountingWays)
        for (const Length depth : {Length::inches(0, 8), Length::inches(0, 16)}) {
            Project project = testing::bank(2);
            project.fronts.hardware.way = way;
            project.fronts.hardware.counterbore = depth;
            const Drawing drawing = DrawnCase(project).section();
            for (const char* name : {"counterbore", "grip", "bolt length"}) {
                const auto* one = dimensionNamed(drawing, name);
                if (one == nullptr)
                    continue;
                const BoxMm text = textBox(figureOf(*one, 0.5).text, 0.5);
                for (const DimensionMark& other : testing::dimensionsOf(drawing))
                    for (const LineMark& line : figureOf(other, 0.5).extensions)
                        EXPECT_FALSE(runsThrough(line, text)) << name << " by " << other.text;
            }
        }
}

TEST(SectionDimensions, SayRecessAndWebUnderTheHead) {
    // Wall 1/2 in, recess 1/8 in, head 3/32 in: 9/32 in of wood stay under it.
    const DrawnCase drawn(testing::bank(2));
    const Drawing drawing = drawn.section();
    const auto* recess = dimensionNamed(drawing, "recess");
    const auto* web = dimensionNamed(drawing, "web");
    ASSERT_TRUE(recess != nullptr && web != nullptr);
    EXPECT_EQ(recess->text, "recess 1/8");
    EXPECT_NEAR(lengthOf(*web), 9.0 / 32 * 25.4, exactly);
    EXPECT_NEAR(std::max(recess->from.x(), recess->to.x()), 12.7, exactly);
}

TEST(SectionDimensions, AllButWhatTheScrewLeavesOfTheWallCarryAQuantity) {
    const DrawnCase drawn(testing::bank(2));
    for (const auto& [mark, dimension] :
         testing::shapesOn<DimensionMark>(drawn.section(), Layer::Dimension))
        EXPECT_EQ(dimension.quantity.has_value(),
                  mark.part.name != "wall" && mark.part.name != "recess" && mark.part.name != "web")
            << mark.part.name;
}

TEST(SectionDimensions, OfTheScrewLieBelowForALowHoleAndAboveForAHighOne) {
    const DrawnCase drawn(testing::bank(2));
    const FrontPlan& front = drawn.plan.fronts[0];
    const double middle = front.rect.height().inMillimetres() / 2;
    for (std::uint32_t i = 0; i < front.mounting.holes.size(); ++i) {
        const Drawing drawing = drawn.section(0, i);
        const bool isLow =
            toFront(front.box, front.mounting.holes[i].at).y.inMillimetres() < middle;
        const auto* screw = dimensionNamed(drawing, "screw length");
        const auto* grip = dimensionNamed(drawing, "grip");
        ASSERT_TRUE(screw != nullptr && grip != nullptr);
        EXPECT_EQ(screw->from.y() < middle, isLow);
        EXPECT_NE(grip->from.y() < middle, isLow);
        EXPECT_EQ(screw->quantity->kind, QuantityKind::ScrewLength);
        const auto* cover = dimensionNamed(drawing, "tip cover");
        ASSERT_NE(cover, nullptr);
        EXPECT_EQ(cover->quantity->index, i);
    }
}

TEST(SectionDimensions, OfTheHoleStartAtTheBoxsLowerEdge) {
    const DrawnCase drawn(testing::bank(2));
    const FrontPlan& front = drawn.plan.fronts[0];
    const auto* hole = dimensionNamed(drawn.section(), "hole at");
    ASSERT_NE(hole, nullptr);
    EXPECT_NEAR(std::min(hole->from.y(), hole->to.y()), front.box.wallOnFront.y.inMillimetres(),
                exactly);
    EXPECT_NEAR(lengthOf(*hole), front.mounting.holes[0].at.y.inMillimetres(), exactly);
}

TEST(SectionDimensions, GiveTheGapRoundAnInsetFront) {
    Project project = testing::bank(1);
    project.fronts.fit = FrontFit::all({Fit::Inset, Length::inches(0, 8)});
    const DrawnCase drawn(project);
    const auto gaps = testing::shapesOn<DimensionMark>(drawn.section(), Layer::Dimension, "gap");
    ASSERT_EQ(gaps.size(), 2U);
    for (const auto& [mark, gap] : gaps) {
        EXPECT_EQ(gap.text, "gap 1/8");
        EXPECT_NEAR(lengthOf(gap), 25.4 / 8, exactly);
    }
    EXPECT_EQ(dimensionNamed(drawn.section(), "overlay"), nullptr);
}

TEST(SectionDimensions, CallFrontsThatReachOverOneAnotherAnOverlap) {
    Project project = testing::bank(2); // rail 1 1/4 in
    project.fronts.fit = FrontFit::all({Fit::Overlay, Length::inches(0, 48)});
    const DrawnCase drawn(project);
    const auto* overlap = dimensionNamed(drawn.section(1), "overlap");
    ASSERT_NE(overlap, nullptr);
    EXPECT_EQ(overlap->text, "overlap 1/4"); // 2 × 3/4 − 1 1/4
}

TEST(SectionDimensions, SayTheCounterboreOnlyWhereThereIsOne) {
    Project project = testing::bank(2);
    EXPECT_EQ(dimensionNamed(DrawnCase(project).section(), "counterbore"), nullptr);
    project.fronts.hardware.counterbore = Length::inches(0, 16);
    const DrawnCase drawn(project);
    const Drawing drawing = drawn.section();
    const auto* bored = dimensionNamed(drawing, "counterbore");
    ASSERT_NE(bored, nullptr);
    EXPECT_EQ(bored->text, "counterbore 1/4");
    EXPECT_EQ(dimensionNamed(drawing, "grip")->text, "grip 1");
}

TEST(SectionDimensions, LieOutsideWhatIsDrawn) {
    const DrawnCase drawn(testing::bank(2));
    const Drawing drawing = drawn.section();
    BoxMm wood;
    for (const auto& [mark, hatch] : testing::shapesOn<HatchMark>(drawing, Layer::CutHatch))
        for (const PointMm& p : hatch.outline)
            wood.extend(p);
    for (const BoxMm& box : testing::textBoxes(drawing))
        EXPECT_FALSE(testing::haveCommonArea(box, wood));
}

TEST(SectionNote, NamesFrontScrewAndBolt) {
    Project project = testing::bank(2);
    project.fronts.mounting.length = Length::inches(1);
    const DrawnCase drawn(project);
    const auto lines = testing::textsOn(drawn.section(1, 2), Layer::Note);
    ASSERT_EQ(lines.size(), 4U);
    EXPECT_EQ(lines[0], "A2, section through screw 3");
    EXPECT_EQ(lines[1], "No. 8 flat-head wood screw × 1 in; clearance hole 3/16 in, "
                        "pilot hole 1/8 in");
    EXPECT_EQ(lines[2].find("8-32 pan head × "), 0U);
    EXPECT_NE(lines[2].find("through wall and front"), std::string::npos);
    // The web of 9/32 in is shown to the nearest 1/16 in.
    EXPECT_EQ(lines[3], "Dimensions in inches, scale 1:2; ≈ nearest 1/16");
}

TEST(SectionNote, IsLeftOutWhereItIsSaidBesideTheSection) {
    const DrawnCase drawn(testing::bank(2));
    SectionOptions options;
    options.notes = SectionNotes::LeftOut;
    const Drawing drawing = frontSection(drawn.project, drawn.plan, 0, options);
    EXPECT_TRUE(testing::textsOn(drawing, Layer::Note).empty());
}

TEST(AnySection, HasNoLineOfItsDimensionsThroughTheirFigures) {
    for (const std::size_t fronts : {1U, 3U})
        for (const double scale : {0.15, 0.3, 0.5, 1.0}) {
            const DrawnCase drawn(testing::bank(fronts));
            SectionOptions options;
            options.paperScale = scale;
            for (const Drawing& drawing : {frontSection(drawn.project, drawn.plan, 0, options),
                                           levelSection(drawn.project, drawn.plan, 0, options)}) {
                const PlainMarks marks = plain(drawing);
                for (const LabelMark& label : marks.labels) {
                    const BoxMm text = textBox(label.text, scale);
                    for (const StrokeMark& stroke : marks.strokes)
                        if (const LineMark line{stroke.points[0], stroke.points[1]};
                            stroke.layer == Layer::Dimension)
                            EXPECT_FALSE(runsThrough(line, text) || runsThroughLevel(line, text))
                                << label.text.text << " at " << scale;
                }
            }
        }
}

} // namespace
} // namespace frontwright
