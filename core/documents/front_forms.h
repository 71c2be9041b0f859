#pragma once

#include "core/case/choices.h"
#include "core/documents/decisions.h"
#include "core/documents/level.h"
#include "core/documents/reading.h"
#include "core/documents/writing.h"

namespace frontwright::documents {

// The forms of what makes a front, for the case and for one opening. `a` is a Reading or a Writing.

enum class Need : std::uint8_t { Needed, Ignored };

/// A length that only some choices need; where it is not needed, nothing is not written.
void measure(auto& a, std::string_view name, Is<WrittenLength> auto& length, Need need) {
    if (need == Need::Needed)
        a.required(name, length);
    else
        a.defaulted(name, length, {});
}

constexpr Need neededIf(bool condition) {
    return condition ? Need::Needed : Need::Ignored;
}

void members(auto& a, Is<Profile> auto& s) {
    a.required("family", s.family);
    measure(a, "width", s.width, neededIf(s.family != ProfileFamily::Square));
    measure(a, "depth", s.depth, neededIf(s.family != ProfileFamily::Square));
    measure(a, "step", s.step, neededIf(s.family == ProfileFamily::Raised));
    if (s.family == ProfileFamily::Raised && s.step.length > s.depth.length)
        a.refuse("step", text("a step no higher than the profile is deep"));
    a.defaulted("sides", s.sides, PerSide<bool>::all(true));
}

void members(auto& a, Is<BoxSpec> auto& s) {
    a.required("runner", s.runner);
    a.optional("sideClearance", s.sideClearance);
    a.optional("clearanceBelow", s.clearanceBelow);
    a.optional("clearanceAbove", s.clearanceAbove);
    a.optional("height", s.height);
    a.required("depth", s.depth);
    a.required("wallThickness", s.wallThickness);
    a.required("sideThickness", s.sideThickness);
    a.required("grooveHeight", s.grooveHeight);
    a.required("bottomThickness", s.bottomThickness);
    a.defaulted("purpose", s.purpose, DrawerPurpose::Household);
    a.optional("load", s.load);
}

void members(auto& a, Is<MountingSpec> auto& s) {
    a.required("screw", s.screw);
    a.optional("length", s.length);
    a.required("recess", s.recess);
    a.required("toolDiameter", s.toolDiameter);
    a.always("pattern", s.pattern);
    a.optional("fromSides", s.fromSides);
    a.optional("fromBottom", s.fromBottom);
    a.optional("fromTop", s.fromTop);
    a.defaulted("placed", s.placed, {});
    a.optional("pilotHole", s.pilotHole);
    a.optional("clearanceHole", s.clearanceHole);
}

template<>
inline constexpr bool isKnownByPlace<FittingSpec> = true;
void members(auto& a, Is<FittingSpec> auto& s) {
    a.required("form", s.form);
    a.always("across", s.across);
    measure(a, "fromSide", s.fromSide, neededIf(s.across != FittingAcross::Middle));
    a.always("upright", s.upright);
    measure(a, "fromEdge", s.fromEdge, neededIf(s.upright != FittingUpright::Middle));
    a.optional("screwLength", s.screwLength);
}

void members(auto& a, Is<HardwareSpec> auto& s) {
    constexpr Whole parts{2, 1000};
    constexpr Whole percent{1, 50};
    a.required("form", s.form);
    a.always("placing", s.placing);
    measure(a, "distance", s.distance, neededIf(s.placing == Placing::FromTop));
    a.whole("opticalPart", s.opticalPart, parts, 20);
    a.optional("twoPast", s.twoPast);
    a.whole("twoAtPercent", s.twoAtPercent, percent, 25);
    a.always("way", s.way);
    a.optional("boltLength", s.boltLength);
    a.optional("counterbore", s.counterbore);
    a.optional("counterboreDiameter", s.counterboreDiameter);
    a.optional("accessDiameter", s.accessDiameter);
    a.optional("placedAt", s.placedAt);
    a.optional("threePast", s.threePast);
    a.defaulted("fittings", s.fittings, {});
}

/// The case's decision, or the one that an opening makes where it makes one.
template<class Spec>
void decision(Reading& a, std::string_view name, FrontDefaults& s) {
    using Places = PresetPlaces<Spec>;
    Decision<Spec> read{s.*Places::ofCase, s.presets[Places::kind]};
    a.required(name, read);
}
template<class Spec>
void decision(Writing& a, std::string_view name, const FrontDefaults& s) {
    using Places = PresetPlaces<Spec>;
    a.required(name, Decision<const Spec>{s.*Places::ofCase, s.presets[Places::kind]});
}
template<class Spec>
void decision(Reading& a, std::string_view name, FrontChoices& s) {
    using Places = PresetPlaces<Spec>;
    OptionalDecision<Spec> read{s.*Places::ofOpening, {}, {}};
    a.optional(name, read);
    setPresetName(s, Places::kind, std::move(read.preset));
}
template<class Spec>
void decision(Writing& a, std::string_view name, const FrontChoices& s) {
    using Places = PresetPlaces<Spec>;
    if (const auto& own = s.*Places::ofOpening)
        a.required(name, Decision<const Spec>{*own, presetName(s, Places::kind)});
}

void members(auto& a, Is<Stock> auto& s) {
    a.always("species", s.species);
    a.defaulted("cut", s.cut, Cut::FlatSawn);
    a.defaulted("grain", s.grain, Grain::AlongLength);
    a.defaulted("build", s.build, Build::Solid);
}

/// The case's stock stands among the members of its fronts, where its species always stood.
void members(auto& a, Is<FrontDefaults> auto& s) {
    a.required("fit", s.fit);
    a.required("thickness", s.thickness);
    members(a, s.stock);
    decision<Profile>(a, "profile", s);
    decision<BoxSpec>(a, "box", s);
    decision<MountingSpec>(a, "mounting", s);
    decision<HardwareSpec>(a, "hardware", s);
}

/// Stands among an opening's own members.
void members(auto& a, Is<FrontChoices> auto& s) {
    a.defaulted("fit", s.fit, {});
    a.optional("thickness", s.thickness);
    a.optional("stock", s.stock);
    decision<Profile>(a, "profile", s);
    decision<BoxSpec>(a, "box", s);
    decision<MountingSpec>(a, "mounting", s);
    decision<HardwareSpec>(a, "hardware", s);
}

} // namespace frontwright::documents
