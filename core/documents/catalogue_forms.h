#pragma once

#include "core/catalogue/catalogue.h"
#include "core/documents/air_forms.h"
#include "core/documents/level.h"

#include <algorithm>

namespace frontwright::documents {

// The form of catalogue entries: the same in the program's own files and in a document's "own".
// `a` is a Reading or a Writing.

inline void refuseUnlessAscending(auto& a, const std::vector<Length>& lengths) {
    if (!std::is_sorted(lengths.begin(), lengths.end(), std::less_equal<>()))
        a.refuse("lengths", text("lengths in ascending order"));
}

void members(auto& a, Is<Source> auto& s) {
    a.required("kind", s.kind);
    a.always("title", s.title);
}

void members(auto& a, Is<WoodScrew> auto& s) {
    a.required("id", s.id);
    a.required("name", s.name);
    a.required("shankDiameter", s.shankDiameter);
    a.required("headDiameter", s.headDiameter);
    a.required("headHeight", s.headHeight);
    a.required("clearanceHole", s.clearanceHole);
    a.required("pilotHole", s.pilotHole);
    a.required("lengths", s.lengths);
    refuseUnlessAscending(a, s.lengths);
    a.required("source", s.source);
    a.optional("rootDiameter", s.rootDiameter);
}

void members(auto& a, Is<Bolt> auto& s) {
    a.required("id", s.id);
    a.required("name", s.name);
    a.required("thread", s.thread);
    a.required("majorDiameter", s.majorDiameter);
    a.required("headDiameter", s.headDiameter);
    a.required("headHeight", s.headHeight);
    a.required("clearanceHole", s.clearanceHole);
    a.required("lengths", s.lengths);
    refuseUnlessAscending(a, s.lengths);
    a.required("source", s.source);
}

void members(auto& a, Is<Footprint> auto& s) {
    a.required("shape", s.shape);
    a.required("width", s.width);
    a.required("height", s.height);
}

void members(auto& a, Is<HardwareForm> auto& s) {
    a.required("id", s.id);
    a.required("name", s.name);
    a.required("kind", s.kind);
    a.required("holes", s.holes);
    a.required("footprint", s.footprint);
    a.required("projection", s.projection);
    a.required("bolt", s.bolt);
    a.required("threadDepth", s.threadDepth);
    a.required("leastEngagement", s.leastEngagement);
    a.optional("suppliedBolt", s.suppliedBolt);
    a.required("source", s.source);
}

/// By two of its corners.
void members(auto& a, Is<FrontRect> auto& s) {
    FrontPoint low = s.lowerLeft(), high{s.right, s.top};
    a.required("lowerLeft", low);
    a.required("upperRight", high);
    if constexpr (!std::is_const_v<std::remove_reference_t<decltype(s)>>)
        s = {low.x, low.y, high.x, high.y};
    if (s.isEmpty())
        a.refuse("upperRight", text("a corner right of and above the other"));
}

template<>
inline constexpr bool isKnownByPlace<FittingBore> = true;
void members(auto& a, Is<FittingBore> auto& s) {
    a.required("at", s.at);
    a.required("diameter", s.diameter);
    a.optional("depth", s.depth);
    a.always("from", s.from);
}

template<>
inline constexpr bool isKnownByPlace<FittingMortise> = true;
void members(auto& a, Is<FittingMortise> auto& s) {
    a.required("from", s.from);
    a.required("place", s.place);
    a.required("depth", s.depth);
}

void members(auto& a, Is<FittingForm> auto& s) {
    a.required("id", s.id);
    a.required("name", s.name);
    a.required("kind", s.kind);
    a.always("bearsOn", s.bearsOn);
    a.required("footprint", s.footprint);
    a.required("projection", s.projection);
    a.required("plate", s.plate);
    a.required("screw", s.screw);
    a.required("screws", s.screws);
    a.defaulted("bores", s.bores, {});
    a.defaulted("mortises", s.mortises, {});
    a.optional("belowTop", s.belowTop);
    a.required("source", s.source);
}

void members(auto& a, Is<RunnerKind> auto& s) {
    a.required("id", s.id);
    a.required("name", s.name);
    a.required("sideClearance", s.sideClearance);
    a.required("clearanceBelow", s.clearanceBelow);
    a.required("clearanceAbove", s.clearanceAbove);
    a.required("source", s.source);
    a.optional("rating", s.rating);
}

void members(auto& a, Is<WoodTone> auto& s) {
    a.whole("red", s.red, Whole{0, 255});
    a.whole("green", s.green, Whole{0, 255});
    a.whole("blue", s.blue, Whole{0, 255});
    a.whole("figure", s.figure, Whole{0, 100});
}

void members(auto& a, Is<MovementCoefficients> auto& s) {
    a.millionths("radial", s.radial);
    a.millionths("tangential", s.tangential);
    constexpr std::int64_t most = 20'000;
    if (s.radial > most || s.tangential > most)
        a.refuse("tangential", text("coefficients per 1 % of moisture, of 0.02 at most"));
    a.required("source", s.source);
}

void members(auto& a, Is<Shrinkage> auto& s) {
    const auto isPercent = [](Percent p) { return p > Percent{} && p <= Percent::whole(40); };
    a.required("radial", s.radial);
    a.required("tangential", s.tangential);
    if (!isPercent(s.radial) || !isPercent(s.tangential))
        a.refuse("tangential", text("shrinkages of more than 0 and at most 40 (per cent)"));
    a.optional("volumetric", s.volumetric);
    a.defaulted("start", s.start, Percent::whole(30));
    if (s.start < Percent::whole(15) || s.start > Percent::whole(40))
        a.refuse("start", text("a moisture from 15 to 40 (per cent)"));
    a.required("source", s.source);
}

void members(auto& a, Is<Species> auto& s) {
    a.required("id", s.id);
    a.required("name", s.name);
    a.defaulted("kind", s.kind, WoodKind::Hardwood);
    a.optional("gravity", s.gravity);
    a.optional("tone", s.tone);
    a.defaulted("botanical", s.botanical, {});
    a.optional("coefficients", s.figures.coefficients);
    a.optional("shrinkage", s.figures.shrinkage);
    a.defaulted("note", s.note, {});
}

void members(auto& a, Is<AirRange> auto& s) {
    a.required("id", s.id);
    a.required("name", s.name);
    a.required("average", s.average);
    a.required("driest", s.driest);
    a.required("wettest", s.wettest);
    refuseUnlessOrdered(a, s.driest, s.wettest);
    a.required("source", s.source);
}

/// A list of entries; empty is not written. Each id names one entry only.
void entries(auto& a, std::string_view name, auto& list) {
    a.defaulted(name, list, {});
    std::vector<std::string_view> ids;
    for (const auto& entry : list)
        ids.push_back(entry.id);
    std::sort(ids.begin(), ids.end());
    if (std::adjacent_find(ids.begin(), ids.end()) != ids.end())
        a.refuse(name, text("entries of different ids"));
}

void members(auto& a, Is<Catalogue> auto& s) {
    entries(a, "woodScrews", s.woodScrews);
    entries(a, "bolts", s.bolts);
    entries(a, "hardware", s.hardware);
    entries(a, "runners", s.runners);
    entries(a, "species", s.species);
    entries(a, "airs", s.airs);
    entries(a, "fittings", s.fittings);
}

} // namespace frontwright::documents
