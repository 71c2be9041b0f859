#pragma once

#include "core/boards/board_spec.h"
#include "core/documents/front_forms.h"

namespace frontwright::documents {

// The form of a pull-out board. `a` is a Reading or a Writing. What is as a BoardSpec has it from
// the beginning is not written.

inline void refuseUnlessThere(auto& a, std::string_view name, Length length) {
    if (length <= Length{})
        a.refuse(name, text("a length greater than nothing"));
}

void members(auto& a, Is<KeeperSpec> auto& s) {
    const KeeperSpec usual;
    a.defaulted("width", s.width, usual.width);
    a.defaulted("height", s.height, usual.height);
    a.defaulted("allowance", s.allowance, usual.allowance);
    a.defaulted("leastPiece", s.leastPiece, usual.leastPiece);
    a.defaulted("screwFromEnd", s.screwFromEnd, usual.screwFromEnd);
    a.defaulted("screwSpacing", s.screwSpacing, usual.screwSpacing);
    refuseUnlessThere(a, "screwSpacing", s.screwSpacing);
    a.defaulted("fastening", s.fastening, usual.fastening);
    a.defaulted("screw", s.screw, {});
    a.defaulted("screwLength", s.screwLength, {});
    a.optional("rightScrewLength", s.rightScrewLength);
    a.defaulted("screwRecess", s.screwRecess, {});
    a.defaulted("fasteners", s.fasteners, {});
}

void members(auto& a, Is<BoardSpec> auto& s) {
    const BoardSpec usual;
    a.defaulted("thickness", s.thickness, usual.thickness);
    refuseUnlessThere(a, "thickness", s.thickness);
    a.required("depth", s.depth);
    refuseUnlessThere(a, "depth", s.depth);
    a.defaulted("sidePanel", s.sidePanel, usual.sidePanel);
    a.defaulted("sidePlay", s.sidePlay, usual.sidePlay);
    a.defaulted("playInHeight", s.playInHeight, usual.playInHeight);
    a.defaulted("workingAllowance", s.workingAllowance, usual.workingAllowance);
    a.defaulted("furred", s.furred, usual.furred);
    a.optional("runnerRise", s.runnerRise);
    a.defaulted("runnerHeight", s.runnerHeight, usual.runnerHeight);
    a.defaulted("runnerWood", s.runnerWood, {});
    a.optional("pullOut", s.pullOut);
    a.optional("pullOffCentre", s.pullOffCentre);
    a.optional("load", s.load);
    a.defaulted("keeper", s.keeper, usual.keeper);
    a.defaulted("bradLength", s.bradLength, {});
    a.optional("rightBradLength", s.rightBradLength);
    a.defaulted("bradSet", s.bradSet, {});
}

inline void board(Reading& a, Rare<BoardSpec>& s) {
    a.required("board", s.emplace());
}
/// Precondition: it is there.
inline void board(Writing& a, const Rare<BoardSpec>& s) {
    a.required("board", *s);
}

} // namespace frontwright::documents
