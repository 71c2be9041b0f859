#pragma once

#include "core/edits/construction.h"
#include "tests/core/plan/planned.h"
#include "tests/core/shorthand.h"

namespace frontwright::testing {

constexpr Length tenths(std::int64_t tenthsOfMillimetre) {
    return Length::fromMicrometres(tenthsOfMillimetre * 100);
}

/// 18 mm panels, 3 mm gaps all round, on a grid of 1 mm.
inline Project framelessWith(const RegionPtr& divisions, Length width, Length height) {
    Project project = projectWith(divisions, width, height);
    project.style = {Unit::Millimetre, 16};
    project.casework.construction = Construction::Frameless;
    project.casework.frame = PerSide<WrittenLength>::all(mm(18));
    project.casework.depth = mm(500);
    project.casework.grid = mm(1);
    project.fronts.fit = FrontFit::all({Fit::Gap, mm(3)});
    return project;
}

/// 900 × 720, two banks beside an 18 mm divider; in each three drawers with nothing between them
/// but the gap: openings of 423 × 228.
///   (900 − 3 · 18)/2 = 423; (720 − 2 · 18)/3 = 228
inline Project framelessBanks(Length shelf = {}) {
    const auto bank = [&] {
        return rows({share(opening()), share(opening()), share(opening())}, shelf);
    };
    return framelessWith(columns({share(bank()), share(bank())}, mm(18)), mm(900), mm(720));
}

} // namespace frontwright::testing
