#pragma once

#include "core/boxes/box.h"

#include <vector>

namespace frontwright {

/// What a runner has room in, from front to back.
struct RunnerPlace {
    Length boxSetback;     ///< box wall's front face behind the frame's face
    Length frameThickness; ///< 0 where there is no frame
    Length caseDepth;      ///< inside, from the frame's back
};

/// A runner from front to back.
struct RunnerReach {
    Length setback;               ///< its front end behind the frame's face
    Length room;                  ///< from there to the case's back
    std::optional<Length> length; ///< none where no stocked one fits
    friend bool operator==(const RunnerReach&, const RunnerReach&) = default;
};

///   setback = box wall's face + the kind's setback; else the frame's thickness
///   room    = frame + case inside − setback
/// Length: as given; else the longest stocked one that is no longer than the room and, where the
/// box does not follow it, than the box; cut to length it takes the whole room.
RunnerReach runnerReach(const BoxSpec&, const RunnerKind&, const RunnerPlace&);

/// The depth of the box: the runner's length where the maker asks for that and one fits.
WrittenLength boxDepth(const BoxSpec&, const RunnerReach&);

/// A runner and what it asks of its box. Heights count from the box's lower edge.
struct RunnerPlan {
    const RunnerKind* kind = nullptr; ///< into the Catalogue; never null
    RunnerReach reach;
    Length top;        ///< of its section
    Length foot;       ///< of its section; negative below the box
    Length sideNeeded; ///< side clearance that it asks for with sides of this thickness
    std::vector<WallRect> clearZones;  ///< of the wall: no screw there
    std::vector<WallRect> wallNotches; ///< cut out of the wall
    std::vector<WallRect> backNotches; ///< cut out of the back, seen from the front
    /// Thickness of the block between the case's side and the opening's edge; none where that is
    /// not told, or a single runner needs none.
    std::optional<Length> furring;
    std::optional<Length> kickerPlay;   ///< between box and kicker; none without kickers
    std::optional<Length> kickerHeight; ///< its underside above the opening's lower edge
    friend bool operator==(const RunnerPlan&, const RunnerPlan&) = default;
};

/// nullopt where nothing but clearances is known of the kind.
///   side clearance needed = the kind's + sides that it is for − sides
///   play under the kicker = the clearance above that is asked for, or what the box leaves of it
///   kicker's underside    = clearance below + box + play
std::optional<RunnerPlan> planRunner(const BoxSpec&, const RunnerKind&, const BoxPlan&,
                                     const RunnerReach&);

/// Least height of the bottom's underside that keeps it off runner and notches; 0 where the runner
/// does not lie under it.
Length leastGrooveHeight(const RunnerPlan&);

/// Least width of the box between its sides that the runners under it need; 0 where none are.
Length leastInsideWidth(const RunnerPlan&, const BoxPlan&);

} // namespace frontwright
