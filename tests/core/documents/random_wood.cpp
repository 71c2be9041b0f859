#include "tests/core/documents/random_project.h"

#include <utility>

namespace frontwright::testing {

Percent RandomProject::percent(std::int64_t most) {
    return Percent::fromThousandths(1 + upTo(most * 1000 - 1));
}

Stock RandomProject::stockOfFronts() {
    return {text(), anyOf(Cut::QuarterSawn), anyOf(Grain::AlongHeight), anyOf(Build::Stable)};
}

WoodFigures RandomProject::woodFigures() {
    WoodFigures figures;
    if (chance(50))
        figures.coefficients = MovementCoefficients{upTo(20'000), upTo(20'000), source()};
    if (chance(50))
        figures.shrinkage = Shrinkage{percent(40), percent(40),
                                      chance(50) ? std::optional(percent(40)) : std::nullopt,
                                      Percent::fromThousandths(15'000 + upTo(25'000)), source()};
    return figures;
}

AirState RandomProject::airState() {
    AirState state =
        AirState::of(Temperature{upTo(40'000), TemperatureUnit::Celsius}, percent(100));
    if (chance(50))
        state.temperature = {30'000 + upTo(100'000), TemperatureUnit::Fahrenheit};
    state.by = anyOf(MoistureBy::Meter);
    state.reading = percent(30);
    return state;
}

Air RandomProject::air() {
    Air air{airState(), airState(), airState()};
    if (moistureOf(air.driest) > moistureOf(air.wettest))
        std::swap(air.driest, air.wettest);
    return air;
}

} // namespace frontwright::testing
