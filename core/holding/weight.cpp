#include "core/holding/weight.h"

namespace frontwright {

namespace {

constexpr double cubicMillimetresPerCubicMetre = 1e9;
constexpr Length obstructionPlay = Length::inches(0, 8);

Length insideWidth(const BoxPlan& box) {
    return box.width - 2 * box.sideThickness;
}
Length insideDepth(const BoxPlan& box) {
    return box.depth - 2 * box.wallThickness;
}

/// Two sides from front to back, two walls between them, and the bottom.
Volume woodOf(const BoxPlan& box) {
    return Volume::of(2 * box.sideThickness, box.height, box.depth) +
           Volume::of(insideWidth(box), box.height, 2 * box.wallThickness) +
           Volume::of(insideWidth(box), box.bottomTop - box.bottomUnderside, insideDepth(box));
}

Volume storageOf(const DrawerParts& parts) {
    const Length bottom = parts.box.origin.y + parts.box.bottomTop;
    return Volume::of(insideWidth(parts.box), parts.opening.top - bottom - obstructionPlay,
                      insideDepth(parts.box));
}

double squareFeetOf(const BoxPlan& box) {
    const Length nothing;
    if (insideWidth(box) <= nothing || insideDepth(box) <= nothing)
        return 0;
    return insideWidth(box).inInches() * insideDepth(box).inInches() / 144;
}

Mass nearestPounds(double pounds) {
    return Mass::nearestToKilograms(pounds * Mass::pounds(1).inKilograms());
}

} // namespace

double densityAt12Percent(SpecificGravity gravity) {
    return gravityAt12Percent(gravity) * 1000 * 1.12;
}

Mass massOf(Volume volume, SpecificGravity gravity) {
    return Mass::nearestToKilograms(densityAt12Percent(gravity) *
                                    static_cast<double>(volume.cubicMillimetres()) /
                                    cubicMillimetresPerCubicMetre);
}

Mass contentsOf(DrawerPurpose purpose, const BoxPlan& box, Volume storage) {
    switch (purpose) {
    case DrawerPurpose::Household:
        return nearestPounds(static_cast<double>(householdPoundsPerSquareFoot) * squareFeetOf(box));
    case DrawerPurpose::Clothing:
        return nearestPounds(clothingPoundsPerCubicFoot * storage.inCubicFeet());
    case DrawerPurpose::School:
        return Mass::pounds(schoolPounds);
    case DrawerPurpose::Empty:
        break;
    }
    return {};
}

DrawerLoad drawerLoad(const DrawerParts& parts) {
    DrawerLoad load;
    load.storage = storageOf(parts);
    load.contents = parts.spec.load ? *parts.spec.load
                                    : contentsOf(parts.spec.purpose, parts.box, load.storage);
    if (parts.runner != nullptr)
        load.rating = parts.runner->rating;
    if (parts.wood == nullptr || !parts.wood->gravity)
        return load;
    const SpecificGravity gravity = *parts.wood->gravity;
    load.front =
        massOf(Volume::of(parts.front.width(), parts.front.height(), parts.thickness), gravity);
    load.box = massOf(woodOf(parts.box), gravity);
    return load;
}

} // namespace frontwright
