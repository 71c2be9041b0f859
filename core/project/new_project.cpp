#include "core/project/project.h"

namespace frontwright {
namespace {

// All defaults: common practice, no source.

Length tenths(std::int64_t tenthsOfMillimetre) {
    return Length::fromMicrometres(tenthsOfMillimetre * 100);
}

Case inchCase() {
    Case casework;
    casework.width = Length::inches(36);
    casework.height = Length::inches(34);
    casework.depth = Length::inches(20);
    casework.frame = PerSide<WrittenLength>::all(Length::inches(1, 32));
    casework.frameThickness = Length::inches(0, 48);
    casework.grid = Length::inches(0, 4);
    return casework;
}

Case millimetreCase() {
    Case casework;
    casework.width = Length::millimetres(900);
    casework.height = Length::millimetres(860);
    casework.depth = Length::millimetres(500);
    casework.frame = PerSide<WrittenLength>::all(Length::millimetres(38));
    casework.frameThickness = Length::millimetres(19);
    casework.grid = Length::millimetres(1);
    return casework;
}

FrontDefaults inchFronts() {
    FrontDefaults fronts;
    fronts.fit = FrontFit::all({Fit::Overlay, Length::inches(0, 16)});
    fronts.thickness = Length::inches(0, 48);
    fronts.profile.width = Length::inches(0, 8);
    fronts.profile.depth = Length::inches(0, 8);
    fronts.box.sideClearance = Length::inches(0, 32);
    fronts.box.depth = Length::inches(18);
    fronts.box.wallThickness = Length::inches(0, 32);
    fronts.box.sideThickness = Length::inches(0, 32);
    fronts.box.grooveHeight = Length::inches(0, 16);
    fronts.box.bottomThickness = Length::inches(0, 16);
    fronts.mounting.toolDiameter = Length::inches(0, 32);
    fronts.hardware.twoPast = Length::inches(24);
    return fronts;
}

FrontDefaults millimetreFronts() {
    FrontDefaults fronts;
    fronts.fit = FrontFit::all({Fit::Overlay, Length::millimetres(6)});
    fronts.thickness = Length::millimetres(19);
    fronts.profile.width = Length::millimetres(3);
    fronts.profile.depth = Length::millimetres(3);
    fronts.box.sideClearance = Length::millimetres(13);
    fronts.box.depth = Length::millimetres(450);
    fronts.box.wallThickness = Length::millimetres(12);
    fronts.box.sideThickness = Length::millimetres(12);
    fronts.box.grooveHeight = Length::millimetres(6);
    fronts.box.bottomThickness = Length::millimetres(6);
    fronts.mounting.toolDiameter = Length::millimetres(12);
    fronts.hardware.twoPast = Length::millimetres(600);
    return fronts;
}

/// Panels in place of the frame, and a gap all round: fronts cover the outer panels but for the
/// gap, and half of what they share.
void makeFrameless(Project& project, Length panel, Length gap) {
    project.casework.construction = Construction::Frameless;
    project.casework.frame = PerSide<WrittenLength>::all(panel);
    project.fronts.fit = FrontFit::all({Fit::Gap, gap});
}

Limits millimetreLimits() {
    Limits limits;
    limits.leastPenetration = Length::millimetres(10);
    limits.leastTipCover = Length::millimetres(3);
    limits.screwMargin = Length::millimetres(3);
    limits.leastWallUnderHead = Length::millimetres(5);
    limits.leastWoodUnderHead = Length::millimetres(6);
    limits.headAllowance = tenths(15);
    limits.leastGap = tenths(15);
    limits.holeToHole = Length::millimetres(6);
    limits.unevenGaps = tenths(8);
    limits.leastHeadBearing = tenths(8);
    limits.fillerShadow = Length::millimetres(3);
    limits.fillerBend = tenths(8);
    return limits;
}

} // namespace

Project newProject(Unit unit, Construction construction) {
    Project project;
    project.title = "New case";
    project.style = {unit, 16};
    switch (unit) {
    case Unit::Inch:
        project.casework = inchCase();
        project.fronts = inchFronts();
        if (construction == Construction::Frameless)
            makeFrameless(project, Length::inches(0, 48), Length::inches(0, 8));
        break;
    case Unit::Millimetre:
        project.casework = millimetreCase();
        project.fronts = millimetreFronts();
        project.limits = millimetreLimits();
        if (construction == Construction::Frameless)
            makeFrameless(project, Length::millimetres(18), Length::millimetres(3));
        break;
    }
    project.fronts.stock.species = "cherry";
    project.fronts.profile.family = ProfileFamily::Eased;
    project.fronts.box.runner = unit == Unit::Inch ? "side-mounted" : "side-mounted-mm";
    project.fronts.mounting.screw = unit == Unit::Inch ? "wood-screw-8" : "wood-screw-4mm";
    project.fronts.hardware.form = unit == Unit::Inch ? "knob-32" : "knob-32-m4";
    Opening opening;
    opening.id = OpeningId{project.nextId++};
    project.casework.divisions = std::make_shared<const Region>(Region{std::move(opening)});
    return project;
}

} // namespace frontwright
