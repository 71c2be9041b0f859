#include "core/edits/choices.h"
#include "core/edits/divisions.h"
#include "core/plan/quantity.h"
#include "core/rules/rule_parts.h"

#include <algorithm>

namespace frontwright {

namespace {

/// A case in which every kind of number exists: two rows, so that there is a spacer, and a handle
/// on the front alone, so that screws carry its pull; in air, one front with its grain upright, so
/// that widths and heights move; with a pull of two holes and a lock.
Result<Project> sampleCase() {
    Project project = newProject(Unit::Inch);
    project.fronts.hardware.form = "pull-3in";
    project.fronts.hardware.way = MountingWay::FrontAccessHole;
    project.fronts.hardware.fittings.emplace_back().form = "lock-2in";
    project.air = Air{AirState::meter(Percent::whole(8)), AirState::meter(Percent::whole(6)),
                      AirState::meter(Percent::whole(12))};
    const auto& only = std::get<Opening>(project.casework.divisions->content);
    const auto rows = splitOpening(project, only.id, Direction::Rows, 2, Length::inches(1, 16));
    if (!rows.ok())
        return rows;
    Stock upright = rows.value().fronts.stock;
    upright.grain = Grain::AlongHeight;
    return setStock(rows.value(), {only.id}, upright);
}

} // namespace

void addNumbers(std::vector<RuleRow>& rows, const Catalogue& program, DecimalMark mark) {
    const Result<Project> project = sampleCase();
    if (!project.ok())
        return;
    const Result<Plan> plan = makePlan(project.value(), program);
    if (!plan.ok())
        return;
    LengthStyle style = project.value().style;
    style.mark = mark;
    std::vector<bool> isTold;
    for (const Quantity quantity : allQuantities(plan.value())) {
        const auto kind = static_cast<std::size_t>(quantity.kind);
        isTold.resize(std::max(isTold.size(), kind + 1));
        const auto derivation = derive(project.value(), plan.value(), quantity, style);
        if (isTold[kind] || !derivation)
            continue;
        isTold[kind] = true;
        rows.push_back({RuleKind::Number, "number." + std::string(key(quantity.kind)),
                        derivation->name, derivation->formula, text("plan, number panel, drawings"),
                        derivation->source});
    }
}

} // namespace frontwright
