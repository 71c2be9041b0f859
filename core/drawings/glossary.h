#pragma once

#include "core/drawings/drawing.h"

#include <string_view>

namespace frontwright {

/// The words of the trade that labels and findings use; each can be shown by a small drawing.
enum class Term : std::uint8_t {
    Case,
    FaceFrame,
    Stile,
    Rail,
    Divider,
    Opening,
    Plinth,
    Moulding,
    Leg,
    SystemHoles,
    Front,
    Overlay,
    Inset,
    Reveal,
    Spacer,
    Stop,
    Bank,
    Field,
    EdgeProfile,
    DrawerBox,
    BoxWall,
    Bottom,
    Runner,
    Kicker,
    Guide,
    Notch,
    Pull,
    Knob,
    CentreToCentre,
    Backplate,
    Bolt,
    MountingScrew,
    PilotHole,
    ClearanceHole,
    AccessHole,
    Counterbore,
    Countersink,
    Grip,
    Engagement,
    TipCover,
    StoryStick,
    SetupBlock,
    FillerStrip,
    PullOutBoard,
    Furring,
    KeeperStrip,
    Kerf,
    BoardFoot,
    FlatSawn,
    QuarterSawn,
    MoistureContent
};
inline constexpr int termCount = static_cast<int>(Term::MoistureContent) + 1;

/// Stable name for files and links: "tip-cover".
std::string_view key(Term);
/// As it is said within a sentence: "tip cover".
Text nameOf(Term);

/// What the word means, drawn: the part that is meant is hatched, the edge or fastener that is
/// meant is wide, a length that is meant has a dimension without a figure; what surrounds it is
/// narrow. At most 66 × 50 mm on paper.
Drawing drawingOf(Term);

} // namespace frontwright
