#include "core/reports/groups.h"

#include "core/geometry/side_names.h"
#include "core/hardware/way_words.h"
#include "core/plan/member_words.h"
#include "core/plan/opening_words.h"

namespace frontwright {

namespace {

Phrase titleOf(const Project& project, const Plan& plan, Quantity quantity) {
    const std::uint32_t item = quantity.item;
    switch (partOf(quantity.kind)) {
    case PlanPart::Case:
        return text("Case");
    case PlanPart::Member:
        return nameOfMember(plan, item);
    case PlanPart::Front:
        return nameOf(plan.fronts[item].use, label(project, plan.fronts[item]));
    case PlanPart::Space:
        return nameOf(plan.spaces[item].use, label(plan.spaces[item]));
    case PlanPart::Spacer:
        return phrase("Spacer between %1 and %2",
                      label(project, plan.fronts[plan.spacers[item].lower]),
                      label(project, plan.fronts[plan.spacers[item].upper]));
    case PlanPart::Filler:
        return phrase("Filler strip between %1 and %2",
                      label(project, plan.fronts[plan.fillers[item].lower]),
                      label(project, plan.fronts[plan.fillers[item].upper]));
    case PlanPart::Stop:
        break;
    }
    const Stop& stop = plan.stops[item];
    return phrase("Stop, %1 of %2", nameOf(stop.side), label(project, plan.fronts[stop.front]));
}

template<class Block>
Phrase betweenFronts(const Project& project, const Plan& plan, const Block& block) {
    return phrase("between %1 and %2", label(project, plan.fronts[block.lower]),
                  label(project, plan.fronts[block.upper]));
}

} // namespace

Phrase partWords(const Project& project, const Plan& plan, Quantity quantity) {
    switch (partOf(quantity.kind)) {
    case PlanPart::Spacer:
        return betweenFronts(project, plan, plan.spacers[quantity.item]);
    case PlanPart::Filler:
        return betweenFronts(project, plan, plan.fillers[quantity.item]);
    case PlanPart::Stop: {
        const Stop& stop = plan.stops[quantity.item];
        return phrase("%1 of %2", nameOf(stop.side), label(project, plan.fronts[stop.front]));
    }
    case PlanPart::Case:
    case PlanPart::Member:
    case PlanPart::Front:
    case PlanPart::Space:
        break;
    }
    return titleOf(project, plan, quantity);
}

std::vector<QuantityGroup> grouped(const Project& project, const Plan& plan) {
    std::vector<QuantityGroup> groups;
    for (const Quantity quantity : allQuantities(plan)) {
        if (!measureOf(plan, quantity))
            continue;
        const PlanPart kind = partOf(quantity.kind);
        if (groups.empty() || groups.back().kind != kind || groups.back().item != quantity.item)
            groups.push_back({kind, quantity.item, titleOf(project, plan, quantity), {}});
        groups.back().quantities.push_back(quantity);
    }
    return groups;
}

Phrase indexName(Quantity quantity) {
    const std::string number = std::to_string(quantity.index + 1);
    switch (countedBy(quantity.kind)) {
    case CountedBy::Nothing:
        return {};
    case CountedBy::ScrewHole:
        return phrase("screw hole %1", number);
    case CountedBy::HandleHole:
        return phrase("handle hole %1", number);
    case CountedBy::Fitting:
        return phrase("fitting %1", number);
    case CountedBy::ScrewRow:
        return phrase("screw row %1", number);
    case CountedBy::Way:
        return nameOf(allMountingWays.at(quantity.index));
    case CountedBy::Extreme:
        break;
    }
    return quantity.index == 0 ? text("least") : text("greatest");
}

} // namespace frontwright
