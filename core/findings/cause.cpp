#include "core/findings/cause.h"

#include <algorithm>

namespace frontwright {

namespace {

QuantityKind overlayAt(Side side) {
    switch (side) {
    case Side::Left:
        return QuantityKind::OverlayLeft;
    case Side::Right:
        return QuantityKind::OverlayRight;
    case Side::Bottom:
        return QuantityKind::OverlayBottom;
    case Side::Top:
        break;
    }
    return QuantityKind::OverlayTop;
}

QuantityKind gapAt(Side side) {
    switch (side) {
    case Side::Left:
        return QuantityKind::GapLeft;
    case Side::Right:
        return QuantityKind::GapRight;
    case Side::Bottom:
        return QuantityKind::GapBottom;
    case Side::Top:
        break;
    }
    return QuantityKind::GapTop;
}

/// Kinds of the four sides stand in the order of the sides.
QuantityKind atSide(QuantityKind left, Side side) {
    return static_cast<QuantityKind>(static_cast<int>(left) + static_cast<int>(side));
}

std::optional<QuantityKind> kindOf(FindingCode code, Side side) {
    switch (code) {
    case FindingCode::ScrewThroughShowFace:
    case FindingCode::TipCoverThin:
        return QuantityKind::ScrewTipCover;
    case FindingCode::PenetrationShort:
        return QuantityKind::ScrewPenetration;
    case FindingCode::NoScrewFits:
        return QuantityKind::ScrewLeastLength;
    case FindingCode::HoleInBottom:
    case FindingCode::RecessToolBlocked:
        return QuantityKind::LeastHoleHeight;
    case FindingCode::HoleAtBoxSide:
    case FindingCode::HoleOffFront:
        return QuantityKind::HoleX;
    case FindingCode::HoleAtTopEdge:
    case FindingCode::HoleAtHardware:
    case FindingCode::HoleAtRunner:
        return QuantityKind::HoleY;
    case FindingCode::WallThinUnderHead:
    case FindingCode::SlotForMovement:
        return std::nullopt;
    case FindingCode::BoltTooShort:
    case FindingCode::NoBoltFits:
        return QuantityKind::BoltLeastLength;
    case FindingCode::BoltBottomsOut:
        return QuantityKind::BoltGreatestLength;
    case FindingCode::CounterboreTooDeep:
        return QuantityKind::WoodUnderHead;
    case FindingCode::BackplateOffField:
        return QuantityKind::FieldHeight;
    case FindingCode::HandleOffFront:
    case FindingCode::HandlesCollide:
        return QuantityKind::HandleX;
    case FindingCode::AccessHoleOffWall:
        return QuantityKind::HandleY;
    case FindingCode::FrontsCollide:
    case FindingCode::GapTight:
    case FindingCode::GapsUneven:
        return gapAt(side);
    case FindingCode::FrontOffCase:
    case FindingCode::OverlayMissing:
        return overlayAt(side);
    case FindingCode::GapCloses:
    case FindingCode::GapTightens:
    case FindingCode::InsetBinds:
    case FindingCode::GapsGoUneven:
        return atSide(QuantityKind::SeasonGapLeft, side);
    case FindingCode::OverlayLost:
        return atSide(QuantityKind::SeasonOverlayLeft, side);
    case FindingCode::ClearanceSmall:
        return QuantityKind::RowHole;
    case FindingCode::MoistureBeyondRange:
    case FindingCode::WoodUnknown:
        return std::nullopt;
    case FindingCode::FieldEmpty:
        return QuantityKind::FieldHeight;
    case FindingCode::ProfileTooDeep:
        return QuantityKind::EdgeThickness;
    case FindingCode::BoxNoRoom:
        return QuantityKind::BoxWidth;
    case FindingCode::BoxTooTall:
        return QuantityKind::BoxHeight;
    case FindingCode::BoxTooDeep:
        return QuantityKind::BoxDepth;
    case FindingCode::BottomOutOfWall:
        return QuantityKind::BottomTop;
    case FindingCode::HoldingWeak:
        return QuantityKind::PullDesignSafety;
    case FindingCode::ScrewNearEdge:
        return isLeftOrRight(side) ? QuantityKind::ScrewToEnd : QuantityKind::ScrewToEdge;
    case FindingCode::ScrewsCrowded:
        return QuantityKind::HoleX;
    case FindingCode::PilotHoleMissing:
    case FindingCode::PilotHoleWrong:
        return QuantityKind::PilotHole;
    case FindingCode::ClearanceHoleTight:
        return QuantityKind::ClearanceHole;
    case FindingCode::BoltHoleTight:
        return std::nullopt;
    case FindingCode::EngagementThin:
        return QuantityKind::BoltEngagement;
    case FindingCode::RunnerOverloaded:
        return QuantityKind::RunnerLoad;
    case FindingCode::FitsMixed:
        return QuantityKind::BoxSetback;
    case FindingCode::AnchorCase:
        break;
    }
    return QuantityKind::CaseHeight;
}

/// Which of a front's holes or ways the kind is told for.
std::uint32_t indexOf(QuantityKind kind, const Whereabouts& where, const FrontPlan& front) {
    using enum QuantityKind;
    if (kind == ScrewTipCover || kind == ScrewPenetration || kind == HoleX || kind == HoleY)
        return where.mountingHole.value_or(0);
    if (kind == HandleX || kind == HandleY)
        return where.handleHole.value_or(0);
    if (kind == RowHole && front.season) {
        const auto& rows = front.season->rows;
        const auto worst =
            std::max_element(rows.begin(), rows.end(), [](const SeasonRow& a, const SeasonRow& b) {
                return a.hole < b.hole;
            });
        return static_cast<std::uint32_t>(worst - rows.begin());
    }
    const bool ofWay =
        kind == BoltLeastLength || kind == BoltGreatestLength || kind == WoodUnderHead;
    return ofWay && front.hardware ? static_cast<std::uint32_t>(front.hardware->chosen) : 0;
}

} // namespace

std::optional<Quantity> numberOf(const Finding& finding, const Plan& plan) {
    const auto kind = kindOf(finding.code, finding.where.side.value_or(Side::Bottom));
    if (!kind)
        return std::nullopt;
    Quantity quantity{*kind, 0, 0};
    if (finding.where.opening) {
        const FrontPlan* front = plan.frontOf(*finding.where.opening);
        if (!front)
            return std::nullopt;
        quantity.item = static_cast<std::uint32_t>(front - plan.fronts.data());
        quantity.index = indexOf(*kind, finding.where, *front);
    } else if (*kind != QuantityKind::CaseHeight) {
        return std::nullopt;
    }
    return measureOf(plan, quantity) ? std::optional(quantity) : std::nullopt;
}

InputPlace causeOf(FindingCode code) {
    switch (code) {
    case FindingCode::ScrewThroughShowFace:
    case FindingCode::TipCoverThin:
    case FindingCode::PenetrationShort:
    case FindingCode::NoScrewFits:
    case FindingCode::HoleInBottom:
    case FindingCode::RecessToolBlocked:
    case FindingCode::HoleAtBoxSide:
    case FindingCode::HoleAtTopEdge:
    case FindingCode::HoleAtHardware:
    case FindingCode::HoleOffFront:
    case FindingCode::HoleAtRunner:
    case FindingCode::WallThinUnderHead:
        return InputPlace::Mounting;
    case FindingCode::ClearanceSmall:
        return InputPlace::Mounting;
    case FindingCode::SlotForMovement:
    case FindingCode::WoodUnknown:
        return InputPlace::Stock;
    case FindingCode::MoistureBeyondRange:
        return InputPlace::Air;
    case FindingCode::BoltTooShort:
    case FindingCode::BoltBottomsOut:
    case FindingCode::NoBoltFits:
    case FindingCode::CounterboreTooDeep:
    case FindingCode::BackplateOffField:
    case FindingCode::HandleOffFront:
    case FindingCode::AccessHoleOffWall:
    case FindingCode::HandlesCollide:
        return InputPlace::Hardware;
    case FindingCode::FrontsCollide:
    case FindingCode::GapTight:
    case FindingCode::GapsUneven:
    case FindingCode::FrontOffCase:
    case FindingCode::OverlayMissing:
    case FindingCode::GapCloses:
    case FindingCode::GapTightens:
    case FindingCode::InsetBinds:
    case FindingCode::OverlayLost:
    case FindingCode::GapsGoUneven:
        return InputPlace::Fit;
    case FindingCode::FitsMixed:
        return InputPlace::Fit;
    case FindingCode::HoldingWeak:
    case FindingCode::ScrewNearEdge:
    case FindingCode::ScrewsCrowded:
    case FindingCode::PilotHoleMissing:
    case FindingCode::PilotHoleWrong:
    case FindingCode::ClearanceHoleTight:
        return InputPlace::Mounting;
    case FindingCode::BoltHoleTight:
    case FindingCode::EngagementThin:
        return InputPlace::Hardware;
    case FindingCode::RunnerOverloaded:
        return InputPlace::Runner;
    case FindingCode::FieldEmpty:
    case FindingCode::ProfileTooDeep:
        return InputPlace::Profile;
    case FindingCode::BoxNoRoom:
    case FindingCode::BoxTooTall:
    case FindingCode::BoxTooDeep:
    case FindingCode::BottomOutOfWall:
        return InputPlace::Box;
    case FindingCode::AnchorCase:
        break;
    }
    return InputPlace::CaseSize;
}

} // namespace frontwright
