#include "core/drawings/drawing_note.h"

#include "tests/core/drawings/drawn.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::textsOn;

Sketch withDimension(std::string text, double paperScale) {
    Sketch sketch(paperScale);
    sketch.add({Layer::Dimension, DimensionMark{{0, 0}, {640, 0}, -10, std::move(text), {}}, {}});
    return sketch;
}
std::vector<std::string> noteOf(Sketch sketch, LengthStyle style) {
    drawNote(sketch, {text("Glaze chest"), {text("one line")}}, style);
    return textsOn(sketch.finished(0), Layer::Note);
}

TEST(DrawingNote, StatesTheUnitOnce) {
    EXPECT_EQ(
        noteOf(withDimension("25 1/4", 0.1), {Unit::Inch, 16}),
        (std::vector<std::string>{"Glaze chest", "one line", "Dimensions in inches, scale 1:10"}));
    EXPECT_EQ(noteOf(withDimension("640", 0.2), {Unit::Millimetre, 16}).back(),
              "Dimensions in millimetres, scale 1:5");
}

TEST(DrawingNote, ExplainsFiguresThatAreNotExact) {
    EXPECT_EQ(noteOf(withDimension("≈ 25 1/4", 0.1), {Unit::Inch, 32}).back(),
              "Dimensions in inches, scale 1:10; ≈ nearest 1/32");
    EXPECT_EQ(noteOf(withDimension("≈ 640.1", 0.1), {Unit::Millimetre, 16}).back(),
              "Dimensions in millimetres, scale 1:10; ≈ nearest 0.1");
}

TEST(DrawingNote, NamesOnlyScalesOfIso5455) {
    EXPECT_EQ(scaleName(1), "1:1");
    EXPECT_EQ(scaleName(0.5), "1:2");
    EXPECT_EQ(scaleName(0.05), "1:20");
    EXPECT_EQ(scaleName(2), "2:1");
    EXPECT_EQ(scaleName(0.4), ""); // 1:2.5 is not in it
    EXPECT_EQ(noteOf(withDimension("640", 0.137), {Unit::Millimetre, 16}).back(),
              "Dimensions in millimetres");
}

TEST(DrawingNote, LiesBelowAllThatIsDrawn) {
    for (const double scale : {1.0, 0.1}) {
        Sketch sketch = withDimension("640", scale);
        const BoxMm before = sketch.finished(0).extent;
        drawNote(sketch, {text("Glaze chest"), {}}, {});
        for (const auto& [mark, text] :
             testing::shapesOn<TextMark>(sketch.finished(0), Layer::Note)) {
            EXPECT_LT(textBox(text, scale).max().y(), before.min().y());
            EXPECT_DOUBLE_EQ(text.at.x(), before.min().x());
        }
    }
}

TEST(DrawingNote, IsNotWrittenUnderNothing) {
    EXPECT_TRUE(noteOf(Sketch(1), {}).empty());
}

} // namespace
} // namespace frontwright
