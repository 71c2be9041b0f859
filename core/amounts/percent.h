#pragma once

#include <compare>
#include <cstdint>

namespace frontwright {

/// Hundredths of something, in whole thousandths of one: relative humidity of the air, moisture of
/// wood as a part of its ovendry weight. What is computed in `double` is rounded once.
class Percent {
public:
    constexpr Percent() = default;
    static constexpr Percent fromThousandths(std::int64_t n) { return Percent(n); }
    static constexpr Percent whole(std::int64_t n) { return Percent(n * 1000); }
    /// Halves away from zero. Precondition: |value| < 9e12.
    static constexpr Percent nearestTo(double value) {
        return Percent(static_cast<std::int64_t>(value * 1000 + (value < 0 ? -0.5 : 0.5)));
    }

    [[nodiscard]] constexpr std::int64_t thousandths() const { return m_n; }
    [[nodiscard]] constexpr double value() const { return static_cast<double>(m_n) / 1000; }
    friend constexpr auto operator<=>(Percent, Percent) = default;

private:
    constexpr explicit Percent(std::int64_t n) : m_n(n) {}
    std::int64_t m_n = 0;
};

} // namespace frontwright
