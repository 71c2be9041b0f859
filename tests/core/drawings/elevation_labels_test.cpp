#include "core/drawings/elevation.h"

#include "tests/core/drawings/drawn_case.h"
#include "tests/core/plan/faced.h"

#include <gtest/gtest.h>

#include <set>

namespace frontwright {
namespace {

using testing::DrawnCase;

std::vector<TextMark> labelOf(const DrawnCase& drawn, std::uint32_t front,
                              const ElevationOptions& options) {
    std::vector<TextMark> lines;
    for (const auto& [mark, text] : testing::shapesOn<TextMark>(
             frontElevation(drawn.project, drawn.plan, front, options), Layer::Note, "label"))
        lines.push_back(text);
    return lines;
}

TEST(Label, StandsBesideTheHandleInOneColumnDownABank) {
    const DrawnCase drawn(testing::bank(4));
    std::set<double> places;
    for (std::uint32_t i = 0; i < 4; ++i) {
        const auto lines = labelOf(drawn, i, drawn.at(0.1));
        ASSERT_FALSE(lines.empty());
        places.insert(lines.front().at.x());
    }
    EXPECT_EQ(places.size(), 1U);
    EXPECT_LT(*places.begin(), drawn.plan.fronts[0].rect.centre().x.inMillimetres());
}

TEST(Label, HasOneHeightOfNamesWhereverItFits) {
    for (const double scale : {0.5, 0.2, 0.1}) {
        const DrawnCase drawn(testing::banks(2, 3));
        for (std::uint32_t i = 0; i < drawn.plan.fronts.size(); ++i)
            EXPECT_DOUBLE_EQ(labelOf(drawn, i, drawn.at(scale)).front().height, 2.5);
    }
}

TEST(Label, UsesLetteringOfIso3098) {
    // 1.8, 2.5, 3.5 … mm (ISO 3098).
    for (std::uint64_t seed = 400; seed < 408; ++seed) {
        const DrawnCase drawn(testing::randomProject(seed));
        for (std::uint32_t i = 0; i < drawn.plan.fronts.size(); ++i)
            for (const TextMark& line : labelOf(drawn, i, drawn.at(0.05)))
                EXPECT_TRUE(line.height == 1.8 || line.height == 2.5) << line.height;
    }
}

// A front of 24 1/2 × 6 in without a handle, at about 1:8: its own dimensions take its middle.
TEST(Label, OfASelectedFrontMovesBesideItsDimensions) {
    Project project = testing::oneOpening(Length::inches(23), Length::inches(4, 32));
    project.fronts.hardware.form.clear();
    const DrawnCase drawn(testing::fixedFronts(std::move(project), Length::inches(0, 48)));
    ElevationOptions options = drawn.at(0.12);
    ASSERT_FALSE(labelOf(drawn, 0, options).empty());
    options.emphasised = drawn.plan.fronts[0].opening;
    const auto name = labelOf(drawn, 0, options);
    ASSERT_EQ(name.size(), 1U);
    EXPECT_EQ(name[0].text, "A1");
    const Drawing whole = elevation(drawn.project, drawn.plan, options);
    EXPECT_TRUE(testing::overlapping(testing::allTextBoxes(whole)).empty());
}

TEST(Label, BreaksALongNameInTwo) {
    const Project project = testing::withOpenings(
        testing::oneOpening(Length::inches(16), Length::inches(4)),
        [](Opening& opening, std::size_t) { opening.name = "Cones and wax pots"; });
    const DrawnCase drawn(project);
    // 16 1/2 in are 42 mm at 1:10: beside the knob the name is too wide, below it too tall.
    const auto lines = labelOf(drawn, 0, drawn.at(0.1));
    ASSERT_EQ(lines.size(), 2U);
    EXPECT_EQ(lines[0].text, "Cones and");
    EXPECT_EQ(lines[1].text, "wax pots");
    EXPECT_GT(lines[0].at.y(), lines[1].at.y());
    EXPECT_DOUBLE_EQ(lines[0].at.x(), lines[1].at.x());
}

TEST(Label, LeavesTheSizeOutBeforeItLeavesTheNameOut) {
    const DrawnCase drawn(testing::bank(2));
    // At 1:5 there is room for both, at 1:10 beside the knob only for the name.
    EXPECT_EQ(labelOf(drawn, 0, drawn.at(0.2)).size(), 2U);
    const auto small = labelOf(drawn, 0, drawn.at(0.1));
    ASSERT_EQ(small.size(), 1U);
    EXPECT_EQ(small[0].text, "A1");
}

TEST(Label, KeepsOffTheLinesOfTheBoxAndTheAllowedRegion) {
    for (const double scale : {0.2, 0.1}) {
        const DrawnCase drawn(testing::banks(2, 2));
        ElevationOptions options = drawn.at(scale);
        options.boxes = options.bottoms = options.allowedRegion = Shown::Yes;
        for (std::uint32_t i = 0; i < drawn.plan.fronts.size(); ++i) {
            const Drawing drawing = frontElevation(drawn.project, drawn.plan, i, options);
            for (const BoxMm& text : testing::allTextBoxes(drawing))
                for (const Layer layer : {Layer::BoxEdge, Layer::AllowedRegion})
                    for (const auto& [mark, path] : testing::shapesOn<PathMark>(drawing, layer)) {
                        BoxMm outline;
                        for (const PointMm& p : path.points)
                            outline.extend(p);
                        // Wholly inside the outline or wholly outside: never upon its line.
                        EXPECT_TRUE(outline.contains(text) || !outline.intersects(text));
                    }
        }
    }
}

TEST(Label, TakesTheMiddleBetweenTwoHandles) {
    Project project = testing::bank(1);
    project.fronts.hardware.twoPast = Length::inches(10);
    const DrawnCase drawn(project);
    ASSERT_EQ(drawn.plan.fronts[0].hardware->handles.size(), 2U);
    const auto lines = labelOf(drawn, 0, drawn.at(0.5));
    ASSERT_FALSE(lines.empty());
    EXPECT_NEAR(lines[0].at.x(), toMm(drawn.plan.fronts[0].rect).center().x(), 1e-9);
}

TEST(Label, HasRoomInTheFieldOfAProfiledFront) {
    Project project = testing::bank(2);
    project.fronts.profile.family = ProfileFamily::Chamfer;
    project.fronts.profile.width = Length::inches(1);
    project.fronts.profile.depth = Length::inches(0, 16);
    const DrawnCase drawn(project);
    for (std::uint32_t i = 0; i < 2; ++i) {
        const FrontPlan& front = drawn.plan.fronts[i];
        const PointMm origin = toMm(front.rect.lowerLeft());
        const BoxMm field = toMm(front.field);
        for (const TextMark& line : labelOf(drawn, i, drawn.at(0.2)))
            EXPECT_TRUE(
                BoxMm(field.min() + origin, field.max() + origin).contains(textBox(line, 0.2)));
    }
}

// An opening 2 1/4 in high is 6.9 mm at 0.12: two lines and their margins need 7.5 mm.
TEST(Label, HasTheSizeBesideTheNameOnALowFront) {
    Project project = testing::oneOpening(Length::inches(24), Length::inches(2, 16));
    project.fronts.hardware.form.clear();
    const DrawnCase drawn(project);
    for (const double scale : {0.1, 0.12}) {
        const auto lines = labelOf(drawn, 0, drawn.at(scale));
        ASSERT_EQ(lines.size(), 2U) << scale;
        EXPECT_EQ(lines[0].text, "A1");
        EXPECT_EQ(lines[1].text, "24 1/2 × 2 3/4");
        EXPECT_DOUBLE_EQ(lines[0].at.y(), lines[1].at.y());
        EXPECT_LT(lines[0].at.x(), lines[1].at.x());
    }
}

TEST(Label, HasNoSizeWhereNoneIsAskedFor) {
    const DrawnCase drawn(testing::banks(2, 3));
    ElevationOptions options = drawn.at(0.5);
    options.sizes = Shown::No;
    for (std::uint32_t i = 0; i < drawn.plan.fronts.size(); ++i)
        EXPECT_EQ(labelOf(drawn, i, options).size(), 1U);
}

// What is dragged or selected moves a name or hides it for a while; it never shrinks.
TEST(Label, IsNeverSmallerForWhatIsEmphasised) {
    for (std::uint64_t seed = 500; seed < 512; ++seed) {
        const DrawnCase drawn(testing::randomProject(seed));
        for (const double scale : {0.05, 0.1, 0.2})
            for (std::uint32_t i = 0; i < drawn.plan.fronts.size(); ++i) {
                const auto calm = labelOf(drawn, i, drawn.at(scale));
                ElevationOptions options = drawn.at(scale);
                const CaseRect rect = drawn.plan.fronts[i].rect;
                options.keepFree = CaseRect{rect.left, rect.bottom, rect.centre().x, rect.top};
                const auto beside = labelOf(drawn, i, options);
                options.keepFree.reset();
                options.emphasised = drawn.plan.fronts[i].opening;
                const auto selected = labelOf(drawn, i, options);
                for (const auto& now : {beside, selected})
                    if (!now.empty()) {
                        ASSERT_FALSE(calm.empty());
                        EXPECT_GE(now.front().height, calm.front().height);
                    }
            }
    }
}

TEST(Label, StaysWhereItIsWhenWhatIsEmphasisedLiesElsewhere) {
    const DrawnCase drawn(testing::banks(2, 3));
    ElevationOptions options = drawn.at(0.2);
    const CaseRect rect = drawn.plan.fronts[0].rect;
    options.keepFree = CaseRect{rect.left, rect.bottom, rect.left + Length::millimetres(1),
                                rect.bottom + Length::millimetres(1)};
    EXPECT_EQ(labelOf(drawn, 0, options), labelOf(drawn, 0, drawn.at(0.2)));
}

} // namespace
} // namespace frontwright
