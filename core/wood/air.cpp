#include "core/wood/air.h"

#include "core/amounts/amounts.h"
#include "core/wood/movement.h"

#include <initializer_list>

namespace frontwright {

namespace {

std::optional<Error> impossibleAir(const AirState& state) {
    if (!isInRange(state.temperature)) {
        const TemperatureUnit unit = state.temperature.unit;
        const auto rounded = [unit](Temperature t) {
            return decimal(converted(t, unit).degrees(), unit == TemperatureUnit::Celsius ? 1 : 0);
        };
        const std::string degree = unit == TemperatureUnit::Celsius ? " °C" : " °F";
        return Error{"",
                     "the air's temperature, " + shown(state.temperature) + ", is outside " +
                         rounded(coldestAir) + " to " + rounded(warmestAir) + degree +
                         ", the range of the equation for the wood's moisture",
                     "give the temperature of the room, or read the wood with a moisture meter"};
    }
    if (state.humidity < Percent{} || state.humidity > Percent::whole(100))
        return Error{"",
                     "the relative humidity, " + decimal(state.humidity.value(), 1) +
                         " %, is outside 0 to 100 %",
                     ""};
    return std::nullopt;
}

} // namespace

std::optional<Error> impossible(const AirState& state) {
    switch (state.by) {
    case MoistureBy::Air:
        return impossibleAir(state);
    case MoistureBy::Meter:
        break;
    }
    if (state.reading < Percent{} || state.reading > fibreSaturation)
        return Error{"",
                     "the wood's moisture, " + decimal(state.reading.value(), 1) +
                         " %, is outside 0 to 30 %, between which wood shrinks and swells",
                     "let the wood dry, then measure again"};
    return std::nullopt;
}

std::optional<Error> impossible(const Air& air) {
    struct Named {
        const char* place;
        const AirState& state;
    };
    for (const Named& named : std::initializer_list<Named>{
             {"when cut", air.whenCut}, {"driest", air.driest}, {"wettest", air.wettest}})
        if (std::optional<Error> error = impossible(named.state)) {
            error->place = named.place;
            return error;
        }
    const double driest = moistureOf(air.driest), wettest = moistureOf(air.wettest);
    if (driest > wettest)
        return Error{"",
                     "wood in the driest air would have " + decimal(driest, 1) +
                         " % moisture, more than in the wettest, " + decimal(wettest, 1) + " %",
                     "exchange the two"};
    return std::nullopt;
}

double moistureOf(const AirState& state) {
    switch (state.by) {
    case MoistureBy::Air:
        return equilibriumMoisture(state.temperature, state.humidity.value());
    case MoistureBy::Meter:
        break;
    }
    return state.reading.value();
}

} // namespace frontwright
