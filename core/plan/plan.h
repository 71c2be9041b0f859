#pragma once

#include "core/boards/fitted_board.h"
#include "core/boxes/box.h"
#include "core/boxes/runner.h"
#include "core/case/layout.h"
#include "core/case/shared.h"
#include "core/fastening/mounting.h"
#include "core/geometry/region.h"
#include "core/hardware/bolts.h"
#include "core/holding/holding.h"
#include "core/holding/weight.h"
#include "core/plan/season.h"
#include "core/project/project.h"
#include "core/results/result.h"

namespace frontwright {

/// What shows of a member between (or beside) the fronts: least and greatest along its length,
/// wherever fronts lie at both its sides (for an outer member, at its inner side). An inset front
/// covers nothing of it.
struct Reveal {
    Length least;
    Length greatest;
    friend bool operator==(const Reveal&, const Reveal&) = default;
};

struct MemberPlan {
    MemberId id;
    MemberKind kind = MemberKind::Rail;
    CaseRect rect;
    Reveal reveal;                                    ///< negative where fronts overlap
    bool hasFronts = false;                           ///< a front lies on it or beside it
    std::optional<SeasonRange> season = std::nullopt; ///< of the reveal; where there is air
};

/// What lies beyond one side of a front. Fronts face each other where their openings and they
/// themselves have a common stretch along the member between them.
struct Neighbour {
    std::uint32_t member = 0; ///< index into Plan::members
    /// Nearest facing front across the member, if any; of equally near ones that with the longest
    /// common stretch.
    std::optional<std::uint32_t> front;
    /// To that front (where that one is inset: to the member's far edge), or to the member's far
    /// edge where no front faces. Of an inset side: to its own opening's edge.
    Length gap;
};

/// A front, its box and its holes. Everything derived for one opening that has a front.
struct FrontPlan {
    OpeningId opening;
    OpeningUse use = OpeningUse::Drawer;
    HingeSide hinge = HingeSide::Left; ///< of a door
    /// Index into Plan::faces, where its opening is a part of a divided face.
    std::optional<std::uint32_t> face;
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
    /// Of a drawer; the same box for all fronts of a divided face, each with its own wallOnFront.
    /// Of a fixed front what it lies on: its own outline, as thick as the face frame.
    BoxPlan box;
    Shared<RunnerPlan> runner; ///< of a drawer; none where nothing but clearances is known of it
    std::optional<Length> boxSwelling; ///< most of the season; where box's wood and air are told
    MountingPlan mounting;             ///< of a drawer or a fixed front, else no holes
    /// None where no handle is chosen, and on doors. Of a fixed front, behind which there is no
    /// wall, all three ways are the one in the front only.
    Shared<HardwarePlan> hardware;
    Shared<std::vector<FittingPlan>> fittings; ///< none where there are none
    Rare<FrontSeason> season;                  ///< where there is air
    /// From the front's edge to what stands round the case; negative where it reaches into it. At
    /// the sides where something limits it.
    Rare<PerSide<std::optional<Length>>> toSurround;
    /// From the front's lower edge to that of the front above it in its bank; where the case has
    /// system holes.
    std::optional<Length> step;
    Shared<HoldingPlan> holding; ///< makePlan sets it always
    /// Box and contents of a divided face are its first front's; the others weigh by themselves.
    DrawerLoad load;
    /// What the opening decides for itself; into the Project. makePlan sets it always.
    const FrontChoices* choices = nullptr;
    const Species* wood =
        nullptr; ///< the front's own or the case's; into the Catalogue, may be null
    /// The same for the box: of a divided face, its first front's.
    const FrontChoices* boxChoices = nullptr;
    /// The opening's name, empty where the maker gave none; into the Project, set always.
    const std::string* name = nullptr;

