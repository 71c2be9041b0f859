#pragma once

#include "core/catalogue/catalogue.h"

namespace frontwright {

/// What drill a screw wants in that wood.
struct PilotRule {
    Length root;           ///< of the screw that the rule goes by
    bool isNeeded = false; ///< by the wood's density
    Length least;          ///< where one is needed
    Length greatest;       ///< past it the thread has too little to hold in
    Length advised;        ///< a drill in steps of 1/64 in or 0.5 mm

    friend bool operator==(const PilotRule&, const PilotRule&) = default;
};

/// Parts of the root diameter (withdrawal):
///   NDS, by ovendry specific gravity: above 0.60 90 %; above 0.50 70 %; else none required
///   NDS before 1962 and Wood Handbook: hardwoods 90 %, softwoods 70 %
/// Advised is the former, or where it asks for none 70 %: the largest drill no more than a quarter
/// step above it, or the next where that would be less than the least. A hole is taken as right
/// from 70 % of the root (where one is needed) to the larger of the two rules, each with half a
/// step of 1/64 in for the drills that there are.
PilotRule pilotRule(const WoodScrew&, SpecificGravity, WoodKind, Unit steps);

/// The screw's own root, or two thirds of its shank (Wood Handbook: of most sizes).
Length rootOf(const WoodScrew&);

/// Part of the root by the design standard; 0 where it asks for no hole.
double leadHolePart(double gravityOvendry);
/// Part of the root by the older rule.
constexpr double olderLeadHolePart(WoodKind kind) {
    return kind == WoodKind::Hardwood ? 0.90 : 0.70;
}

} // namespace frontwright
