#include "core/plan/quantity.h"

#include <array>
#include <cassert>

namespace frontwright {

namespace {

struct Names {
    QuantityKind kind;
    std::string_view key;
    std::string_view name;
};

/// In the order of the enumerators.
constexpr auto allNames = std::to_array<Names>({
    {QuantityKind::CaseWidth, "case_width", "Case width"},
    {QuantityKind::CaseHeight, "case_height", "Case height"},
    {QuantityKind::MoistureWhenCut, "moisture_when_cut", "Wood's moisture when cut"},
    {QuantityKind::MoistureDriest, "moisture_driest", "Wood's moisture at its driest"},
    {QuantityKind::MoistureWettest, "moisture_wettest", "Wood's moisture at its wettest"},
    {QuantityKind::CaseWeight, "case_weight", "Weight of fronts, boxes and frame"},
    {QuantityKind::CaseContents, "case_contents", "Weight of what the drawers hold"},
    {QuantityKind::CaseStorage, "case_storage", "Enclosed storage of the case"},
    {QuantityKind::MemberWidth, "member_width", "Member width"},
    {QuantityKind::MemberLength, "member_length", "Member length"},
    {QuantityKind::MemberReveal, "member_reveal", "Reveal"},
    {QuantityKind::SeasonReveal, "season_reveal", "Reveal over the season"},
    {QuantityKind::OpeningWidth, "opening_width", "Opening width"},
    {QuantityKind::OpeningHeight, "opening_height", "Opening height"},
    {QuantityKind::FrontWidth, "front_width", "Front width"},
    {QuantityKind::FrontHeight, "front_height", "Front height"},
    {QuantityKind::FrontThickness, "front_thickness", "Front thickness"},
    {QuantityKind::OverlayLeft, "overlay_left", "Left overlay"},
    {QuantityKind::OverlayRight, "overlay_right", "Right overlay"},
    {QuantityKind::OverlayBottom, "overlay_bottom", "Bottom overlay"},
    {QuantityKind::OverlayTop, "overlay_top", "Top overlay"},
    {QuantityKind::GapLeft, "gap_left", "Gap at the left"},
    {QuantityKind::GapRight, "gap_right", "Gap at the right"},
    {QuantityKind::GapBottom, "gap_bottom", "Gap below"},
    {QuantityKind::GapTop, "gap_top", "Gap above"},
    {QuantityKind::SeasonWidth, "season_width", "Front width over the season"},
    {QuantityKind::SeasonHeight, "season_height", "Front height over the season"},
    {QuantityKind::SeasonOverlayLeft, "season_overlay_left", "Left overlay over the season"},
    {QuantityKind::SeasonOverlayRight, "season_overlay_right", "Right overlay over the season"},
    {QuantityKind::SeasonOverlayBottom, "season_overlay_bottom", "Bottom overlay over the season"},
    {QuantityKind::SeasonOverlayTop, "season_overlay_top", "Top overlay over the season"},
    {QuantityKind::SeasonGapLeft, "season_gap_left", "Gap at the left over the season"},
    {QuantityKind::SeasonGapRight, "season_gap_right", "Gap at the right over the season"},
    {QuantityKind::SeasonGapBottom, "season_gap_bottom", "Gap below over the season"},
    {QuantityKind::SeasonGapTop, "season_gap_top", "Gap above over the season"},
    {QuantityKind::EdgeThickness, "edge_thickness", "Edge thickness"},
    {QuantityKind::FieldWidth, "field_width", "Field width"},
    {QuantityKind::FieldHeight, "field_height", "Field height"},
    {QuantityKind::BoxWidth, "box_width", "Box width"},
    {QuantityKind::BoxHeight, "box_height", "Box height"},
    {QuantityKind::BoxDepth, "box_depth", "Box depth"},
    {QuantityKind::BoxSetback, "box_setback", "Box setback"},
    {QuantityKind::BottomTop, "bottom_top", "Top of the bottom"},
    {QuantityKind::ScrewLength, "screw_length", "Screw length"},
    {QuantityKind::ScrewLeastLength, "screw_least_length", "Least screw length"},
    {QuantityKind::ScrewGreatestLength, "screw_greatest_length", "Greatest screw length"},
    {QuantityKind::ScrewPenetration, "screw_penetration", "Screw penetration"},
    {QuantityKind::ScrewTipCover, "screw_tip_cover", "Tip cover"},
    {QuantityKind::HoleX, "hole_x", "Screw hole from the left"},
    {QuantityKind::HoleY, "hole_y", "Screw hole from below"},
    {QuantityKind::LeastHoleHeight, "least_hole_height", "Least hole height"},
    {QuantityKind::FixedRow, "fixed_row", "Row of screws that holds the front"},
    {QuantityKind::RowMovement, "row_movement", "Movement at the screws"},
    {QuantityKind::RowHole, "row_hole", "Least clearance hole for the movement"},
    {QuantityKind::RowDrill, "row_drill", "Clearance drill for the movement"},
    {QuantityKind::ClearanceHole, "clearance_hole", "Clearance hole"},
    {QuantityKind::PilotHole, "pilot_hole", "Pilot hole"},
    {QuantityKind::ScrewThread, "screw_thread", "Thread in the front"},
    {QuantityKind::PullSafety, "pull_safety", "Safety against the pull test, ultimate"},
    {QuantityKind::PullDesignSafety, "pull_design_safety",
     "Safety against the pull test, design value"},
    {QuantityKind::ScrewToEdge, "screw_to_edge", "Screw to the front's edge"},
    {QuantityKind::ScrewToEnd, "screw_to_end", "Screw to the front's end"},
    {QuantityKind::ScrewUltimate, "screw_ultimate", "Withdrawal, ultimate"},
    {QuantityKind::ScrewDesign, "screw_design", "Withdrawal, design value"},
    {QuantityKind::ScrewPull, "screw_pull", "Share of the pull test"},
    {QuantityKind::HandleX, "handle_x", "Handle hole from the left"},
    {QuantityKind::HandleY, "handle_y", "Handle hole from below"},
    {QuantityKind::BoltGrip, "bolt_grip", "Grip"},
    {QuantityKind::BoltLeastLength, "bolt_least_length", "Least bolt length"},
    {QuantityKind::BoltGreatestLength, "bolt_greatest_length", "Greatest bolt length"},
    {QuantityKind::BoltLength, "bolt_length", "Bolt length"},
    {QuantityKind::Counterbore, "counterbore", "Counterbore depth"},
    {QuantityKind::WoodUnderHead, "wood_under_head", "Wood under the bolt's head"},
    {QuantityKind::BoltEngagement, "bolt_engagement", "Thread in the handle"},
    {QuantityKind::FrontWeight, "front_weight", "Weight of the front"},
    {QuantityKind::BoxWeight, "box_weight", "Weight of the box"},
    {QuantityKind::ContentsWeight, "contents_weight", "Weight of the contents"},
    {QuantityKind::RunnerLoad, "runner_load", "Load on the runners"},
    {QuantityKind::RunnerSafety, "runner_safety", "Runners' rating over their load"},
    {QuantityKind::StorageVolume, "storage_volume", "Enclosed storage"},
    {QuantityKind::SpacerWidth, "spacer_width", "Spacer"},
    {QuantityKind::StopFromFarEdge, "stop_from_far_edge", "Stop from the member's far edge"},
    {QuantityKind::StopFromOpening, "stop_from_opening", "Stop from the opening's edge"},
});

constexpr bool isInOrder() {
    for (std::size_t i = 0; i < allNames.size(); ++i)
        if (static_cast<std::size_t>(allNames[i].kind) != i)
            return false;
    return true;
}
static_assert(isInOrder());
static_assert(allNames.back().kind == QuantityKind::StopFromOpening);

const Names& namesOf(QuantityKind kind) {
    assert(static_cast<std::size_t>(kind) < allNames.size());
    return allNames[static_cast<std::size_t>(kind)];
}

} // namespace

std::string_view key(QuantityKind kind) {
    return namesOf(kind).key;
}

std::string_view nameOf(QuantityKind kind) {
    return namesOf(kind).name;
}

} // namespace frontwright
