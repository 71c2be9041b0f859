#include "core/amounts/amounts.h"

#include "core/amounts/measure.h"
#include "core/lengths/format.h"

#include <array>
#include <cmath>
#include <optional>

namespace frontwright {

namespace {

std::int64_t nearest(double value) {
    return static_cast<std::int64_t>(value < 0 ? value - 0.5 : value + 0.5);
}

constexpr std::int64_t powerOfTen(int n) {
    return n == 0 ? 1 : 10 * powerOfTen(n - 1);
}

/// Micrograms in one of a unit, as the maker writes it.
struct MassUnit {
    std::string_view name;
    std::int64_t micrograms;
};
constexpr std::array<MassUnit, 3> massUnits{{{"kg", Mass::microgramsPerKilogram},
                                             {"g", 1'000'000},
                                             {"lb", Mass::microgramsPerTenthPound * 10}}};

struct ForceUnit {
    std::string_view name;
    double newtons;
};
constexpr std::array<ForceUnit, 3> forceUnits{
    {{"lbf", Force::newtonsPerPoundForce}, {"kN", 1000}, {"N", 1}}};

/// On a drawer or a board: a hundred people.
constexpr double greatestNewtons = 100'000;

/// Of a load: far above what a drawer carries.
constexpr Mass greatestMass = Mass::grams(100'000'000);

constexpr int mostDigits = 9; ///< before the decimal point, and after it

/// A decimal number: its whole part, and what follows as a whole number of billionths.
struct Decimal {
    std::int64_t whole = 0;
    std::int64_t billionths = 0;
};

/// nullopt where the text is no decimal number, or one of too many digits.
std::optional<Decimal> readDecimal(std::string_view text) {
    Decimal number;
    int digits = 0, decimals = -1;
    for (const char c : text) {
        if ((c == '.' || c == ',') && decimals < 0) {
            decimals = 0;
            continue;
        }
        const bool isRoom = decimals < 0 ? digits < mostDigits : decimals < mostDigits;
        if (c < '0' || c > '9' || !isRoom)
            return std::nullopt;
        if (decimals < 0)
            number.whole = 10 * number.whole + (c - '0');
        else
            number.billionths += (c - '0') * powerOfTen(mostDigits - ++decimals);
        ++digits;
    }
    return digits == 0 ? std::nullopt : std::optional(number);
}

std::string_view trimmed(std::string_view text) {
    while (text.starts_with(' '))
        text.remove_prefix(1);
    while (text.ends_with(' '))
        text.remove_suffix(1);
    return text;
}

/// Without trailing zeros: 11.3, 25.
std::string plain(std::int64_t whole, std::int64_t fraction, int digits) {
    std::string text = std::to_string(whole);
    if (fraction == 0)
        return text;
    std::string tail = std::to_string(fraction);
    tail.insert(0, static_cast<std::size_t>(digits) - tail.size(), '0');
    while (tail.back() == '0')
        tail.pop_back();
    return text + "." + tail;
}

} // namespace

Mass Mass::nearestToKilograms(double kg) {
    return fromMicrograms(nearest(kg * static_cast<double>(microgramsPerKilogram)));
}

Force Force::nearestToNewtons(double n) {
    return fromMicronewtons(nearest(n * 1e6));
}

Volume Volume::of(Length width, Length height, Length depth) {
    const Length nothing;
    if (width <= nothing || height <= nothing || depth <= nothing)
        return {};
    return fromCubicMillimetres(
        nearest(width.inMillimetres() * height.inMillimetres() * depth.inMillimetres()));
}

Ratio Ratio::of(double upper, double lower) {
    const double most = static_cast<double>(mostThousandths);
    if (lower <= 0 || upper * 1000 >= most * lower)
        return fromThousandths(mostThousandths);
    return fromThousandths(nearest(upper * 1000 / lower));
}

std::string decimal(double value, int decimals) {
    const std::int64_t one = powerOfTen(decimals);
    const std::int64_t count = nearest(std::abs(value) * static_cast<double>(one));
    std::string text = std::to_string(count / one);
    if (decimals > 0) {
        std::string tail = std::to_string(count % one);
        tail.insert(0, static_cast<std::size_t>(decimals) - tail.size(), '0');
        text += "." + tail;
    }
    return value < 0 && count > 0 ? "−" + text : text;
}

std::string shown(Mass mass, LengthStyle style) {
    return withMark(style.unit == Unit::Inch ? decimal(mass.inPounds(), 1) + " lb"
                                             : decimal(mass.inKilograms(), 1) + " kg",
                    style.mark);
}

std::string shown(Force force, LengthStyle style) {
    return style.unit == Unit::Inch ? decimal(force.inPoundsForce(), 0) + " lbf"
                                    : decimal(force.inNewtons(), 0) + " N";
}

std::string shown(Volume volume, LengthStyle style) {
    constexpr double perCubicDecimetre = 1e6;
    return withMark(
        style.unit == Unit::Inch
            ? decimal(volume.inCubicFeet(), 1) + " ft³"
            : decimal(static_cast<double>(volume.cubicMillimetres()) / perCubicDecimetre, 1) +
                  " dm³",
        style.mark);
}

std::string shown(Ratio ratio) {
    const bool isMost = ratio.thousandths() == Ratio::mostThousandths;
    return isMost ? "> 999" : decimal(static_cast<double>(ratio.thousandths()) / 1000, 1);
}

std::string shown(const Measure& measure, LengthStyle style) {
    switch (measure.kind()) {
    case MeasureKind::Length:
        return shown(measure.length(), style);
    case MeasureKind::Mass:
        return shown(measure.mass(), style);
    case MeasureKind::Force:
        return shown(measure.force(), style);
    case MeasureKind::Volume:
        return shown(measure.volume(), style);
    case MeasureKind::Percent:
        return withMark(decimal(measure.percent().value(), 1) + " %", style.mark);
    case MeasureKind::Ratio:
        break;
    }
    return withMark(shown(measure.ratio()), style.mark);
}

std::string exact(Mass mass) {
    const std::int64_t ug = mass.micrograms();
    if (ug % Mass::microgramsPerTenthPound == 0) {
        const std::int64_t tenths = ug / Mass::microgramsPerTenthPound;
        return plain(tenths / 10, tenths % 10, 1) + " lb";
    }
    return plain(ug / Mass::microgramsPerKilogram, ug % Mass::microgramsPerKilogram, 9) + " kg";
}

Result<Mass> parseMass(std::string_view typed) {
    const std::string_view whole = trimmed(typed);
    const auto unreadable = [&] {
        return Error{{},
                     phrase("\"%1\" is not a weight", std::string(typed)),
                     text("write it like 25 lb, 11.3 kg or 500 g")};
    };
    for (const MassUnit& unit : massUnits) {
        if (!whole.ends_with(unit.name))
            continue;
        const auto number = readDecimal(trimmed(whole.substr(0, whole.size() - unit.name.size())));
        if (!number)
            return unreadable();
        constexpr std::int64_t billion = 1'000'000'000;
        const Mass mass =
            Mass::fromMicrograms(number->whole * unit.micrograms +
                                 (number->billionths * unit.micrograms + billion / 2) / billion);
        if (mass > greatestMass)
            return Error{{}, phrase("\"%1\" is more than 100 000 kg", std::string(typed)), {}};
        return mass;
    }
    return unreadable();
}

std::string exact(Force force) {
    const double lbf = std::round(force.inPoundsForce());
    if (Force::nearestToPoundsForce(lbf) == force)
        return decimal(lbf, 0) + " lbf";
    constexpr std::int64_t million = 1'000'000;
    return plain(force.micronewtons() / million, force.micronewtons() % million, 6) + " N";
}

Result<Force> parseForce(std::string_view typed) {
    const std::string_view whole = trimmed(typed);
    const auto unreadable = [&] {
        return Error{{},
                     phrase("\"%1\" is not a force", std::string(typed)),
                     text("write it like 50 lbf or 220 N")};
    };
    for (const ForceUnit& unit : forceUnits) {
        if (!whole.ends_with(unit.name))
            continue;
        const auto number = readDecimal(trimmed(whole.substr(0, whole.size() - unit.name.size())));
        if (!number)
            return unreadable();
        const double newtons =
            (static_cast<double>(number->whole) + static_cast<double>(number->billionths) / 1e9) *
            unit.newtons;
        if (newtons > greatestNewtons)
            return Error{{}, phrase("\"%1\" is more than 100 kN", std::string(typed)), {}};
        return Force::nearestToNewtons(newtons);
    }
    return unreadable();
}

} // namespace frontwright
