#include "core/edits/choices.h"
#include "core/edits/divisions.h"
#include "core/edits/uses.h"
#include "core/plan/quantity.h"
#include "core/rules/rule_parts.h"

#include <algorithm>
#include <array>

namespace frontwright {

namespace {

/// All on furring, of a wood that is told; one front on wooden runners, with a kicker, the other on
/// a centre runner, with notches.
Result<Project> onOtherRunners(Project project, OpeningId upright) {
    BoxSpec& box = project.fronts.box;
    box.runner = "centre";
    box.toCaseSide = Length::inches(0, 48);
    box.wood = project.fronts.stock.species;
    BoxSpec wooden = box;
    wooden.runner = "wooden";
    return setBox(project, {upright}, wooden);
}

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
    const auto turned = setStock(rows.value(), {only.id}, upright);
    return turned.ok() ? onOtherRunners(turned.value(), only.id) : turned;
}

/// The same without a face frame, with something at each of its sides and rows of holes: what only
/// such a case has.
Result<Project> roundedCase() {
    Result<Project> project = sampleCase();
    if (!project.ok())
        return project;
    Project rounded = std::move(project).value();
    rounded.casework.construction = Construction::Frameless;
    rounded.casework.systemHoles = usualSystemHoles(rounded.casework.frame.bottom);
    Surroundings& round = rounded.casework.surroundings;
    round.left = usualSurround(SurroundKind::Wall, Unit::Inch);
    round.right = usualSurround(SurroundKind::NeighbouringCase, Unit::Inch);
    round.top = usualSurround(SurroundKind::OverhangingTop, Unit::Inch);
    round.bottom = usualSurround(SurroundKind::Moulding, Unit::Inch);
    return rounded;
}

/// The same with both fronts on one box: what only filler strips have.
Result<Project> facedCase() {
    Result<Project> project = sampleCase();
    if (!project.ok())
        return project;
    Project faced = std::move(project).value();
    Region region = *faced.casework.divisions;
    std::get<Split>(region.content).divides = Divides::Face;
    faced.casework.divisions = std::make_shared<const Region>(std::move(region));
    return faced;
}

/// The same with nothing over the lower opening: what only an open space has.
Result<Project> openCase() {
    Result<Project> project = sampleCase();
    if (!project.ok())
        return project;
    const auto& rows = std::get<Split>(project.value().casework.divisions->content);
    const auto& lower = std::get<Opening>(rows.children.back().region->content);
    return setUse(project.value(), std::array{lower.id}, OpeningUse::OpenSpace);
}

/// Rows for the kinds that have not been told yet.
void addNumbersOf(const Result<Project>& project, const Catalogue& program, DecimalMark mark,
                  std::vector<bool>& isTold, std::vector<RuleRow>& rows) {
    if (!project.ok())
        return;
    const Result<Plan> plan = makePlan(project.value(), program);
    if (!plan.ok())
        return;
    LengthStyle style = project.value().style;
    style.mark = mark;
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

} // namespace

void addNumbers(std::vector<RuleRow>& rows, const Catalogue& program, DecimalMark mark) {
    std::vector<bool> isTold;
    for (const Result<Project>& project : {sampleCase(), roundedCase(), facedCase(), openCase()})
        addNumbersOf(project, program, mark, isTold, rows);
}

} // namespace frontwright
