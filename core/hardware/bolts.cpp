#include "core/hardware/bolts.h"

namespace frontwright {
namespace {

FrontRect footprintAt(const Footprint& footprint, FrontPoint centre) {
    const Length width = footprint.width;
    const Length height = footprint.shape == FootprintShape::Round ? width : footprint.height;
    const FrontPoint lowerLeft{centre.x - width.half(), centre.y - height.half()};
    return {lowerLeft.x, lowerLeft.y, lowerLeft.x + width, lowerLeft.y + height};
}

Length leastBehindHoles(const std::vector<FrontPoint>& holes, const FrontStock& stock,
                        Length radius) {
    const FrontRect safe = stock.field.common(stock.front).inset(radius);
    Length result = stock.thickness;
    for (FrontPoint hole : holes)
        if (!safe.contains(hole))
            result = least(result, leastThickness(*stock.profile, stock.front, stock.thickness,
                                                  FrontDisc{hole, radius}));
    return result;
}

/// What is cut into the front at each hole: the counterbore where one reaches the front, else the
/// bolt's hole alone.
Length radiusInFront(MountingWay way, const HardwareSpec& spec, const HardwarePlan& plan,
                     Length wall) {
    const Length counterbore = plan.counterboreDiameter.half();
    const Length hole = plan.holeDiameter.half();
    switch (way) {
    case MountingWay::FrontCounterbore:
        return counterbore;
    case MountingWay::FrontAccessHole:
        return spec.counterbore ? counterbore : hole;
    case MountingWay::ThroughWall:
        break;
    }
    return spec.counterbore && *spec.counterbore > wall ? counterbore : hole;
}

void placeHandles(HardwarePlan& plan, const HardwareSpec& spec, const FrontStock& stock) {
    const std::vector<FrontPoint> centres = handleCentres(spec, stock);
    plan.handles.reserve(centres.size());
    plan.holes.reserve(centres.size() * plan.form->holes.size());
    for (FrontPoint centre : centres) {
        plan.handles.push_back({centre, footprintAt(plan.form->footprint, centre)});
        for (FrontPoint offset : plan.form->holes)
            plan.holes.push_back(centre + offset);
    }
}

void compareWays(HardwarePlan& plan, const HardwareSpec& spec, const Limits& limits,
                 const FrontStock& stock) {
    for (std::size_t i = 0; i < allMountingWays.size(); ++i) {
        const MountingWay way = allMountingWays[i];
        const Length radius = radiusInFront(way, spec, plan, stock.wallThickness);
        const Length thickness = leastBehindHoles(plan.holes, stock, radius);
        plan.ways[i] =
            planWay(way, spec, *plan.form, *plan.bolt, limits, thickness, stock.wallThickness);
        if (way == plan.chosen)
            plan.thickness = thickness;
    }
}

Length roundHead(const std::optional<WrittenLength>& given, const Bolt& bolt,
                 const Limits& limits) {
    return given ? Length(*given) : bolt.headDiameter + 2 * limits.headAllowance.length;
}

Error notInCatalogue(Phrase what) {
    return {std::string("hardware.form"), std::move(what),
            text("choose one of the catalogue's or add your own")};
}

} // namespace

std::optional<HardwarePlan> planHardware(const HardwareSpec& spec, const HardwareForm* form,
                                         const Bolt* bolt, const Limits& limits,
                                         const FrontStock& stock) {
    if (!form)
        return std::nullopt;
    std::optional<HardwarePlan> result(std::in_place);
    HardwarePlan& plan = *result;
    plan.form = form;
    plan.bolt = bolt;
    plan.holeDiameter = bolt->clearanceHole;
    plan.chosen = spec.way;
    plan.counterboreDiameter = roundHead(spec.counterboreDiameter, *bolt, limits);
    plan.accessDiameter = roundHead(spec.accessDiameter, *bolt, limits);
    placeHandles(plan, spec, stock);
    compareWays(plan, spec, limits, stock);
    return result;
}

Result<std::optional<HardwarePlan>> planHardware(const HardwareSpec& spec,
                                                 const Catalogue& catalogue, const Limits& limits,
                                                 const FrontStock& stock) {
    if (spec.form.empty())
        return std::optional<HardwarePlan>();
    const HardwareForm* form = catalogue.hardwareForm(spec.form);
    if (!form)
        return notInCatalogue(phrase("there is no handle \"%1\" in the catalogue", spec.form));
    const Bolt* bolt = catalogue.bolt(form->bolt);
    if (!bolt)
        return notInCatalogue(phrase("there is no bolt \"%1\" in the catalogue", form->bolt));
    return planHardware(spec, form, bolt, limits, stock);
}

} // namespace frontwright
