#include "core/plan/quantity.h"

#include <array>
#include <cassert>

namespace frontwright {

namespace {

struct Names {
    QuantityKind kind;
    std::string_view key;
    Text name;
};

/// In the order of the enumerators.
constexpr auto allNames = std::to_array<Names>({
    {QuantityKind::CaseWidth, "case_width", text("Case width")},
    {QuantityKind::CaseHeight, "case_height", text("Case height")},
    {QuantityKind::TotalWidth, "total_width", text("Total width")},
    {QuantityKind::TotalHeight, "total_height", text("Total height")},
    {QuantityKind::MoistureWhenCut, "moisture_when_cut", text("Wood's moisture when cut")},
    {QuantityKind::MoistureDriest, "moisture_driest", text("Wood's moisture at its driest")},
    {QuantityKind::MoistureWettest, "moisture_wettest", text("Wood's moisture at its wettest")},
    {QuantityKind::CaseWeight, "case_weight", text("Weight of fronts, boxes and frame")},
    {QuantityKind::CaseContents, "case_contents", text("Weight of what the drawers hold")},
    {QuantityKind::CaseStorage, "case_storage", text("Enclosed storage of the case")},
    {QuantityKind::MemberWidth, "member_width", text("Member width")},
    {QuantityKind::MemberLength, "member_length", text("Member length")},
    {QuantityKind::MemberReveal, "member_reveal", text("Reveal")},
    {QuantityKind::SeasonReveal, "season_reveal", text("Reveal over the season")},
    {QuantityKind::OpeningWidth, "opening_width", text("Opening width")},
    {QuantityKind::OpeningHeight, "opening_height", text("Opening height")},
    {QuantityKind::FrontWidth, "front_width", text("Front width")},
    {QuantityKind::FrontHeight, "front_height", text("Front height")},
    {QuantityKind::FrontThickness, "front_thickness", text("Front thickness")},
    {QuantityKind::OverlayLeft, "overlay_left", text("Left overlay")},
    {QuantityKind::OverlayRight, "overlay_right", text("Right overlay")},
    {QuantityKind::OverlayBottom, "overlay_bottom", text("Bottom overlay")},
    {QuantityKind::OverlayTop, "overlay_top", text("Top overlay")},
    {QuantityKind::GapLeft, "gap_left", text("Gap at the left")},
    {QuantityKind::GapRight, "gap_right", text("Gap at the right")},
    {QuantityKind::GapBottom, "gap_bottom", text("Gap below")},
    {QuantityKind::GapTop, "gap_top", text("Gap above")},
    {QuantityKind::ToSurroundLeft, "to_surround_left", text("To what stands at the left")},
    {QuantityKind::ToSurroundRight, "to_surround_right", text("To what stands at the right")},
    {QuantityKind::ToSurroundBottom, "to_surround_bottom", text("To what stands below")},
    {QuantityKind::ToSurroundTop, "to_surround_top", text("To what stands above")},
    {QuantityKind::FrontStep, "front_step", text("Step to the front above")},
    {QuantityKind::SeasonWidth, "season_width", text("Front width over the season")},
    {QuantityKind::SeasonHeight, "season_height", text("Front height over the season")},
    {QuantityKind::SeasonOverlayLeft, "season_overlay_left", text("Left overlay over the season")},
    {QuantityKind::SeasonOverlayRight, "season_overlay_right",
     text("Right overlay over the season")},
    {QuantityKind::SeasonOverlayBottom, "season_overlay_bottom",
     text("Bottom overlay over the season")},
    {QuantityKind::SeasonOverlayTop, "season_overlay_top", text("Top overlay over the season")},
    {QuantityKind::SeasonGapLeft, "season_gap_left", text("Gap at the left over the season")},
    {QuantityKind::SeasonGapRight, "season_gap_right", text("Gap at the right over the season")},
    {QuantityKind::SeasonGapBottom, "season_gap_bottom", text("Gap below over the season")},
    {QuantityKind::SeasonGapTop, "season_gap_top", text("Gap above over the season")},
    {QuantityKind::EdgeThickness, "edge_thickness", text("Edge thickness")},
    {QuantityKind::FieldWidth, "field_width", text("Field width")},
    {QuantityKind::FieldHeight, "field_height", text("Field height")},
    {QuantityKind::BoxWidth, "box_width", text("Box width")},
    {QuantityKind::BoxHeight, "box_height", text("Box height")},
    {QuantityKind::BoxDepth, "box_depth", text("Box depth")},
    {QuantityKind::BoxSetback, "box_setback", text("Box setback")},
    {QuantityKind::BottomTop, "bottom_top", text("Top of the bottom")},
    {QuantityKind::SideClearance, "side_clearance", text("Side clearance")},
    {QuantityKind::RunnerLength, "runner_length", text("Runner length")},
    {QuantityKind::RunnerSetback, "runner_setback", text("Runner behind the frame's face")},
    {QuantityKind::RunnerTop, "runner_top", text("Top of the runner")},
    {QuantityKind::BackNotchWidth, "back_notch_width", text("Notch in the box's back, width")},
    {QuantityKind::BackNotchHeight, "back_notch_height", text("Notch in the box's back, height")},
    {QuantityKind::WallNotchWidth, "wall_notch_width", text("Notch in the box wall, width")},
    {QuantityKind::WallNotchHeight, "wall_notch_height", text("Notch in the box wall, height")},
    {QuantityKind::ClearZoneWidth, "clear_zone_width", text("Clear zone in the wall, width")},
    {QuantityKind::ClearZoneHeight, "clear_zone_height", text("Clear zone in the wall, height")},
    {QuantityKind::KickerHeight, "kicker_height", text("Kicker above the opening's lower edge")},
    {QuantityKind::RunnerFurring, "runner_furring", text("Furring behind the runner")},
    {QuantityKind::BoxSwelling, "box_swelling", text("Box height gained in the wettest air")},
    {QuantityKind::ScrewLength, "screw_length", text("Screw length")},
    {QuantityKind::ScrewLeastLength, "screw_least_length", text("Least screw length")},
    {QuantityKind::ScrewGreatestLength, "screw_greatest_length", text("Greatest screw length")},
    {QuantityKind::ScrewPenetration, "screw_penetration", text("Screw penetration")},
    {QuantityKind::ScrewTipCover, "screw_tip_cover", text("Tip cover")},
    {QuantityKind::HoleX, "hole_x", text("Screw hole from the left")},
    {QuantityKind::HoleY, "hole_y", text("Screw hole from below")},
    {QuantityKind::LeastHoleHeight, "least_hole_height", text("Least hole height")},
    {QuantityKind::FixedRow, "fixed_row", text("Row of screws that holds the front")},
    {QuantityKind::RowMovement, "row_movement", text("Movement at the screws")},
    {QuantityKind::RowHole, "row_hole", text("Least clearance hole for the movement")},
    {QuantityKind::RowDrill, "row_drill", text("Clearance drill for the movement")},
    {QuantityKind::ClearanceHole, "clearance_hole", text("Clearance hole")},
    {QuantityKind::HeadBearing, "head_bearing", text("Screw head round its clearance hole")},
    {QuantityKind::PilotHole, "pilot_hole", text("Pilot hole")},
    {QuantityKind::ScrewThread, "screw_thread", text("Thread in the front")},
    {QuantityKind::PullSafety, "pull_safety", text("Safety against the pull test, ultimate")},
    {QuantityKind::PullDesignSafety, "pull_design_safety",
     text("Safety against the pull test, design value")},
    {QuantityKind::ScrewToEdge, "screw_to_edge", text("Screw to the front's edge")},
    {QuantityKind::ScrewToEnd, "screw_to_end", text("Screw to the front's end")},
    {QuantityKind::ScrewUltimate, "screw_ultimate", text("Withdrawal, ultimate")},
    {QuantityKind::ScrewDesign, "screw_design", text("Withdrawal, design value")},
    {QuantityKind::ScrewPull, "screw_pull", text("Share of the pull test")},
    {QuantityKind::HandleX, "handle_x", text("Handle hole from the left")},
    {QuantityKind::HandleY, "handle_y", text("Handle hole from below")},
    {QuantityKind::BoltGrip, "bolt_grip", text("Grip")},
    {QuantityKind::BoltLeastLength, "bolt_least_length", text("Least bolt length")},
    {QuantityKind::BoltGreatestLength, "bolt_greatest_length", text("Greatest bolt length")},
    {QuantityKind::BoltLength, "bolt_length", text("Bolt length")},
    {QuantityKind::Counterbore, "counterbore", text("Counterbore depth")},
    {QuantityKind::WoodUnderHead, "wood_under_head", text("Wood under the bolt's head")},
    {QuantityKind::BoltEngagement, "bolt_engagement", text("Thread in the handle")},
    {QuantityKind::HandleCentres, "handle_centres", text("Handle's holes, centre to centre")},
    {QuantityKind::FittingX, "fitting_x", text("Fitting from the left")},
    {QuantityKind::FittingY, "fitting_y", text("Fitting from below")},
    {QuantityKind::FittingScrewLength, "fitting_screw_length", text("Fitting's screws")},
    {QuantityKind::FittingPenetration, "fitting_penetration",
     text("Fitting's screws in the front")},
    {QuantityKind::FittingTipCover, "fitting_tip_cover", text("Wood before a fitting's screw")},
    {QuantityKind::MortiseWood, "mortise_wood", text("Wood left by a mortise")},
    {QuantityKind::FrontWeight, "front_weight", text("Weight of the front")},
    {QuantityKind::BoxWeight, "box_weight", text("Weight of the box")},
    {QuantityKind::ContentsWeight, "contents_weight", text("Weight of the contents")},
    {QuantityKind::RunnerLoad, "runner_load", text("Load on the runners")},
    {QuantityKind::RunnerRating, "runner_rating", text("Load that the runners are rated for")},
    {QuantityKind::RunnerSafety, "runner_safety", text("Runners' rating over their load")},
    {QuantityKind::StorageVolume, "storage_volume", text("Enclosed storage")},
    {QuantityKind::SpacerWidth, "spacer_width", text("Spacer")},
    {QuantityKind::FillerWidth, "filler_width", text("Filler strip's width")},
    {QuantityKind::FillerLength, "filler_length", text("Filler strip's length")},
    {QuantityKind::FillerThickness, "filler_thickness", text("Filler strip's thickness")},
    {QuantityKind::FillerSpan, "filler_span", text("Filler strip's span between screws")},
    {QuantityKind::FillerBend, "filler_bend", text("Filler strip's bend under a hand's push")},
    {QuantityKind::FillerLeastThickness, "filler_least_thickness",
     text("Least thickness of the filler strip")},
    {QuantityKind::StopFromFarEdge, "stop_from_far_edge", text("Stop from the member's far edge")},
    {QuantityKind::StopFromOpening, "stop_from_opening", text("Stop from the opening's edge")},
    {QuantityKind::SpaceWidth, "space_width", text("Space width")},
    {QuantityKind::SpaceHeight, "space_height", text("Space height")},
});

constexpr bool isInOrder() {
    for (std::size_t i = 0; i < allNames.size(); ++i)
        if (static_cast<std::size_t>(allNames[i].kind) != i)
            return false;
    return true;
}
static_assert(isInOrder());
static_assert(allNames.back().kind == lastQuantityKind);

const Names& namesOf(QuantityKind kind) {
    assert(static_cast<std::size_t>(kind) < allNames.size());
    return allNames[static_cast<std::size_t>(kind)];
}

} // namespace

std::string_view key(QuantityKind kind) {
    return namesOf(kind).key;
}

Text nameOf(QuantityKind kind) {
    return namesOf(kind).name;
}

Text nameOf(QuantityKind kind, Construction construction) {
    return kind == QuantityKind::RunnerSetback && construction == Construction::Frameless
               ? text("Runner behind the panels' front edges")
               : nameOf(kind);
}

} // namespace frontwright
