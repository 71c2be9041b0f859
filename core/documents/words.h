#pragma once

#include "core/case/divisions.h"
#include "core/catalogue/catalogue.h"

#include <array>
#include <string_view>

namespace frontwright::documents {

/// An enumeration's words in documents, in the order of its enumerators.
template<class E>
inline constexpr std::array<std::string_view, 0> wordsOf{};

template<>
inline constexpr std::array<std::string_view, 2> wordsOf<Unit>{"in", "mm"};
template<>
inline constexpr std::array<std::string_view, 3> wordsOf<Fit>{"overlay", "gap", "inset"};
template<>
inline constexpr std::array<std::string_view, 4> wordsOf<Side>{"left", "right", "bottom", "top"};
template<>
inline constexpr std::array<std::string_view, 6> wordsOf<ProfileFamily>{
    "square", "eased", "chamfer", "round", "raised", "cove"};
template<>
inline constexpr std::array<std::string_view, 3> wordsOf<ScrewPattern>{"four-corners", "six",
                                                                       "by-hand"};
template<>
inline constexpr std::array<std::string_view, 4> wordsOf<Placing>{
    "centred-on-front", "centred-in-field", "from-top", "optical-centre"};
template<>
inline constexpr std::array<std::string_view, 3> wordsOf<MountingWay>{
    "through-wall", "front-counterbore", "front-access-hole"};
template<>
inline constexpr std::array<std::string_view, 2> wordsOf<Construction>{"face-frame", "frameless"};
template<>
inline constexpr std::array<std::string_view, surroundKinds> wordsOf<SurroundKind>{
    "open", "wall", "neighbouring-case", "overhanging-top", "moulding", "plinth", "legs"};
/// Names of a surround's lengths.
template<>
inline constexpr std::array<std::string_view, 11> wordsOf<SurroundMeasure>{
    "distance",  "frontFromEdge", "thickness", "height", "width", "overFront",
    "overSides", "projection",    "setback",   "lip",    "gap"};
template<>
inline constexpr std::array<std::string_view, 2> wordsOf<HoleDatum>{"case-bottom", "inside-bottom"};
template<>
inline constexpr std::array<std::string_view, 4> wordsOf<DrawerPurpose>{"household", "clothing",
                                                                        "school", "empty"};
template<>
inline constexpr std::array<std::string_view, 2> wordsOf<BoxDepthRule>{"as-given", "as-runner"};
template<>
inline constexpr std::array<std::string_view, 5> wordsOf<RunnerForm>{
    "clearances-only", "wooden", "side-mounted", "under-mounted", "centre"};
template<>
inline constexpr std::array<std::string_view, 4> wordsOf<SourceKind>{"published", "common-practice",
                                                                     "from-memory", "maker"};
template<>
inline constexpr std::array<std::string_view, 3> wordsOf<Cut>{"flat-sawn", "rift", "quarter-sawn"};
template<>
inline constexpr std::array<std::string_view, 2> wordsOf<Grain>{"along-length", "along-height"};
template<>
inline constexpr std::array<std::string_view, 2> wordsOf<Build>{"solid", "stable"};
template<>
inline constexpr std::array<std::string_view, 2> wordsOf<MoistureBy>{"air", "meter"};
template<>
inline constexpr std::array<std::string_view, 2> wordsOf<WoodKind>{"hardwood", "softwood"};
/// After a specific gravity: "0.5 at-12-percent".
template<>
inline constexpr std::array<std::string_view, 3> wordsOf<GravityBasis>{"at-12-percent", "ovendry",
                                                                       "green"};
template<>
inline constexpr std::array<std::string_view, 2> wordsOf<FootprintShape>{"round", "rectangle"};
template<>
inline constexpr std::array<std::string_view, 4> wordsOf<HardwareKind>{"knob", "pull", "cup-pull",
                                                                       "ring-pull"};
template<>
inline constexpr std::array<std::string_view, 3> wordsOf<FrontFace>{"show", "back", "top-edge"};
template<>
inline constexpr std::array<std::string_view, 5> wordsOf<FittingKind>{
    "cup-pull", "edge-pull", "ring-pull", "label-holder", "lock"};
template<>
inline constexpr std::array<std::string_view, 4> wordsOf<FittingAcross>{"middle", "from-left",
                                                                        "from-right", "both-sides"};
template<>
inline constexpr std::array<std::string_view, 3> wordsOf<FittingUpright>{"middle", "from-top",
                                                                         "from-bottom"};
template<>
inline constexpr std::array<std::string_view, 2> wordsOf<Direction>{"columns", "rows"};

template<>
inline constexpr std::array<std::string_view, 5> wordsOf<OpeningUse>{"drawer", "fixed-front",
                                                                     "door", "open-space", "board"};
template<>
inline constexpr std::array<std::string_view, 2> wordsOf<Furred>{"yes", "no"};
template<>
inline constexpr std::array<std::string_view, 2> wordsOf<KeeperFastening>{"sideways", "down"};
template<>
inline constexpr std::array<std::string_view, 2> wordsOf<HingeSide>{"left", "right"};
template<>
inline constexpr std::array<std::string_view, 2> wordsOf<Divides>{"case", "face"};

template<class E>
constexpr std::string_view wordOf(E value) {
    return wordsOf<E>[static_cast<std::size_t>(value)];
}

} // namespace frontwright::documents
