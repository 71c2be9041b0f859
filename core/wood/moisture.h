#pragma once

#include "core/amounts/percent.h"

#include <compare>
#include <cstdint>
#include <string>

namespace frontwright {

enum class TemperatureUnit : std::uint8_t { Celsius, Fahrenheit };

/// As the maker reads it off, in that unit.
struct Temperature {
    std::int64_t thousandths = 20'000; ///< of a degree
    TemperatureUnit unit = TemperatureUnit::Celsius;

    static constexpr Temperature celsius(std::int64_t whole) {
        return {whole * 1000, TemperatureUnit::Celsius};
    }
    static constexpr Temperature fahrenheit(std::int64_t whole) {
        return {whole * 1000, TemperatureUnit::Fahrenheit};
    }
    [[nodiscard]] constexpr double degrees() const {
        return static_cast<double>(thousandths) / 1000;
    }
    friend constexpr bool operator==(const Temperature&, const Temperature&) = default;
};
/// Nearest thousandth of a degree.
Temperature converted(Temperature, TemperatureUnit);
/// "20 °C", "70.5 °F"
std::string shown(Temperature);

/// The range that the handbook's table of equilibrium moisture spans: 30 to 270 °F, from memory.
inline constexpr Temperature coldestAir = Temperature::fahrenheit(30);
inline constexpr Temperature warmestAir = Temperature::fahrenheit(270);
bool isInRange(Temperature);

/// Moisture that wood comes to in air of that temperature and relative humidity, in per cent of its
/// ovendry weight. Forest Products Laboratory, Wood Handbook (GTR-282, 2021), equation 4-5, with
/// the constants of the temperature's own unit, which must never be mixed:
///   M = (1800 / W) × (K h / (1 − K h) + (K1 K h + 2 K1 K2 K² h²) / (1 + K1 K h + K1 K2 K² h²)),
/// h = relative humidity / 100. It is the mean of wood that dries and wood that wets; species
/// differ, so that a tenth of a per cent is only an illustration. At 100 % it stays finite (28.8 at
/// 20 °C), which is no precise value. Equation 4-6 of the same edition is another one and gives
/// more in damp air. Precondition: isInRange(temperature), humidity from 0 to 100 %.
double equilibriumMoisture(Temperature, double humidity);

/// The humidity at which wood comes to that moisture: 0 … 100, the nearer end where none does.
double humidityFor(Temperature, double moisture);

} // namespace frontwright
