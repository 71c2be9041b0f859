#pragma once

#include "core/amounts/measure.h"
#include "core/plan/plan.h"

#include <string>
#include <string_view>
#include <vector>

namespace frontwright {

/// Every number of the Plan that a maker sees has a Quantity: it can be listed, shown, exported
/// and asked how it came about. The enumerators' order is the order in which they are shown.
enum class QuantityKind : std::uint8_t {
    // of the case
    CaseWidth,
    CaseHeight,
    TotalWidth,      // with what stands out at the sides: a top
    TotalHeight,     // with plinth or legs and top
    MoistureWhenCut, // the wood's, per cent
    MoistureDriest,
    MoistureWettest,
    CaseWeight,   // of what is known: fronts, boxes, face frame
    CaseContents, // of all drawers
    CaseStorage,  // enclosed, of all drawers
    // per member
    MemberWidth,
    MemberLength,
    MemberReveal, // what shows of it, least along its length
    SeasonReveal, // index: 0 least, 1 greatest over the season
    // per front
    OpeningWidth,
    OpeningHeight,
    FrontWidth,
    FrontHeight,
    FrontThickness,
    OverlayLeft,
    OverlayRight,
    OverlayBottom,
    OverlayTop,
    GapLeft,
    GapRight,
    GapBottom,
    GapTop,
    ToSurroundLeft, // from the front to what stands round the case
    ToSurroundRight,
    ToSurroundBottom,
    ToSurroundTop,
    FrontStep,    // to the front above, lower edge to lower edge
    SeasonWidth,  // of the season: index 0 least, 1 greatest
    SeasonHeight, // likewise, and so on
    SeasonOverlayLeft,
    SeasonOverlayRight,
    SeasonOverlayBottom,
    SeasonOverlayTop,
    SeasonGapLeft,
    SeasonGapRight,
    SeasonGapBottom,
    SeasonGapTop,
    EdgeThickness, // the thinnest edge's
    FieldWidth,
    FieldHeight,
    BoxWidth,
    BoxHeight,
    BoxDepth,
    BoxSetback,
    BottomTop,
    SideClearance,
    RunnerLength,
    RunnerSetback,
    RunnerTop,
    BackNotchWidth,
    BackNotchHeight,
    WallNotchWidth,
    WallNotchHeight,
    ClearZoneWidth,
    ClearZoneHeight,
    KickerHeight,
    RunnerFurring,
    BoxSwelling,
    ScrewLength,
    ScrewLeastLength,
    ScrewGreatestLength,
    ScrewPenetration, // index: hole
    ScrewTipCover,    // index: hole
    HoleX,            // index: hole; wall frame
    HoleY,            // index: hole; wall frame
    LeastHoleHeight,
    FixedRow,    // of mounting screws: the one that holds the front; wall frame
    RowMovement, // index: row; the greater over the season
    RowHole,     // index: row; least clearance hole
    RowDrill,    // index: row; the drill for it
    ClearanceHole,
    HeadBearing, // what a screw's head bears on, all round its clearance hole
    PilotHole,
    ScrewThread, // in the front
    PullSafety,  // ultimate over the pull test, of the worst screw
    PullDesignSafety,
    ScrewToEdge,        // index: hole
    ScrewToEnd,         // index: hole
    ScrewUltimate,      // index: hole; average load at which it is drawn out
    ScrewDesign,        // index: hole; value to design with
    ScrewPull,          // index: hole; share of the pull test at the handle
    HandleX,            // index: handle hole; front frame
    HandleY,            // index: handle hole; front frame
    BoltGrip,           // index: way
    BoltLeastLength,    // index: way
    BoltGreatestLength, // index: way
    BoltLength,         // index: way
    Counterbore,        // index: way
    WoodUnderHead,      // index: way
    BoltEngagement,     // index: way
    HandleCentres,      // first to last hole of a handle
    FittingX,           // index: fitting; front frame
    FittingY,           // index: fitting; front frame
    FittingScrewLength, // index: fitting
    FittingPenetration, // index: fitting; of its worst screw
    FittingTipCover,    // index: fitting; of its worst screw
    MortiseWood,        // index: fitting; least that a mortise leaves
    FrontWeight,
    BoxWeight,
    ContentsWeight,
    RunnerLoad,
    RunnerRating,
    RunnerSafety, // rating over load
    StorageVolume,
    // per spacer and stop
    SpacerWidth,
    FillerWidth, // per filler strip
    FillerLength,
    FillerThickness,
    FillerSpan,
    FillerBend,
    FillerLeastThickness,
    StopFromFarEdge,
    StopFromOpening,
    // per opening without a front
    SpaceWidth,
    SpaceHeight
};
inline constexpr QuantityKind lastQuantityKind = QuantityKind::SpaceHeight;

/// Kinds of the four sides stand together, in the order of the sides: `left` names which four.
constexpr QuantityKind atSide(QuantityKind left, Side side) {
    return static_cast<QuantityKind>(static_cast<int>(left) + static_cast<int>(side));
}
constexpr Side sideOf(QuantityKind left, QuantityKind kind) {
    return static_cast<Side>(static_cast<int>(kind) - static_cast<int>(left));
}

/// The side of kinds that stand for the four; none for the others.
std::optional<Side> sideOf(QuantityKind);

/// Of what a quantity of the kind is one: what its item indexes.
enum class PlanPart : std::uint8_t {
    Case, ///< one; the item is 0
    Member,
    Front,
    Spacer,
    Filler,
    Stop,
    Space ///< an opening without a front
};
PlanPart partOf(QuantityKind);

/// What the index of a quantity of the kind counts.
enum class CountedBy : std::uint8_t {
    Nothing, ///< one number; the index is 0
    ScrewHole,
    HandleHole,
    Fitting,
    ScrewRow,
    Way,    ///< of the three to hold a handle
    Extreme ///< over the season: 0 the least, 1 the greatest
};
CountedBy countedBy(QuantityKind);

/// What a number is about, for lists that are read by subject. In the order in which they are
/// shown.
enum class Subject : std::uint8_t {
    Case,
    Moisture,
    Member,
    Opening,
    Front,
    Overlays,
    Gaps,
    Season,
    Box,
    Runners,
    Screws,
    Holding, ///< what the screws hold
    Handle,
    Fittings,
    Weight,
    Blocks, ///< spacers, filler strips and stops
    Board
};
Subject subjectOf(QuantityKind);
/// For headings: "Gaps".
Text nameOf(Subject);

/// How a length of a kind is shown, lest the shown one mislead.
enum class Showing : std::uint8_t {
    Nearest, ///< nearest fraction
    Least,   ///< a least: the next fraction up
    Most,    ///< a most: the next fraction down
    Drill,   ///< as many digits as it takes
    Fine     ///< less than a fraction shows: thousandths of an inch, hundredths of a millimetre
};
Showing showingOf(QuantityKind);
/// The number as it is shown to the maker: "7/16 in" for a least thickness of 0.398 in.
std::string shown(QuantityKind, const Measure&, LengthStyle);

struct Quantity {
    QuantityKind kind = QuantityKind::FrontWidth;
    std::uint32_t item = 0;  ///< index into the Plan's list of what partOf says
    std::uint32_t index = 0; ///< of what countedBy says; else 0
    friend auto operator<=>(const Quantity&, const Quantity&) = default;
};

/// The front that the number is of; for a spacer or a filler strip the lower or left one beside it,
/// for a stop the one that it sets. Null for numbers of the case, a member or a space.
const FrontPlan* frontOf(const Plan&, Quantity);

/// A decision of the maker's that a number follows from; where to go to change it.
enum class InputPlace : std::uint8_t {
    CaseSize,
    Frame,
    Divisions,
    MemberWidth,
    Fit,
    Thickness,
    Profile,
    Box,
    Runner,
    Mounting,
    Hardware,
    Limits,
    Catalogue,
    Stock,
    Air,
    Surroundings,
    SystemHoles,
    Board
};

struct Derivation {
    Phrase name; ///< "Front width"
    Measure value;
    Phrase formula; ///< "opening + left overlay + right overlay"
    Phrase figures; ///< "12 5/8 in + 1/4 in + 1/4 in = 13 1/8 in"
    Source source;  ///< of the rule
    std::vector<InputPlace> inputs;
};

/// The number by itself; nullopt where the plan has no such number.
std::optional<Measure> measureOf(const Plan&, Quantity);
/// The same where it is a length, else nullopt.
std::optional<Length> valueOf(const Plan&, Quantity);

/// Everything that is known about one number. nullopt where the plan has no such number (no
/// handle, no length that fits).
std::optional<Derivation> derive(const Project&, const Plan&, Quantity, LengthStyle);

std::vector<Quantity> quantitiesOfCase(const Plan&);
std::vector<Quantity> quantitiesOfFront(const Plan&, std::uint32_t front);
std::vector<Quantity> quantitiesOfMember(const Plan&, std::uint32_t member);
/// Of an opening without a front.
std::vector<Quantity> quantitiesOfSpace(std::uint32_t space);
/// Of the spacers, filler strips and stops beside a front, and of those at a member.
std::vector<Quantity> quantitiesOfBlocksBeside(const Plan&, std::uint32_t front);
std::vector<Quantity> quantitiesOfBlocksAt(const Plan&, std::uint32_t member);
/// All, in a fixed order.
std::vector<Quantity> allQuantities(const Plan&);

/// Stable name for files: "front_width", "overlay_left".
std::string_view key(QuantityKind);
/// For labels: "Front width".
Text nameOf(QuantityKind);
/// The same as a case of that construction has it: frameless no frame is named.
Text nameOf(QuantityKind, Construction);

} // namespace frontwright
