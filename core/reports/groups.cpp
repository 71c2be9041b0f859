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
    const std::string number = std::to_string(quantity.index + 1);
    switch (countedBy(quantity.kind)) {
    case CountedBy::Nothing:
        return {};
    case CountedBy::ScrewHole:
        return "screw hole " + number;
    case CountedBy::HandleHole:
        return "handle hole " + number;
    case CountedBy::ScrewRow:
        return "screw row " + number;
    case CountedBy::Way:
        return std::string(nameOf(allMountingWays.at(quantity.index)));
    case CountedBy::Extreme:
        break;
    }
    return quantity.index == 0 ? "least" : "greatest";
}

} // namespace frontwright
