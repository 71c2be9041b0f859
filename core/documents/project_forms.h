#pragma once

#include "core/documents/air_forms.h"
#include "core/documents/catalogue_forms.h"
#include "core/documents/division_forms.h"
#include "core/documents/document.h"
#include "core/documents/front_forms.h"
#include "core/documents/header.h"
#include "core/documents/preset_forms.h"
#include "core/documents/surround_forms.h"

namespace frontwright::documents {

// The form of a whole document. `a` is a Reading or a Writing.

void members(auto& a, Is<Limits> auto& s) {
    a.always("leastPenetration", s.leastPenetration);
    a.always("leastTipCover", s.leastTipCover);
    a.always("screwMargin", s.screwMargin);
    a.always("leastWallUnderHead", s.leastWallUnderHead);
    a.always("leastWoodUnderHead", s.leastWoodUnderHead);
    a.always("headAllowance", s.headAllowance);
    a.always("leastGap", s.leastGap);
    a.always("leastOpening", s.leastOpening);
    a.always("holeToHole", s.holeToHole);
    a.defaulted("unevenGaps", s.unevenGaps, Limits{}.unevenGaps);
    a.defaulted("leastHeadBearing", s.leastHeadBearing, Limits{}.leastHeadBearing);
}

void members(auto& a, Is<Case> auto& s) {
    a.required("width", s.width);
    refuseUnlessPositive(a, "width", s.width);
    a.required("height", s.height);
    refuseUnlessPositive(a, "height", s.height);
    a.required("depth", s.depth);
    a.always("construction", s.construction);
    a.required("frame", s.frame);
    a.required("frameThickness", s.frameThickness);
    a.required("grid", s.grid);
    refuseUnlessPositive(a, "grid", s.grid);
    a.required("divisions", s.divisions);
    a.defaulted("surroundings", s.surroundings, {});
    a.optional("systemHoles", s.systemHoles);
}

void members(auto& a, Is<Project> auto& s) {
    a.fixed("format", caseFormat);
    a.fixed("version", textOf({documentMajor, documentMinor}));
    a.always("title", s.title);
    a.always("note", s.note);
    a.required("units", s.style.unit);
    a.whole("denominator", s.style.denominator, {8, 64});
    if (const int n = s.style.denominator; n != 8 && n != 16 && n != 32 && n != 64)
        a.refuse("denominator", text("8, 16, 32 or 64"));
    a.defaulted("presets", s.presets, {});
    remember(a, s.presets);
    a.required("case", s.casework);
    a.required("fronts", s.fronts);
    a.optional("air", s.air);
    a.always("limits", s.limits);
    a.defaulted("own", s.own, {});
}

} // namespace frontwright::documents
