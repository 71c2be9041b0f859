#include "core/drawings/lettering.h"

#include <array>
#include <cmath>
#include <cstdint>
#include <numbers>

namespace frontwright {

namespace {

// As parts of the height of capitals, so that a turned text's box is never too small.

// DejaVu Sans 2.37, in thousandths of an em, rounded up, from space to tilde.
constexpr std::array<int, 95> advances{
    318, 401, 461, 838, 637, 951, 780, 275, 391, 391, 501, 838, 318, 361,  318, 337, 637, 637, 637,
    637, 637, 637, 637, 637, 637, 637, 337, 337, 838, 838, 838, 531, 1001, 685, 687, 699, 771, 632,
    576, 775, 753, 295, 295, 656, 558, 863, 749, 788, 604, 788, 695, 635,  611, 733, 685, 990, 686,
    612, 686, 391, 337, 391, 838, 501, 501, 613, 635, 550, 635, 616, 353,  635, 634, 278, 278, 580,
    278, 975, 634, 612, 635, 635, 412, 521, 393, 634, 592, 819, 592, 592,  525, 637, 337, 637, 838};
constexpr double otherLetters = 1.0;

double advanceInEm(char letter) {
    const auto index = static_cast<std::size_t>(letter - ' ');
    return letter < ' ' || index >= advances.size() ? otherLetters : advances[index] / 1000.0;
}

bool isAscii(char c) {
    return static_cast<unsigned char>(c) < 0x80;
}
bool isContinuation(char c) {
    return (static_cast<unsigned char>(c) & 0xC0U) == 0x80U;
}

} // namespace

double textWidth(std::string_view text, double capHeight) {
    double em = 0;
    for (const char c : text) {
        if (isAscii(c))
            em += advanceInEm(c);
        else if (!isContinuation(c))
            em += otherLetters;
    }
    return em * capHeight / capHeightPerEm;
}

std::array<PointMm, 4> textCorners(const TextMark& text, double paperScale) {
    const double width = textWidth(text.text, text.height) / paperScale;
    const double height = text.height / paperScale;
    double left = 0;
    if (text.anchor == Anchor::Middle)
        left = -width / 2;
    else if (text.anchor == Anchor::End)
        left = -width;
    const double angle = text.turned * std::numbers::pi / 180;
    const PointMm along(std::cos(angle), std::sin(angle));
    const PointMm up(-along.y(), along.x());
    const auto corner = [&](double x, double y) -> PointMm { return text.at + x * along + y * up; };
    const double low = -descent * height, high = ascent * height;
    return {corner(left, low), corner(left + width, low), corner(left + width, high),
            corner(left, high)};
}

BoxMm textBox(const TextMark& text, double paperScale) {
    BoxMm box;
    for (const PointMm& p : textCorners(text, paperScale))
        box.extend(p);
    return box;
}

} // namespace frontwright
