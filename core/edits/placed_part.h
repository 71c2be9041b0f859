#pragma once

#include "core/plan/plan.h"
#include "core/results/result.h"

#include <optional>
#include <string>
#include <vector>

namespace frontwright {

/// What is placed by hand on a front: one mounting hole, or one whole handle.
struct PlacedPart {
    enum class Kind : std::uint8_t { MountingHole, Handle } kind = Kind::MountingHole;
    OpeningId opening;
    std::uint32_t index = 0; ///< into MountingPlan::holes or HardwarePlan::handles
    friend bool operator==(const PlacedPart&, const PlacedPart&) = default;
};

/// Its centre in the case's frame; nullopt where the plan has no such part.
std::optional<CasePoint> centreOf(const Plan&, const PlacedPart&);

/// All parts of that kind on one front, in the plan's order.
std::vector<PlacedPart> partsOn(const FrontPlan&, PlacedPart::Kind);

/// The handle that a handle's hole belongs to, and a handle's first hole.
std::uint32_t handleOfHole(const HardwarePlan&, std::uint32_t hole);
std::uint32_t firstHoleOf(const HardwarePlan&, std::uint32_t handle);

/// Whether the fronts of the bank that have as many parts of the kind move theirs by the same.
enum class Together : std::uint8_t { Alone, DownTheBank };

/// The part itself and, down the bank, those that go with it.
std::vector<PlacedPart> movedWith(const Plan&, const PlacedPart&, Together);

struct PlacedMove {
    Project project;
    Phrase heldBecause; ///< why it does not come to lie just there; empty where it does
};
/// Moves a part by exactly `by`; nothing at all by nothing. A hole moved out of a pattern makes of
/// all its front's holes given places, each where it was; a single handle gets a given place. Two
/// handles stay alike: up and down they are placed from the top, across at a whole per cent of the
/// width. What is moved to an unwise place is taken and judged by the findings. `plan` is the
/// project's.
Result<PlacedMove> movePart(const Project&, const Plan&, const PlacedPart&, CasePoint by,
                            Together = Together::Alone);

/// Takes one mounting hole away; the others become given places. Error for the last one.
Result<Project> removeMountingHole(const Project&, const Plan&, OpeningId, std::uint32_t hole);

/// How far a part's centre is from something, along one axis.
struct PartDistance {
    enum class To : std::uint8_t {
        FrontEdge,
        BoxWall, ///< edge of the box's wall
        Bottom,  ///< the bottom panel's top
        Hole     ///< centre of the nearest hole on that side of it
    } to = To::FrontEdge;
    Side side = Side::Left; ///< where it lies, seen from the part
    CasePoint end;          ///< on the part's own height or upright
    Length length;          ///< negative where the part lies beyond the edge
    friend bool operator==(const PartDistance&, const PartDistance&) = default;
};
/// To the front's four edges, the wall's four edges, the bottom's top (mounting holes only) and
/// the nearest hole beside and above or below it; a handle's own holes do not count. Empty where
/// there is no such part.
std::vector<PartDistance> distancesOf(const Plan&, const PlacedPart&);

} // namespace frontwright
