#include "core/findings/finding.h"

#include <array>
#include <cassert>

namespace frontwright {

namespace {

struct Keyed {
    FindingCode code;
    std::string_view key;
};

/// In the order of the enumerators.
constexpr auto allKeys = std::to_array<Keyed>({
    {FindingCode::ScrewThroughShowFace, "screw_through_show_face"},
    {FindingCode::TipCoverThin, "tip_cover_thin"},
    {FindingCode::PenetrationShort, "penetration_short"},
    {FindingCode::NoScrewFits, "no_screw_fits"},
    {FindingCode::HoleInBottom, "hole_in_bottom"},
    {FindingCode::RecessToolBlocked, "recess_tool_blocked"},
    {FindingCode::HoleAtBoxSide, "hole_at_box_side"},
    {FindingCode::HoleAtTopEdge, "hole_at_top_edge"},
    {FindingCode::HoleAtHardware, "hole_at_hardware"},
    {FindingCode::HoleOffFront, "hole_off_front"},
    {FindingCode::HoleAtRunner, "hole_at_runner"},
    {FindingCode::WallThinUnderHead, "wall_thin_under_head"},
    {FindingCode::FrontMissesWall, "front_misses_wall"},
    {FindingCode::FixedFrontNoRoom, "fixed_front_no_room"},
    {FindingCode::FixedFrontNoFrame, "fixed_front_no_frame"},
    {FindingCode::HoleOffMember, "hole_off_member"},
    {FindingCode::SlotForMovement, "slot_for_movement"},
    {FindingCode::BoltTooShort, "bolt_too_short"},
    {FindingCode::BoltBottomsOut, "bolt_bottoms_out"},
    {FindingCode::NoBoltFits, "no_bolt_fits"},
    {FindingCode::CounterboreTooDeep, "counterbore_too_deep"},
    {FindingCode::BackplateOffField, "backplate_off_field"},
    {FindingCode::HandleOffFront, "handle_off_front"},
    {FindingCode::AccessHoleOffWall, "access_hole_off_wall"},
    {FindingCode::HandlesCollide, "handles_collide"},
    {FindingCode::FrontsCollide, "fronts_collide"},
    {FindingCode::GapTight, "gap_tight"},
    {FindingCode::GapsUneven, "gaps_uneven"},
    {FindingCode::FrontOffCase, "front_off_case"},
    {FindingCode::OverlayMissing, "overlay_missing"},
    {FindingCode::FrontAtWall, "front_at_wall"},
    {FindingCode::FrontAtNeighbour, "front_at_neighbour"},
    {FindingCode::FrontAtTrim, "front_at_trim"},
    {FindingCode::StepOffPitch, "step_off_pitch"},
    {FindingCode::FillerNoThickness, "filler_no_thickness"},
    {FindingCode::FillerBends, "filler_bends"},
    {FindingCode::GapCloses, "gap_closes"},
    {FindingCode::GapTightens, "gap_tightens"},
    {FindingCode::InsetBinds, "inset_binds"},
    {FindingCode::OverlayLost, "overlay_lost"},
    {FindingCode::GapsGoUneven, "gaps_go_uneven"},
    {FindingCode::ClearanceSmall, "clearance_small"},
    {FindingCode::MoistureBeyondRange, "moisture_beyond_range"},
    {FindingCode::WoodUnknown, "wood_unknown"},
    {FindingCode::FieldEmpty, "field_empty"},
    {FindingCode::ProfileTooDeep, "profile_too_deep"},
    {FindingCode::BoxNoRoom, "box_no_room"},
    {FindingCode::BoxTooTall, "box_too_tall"},
    {FindingCode::BoxTooDeep, "box_too_deep"},
    {FindingCode::BottomOutOfWall, "bottom_out_of_wall"},
    {FindingCode::AnchorCase, "anchor_case"},
    {FindingCode::HoldingWeak, "holding_weak"},
    {FindingCode::ScrewNearEdge, "screw_near_edge"},
    {FindingCode::ScrewsCrowded, "screws_crowded"},
    {FindingCode::ScrewRowsNear, "screw_rows_near"},
    {FindingCode::PilotHoleMissing, "pilot_hole_missing"},
    {FindingCode::PilotHoleWrong, "pilot_hole_wrong"},
    {FindingCode::ClearanceHoleTight, "clearance_hole_tight"},
    {FindingCode::HeadBearsLittle, "head_bears_little"},
    {FindingCode::BoltHoleTight, "bolt_hole_tight"},
    {FindingCode::EngagementThin, "engagement_thin"},
    {FindingCode::RunnerOverloaded, "runner_overloaded"},
    {FindingCode::RunnerTooLong, "runner_too_long"},
    {FindingCode::NoRunnerFits, "no_runner_fits"},
    {FindingCode::BoxOffRunner, "box_off_runner"},
    {FindingCode::BoxLowForRunner, "box_low_for_runner"},
    {FindingCode::BoxNarrowForRunner, "box_narrow_for_runner"},
    {FindingCode::BottomOnRunner, "bottom_on_runner"},
    {FindingCode::RunnerOutOfOpening, "runner_out_of_opening"},
    {FindingCode::SideClearanceOff, "side_clearance_off"},
    {FindingCode::BoxSticks, "box_sticks"},
    {FindingCode::FitsMixed, "fits_mixed"},
    {FindingCode::FittingOffField, "fitting_off_field"},
    {FindingCode::FittingOffFront, "fitting_off_front"},
    {FindingCode::FittingScrewThrough, "fitting_screw_through"},
    {FindingCode::FittingScrewThin, "fitting_screw_thin"},
    {FindingCode::FittingScrewShort, "fitting_screw_short"},
    {FindingCode::NoFittingScrewFits, "no_fitting_screw_fits"},
    {FindingCode::MortiseTooDeep, "mortise_too_deep"},
    {FindingCode::FittingsCollide, "fittings_collide"},
    {FindingCode::HoleAtFitting, "hole_at_fitting"},
    {FindingCode::CentresMixed, "centres_mixed"},
    {FindingCode::OfBoard, "of_board"},
});

constexpr bool isInOrder() {
    for (std::size_t i = 0; i < allKeys.size(); ++i)
        if (static_cast<std::size_t>(allKeys[i].code) != i)
            return false;
    return true;
}
static_assert(isInOrder());
static_assert(allKeys.back().code == lastFindingCode);

} // namespace

std::string_view key(FindingCode code) {
    assert(static_cast<std::size_t>(code) < allKeys.size());
    return allKeys[static_cast<std::size_t>(code)].key;
}

std::string_view key(const Finding& finding) {
    return finding.fault ? key(*finding.fault) : key(finding.code);
}

std::string_view key(Severity severity) {
    switch (severity) {
    case Severity::Ruins:
        return "ruins";
    case Severity::WontWork:
        return "wont_work";
    case Severity::OutsidePractice:
        return "outside_practice";
    case Severity::ToKnow:
        break;
    }
    return "to_know";
}

} // namespace frontwright
