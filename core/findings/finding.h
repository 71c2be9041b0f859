#pragma once

#include "core/boards/board_faults.h"
#include "core/plan/plan.h"

#include <array>
#include <functional>
#include <string>
#include <vector>

namespace frontwright {

/// How grave, gravest first.
enum class Severity : std::uint8_t {
    Ruins,           ///< a part would be spoiled
    WontWork,        ///< it will not do its work
    OutsidePractice, ///< outside good practice
    ToKnow
};

enum class FindingCode : std::uint8_t {
    ScrewThroughShowFace, ///< tip cover <= 0
    TipCoverThin,         ///< tip cover below the least
    PenetrationShort,     ///< penetration below the least
    NoScrewFits,          ///< no stocked length in the window
    HoleInBottom,         ///< the screw hole drills into the bottom panel
    RecessToolBlocked,    ///< the hole clears the bottom, its recess can't be cut
    HoleAtBoxSide,
    HoleAtTopEdge,
    HoleAtHardware, ///< meets or crowds a bolt, counterbore or access hole
    HoleOffFront,   ///< outside the front, or behind its thin rim
    HoleAtRunner,
    WallThinUnderHead, ///< recess leaves too little wall
    FrontMissesWall,   ///< one of several on a box: no room for screws where wall and front meet
    FixedFrontNoRoom,  ///< its overlays are too narrow for screws through the members
    FixedFrontNoFrame, ///< without a face frame there is nothing to screw through
    HoleOffMember,     ///< of a fixed front: placed by hand beside the members
    SlotForMovement,   ///< solid front: clearance holes oversize by the movement (to know)
    BoltTooShort,
    BoltBottomsOut,
    NoBoltFits,
    CounterboreTooDeep, ///< too little wood under the head
    BackplateOffField,  ///< base or backplate reaches onto the profile
    HandleOffFront,
    AccessHoleOffWall, ///< an access or bolt hole misses the wall or meets the bottom
    HandlesCollide,    ///< two handles on one front overlap
    FrontsCollide,
    GapTight,            ///< below the least gap
    GapsUneven,          ///< gaps down one bank differ
    FrontOffCase,        ///< the front reaches past the case's outline
    OverlayMissing,      ///< an overlay front does not cover its opening's edge
    FrontAtWall,         ///< scrapes on the wall beside the case, or nearer than chosen
    FrontAtNeighbour,    ///< the gap to the neighbouring case's front is less than chosen
    FrontAtTrim,         ///< reaches into a moulding, top or plinth, or nearer than chosen
    StepOffPitch,        ///< a bank's fronts do not step by the system holes' pitch
    FillerNoThickness,   ///< the shadow takes all of the fronts' edges
    FillerBends,         ///< more than the limit
    GapCloses,           ///< over the season: fronts touch
    GapTightens,         ///< over the season: below the least gap
    InsetBinds,          ///< over the season: an inset front meets its opening's edge
    OverlayLost,         ///< over the season: an overlay front shows its opening's edge
    GapsGoUneven,        ///< over the season: gaps down one bank differ beyond what an eye sees
    ClearanceSmall,      ///< clearance holes leave too little room for the movement
    MoistureBeyondRange, ///< outside 6 to 14 %: by the wider formula (to know)
    WoodUnknown,         ///< solid stock of whose movement nothing is known (to know)
    FieldEmpty,          ///< the profiles meet: nothing flat is left
    ProfileTooDeep,      ///< profile depth leaves no edge
    BoxNoRoom,           ///< no positive box size
    BoxTooTall,          ///< box height given exceeds what the opening leaves
    BoxTooDeep,          ///< deeper than the case
    BottomOutOfWall,     ///< groove and panel do not fit in the wall's height
    AnchorCase,          ///< tall or heavy case: anchor it to the wall (to know)
    HoldingWeak,         ///< the mounting screws hold less than the published pull on a handle
    ScrewNearEdge,       ///< too near the front's edge or end
    ScrewsCrowded,       ///< too near each other along the grain
    ScrewRowsNear, ///< solid front: its rows of screws are too near each other to hold it flat
    PilotHoleMissing,
    PilotHoleWrong,     ///< too large or too small
    ClearanceHoleTight, ///< smaller than the screw
    HeadBearsLittle,    ///< a screw's head bears on too little round its clearance hole
    BoltHoleTight,      ///< smaller than the bolt
    EngagementThin,     ///< less thread in the handle than the bolt's diameter
    RunnerOverloaded,
    RunnerTooLong,       ///< longer than the case or the box
    NoRunnerFits,        ///< no stocked length is short enough
    BoxOffRunner,        ///< the box's back is not where the runner's hooks are
    BoxLowForRunner,     ///< the runner is higher than the box
    BoxNarrowForRunner,  ///< no room for the runners between the box's sides
    BottomOnRunner,      ///< the bottom lies in the runner's or a notch's way
    RunnerOutOfOpening,  ///< reaches below the opening's edge
    SideClearanceOff,    ///< not what the runner asks for
    BoxSticks,           ///< over the season: the box swells past its clearance above
    FitsMixed,           ///< inset at one side and on the frame at another
    FittingOffField,     ///< a fitting's plate reaches onto the profile
    FittingOffFront,     ///< a fitting, or what is cut for it, reaches past the front
    FittingScrewThrough, ///< tip cover <= 0
    FittingScrewThin,    ///< tip cover below the least
    FittingScrewShort,   ///< penetration below the least
    NoFittingScrewFits,  ///< no stocked length in the window
    MortiseTooDeep,      ///< too little wood left, or none
    FittingsCollide,     ///< with another fitting, the handle or what is bored for it
    HoleAtFitting,       ///< a mounting screw meets or crowds what a fitting takes out of the front
    CentresMixed,        ///< holes spaced by inch and by metric patterns that look alike
    OfBoard              ///< about a pull-out board: Finding::fault says what
};

inline constexpr FindingCode lastFindingCode = FindingCode::OfBoard;

/// Where a finding is, for the eye to be led there.
struct Whereabouts {
    std::optional<OpeningId> opening;
    std::optional<MemberId> member;
    std::optional<std::uint32_t> mountingHole; ///< index into MountingPlan::holes
    std::optional<std::uint32_t> handleHole;   ///< index into HardwarePlan::holes
    std::optional<Side> side;
    std::optional<OpeningId> other;                           ///< the second front of a collision
    std::optional<std::uint32_t> fitting = std::nullopt;      ///< index into FrontPlan::fittings
    std::optional<std::uint32_t> otherFitting = std::nullopt; ///< likewise, of a collision
    friend bool operator==(const Whereabouts&, const Whereabouts&) = default;
};

/// What to heed. Numbers only, so that judging 10 000 fronts costs no text; describe() words it.
struct Finding {
    FindingCode code = FindingCode::AnchorCase;
    Severity severity = Severity::ToKnow;
    Whereabouts where;
    std::array<Length, 4> figures{}; ///< meaning by code: beside the rules in judge_*.cpp
    std::optional<BoardFault> fault = std::nullopt; ///< there exactly where the code is OfBoard
    friend bool operator==(const Finding&, const Finding&) = default;
};

/// All findings, gravest first, then in the order of the fronts. Each code is told once for a
/// front, at the hole or handle where it is worst (overlays, inset gaps and what is past the case:
/// once for each side); gaps and collisions once for the two fronts, uneven gaps once for the bank,
/// movement once for the case: at the front that moves most, naming all that move too much.
std::vector<Finding> judge(const Project&, const Plan&);

struct FindingText {
    Phrase severity; ///< "Would ruin a part"
    Phrase place;    ///< "Front B3, screw hole 2"
    Phrase sentence; ///< one plain sentence with the numbers in it
    Phrase reason;   ///< the formula with its figures filled in
    Source source;
};
/// A finding about a front that the plan no longer has says that it is gone.
FindingText describe(const Finding&, const Project&, const Plan&, LengthStyle);

/// Stable name for files: "screw_through_show_face".
std::string_view key(FindingCode);
/// The same; of a board its fault's: "board_jams".
std::string_view key(const Finding&);
std::string_view key(Severity);

/// An edit that cures a finding, as one undoable step.
struct Remedy {
    Phrase label; ///< imperative: "Use 1 in screws in B3"
    std::function<Result<Project>(const Project&)> apply;
};
/// Best first, five at most; empty where the maker has to decide. Each has been tried: applied, it
/// makes the finding go away from its front and brings nothing graver anywhere. What holds for the
/// whole case comes last. Costs a plan for each one tried: ask when a finding is looked at.
std::vector<Remedy> remedies(const Finding&, const Project&, const Catalogue&, const Plan&,
                             LengthStyle);

} // namespace frontwright
