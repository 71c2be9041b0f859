#pragma once

#include "core/results/result.h"
#include "core/wood/moisture.h"

#include <optional>
#include <string>

namespace frontwright {

enum class MoistureBy : std::uint8_t {
    Air,  ///< the wood has come to rest in air of that temperature and humidity
    Meter ///< a moisture meter's reading
};

/// What tells the wood's moisture at one time of the year.
struct AirState {
    MoistureBy by = MoistureBy::Air;
    Temperature temperature;               ///< Air only
    Percent humidity = Percent::whole(50); ///< Air only: relative, 0 to 100 %
    Percent reading = Percent::whole(8);   ///< Meter only: of the ovendry weight

    static AirState of(Temperature temperature, Percent humidity) {
        AirState state;
        state.temperature = temperature;
        state.humidity = humidity;
        return state;
    }
    static AirState meter(Percent reading) {
        AirState state;
        state.by = MoistureBy::Meter;
        state.reading = reading;
        return state;
    }
    friend bool operator==(const AirState&, const AirState&) = default;
};

/// The air that fronts live in: the shop's as they are cut, then the room's over the year.
struct Air {
    AirState whenCut;
    AirState driest;
    AirState wettest;
    friend bool operator==(const Air&, const Air&) = default;
};

/// Humidity outside 0 to 100 %, a temperature outside the equation's range, a reading outside 0 to
/// 30 %: the error names the range. A place is left to the caller.
std::optional<Error> impossible(const AirState&);
/// Also where the driest is wetter than the wettest. Places: "when cut", "driest", "wettest".
std::optional<Error> impossible(const Air&);

/// In per cent of the ovendry weight. Precondition: !impossible(state).
double moistureOf(const AirState&);

} // namespace frontwright
