#pragma once

#include "core/boxes/box.h"
#include "core/case/layout.h"
#include "core/fastening/mounting.h"
#include "core/geometry/region.h"
#include "core/hardware/bolts.h"
#include "core/project/project.h"
#include "core/results/result.h"

namespace frontwright {

/// What shows of a member between (or beside) the fronts: least and greatest along its length.
struct Reveal {
    Length least;
    Length greatest;
    friend bool operator==(const Reveal&, const Reveal&) = default;
};

struct MemberPlan {
    MemberId id;
    MemberKind kind = MemberKind::Rail;
    CaseRect rect;
    Reveal reveal;          ///< negative where fronts overlap
    bool hasFronts = false; ///< a front lies on it or beside it
};

/// What lies beyond one side of a front.
struct Neighbour {
    std::uint32_t member = 0;           ///< index into Plan::members
    std::optional<std::uint32_t> front; ///< nearest facing front across the member, if any
    Length gap; ///< to that front, or to the member's far edge; Inset: to the opening's edge
};

/// A front, its box and its holes. Everything derived for one opening.
struct FrontPlan {
    OpeningId opening;
    std::uint32_t bank = 0;  ///< 0 = A; banks are numbered left to right, then top to bottom
    std::uint32_t place = 0; ///< 0 = the bank's top front
    CaseRect openingRect;
    CaseRect rect;           ///< of the front, in the elevation
    PerSide<Length> overlay; ///< over the opening's edge; negative for inset
    PerSide<Fit> fit;
    PerSide<Neighbour> neighbours;
    Length thickness;
    const Profile* profile = nullptr; ///< the front's own or the case's; into the Project
    FrontRect field;
    BoxPlan box;
    MountingPlan mounting;
    std::optional<HardwarePlan> hardware; ///< none where no handle is chosen
    /// What the opening decides for itself; into the Project. makePlan sets it always.
    const FrontChoices* choices = nullptr;
};

/// Loose block that sets the gap between two fronts.
struct Spacer {
    std::uint32_t lower;  ///< index into Plan::fronts: the lower or the left one
    std::uint32_t upper;  ///< the upper or the right one
    std::uint32_t member; ///< index into Plan::members
    Length width;         ///< = member − overlay − overlay; negative where they overlap
    Span along;           ///< where the two face each other, along the member, case frame
};

/// Block that sets the first front's overlay at a side of the bank's frame.
struct Stop {
    std::uint32_t front; ///< index into Plan::fronts
    Side side = Side::Left;
    Length fromFarEdge; ///< member width − overlay, from the member's far edge
    Length fromOpening; ///< overlay, from the opening's edge
};

/// Two fronts whose rectangles have a common part.
struct Collision {
    std::uint32_t first;
    std::uint32_t second;
    CaseRect common;
};

/// What follows from a Project: every size, place and depth. Refers into the Project and the
/// Catalogue it was made from, which must outlive it. Judges nothing: see findings.
struct Plan {
    CaseRect outline;
    std::vector<MemberPlan> members; ///< the four outer ones first
    std::vector<FrontPlan> fronts;   ///< one per opening, in the layout's order
    std::vector<Spacer> spacers;
    std::vector<Stop> stops;
    std::vector<Collision> collisions;

    [[nodiscard]] const FrontPlan* frontOf(OpeningId) const;  ///< nullptr where there is none
    [[nodiscard]] const MemberPlan* memberOf(MemberId) const; ///< nullptr where there is none
};

/// Error: the case cannot be laid out (no room), or an id is not in the catalogue.
Result<Plan> makePlan(const Project&, const Catalogue&);

/// The maker's name of the opening, else bank letters and place: "A1", "B3", "AA12".
std::string label(const Project&, const FrontPlan&);

/// Checks what must hold for every plan: parts tile the case, spacers sum with overlays to their
/// member, front and box frames invert each other. Empty = all well; else what is broken.
std::string brokenInvariant(const Plan&);

} // namespace frontwright
