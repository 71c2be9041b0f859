#pragma once

#include "core/documents/level.h"
#include "core/wood/air.h"

namespace frontwright::documents {

// The form of the air that wood lives in. `a` is a Reading or a Writing. What is not asked for by
// the other member is kept where it is not the default.

inline constexpr Text inRangeOfEquation =
    text("a temperature from 30 to 270 °F (−1.1 to 132.2 °C), the range of the equation for the "
         "wood's moisture");

void members(auto& a, Is<AirState> auto& s) {
    const AirState absent;
    a.defaulted("by", s.by, absent.by);
    switch (s.by) {
    case MoistureBy::Air:
        a.required("temperature", s.temperature);
        if (!isInRange(s.temperature))
            a.refuse("temperature", inRangeOfEquation);
        a.required("humidity", s.humidity);
        if (s.humidity > Percent::whole(100))
            a.refuse("humidity", text("a relative humidity from 0 to 100 (per cent)"));
        a.defaulted("moisture", s.reading, absent.reading);
        return;
    case MoistureBy::Meter:
        break;
    }
    a.defaulted("temperature", s.temperature, absent.temperature);
    a.defaulted("humidity", s.humidity, absent.humidity);
    a.required("moisture", s.reading);
    if (impossible(s))
        a.refuse("moisture", text("a moisture from 0 to 30 (per cent)"));
}

void refuseUnlessOrdered(auto& a, const AirState& driest, const AirState& wettest) {
    if (!impossible(driest) && !impossible(wettest) && moistureOf(driest) > moistureOf(wettest))
        a.refuse("wettest", text("air in which wood has no less moisture than in the driest"));
}

void members(auto& a, Is<Air> auto& s) {
    a.required("whenCut", s.whenCut);
    a.required("driest", s.driest);
    a.required("wettest", s.wettest);
    refuseUnlessOrdered(a, s.driest, s.wettest);
}

} // namespace frontwright::documents
