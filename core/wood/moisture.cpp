#include "core/wood/moisture.h"

#include <cstdlib>

namespace frontwright {

namespace {

/// constant + linear × T + square × T²
struct Polynomial {
    double constant, linear, square;
    [[nodiscard]] double at(double t) const { return constant + linear * t + square * t * t; }
};
struct Constants {
    Polynomial w, k, k1, k2;
};

constexpr Constants ofFahrenheit{{330, 0.452, 0.00415},
                                 {0.791, 0.000463, -0.000000844},
                                 {6.34, 0.000775, -0.0000935},
                                 {1.09, 0.0284, -0.0000904}};
constexpr Constants ofCelsius{{349, 1.29, 0.0135},
                              {0.805, 0.000736, -0.00000273},
                              {6.27, -0.00938, -0.000303},
                              {1.91, 0.0407, -0.000293}};

const Constants& constantsOf(TemperatureUnit unit) {
    switch (unit) {
    case TemperatureUnit::Celsius:
        return ofCelsius;
    case TemperatureUnit::Fahrenheit:
        break;
    }
    return ofFahrenheit;
}

/// Halves away from zero. Precondition: divisor > 0.
std::int64_t nearestQuotient(std::int64_t dividend, std::int64_t divisor) {
    const std::int64_t half = divisor / 2;
    return (dividend < 0 ? dividend - half : dividend + half) / divisor;
}

} // namespace

Temperature converted(Temperature from, TemperatureUnit unit) {
    if (from.unit == unit)
        return from;
    switch (unit) {
    case TemperatureUnit::Celsius:
        return {nearestQuotient((from.thousandths - 32'000) * 5, 9), unit};
    case TemperatureUnit::Fahrenheit:
        break;
    }
    return {nearestQuotient(from.thousandths * 9, 5) + 32'000, unit};
}

std::string shown(Temperature temperature) {
    const std::int64_t size = std::abs(temperature.thousandths);
    std::string text = temperature.thousandths < 0 ? "−" : "";
    text += std::to_string(size / 1000);
    if (const std::int64_t rest = size % 1000; rest != 0) {
        std::string decimals = std::to_string(1000 + rest).substr(1);
        decimals.resize(decimals.find_last_not_of('0') + 1);
        text += "." + decimals;
    }
    return text + (temperature.unit == TemperatureUnit::Celsius ? " °C" : " °F");
}

bool isInRange(Temperature temperature) {
    return temperature.thousandths >= converted(coldestAir, temperature.unit).thousandths &&
           temperature.thousandths <= converted(warmestAir, temperature.unit).thousandths;
}

double equilibriumMoisture(Temperature temperature, double humidity) {
    const Constants& constants = constantsOf(temperature.unit);
    const double t = temperature.degrees();
    const double kh = constants.k.at(t) * humidity / 100;
    const double k1kh = constants.k1.at(t) * kh;
    const double squares = k1kh * constants.k2.at(t) * kh;
    return 1800 / constants.w.at(t) * (kh / (1 - kh) + (k1kh + 2 * squares) / (1 + k1kh + squares));
}

double humidityFor(Temperature temperature, double moisture) {
    // Moisture rises with humidity, so halving finds the place; sixty halvings exhaust a double.
    double least = 0, greatest = 100;
    for (int i = 0; i < 60; ++i) {
        const double middle = (least + greatest) / 2;
        (equilibriumMoisture(temperature, middle) < moisture ? least : greatest) = middle;
    }
    return (least + greatest) / 2;
}

} // namespace frontwright
