#include "core/wood/air.h"

#include "core/amounts/amounts.h"
#include "core/wood/movement.h"
#include "core/words/figure.h"

#include <cmath>
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
        return Error{
            {},
            phrase("the air's temperature, %1, is outside %2 to %3, the range of the equation for "
                   "the wood's moisture",
                   figure(shown(state.temperature)), figure(rounded(coldestAir)),
                   figure(rounded(warmestAir) + degree)),
            text("give the temperature of the room, or read the wood with a moisture meter")};
    }
    if (state.humidity < Percent{} || state.humidity > Percent::whole(100))
        return Error{{},
                     phrase("the relative humidity, %1 %, is outside 0 to 100 %",
                            figure(decimal(state.humidity.value(), 1))),
                     {}};
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
        return Error{{},
                     phrase("the wood's moisture, %1 %, is outside 0 to 30 %, between which wood "
                            "shrinks and swells",
                            figure(decimal(state.reading.value(), 1))),
                     text("let the wood dry, then measure again")};
    return std::nullopt;
}

std::optional<Error> impossible(const Air& air) {
    struct Named {
        Text place;
        const AirState& state;
    };
    for (const Named& named : std::initializer_list<Named>{{text("when cut"), air.whenCut},
                                                           {text("driest"), air.driest},
                                                           {text("wettest"), air.wettest}})
        if (std::optional<Error> error = impossible(named.state)) {
            error->place = named.place;
            return error;
        }
    const double driest = moistureOf(air.driest), wettest = moistureOf(air.wettest);
    if (driest > wettest)
        return Error{{},
                     phrase("wood in the driest air would have %1 % moisture, more than in the "
                            "wettest, %2 %",
                            figure(decimal(driest, 1)), figure(decimal(wettest, 1))),
                     text("exchange the two")};
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

TemperatureUnit temperatureUnitBeside(Unit unit) {
    switch (unit) {
    case Unit::Inch:
        return TemperatureUnit::Fahrenheit;
    case Unit::Millimetre:
        break;
    }
    return TemperatureUnit::Celsius;
}

namespace {

Percent inTenths(double percent) {
    return Percent::fromThousandths(std::llround(percent * 10) * 100);
}

AirState byMeter(AirState state) {
    if (!impossible(state))
        state.reading = inTenths(moistureOf(state));
    state.by = MoistureBy::Meter;
    return state;
}

AirState byAir(AirState state, TemperatureUnit unit) {
    const bool isReading = !impossible(state);
    state.by = MoistureBy::Air;
    if (state.temperature == AirState{}.temperature)
        state.temperature = converted(state.temperature, unit);
    if (!isReading || !isInRange(state.temperature))
        return state;
    if (impossible(state) || inTenths(moistureOf(state)) != inTenths(state.reading.value()))
        state.humidity = inTenths(humidityFor(state.temperature, state.reading.value()));
    return state;
}

} // namespace

AirState toldBy(const AirState& state, MoistureBy by, TemperatureUnit unit) {
    if (state.by == by)
        return state;
    switch (by) {
    case MoistureBy::Air:
        return byAir(state, unit);
    case MoistureBy::Meter:
        break;
    }
    return byMeter(state);
}

bool tellTheSame(const AirState& a, const AirState& b) {
    if (a.by != b.by)
        return false;
    switch (a.by) {
    case MoistureBy::Air:
        return a.temperature == b.temperature && a.humidity == b.humidity;
    case MoistureBy::Meter:
        break;
    }
    return a.reading == b.reading;
}

} // namespace frontwright
