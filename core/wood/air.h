#pragma once

#include "core/lengths/length.h"
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

/// What makers who measure lengths in that unit read temperatures in: inches with °F.
TemperatureUnit temperatureUnitBeside(Unit);

/// The same moisture told the other way: as a meter would read it, to 0.1 %, or as the humidity, to
/// 0.1 %, at which wood comes to the reading in air of the state's temperature (the equation
/// backwards; the nearer of 0 and 100 % where none does). A humidity that comes to the reading as
/// it is stays. `unit`: of the ordinary 20 °C (68 °F), where no other temperature was given. What
/// is impossible is only told the other way, with the members that it has.
AirState toldBy(const AirState&, MoistureBy, TemperatureUnit unit);

/// Whether both tell the same; members that are not asked for are left out.
bool tellTheSame(const AirState&, const AirState&);

} // namespace frontwright