    [[nodiscard]] bool hasBox() const { return use == OpeningUse::Drawer; }
    [[nodiscard]] bool isScrewedOn() const { return hasBox() || use == OpeningUse::FixedFront; }
};

/// An opening over which no front lies: an open space, or where a board runs.
struct SpacePlan {
    OpeningId opening;
    OpeningUse use = OpeningUse::OpenSpace;
    std::uint32_t bank = 0;  ///< as of a front
    std::uint32_t place = 0; ///< likewise
    CaseRect rect;
    PerSide<std::uint32_t> bounds;     ///< index into Plan::members of the member at each side
    const std::string* name = nullptr; ///< into the Project, set always
};

/// A pull-out board in its opening.
struct PlannedBoard {
    OpeningId opening;
    std::uint32_t space = 0;         ///< index into Plan::spaces
    const BoardSpec* spec = nullptr; ///< into the Project; never null
    BoardPlace place;
    FittedBoard fitted;
    const WoodScrew* keeperScrew = nullptr; ///< into the Catalogue; null where none is chosen
};

/// Loose block that sets the gap between two fronts that face each other across a member. None
/// where one of them is inset: the member itself stands between them, flush with the front.
struct Spacer {
    std::uint32_t lower;  ///< index into Plan::fronts: the lower or the left one
    std::uint32_t upper;  ///< the upper or the right one
    std::uint32_t member; ///< index into Plan::members
    Length width;         ///< = member − overlay − overlay; negative where they overlap
    Span along;           ///< where the two face each other, along the member, case frame
    std::optional<SeasonRange> season = std::nullopt; ///< of the gap; where there is air
};

/// Strip of wood in the gap between two fronts on one box, on the box's wall, so that the gap looks
/// like that over a rail. Its bend is that of the strip alone, the wall behind it not counted: a
/// beam on two supports, pushed in the middle (see core/plan/fillers.h).
struct Filler {
    std::uint32_t lower;        ///< index into Plan::fronts: the lower or the left one
    std::uint32_t upper;        ///< the upper or the right one
    std::uint32_t member;       ///< index into Plan::members: the one that is not built
    Length width;               ///< the gap
    Span along;                 ///< where the two face each other, case frame
    Length edge;                ///< thickness of the thinner front's edge at the gap
    Length thickness;           ///< edge − shadow; nothing is left where it is not more than 0
    Length span;                ///< between the outermost screws of the two rows beside the gap
    std::optional<Length> bend; ///< none where there is no thickness or no span
    std::optional<Length> leastThickness; ///< at which it bends by the limit; none without a span
};

/// Block that sets the first front's overlay at an outer member. None for an inset side: its gap
/// is measured inside the opening (Neighbour::gap).
struct Stop {
    std::uint32_t front; ///< index into Plan::fronts
    Side side = Side::Left;
    Length fromFarEdge; ///< member width − overlay, from the member's far edge
    Length fromOpening; ///< overlay, from the opening's edge
};

/// Two fronts whose rectangles have a common part with an area; first < second.
struct Collision {
    std::uint32_t first;
    std::uint32_t second;
    CaseRect common;
};

/// The system holes in one face of a panel.
struct PanelHoles {
    std::uint32_t member = 0;    ///< index into Plan::members: a side panel or a divider
    Side face = Side::Left;      ///< left or right
    std::vector<Length> heights; ///< of the centres, ascending; case frame
    friend bool operator==(const PanelHoles&, const PanelHoles&) = default;
};

/// What follows from a Project: every size, place and depth. Refers into the Project (choices,
/// names, profiles) and the Catalogue (screws, bolts, forms) it was made from, which must outlive
/// it unchanged and in place. Judges nothing: see findings.
struct Plan {
    Construction construction = Construction::FaceFrame;
    CaseRect outline;
    std::vector<MemberPlan> members;   ///< the four outer ones first
    std::vector<FrontPlan> fronts;     ///< one per opening that has one, in the layout's order
    std::vector<SpacePlan> spaces;     ///< one for each of the other openings, in that order
    std::vector<PlannedBoard> boards;  ///< one for each of the spaces where a board runs
    std::vector<DividedFace> faces;    ///< first and count are of `fronts`
    std::vector<Spacer> spacers;       ///< by member, then along it
    std::vector<Filler> fillers;       ///< as the spacers
    std::vector<Stop> stops;           ///< by front, then side
    std::vector<Collision> collisions; ///< by first, then second
    CaseLoad load;
    const Species* wood = nullptr; ///< the fronts'; into the Catalogue; null where none is named
    std::vector<std::uint32_t> frontsById;  ///< indices into fronts, ascending by opening
    std::vector<std::uint32_t> spacesById;  ///< indices into spaces, ascending by opening
    std::vector<std::uint32_t> membersById; ///< indices into members, ascending by id
    std::optional<SeasonMoisture> season;   ///< where there is air
    Surroundings surroundings;
    PerSide<std::optional<EdgeLimit>> limits; ///< of the fronts by what stands round the case
    CaseRect whole;                           ///< the outline with top, plinth and legs
    std::vector<PanelHoles> systemHoles;      ///< by member, then face

    [[nodiscard]] const FrontPlan* frontOf(OpeningId) const;    ///< nullptr where there is none
    [[nodiscard]] const SpacePlan* spaceOf(OpeningId) const;    ///< nullptr where there is none
    [[nodiscard]] const PlannedBoard* boardOf(OpeningId) const; ///< nullptr where there is none
    [[nodiscard]] const MemberPlan* memberOf(MemberId) const;   ///< nullptr where there is none
};

/// The catalogue is the one to choose from: the program's entries merged with the document's own.
/// Error: the case cannot be laid out (no room), or an id is not in the catalogue.
///
/// Overlay of a front's side over a member of width m (design 5.2, common practice, no source):
///   Overlay  the amount
///   Inset    − the amount
///   Gap      m − gap where no front faces it, or only one that does not cover the member: the gap
///            is then measured to the member's far edge;
///            m − gap − o where it faces a front of overlay o;
///            half of (m − the greater gap) where both ask for a gap, the odd nanometre to the
///            right or upper front;
///            facing several fronts: the least of these, so that no gap is less than asked for
Result<Plan> makePlan(const Project&, const Catalogue&);

/// The maker's name of the opening, else bank letters and place: "A1", "B3", "AA12".
std::string label(const Project&, const FrontPlan&);
std::string label(const SpacePlan&);

/// Checks what must hold for every plan: parts tile the case, spacers sum with overlays to their
/// member, front and box frames invert each other. Empty = all well; else what is broken.
std::string brokenInvariant(const Plan&);

} // namespace frontwright
