#pragma once

#include "core/case/surroundings.h"
#include "core/case/system_holes.h"
#include "core/documents/level.h"
#include "core/documents/words.h"

namespace frontwright::documents {

// The forms of what stands round a case and of the holes in its panels. `a` is a Reading or a
// Writing.

void refuseUnlessPositive(auto& a, std::string_view name, Length length) {
    if (length <= Length{})
        a.refuse(name, text("a length greater than nothing"));
}

void members(auto& a, Is<Surround> auto& s) {
    SurroundKind kind = kindOf(s);
    a.required("kind", kind);
    if constexpr (!std::is_const_v<std::remove_reference_t<decltype(s)>>)
        s = surroundOf(kind);
    for (const SurroundMeasure measure : allSurroundMeasures)
        if (auto* length = lengthOf(s, measure))
            a.required(wordOf(measure), *length);
}

void members(auto& a, Is<Surroundings> auto& s) {
    for (const Side side : allSides) {
        a.defaulted(wordOf(side), s[side], Surround{});
        if (!canStandAt(side, kindOf(s[side])))
            a.refuse(wordOf(side), text("a kind that can stand at that side of a case"));
    }
}

void members(auto& a, Is<SystemHoles> auto& s) {
    a.defaulted("datum", s.datum, HoleDatum::CaseBottom);
    a.required("first", s.first);
    a.required("pitch", s.pitch);
    a.required("setback", s.setback);
    a.optional("rear", s.rear);
    a.required("diameter", s.diameter);
    refuseUnlessPositive(a, "diameter", s.diameter);
    if (!isPossiblePitch(s))
        a.refuse("pitch", text("a length of 1 mm at least, more than the holes' diameter"));
}

} // namespace frontwright::documents
