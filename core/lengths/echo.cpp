#include "core/lengths/echo.h"

#include "core/lengths/format.h"
#include "core/lengths/numerals.h"

#include <algorithm>

namespace frontwright::reading {
namespace {

std::string_view symbolOf(TypedUnit unit) {
    switch (unit) {
    case TypedUnit::Inch:
        return "in";
    case TypedUnit::Foot:
        return "ft";
    case TypedUnit::Millimetre:
        return "mm";
    case TypedUnit::Centimetre:
        return "cm";
    case TypedUnit::Metre:
        break;
    }
    return "m";
}

std::string_view signOf(TokenKind kind) {
    if (kind == TokenKind::Plus)
        return "+";
    if (kind == TokenKind::Minus)
        return "-";
    return kind == TokenKind::Times ? "*" : "/";
}

std::string decimalWithPoint(std::string_view source) {
    std::string text(source);
    for (char& c : text)
        if (c == ',')
            c = '.';
    return text.front() == '.' ? "0" + text : text;
}

std::string numberText(const Token& token) {
    switch (token.kind) {
    case TokenKind::Decimal:
        return decimalWithPoint(token.source);
    case TokenKind::Fraction:
        return numerals::mixedNumber(token.value.numerator, token.value.denominator);
    default:
        return std::string(token.source);
    }
}

std::string signText(const Token& token) {
    switch (token.role) {
    case Role::Operator:
        return " " + std::string(signOf(token.kind)) + " ";
    case Role::Sign:
        return token.kind == TokenKind::Minus ? "-" : "";
    case Role::FractionBar:
        return "/";
    case Role::Joiner:
    case Role::OfChange:
    case Role::Undecided:
        break;
    }
    return "";
}

bool isValue(const Token& token) {
    return token.kind == TokenKind::Whole || token.kind == TokenKind::Decimal ||
           token.kind == TokenKind::Fraction;
}

/// The text as it was understood, in one spelling.
std::string understood(const Reading& reading) {
    std::string text;
    bool afterValue = false; // a number here continues a mixed number, or feet
    for (const Token& token : reading.tokens) {
        if (isValue(token)) {
            text += (afterValue ? " " : "") + numberText(token);
            afterValue = true;
        } else if (token.kind == TokenKind::Unit) {
            text += " " + std::string(symbolOf(token.unit));
        } else if (token.kind == TokenKind::Open || token.kind == TokenKind::Close) {
            text += token.source;
            afterValue = false;
        } else if (token.role != Role::Joiner) {
            text += signText(token);
            afterValue = false;
        }
    }
    return text;
}

std::string asRead(const Reading& reading, Unit bareUnit, Length current) {
    const std::string text = understood(reading);
    const Token& first = reading.tokens.front();
    if (first.role == Role::OfChange) {
        const bool several =
            std::any_of(reading.tokens.begin(), reading.tokens.end(),
                        [](const Token& token) { return token.role == Role::Operator; });
        return exact(current, bareUnit) + " " + std::string(signOf(first.kind)) + " " +
               (several ? "(" + text + ")" : text);
    }
    if (reading.isSum || reading.isUnitWritten)
        return text;
    return text + (bareUnit == Unit::Inch ? " in" : " mm");
}

std::string inInches(const Reading& reading, Length length) {
    const std::int64_t nm = length.nanometres();
    const std::string fraction =
        numerals::mixedNumber(numerals::nearestCount(nm, Length::nanometresPer64th), 64);
    const bool whole = isWhole(reading.nanometres);
    if (whole && nm % Length::nanometresPer64th == 0)
        return "= " + fraction + " in";
    // A tenth of a thousandth of an inch is 2540 nm.
    if (whole && nm % 2'540 == 0)
        return "= " + numerals::decimal(nm / 2'540, 4) + " in";
    return "≈ " + fraction + " in";
}

std::string inMillimetres(const Reading& reading, Length length) {
    const std::string mark = isWhole(reading.nanometres) ? "= " : "≈ ";
    return mark + numerals::decimal(length.nanometres(), 6) + " mm";
}

} // namespace

std::string echoOf(const Reading& reading, Unit bareUnit, Length current) {
    const Length length = Length::fromNanometres(nearestWhole(reading.nanometres));
    std::string echo;
    if (reading.isSum || !isWhole(reading.nanometres))
        echo = "= " + asRead(reading, bareUnit, current) + " ";
    const std::string inches = inInches(reading, length);
    const std::string millimetres = inMillimetres(reading, length);
    return echo +
           (bareUnit == Unit::Inch ? inches + " " + millimetres : millimetres + " " + inches);
}

} // namespace frontwright::reading
