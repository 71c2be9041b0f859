#include "core/reports/groups.h"

#include "core/geometry/side_names.h"
#include "core/hardware/way_words.h"

namespace frontwright {

namespace {

using Kind = QuantityGroup::Kind;

Kind kindOf(QuantityKind kind) {
    if (kind <= QuantityKind::CaseStorage)
        return Kind::Case;
    if (kind <= QuantityKind::SeasonReveal)
        return Kind::Member;
    if (kind == QuantityKind::SpacerWidth)
        return Kind::Spacer;
    if (kind == QuantityKind::StopFromFarEdge || kind == QuantityKind::StopFromOpening)
        return Kind::Stop;
    return Kind::Front;
}

std::string memberTitle(const Plan& plan, std::uint32_t item) {
    const MemberPlan& member = plan.members[item];
    if (member.id == leftStile)
        return "Left stile";
    if (member.id == rightStile)
        return "Right stile";
    if (member.id == bottomRail)
        return "Bottom rail";
    if (member.id == topRail)
        return "Top rail";
    // The four outer ones come first.
    return (member.kind == MemberKind::Stile ? "Stile " : "Rail ") + std::to_string(item - 3);
}

std::string titleOf(const Project& project, const Plan& plan, Kind kind, std::uint32_t item) {
    switch (kind) {
    case Kind::Case:
        return "Case";
    case Kind::Member:
        return memberTitle(plan, item);
    case Kind::Front:
        return "Front " + label(project, plan.fronts[item]);
    case Kind::Spacer:
        return "Spacer between " + label(project, plan.fronts[plan.spacers[item].lower]) + " and " +
               label(project, plan.fronts[plan.spacers[item].upper]);
    case Kind::Stop:
        break;
    }
    const Stop& stop = plan.stops[item];
    return "Stop, " + std::string(nameOf(stop.side)) + " of " +
           label(project, plan.fronts[stop.front]);
}

} // namespace

std::vector<QuantityGroup> grouped(const Project& project, const Plan& plan) {
    std::vector<QuantityGroup> groups;
    for (const Quantity quantity : allQuantities(plan)) {
        if (!measureOf(plan, quantity))
            continue;
        const Kind kind = kindOf(quantity.kind);
        if (groups.empty() || groups.back().kind != kind || groups.back().item != quantity.item)
            groups.push_back(
                {kind, quantity.item, titleOf(project, plan, kind, quantity.item), {}});
        groups.back().quantities.push_back(quantity);
    }
    return groups;
}

std::string indexName(Quantity quantity) {
    switch (quantity.kind) {
    case QuantityKind::ScrewPenetration:
    case QuantityKind::ScrewTipCover:
    case QuantityKind::HoleX:
    case QuantityKind::HoleY:
    case QuantityKind::ScrewToEdge:
    case QuantityKind::ScrewToEnd:
    case QuantityKind::ScrewUltimate:
    case QuantityKind::ScrewDesign:
    case QuantityKind::ScrewPull:
        return "screw hole " + std::to_string(quantity.index + 1);
    case QuantityKind::SeasonReveal:
    case QuantityKind::SeasonWidth:
    case QuantityKind::SeasonHeight:
    case QuantityKind::SeasonOverlayLeft:
    case QuantityKind::SeasonOverlayRight:
    case QuantityKind::SeasonOverlayBottom:
    case QuantityKind::SeasonOverlayTop:
    case QuantityKind::SeasonGapLeft:
    case QuantityKind::SeasonGapRight:
    case QuantityKind::SeasonGapBottom:
    case QuantityKind::SeasonGapTop:
        return quantity.index == 0 ? "least" : "greatest";
    case QuantityKind::RowMovement:
    case QuantityKind::RowHole:
    case QuantityKind::RowDrill:
        return "screw row " + std::to_string(quantity.index + 1);
    case QuantityKind::HandleX:
    case QuantityKind::HandleY:
        return "handle hole " + std::to_string(quantity.index + 1);
    case QuantityKind::BoltGrip:
    case QuantityKind::BoltLeastLength:
    case QuantityKind::BoltGreatestLength:
    case QuantityKind::BoltLength:
    case QuantityKind::Counterbore:
    case QuantityKind::WoodUnderHead:
    case QuantityKind::BoltEngagement:
        return std::string(nameOf(allMountingWays.at(quantity.index)));
    default:
        return {};
    }
}

} // namespace frontwright
