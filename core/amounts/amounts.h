#pragma once

#include "core/lengths/length.h"
#include "core/results/result.h"

#include <compare>
#include <cstdint>
#include <string>
#include <string_view>

namespace frontwright {

// What is measured beside lengths. Each is a whole number of a small unit, so that the same case
// gives the same bytes everywhere; what is computed in `double` is rounded once, to the nearest.

/// A mass as a whole number of micrograms. Exact: tenths of a pound (45 359 237 µg) and grams.
class Mass {
public:
    static constexpr std::int64_t microgramsPerTenthPound = 45'359'237;
    static constexpr std::int64_t microgramsPerKilogram = 1'000'000'000;

    constexpr Mass() = default;
    static constexpr Mass fromMicrograms(std::int64_t ug) { return Mass(ug); }
    static constexpr Mass grams(std::int64_t whole) { return Mass(whole * 1'000'000); }
    static constexpr Mass tenthsOfPound(std::int64_t n) {
        return Mass(n * microgramsPerTenthPound);
    }
    static constexpr Mass pounds(std::int64_t whole) { return tenthsOfPound(whole * 10); }
    /// Nearest microgram. Precondition: |kg| < 9e9.
    static Mass nearestToKilograms(double kg);

    [[nodiscard]] constexpr std::int64_t micrograms() const { return m_ug; }
    [[nodiscard]] constexpr double inKilograms() const {
        return static_cast<double>(m_ug) / static_cast<double>(microgramsPerKilogram);
    }
    [[nodiscard]] constexpr double inPounds() const {
        return static_cast<double>(m_ug) / static_cast<double>(microgramsPerTenthPound) / 10;
    }
    friend constexpr auto operator<=>(Mass, Mass) = default;
    friend constexpr Mass operator+(Mass a, Mass b) { return Mass(a.m_ug + b.m_ug); }
    friend constexpr Mass operator-(Mass a, Mass b) { return Mass(a.m_ug - b.m_ug); }
    constexpr Mass& operator+=(Mass b) { return *this = *this + b; }

private:
    constexpr explicit Mass(std::int64_t ug) : m_ug(ug) {}
    std::int64_t m_ug = 0;
};

/// A force as a whole number of micronewtons. 1 lbf = 4.448 221 615 260 5 N (ISO 80000-4).
class Force {
public:
    static constexpr double newtonsPerPoundForce = 4.4482216152605;

    constexpr Force() = default;
    static constexpr Force fromMicronewtons(std::int64_t un) { return Force(un); }
    static Force nearestToNewtons(double n);
    static Force nearestToPoundsForce(double lbf) {
        return nearestToNewtons(lbf * newtonsPerPoundForce);
    }
    [[nodiscard]] constexpr std::int64_t micronewtons() const { return m_un; }
    [[nodiscard]] constexpr double inNewtons() const { return static_cast<double>(m_un) / 1e6; }
    [[nodiscard]] constexpr double inPoundsForce() const {
        return inNewtons() / newtonsPerPoundForce;
    }
    friend constexpr auto operator<=>(Force, Force) = default;
    friend constexpr Force operator+(Force a, Force b) { return Force(a.m_un + b.m_un); }

private:
    constexpr explicit Force(std::int64_t un) : m_un(un) {}
    std::int64_t m_un = 0;
};

/// A volume as a whole number of cubic millimetres.
class Volume {
public:
    static constexpr double cubicMillimetresPerCubicFoot = 304.8 * 304.8 * 304.8;

    constexpr Volume() = default;
    static constexpr Volume fromCubicMillimetres(std::int64_t mm3) { return Volume(mm3); }
    /// Width × height × depth; 0 where one of them is not positive.
    static Volume of(Length width, Length height, Length depth);

    [[nodiscard]] constexpr std::int64_t cubicMillimetres() const { return m_mm3; }
    [[nodiscard]] constexpr double inCubicFeet() const {
        return static_cast<double>(m_mm3) / cubicMillimetresPerCubicFoot;
    }
    friend constexpr auto operator<=>(Volume, Volume) = default;
    friend constexpr Volume operator+(Volume a, Volume b) { return Volume(a.m_mm3 + b.m_mm3); }
    constexpr Volume& operator+=(Volume b) { return *this = *this + b; }

private:
    constexpr explicit Volume(std::int64_t mm3) : m_mm3(mm3) {}
    std::int64_t m_mm3 = 0;
};

/// A plain number in whole thousandths: how many times one thing holds another.
class Ratio {
public:
    constexpr Ratio() = default;
    static constexpr Ratio fromThousandths(std::int64_t n) { return Ratio(n); }
    /// Nearest thousandth; at most `most`, which is also the ratio to nothing.
    static Ratio of(double upper, double lower);
    static constexpr std::int64_t mostThousandths = 999'999;

    [[nodiscard]] constexpr std::int64_t thousandths() const { return m_n; }
    friend constexpr auto operator<=>(Ratio, Ratio) = default;

private:
    constexpr explicit Ratio(std::int64_t n) : m_n(n) {}
    std::int64_t m_n = 0;
};

// As shown to the maker, in the style's system of units: "12.3 lb", "5.6 kg"; "50 lbf", "222 N";
// "3.2 ft³", "90.6 dm³"; "4.5". Nearest, halves away from zero; estimates, so without a mark.
std::string shown(Mass, LengthStyle);
std::string shown(Force, LengthStyle);
std::string shown(Volume, LengthStyle);
std::string shown(Ratio);
/// A fraction of so many decimals: 0.4, 1 → "0.4"; −0.04, 1 → "0.0".
std::string decimal(double value, int decimals);

/// Exact, for documents: "25 lb" where it is a whole number of tenths of a pound, else "11.3 kg".
std::string exact(Mass);
/// "25 lb", "11.3 kg", "500 g", "12,5 kg"; at most nine decimals. Error: a missing unit, a sign,
/// or more than 100 000 kg.
Result<Mass> parseMass(std::string_view typed);

/// "50 lbf" where it is a whole number of pounds, else "222.5 N".
std::string exact(Force);
/// "50 lbf", "220 N", "0.2 kN"; at most nine decimals. Error: a missing unit, a sign, or more than
/// 100 kN.
Result<Force> parseForce(std::string_view typed);

} // namespace frontwright
