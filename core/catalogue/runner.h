#pragma once

#include "core/amounts/amounts.h"
#include "core/lengths/length.h"
#include "core/results/source.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace frontwright {

/// What a box runs on: what is drawn, and what is asked of the box.
enum class RunnerForm : std::uint8_t {
    ClearancesOnly, ///< nothing is known but its clearances
    Wooden,         ///< the box's sides slide on rails; guides beside it, kickers over it
    SideMounted,    ///< metal, between the box's side and what it is screwed to
    UnderMounted,   ///< metal, under the bottom at both sides; hooks hold the box's back
    Centre          ///< one, under the middle of the box
};

/// An upright rectangle: a section, or a part of a wall.
struct UprightSize {
    Length width;
    Length height;
    friend bool operator==(const UprightSize&, const UprightSize&) = default;
};

/// A generic way for a box to run in its opening, with the clearances that it asks for. Heights
/// count from the box's lower edge.
///
///      opening's edge |clearance| box's side          runner's section, side-mounted:
///                     |  _____  |                     top, top − height, width
///                     | |     | |
///                     | |_____| |                     under-mounted: width counts from the
///      ---------------|---------|__________           opening's edge, below box and bottom
struct RunnerKind {
    std::string id;       ///< "wooden", "side-mounted"
    std::string name;     ///< "Side-mounted metal runners"
    Length sideClearance; ///< each side, between box and opening
    Length clearanceBelow;
    Length clearanceAbove;
    Source source;
    std::optional<Mass> rating = std::nullopt; ///< a pair's: drawer and what is in it
    RunnerForm form = RunnerForm::ClearancesOnly;
    std::vector<Length> lengths = {}; ///< stocked, ascending; none: cut to length
    /// Its front end behind the box wall's front face; none: it begins behind the frame.
    std::optional<Length> setback = std::nullopt;
    UprightSize section = {};
    Length top = {}; ///< of the section, above the box's lower edge
    /// Thickness of the box's sides that the side clearance is for: what is between opening and
    /// the sides' inner faces is what counts. None: the sides do not matter.
    std::optional<Length> forSides = std::nullopt;
    /// How much more side clearance than asked for still runs well, each side; none: any does.
    std::optional<Length> tolerance = std::nullopt;
    /// Cut out of the box's back at its lower edge: at both ends, from the sides' inner faces; of a
    /// centre runner in the middle.
    std::optional<UprightSize> backNotch = std::nullopt;
    /// Cut out of the box wall at its lower corners; of a centre runner in the middle.
    std::optional<UprightSize> wallNotch = std::nullopt;
    /// Of the wall, from its lower corners; of a centre runner in the middle: no screw there.
    std::optional<UprightSize> clearZone = std::nullopt;
    std::optional<UprightSize> kicker = std::nullopt; ///< section of what keeps it from tipping
    std::optional<Length> guideHeight = std::nullopt; ///< of the strip beside the box's side
    friend bool operator==(const RunnerKind&, const RunnerKind&) = default;
};

/// Whether there are two of them, one at each side.
constexpr bool isPair(RunnerForm form) {
    return form != RunnerForm::Centre;
}
/// Whether it lies under the box's bottom, between the sides.
constexpr bool liesUnderBottom(RunnerForm form) {
    return form == RunnerForm::UnderMounted || form == RunnerForm::Centre;
}

} // namespace frontwright
