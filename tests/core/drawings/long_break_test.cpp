#include "core/drawings/long_break.h"

#include "core/drawings/section.h"
#include "core/drawings/sketch.h"
#include "tests/core/drawings/drawn_case.h"
#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::exactly;

using testing::dimensionNamed;
using testing::DrawnCase;
using testing::shapesOn;

/// A board 200 mm long and 20 mm thick with a hole of 4 mm at 30, hatched; drawn 1:1.
std::vector<Mark> board() {
    Sketch sketch(1);
    const BoxMm box(PointMm(0, 0), PointMm(200, 20));
    sketch.rectangle(Layer::CutEdge, box, {{}, {}, "board"});
    HatchMark hatch;
    hatch.outline = cornersOf(box);
    sketch.add({Layer::CutHatch, hatch, {{}, {}, "board"}});
    sketch.circle(Layer::Hole, {30, 10}, 2, {{}, {}, "hole"});
    return sketch.marks();
}

// From 32 to 200 there is nothing: 2.5 mm are kept on both sides, so 34.5 to 197.5 goes, 163 mm,
// and 2.5 mm show in its place. From 0 to 28 is more than 2 × 2.5 + 8 mm: there 23 mm go.
TEST(LongBreak, LeavesOutWhatIsLongAndEmpty) {
    const LongBreak breaks(board(), 1);
    EXPECT_NEAR(breaks.placed(0), 0, exactly);
    EXPECT_NEAR(breaks.placed(30), 30 - 20.5, exactly);
    EXPECT_NEAR(breaks.placed(200), 200 - 20.5 - 160.5, exactly);
}

TEST(LongBreak, KeepsShortStretchesWhole) {
    // At 2:5 those 28 mm are 11.2 mm of paper.
    const LongBreak breaks(board(), 0.4);
    EXPECT_NEAR(breaks.placed(30), 30, exactly);
    EXPECT_LT(breaks.placed(200), 200);
    EXPECT_TRUE(LongBreak(board(), 0.05).isEmpty());
}

TEST(LongBreak, IsMonotoneAndMovesNothingBackwards) {
    const LongBreak breaks(board(), 1);
    for (double x = -10; x < 210; x += 0.5) {
        EXPECT_LT(breaks.placed(x), breaks.placed(x + 0.5));
        EXPECT_LE(breaks.placed(x), x + exactly);
    }
}

TEST(LongBreak, CutsEdgesAndHatchesOpenAtTheZigzags) {
    const LongBreak breaks(board(), 1);
    Sketch sketch(1);
    for (Mark& mark : breaks.applied(board()))
        sketch.add(std::move(mark));
    const Drawing drawing = sketch.finished(0);
    // Two gaps leave three pieces; each gap has two zigzags.
    EXPECT_EQ(shapesOn<HatchMark>(drawing, Layer::CutHatch, "board").size(), 3U);
    EXPECT_EQ(shapesOn<PathMark>(drawing, Layer::MemberEdge, "break").size(), 4U);
    for (const auto& [mark, path] : shapesOn<PathMark>(drawing, Layer::CutEdge, "board")) {
        EXPECT_EQ(path.end, PathMark::End::Open);
        for (const PointMm& p : path.points)
            EXPECT_TRUE(p.y() == 0 || p.y() == 20);
    }
    const auto hole = shapesOn<CircleMark>(drawing, Layer::Hole, "hole");
    ASSERT_EQ(hole.size(), 1U);
    EXPECT_NEAR(hole[0].second.centre.x(), 9.5, exactly);
}

TEST(LongBreak, LeavesWhatItDoesNotMeetAsItIs) {
    const LongBreak none(board(), 0.05);
    EXPECT_EQ(none.applied(board()), board());
    EXPECT_EQ(LongBreak().applied(board()), board());
}

TEST(LevelSection, TellsTrueLengthsThoughStretchesAreLeftOut) {
    const DrawnCase drawn(testing::bank(2));
    SectionOptions options;
    options.style = drawn.project.style;
    options.paperScale = 1;
    const Drawing whole = levelSection(drawn.project, drawn.plan, 0, options);
    options.longStretches = LongStretches::LeftOut;
    const Drawing broken = levelSection(drawn.project, drawn.plan, 0, options);
    EXPECT_LT(broken.extent.sizes().x(), 0.8 * whole.extent.sizes().x());
    EXPECT_NEAR(broken.extent.sizes().y(), whole.extent.sizes().y(), 1);
    for (const char* name : {"front width", "box width", "hole at", "handle at"}) {
        const auto* told = dimensionNamed(broken, name);
        ASSERT_NE(told, nullptr) << name;
        EXPECT_EQ(told->text, dimensionNamed(whole, name)->text);
        EXPECT_LT(told->to.x() - told->from.x(), 342.9) << name;
    }
}

} // namespace
} // namespace frontwright
