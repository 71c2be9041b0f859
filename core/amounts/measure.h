#pragma once

#include "core/amounts/amounts.h"
#include "core/amounts/percent.h"

namespace frontwright {

enum class MeasureKind : std::uint8_t { Length, Mass, Force, Volume, Ratio, Percent };

/// Any one number that a Plan can show: a length, or what else is measured. Made from each of them
/// without a word; read back by kind.
class Measure {
public:
    constexpr Measure() = default;
    constexpr Measure(Length length) : m_count(length.nanometres()) {} // NOLINT: meant
    constexpr Measure(Mass mass)                                       // NOLINT: meant
        : m_kind(MeasureKind::Mass),
          m_count(mass.micrograms()) {}
    constexpr Measure(Force force) // NOLINT: meant
        : m_kind(MeasureKind::Force),
          m_count(force.micronewtons()) {}
    constexpr Measure(Volume volume) // NOLINT: meant
        : m_kind(MeasureKind::Volume),
          m_count(volume.cubicMillimetres()) {}
    constexpr Measure(Ratio ratio) // NOLINT: meant
        : m_kind(MeasureKind::Ratio),
          m_count(ratio.thousandths()) {}
    constexpr Measure(Percent percent) // NOLINT: meant
        : m_kind(MeasureKind::Percent),
          m_count(percent.thousandths()) {}

    [[nodiscard]] constexpr MeasureKind kind() const { return m_kind; }
    [[nodiscard]] constexpr bool isLength() const { return m_kind == MeasureKind::Length; }
    // Precondition of each: the measure is of that kind.
    [[nodiscard]] constexpr Length length() const { return Length::fromNanometres(m_count); }
    [[nodiscard]] constexpr Mass mass() const { return Mass::fromMicrograms(m_count); }
    [[nodiscard]] constexpr Force force() const { return Force::fromMicronewtons(m_count); }
    [[nodiscard]] constexpr Volume volume() const { return Volume::fromCubicMillimetres(m_count); }
    [[nodiscard]] constexpr Percent percent() const { return Percent::fromThousandths(m_count); }
    [[nodiscard]] constexpr Ratio ratio() const { return Ratio::fromThousandths(m_count); }

    friend constexpr bool operator==(const Measure&, const Measure&) = default;

private:
    MeasureKind m_kind = MeasureKind::Length;
    std::int64_t m_count = 0;
};

/// As shown to the maker, in the style's system of units.
std::string shown(const Measure&, LengthStyle);

} // namespace frontwright
