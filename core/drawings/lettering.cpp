#include "core/drawings/lettering.h"

#include <cmath>
#include <cstdint>
#include <numbers>

namespace frontwright {

namespace {

// As parts of the height of capitals, so that a turned text's box is never too small.
constexpr double descent = 0.32; // 0.236 em of DejaVu Sans
constexpr double ascent = 1.05;  // capitals and their overshoot

constexpr std::string_view narrowest = "'ijlIJ .,/:;\\|f-";    // advances up to 0.361 em
constexpr std::string_view slim = "()[]t!r\"*_`";              // up to 0.5 em
constexpr std::string_view wideLetters = "CUNHDGOQw&#+<=>^~M"; // up to 0.863 em
constexpr std::string_view widest = "%mW@";                    // up to 1 em

double advanceInEm(char letter) {
    const auto isIn = [&](std::string_view set) { return set.find(letter) != set.npos; };
    if (isIn(narrowest))
        return 0.361;
    if (isIn(slim))
        return 0.5;
    if (isIn(wideLetters))
        return 0.863;
    if (isIn(widest))
        return 1.0;
    return letter >= '0' && letter <= '9' ? 0.637 : 0.695;
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
            em += 1.0;
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
