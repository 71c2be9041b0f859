#include "core/drawings/lettering.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

// Advances read from DejaVu Sans 2.37 (units per em 2048), in em.
constexpr double digit = 0.636, space = 0.318, slash = 0.337, times = 0.838, almostEqual = 0.838;

double millimetres(double em, double capHeight) {
    return em * capHeight / 0.729;
}

TEST(TextWidth, IsNeverLessThanTheTypefacesOwn) {
    EXPECT_GE(textWidth("1 1/4", 2.5), millimetres(3 * digit + space + slash, 2.5));
    EXPECT_GE(textWidth("13 1/8 × 6", 2.5),
              millimetres(5 * digit + 3 * space + slash + times, 2.5));
    EXPECT_GE(textWidth("≈ 12", 3.5), millimetres(almostEqual + space + 2 * digit, 3.5));
    // A = 0.684, W = 0.989, m = 0.974, i = 0.278.
    EXPECT_GE(textWidth("AWmi", 3.5), millimetres(0.684 + 0.989 + 0.974 + 0.278, 3.5));
}

TEST(TextWidth, IsNotMuchMoreThanTheTypefacesOwn) {
    EXPECT_LE(textWidth("1 1/4", 2.5), 1.1 * millimetres(3 * digit + space + slash, 2.5));
    EXPECT_LE(textWidth("640", 2.5), 1.01 * millimetres(3 * digit, 2.5));
}

TEST(TextWidth, CountsALetterOfSeveralBytesOnce) {
    EXPECT_DOUBLE_EQ(textWidth("×", 2.5), textWidth("≈", 2.5));
    EXPECT_DOUBLE_EQ(textWidth("", 2.5), 0);
}

TEST(TextWidth, GrowsWithTheLettering) {
    EXPECT_DOUBLE_EQ(textWidth("A2", 5), 2 * textWidth("A2", 2.5));
}

TEST(TextBox, StartsEndsOrIsCentredAtItsAnchor) {
    TextMark text{{10, 20}, "640", 2.5, Anchor::Start, 0};
    const double width = textWidth("640", 2.5);
    EXPECT_DOUBLE_EQ(textBox(text, 1).min().x(), 10);
    EXPECT_DOUBLE_EQ(textBox(text, 1).max().x(), 10 + width);
    text.anchor = Anchor::Middle;
    EXPECT_DOUBLE_EQ(textBox(text, 1).min().x(), 10 - width / 2);
    text.anchor = Anchor::End;
    EXPECT_DOUBLE_EQ(textBox(text, 1).max().x(), 10);
}

TEST(TextBox, HoldsCapitalsAndDescenders) {
    const BoxMm box = textBox({{0, 0}, "g1", 2.5, Anchor::Start, 0}, 1);
    EXPECT_GE(box.max().y(), 2.5);
    EXPECT_LE(box.min().y(), -2.5 * 0.236 / 0.729); // the typeface's descent
}

TEST(TextBox, OfATextReadFromTheRightLiesToTheLeftOfItsBaseLine) {
    const BoxMm box = textBox({{0, 0}, "640", 2.5, Anchor::Start, 90}, 1);
    EXPECT_NEAR(box.max().y(), textWidth("640", 2.5), 1e-12);
    EXPECT_LE(box.min().x(), -2.5);
    EXPECT_LT(box.max().x(), 1);
}

TEST(TextBox, TakesMoreOfTheCaseWhereThePaperShowsItSmaller) {
    const TextMark text{{0, 0}, "640", 2.5, Anchor::Start, 0};
    EXPECT_DOUBLE_EQ(textBox(text, 0.1).sizes().x(), 10 * textBox(text, 1).sizes().x());
}

} // namespace
} // namespace frontwright
