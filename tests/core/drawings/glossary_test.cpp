// The words of the trade, and what their drawings say.

#include "core/drawings/glossary.h"

#include "core/drawings/line_style.h"
#include "tests/core/drawings/drawn.h"

#include <gtest/gtest.h>

#include <cmath>
#include <set>

namespace frontwright::testing {
namespace {

std::vector<Term> allTerms() {
    std::vector<Term> all;
    for (int i = 0; i < termCount; ++i)
        all.push_back(static_cast<Term>(i));
    return all;
}

Length microns(double mm) {
    return Length::fromMicrometres(std::llround(mm * 1000));
}

TEST(Words, AreAllThatLabelsAndFindingsUse) {
    const std::set<std::string_view> wanted{"case",
                                            "face frame",
                                            "stile",
                                            "rail",
                                            "divider",
                                            "opening",
                                            "plinth",
                                            "moulding",
                                            "leg",
                                            "system holes",
                                            "front",
                                            "overlay",
                                            "inset",
                                            "reveal",
                                            "spacer",
                                            "stop",
                                            "bank",
                                            "field",
                                            "edge profile",
                                            "drawer box",
                                            "box wall",
                                            "bottom panel",
                                            "runner",
                                            "pull",
                                            "knob",
                                            "centre-to-centre",
                                            "backplate",
                                            "bolt",
                                            "mounting screw",
                                            "pilot hole",
                                            "clearance hole",
                                            "access hole",
                                            "counterbore",
                                            "countersink",
                                            "grip",
                                            "engagement",
                                            "tip cover",
                                            "story stick",
                                            "setup block",
                                            "filler strip",
                                            "pull-out board",
                                            "furring",
                                            "keeper strip",
                                            "guide",
                                            "kicker",
                                            "notch",
                                            "kerf",
                                            "board foot",
                                            "flat-sawn",
                                            "quarter-sawn",
                                            "moisture content"};
    std::set<std::string_view> names, keys;
    for (const Term term : allTerms()) {
        names.insert(nameOf(term).english);
        keys.insert(key(term));
        EXPECT_EQ(key(term).find(' '), std::string_view::npos);
    }
    EXPECT_EQ(names, wanted);
    EXPECT_EQ(keys.size(), names.size());
}

TEST(Words, HaveEachADrawingOfTheirOwn) {
    std::set<std::string> seen;
    for (const Term term : allTerms())
        EXPECT_TRUE(seen.insert(svg(drawingOf(term), "word")).second) << nameOf(term);
}

TEST(Words, AreDrawnSmall) {
    for (const Term term : allTerms()) {
        const Drawing drawing = drawingOf(term);
        const PointMm size = drawing.extent.sizes() * drawing.paperScale;
        EXPECT_LE(size.x(), 66) << nameOf(term);
        EXPECT_LE(size.y(), 50) << nameOf(term);
        EXPECT_GE(size.x(), 24) << nameOf(term);
    }
}

/// Hatched, wide, or with a dimension: something is meant.
TEST(Words, ShowWhatIsMeant) {
    for (const Term term : allTerms()) {
        const Drawing drawing = drawingOf(term);
        int wide = 0;
        for (const Mark& mark : drawing.marks)
            if (lineStyle(mark.layer).width > 0.3)
                ++wide;
        EXPECT_GT(wide + static_cast<int>(dimensionsOf(drawing).size()), 0) << nameOf(term);
    }
}

TEST(Words, AreDrawnWithoutWordsOrFiguresButTheBoardFoot) {
    for (const Term term : allTerms())
        for (const DimensionMark& dimension : dimensionsOf(drawingOf(term)))
            EXPECT_EQ(dimension.text.empty(), term != Term::BoardFoot) << nameOf(term);
}

/// The overlay's dimension spans what front and stile have in common.
TEST(Words, MeasureTheOverlayWhereFrontAndStileMeet) {
    const Drawing drawing = drawingOf(Term::Overlay);
    const auto dimensions = dimensionsOf(drawing);
    ASSERT_EQ(dimensions.size(), 1U);
    std::vector<BoxMm> woods;
    for (const Mark& mark : drawing.marks)
        if (const auto* path = std::get_if<PathMark>(&mark.shape)) {
            BoxMm box;
            for (const PointMm& p : path->points)
                box.extend(p);
            woods.push_back(box);
        }
    ASSERT_EQ(woods.size(), 2U);
    const double left = std::max(woods[0].min().x(), woods[1].min().x());
    const double right = std::min(woods[0].max().x(), woods[1].max().x());
    EXPECT_EQ(microns(dimensions.front().from.x()), microns(left));
    EXPECT_EQ(microns(dimensions.front().to.x()), microns(right));
}

/// Show face at 0: the cover reaches from there to the screw's tip.
TEST(Words, MeasureTheTipCoverToTheScrewsTip) {
    const Drawing drawing = drawingOf(Term::TipCover);
    const auto dimensions = dimensionsOf(drawing);
    ASSERT_EQ(dimensions.size(), 1U);
    BoxMm screw;
    for (const auto& [mark, path] : shapesOn<PathMark>(drawing, Layer::Fastener))
        for (const PointMm& p : path.points)
            screw.extend(p);
    EXPECT_DOUBLE_EQ(dimensions.front().from.x(), 0);
    EXPECT_DOUBLE_EQ(dimensions.front().to.x(), screw.min().x());
}

TEST(Words, MeasureTheGripFromFaceToHead) {
    const auto grip = dimensionsOf(drawingOf(Term::Grip));
    const auto engagement = dimensionsOf(drawingOf(Term::Engagement));
    ASSERT_EQ(grip.size(), 1U);
    ASSERT_EQ(engagement.size(), 1U);
    // Wood ends where the handle begins.
    EXPECT_DOUBLE_EQ(grip.front().from.x(), engagement.front().to.x());
    EXPECT_GT(grip.front().to.x(), grip.front().from.x());
}

} // namespace
} // namespace frontwright::testing
