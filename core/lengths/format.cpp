#include "core/lengths/format.h"

#include "core/lengths/numerals.h"

#include <optional>

namespace frontwright {
namespace {

using numerals::decimal;
using numerals::mixedNumber;
using numerals::nearestCount;

constexpr std::int64_t shownStepOfMillimetres = Length::nanometresPerMillimetre / 10;
constexpr std::int64_t inchesPerFoot = 12;

/// Parts of an inch that are shown; a power of two from 1 to 64, else 64.
std::int64_t denominatorOf(LengthStyle style) {
    const int n = style.denominator;
    return n >= 1 && n <= 64 && (n & (n - 1)) == 0 ? n : 64;
}

std::int64_t shownStep(LengthStyle style) {
    switch (style.unit) {
    case Unit::Inch:
        return Length::nanometresPerInch / denominatorOf(style);
    case Unit::Millimetre:
        break;
    }
    return shownStepOfMillimetres;
}

std::string_view symbolOf(Unit unit) {
    switch (unit) {
    case Unit::Inch:
        return " in";
    case Unit::Millimetre:
        break;
    }
    return " mm";
}

std::optional<std::string> inchFraction(Length length) {
    const std::int64_t nm = length.nanometres();
    if (nm % Length::nanometresPer64th != 0)
        return std::nullopt;
    return mixedNumber(nm / Length::nanometresPer64th, 64) + " in";
}

/// Of a length that no fraction shows.
int preciseDecimals(Unit unit) {
    switch (unit) {
    case Unit::Inch:
        return 4;
    case Unit::Millimetre:
        break;
    }
    return 3;
}

/// A whole number keeps one decimal, so that it is read back as a decimal.
std::optional<std::string> inchDecimal(Length length) {
    const std::int64_t nm = length.nanometres();
    // 1 in / 127 = 0.2 mm, so 127 nm are five millionths of an inch, and only their multiples end.
    if (nm % 127 != 0)
        return std::nullopt;
    const std::string text = decimal(nm / 127 * 5, 6);
    return text + (text.find('.') == std::string::npos ? ".0 in" : " in");
}

/// Less than a foot is "0 ft 2 1/2 in", so that it is read back as feet and inches.
std::optional<std::string> feetAndInches(Length length) {
    const std::int64_t nm = length.nanometres();
    if (nm % Length::nanometresPer64th != 0)
        return std::nullopt;
    const std::int64_t count = nm / Length::nanometresPer64th;
    const std::int64_t feet = count / (64 * inchesPerFoot);
    const std::int64_t rest = count % (64 * inchesPerFoot);
    std::string text = nm < 0 ? "-" : "";
    text += std::to_string(feet < 0 ? -feet : feet) + " ft";
    if (rest != 0)
        text += " " + mixedNumber(rest < 0 ? -rest : rest, 64) + " in";
    return text;
}

std::optional<std::string> inNotation(Length length, Notation notation) {
    const std::int64_t nm = length.nanometres();
    switch (notation) {
    case Notation::OfDocument:
        return std::nullopt;
    case Notation::InchFraction:
        return inchFraction(length);
    case Notation::InchDecimal:
        return inchDecimal(length);
    case Notation::FeetInches:
        return feetAndInches(length);
    case Notation::Millimetre:
        return decimal(nm, 6) + " mm";
    case Notation::Centimetre:
        return decimal(nm, 7) + " cm";
    case Notation::Metre:
        break;
    }
    return decimal(nm, 9) + " m";
}

} // namespace

bool isApproximate(Length length, LengthStyle style) {
    return length.nanometres() % shownStep(style) != 0;
}

namespace {

/// Whole steps: C++ division goes towards zero.
std::int64_t countOf(std::int64_t length, std::int64_t step, Rounding rounding) {
    const std::int64_t whole = length / step, rest = length % step;
    switch (rounding) {
    case Rounding::Up:
        return rest > 0 ? whole + 1 : whole;
    case Rounding::Down:
        return rest < 0 ? whole - 1 : whole;
    case Rounding::Nearest:
        break;
    }
    return nearestCount(length, step);
}

std::string bare(Length length, LengthStyle style, Rounding rounding) {
    const std::int64_t count = countOf(length.nanometres(), shownStep(style), rounding);
    const std::string mark = isApproximate(length, style) ? "≈ " : "";
    switch (style.unit) {
    case Unit::Inch:
        return mark + mixedNumber(count, denominatorOf(style));
    case Unit::Millimetre:
        break;
    }
    return withMark(mark + decimal(count, 1), style.mark);
}

} // namespace

std::string shownBare(Length length, LengthStyle style) {
    return bare(length, style, Rounding::Nearest);
}

std::string shown(Length length, LengthStyle style, Rounding rounding) {
    return bare(length, style, rounding).append(symbolOf(style.unit));
}

namespace {

/// To that many decimals of the style's unit.
std::string inDecimals(Length length, LengthStyle style, int decimals) {
    std::int64_t step =
        style.unit == Unit::Inch ? Length::nanometresPerInch : Length::nanometresPerMillimetre;
    for (int i = 0; i < decimals; ++i)
        step /= 10;
    const std::string number = decimal(nearestCount(length.nanometres(), step), decimals);
    return withMark(number, style.mark).append(symbolOf(style.unit));
}

/// As fractions or whole decimals have it; nullopt where none of those that are shown do.
std::optional<std::string> inFull(Length length, LengthStyle style) {
    const std::int64_t nm = length.nanometres();
    if (!isApproximate(length, style))
        return shown(length, style);
    if (style.unit == Unit::Inch && nm % Length::nanometresPer64th == 0)
        return shown(length, {Unit::Inch, 64, style.mark});
    const std::int64_t finest = style.unit == Unit::Inch ? Length::nanometresPerInch / 10'000
                                                         : Length::nanometresPerMillimetre / 1'000;
    if (nm % finest == 0)
        return inDecimals(length, style, preciseDecimals(style.unit));
    return std::nullopt;
}

} // namespace

std::string shownPrecisely(Length length, LengthStyle style) {
    const auto full = inFull(length, style);
    return full ? *full : inDecimals(length, style, preciseDecimals(style.unit));
}

std::string shownInFull(Length length, LengthStyle style) {
    const auto full = inFull(length, style);
    return full ? *full : "≈ " + inDecimals(length, style, preciseDecimals(style.unit));
}

std::string shownFinely(Length length, LengthStyle style) {
    const int decimals = preciseDecimals(style.unit) - 1;
    const std::string figure = inDecimals(length, style, decimals);
    if (length.isZero() || figure != inDecimals({}, style, decimals))
        return figure;
    return (style.unit == Unit::Inch ? "< " + withMark("0.001", style.mark)
                                     : "< " + withMark("0.01", style.mark))
        .append(symbolOf(style.unit));
}

std::string shownAsResult(Length length, LengthStyle style, Rounding rounding) {
    if (!isApproximate(length, style))
        return shown(length, style);
    const auto full = inFull(length, style);
    const std::string precise =
        full ? *full : inDecimals(length, style, preciseDecimals(style.unit) - 1);
    return precise + " " + shown(length, style, rounding);
}

std::string exact(Length length, Unit unit) {
    const auto fraction = unit == Unit::Inch ? inchFraction(length) : std::nullopt;
    return fraction ? *fraction : decimal(length.nanometres(), 6) + " mm";
}

std::string written(const WrittenLength& length, Unit documentUnit) {
    const auto text = inNotation(length.length, length.notation);
    return text ? *text : exact(length.length, documentUnit);
}

} // namespace frontwright
