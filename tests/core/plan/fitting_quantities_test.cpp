// How a fitting's numbers came about, with their figures.
#include "core/edits/typed.h"
#include "core/plan/quantity.h"
#include "tests/core/plan/planned.h"
#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::n64;

using enum QuantityKind;
using testing::bank;
using testing::Planned;

FittingSpec lock() {
    FittingSpec spec;
    spec.form = "lock";
    return spec;
}

/// Fronts 13 1/2 in × 6 1/2 in × 3/4 in with a label holder 1 1/2 in below the top, 4 in from the
/// left and the right, and a lock.
Project withLabelsAndLock() {
    Project project = bank(1);
    project.fronts.hardware.form = "pull-96";
    project.fronts.hardware.fittings = {{"label-holder", FittingAcross::BothSides,
                                         Length::inches(4), FittingUpright::FromTop, n64(96),
                                         std::nullopt},
                                        lock()};
    return project;
}

struct Told {
    Quantity quantity;
    const char* formula;
    const char* figures;
};
const std::vector<Told> toldOfFittings{
    {{HandleCentres},
     "first hole to last: a metric pattern, whole millimetres",
     "96 mm = ≈ 3 25/32 in"},
    {{FittingX}, "the given distance from the front's left edge", "4 in"},
    {{FittingX, 0, 1},
     "front's width − the given distance from its right edge",
     "13 1/2 in − 4 in = 9 1/2 in"},
    {{FittingX, 0, 2}, "half the front's width", "13 1/2 in / 2 = 6 3/4 in"},
    {{FittingY}, "front's height − the given distance from its top", "6 1/2 in − 1 1/2 in = 5 in"},
    {{FittingY, 0, 2},
     "front's height − the fitting's own distance below its top edge",
     "6 1/2 in − 3/4 in = 5 3/4 in"},
    {{FittingScrewLength},
     "longest stocked length from plate + least penetration to plate + wood − least tip cover",
     "7/16 in ≤ 5/8 in ≤ 11/16 in"},
    {{FittingPenetration}, "screw − the fitting's plate", "5/8 in − 1/16 in = 9/16 in"},
    {{FittingTipCover}, "wood before the screw − penetration", "3/4 in − 9/16 in = 3/16 in"},
    {{MortiseWood, 0, 2}, "front behind the mortise − its depth", "3/4 in − 7/16 in = 5/16 in"},
};

TEST(FittingQuantities, AreToldWithTheirFigures) {
    const Planned planned(withLabelsAndLock());
    for (const Told& told : toldOfFittings) {
        const auto derived = derive(planned.project, planned.plan, told.quantity, {Unit::Inch, 32});
        ASSERT_TRUE(derived) << key(told.quantity.kind);
        EXPECT_EQ(derived->formula, told.formula);
        EXPECT_EQ(derived->figures, told.figures);
        EXPECT_FALSE(derived->inputs.empty());
    }
}

TEST(FittingQuantities, AreListedForWhatIsThere) {
    const Planned planned(withLabelsAndLock());
    const auto has = [&](Quantity quantity) {
        const auto all = quantitiesOfFront(planned.plan, 0);
        return std::ranges::find(all, quantity) != all.end();
    };
    EXPECT_TRUE(has({FittingX, 0, 2}));
    EXPECT_FALSE(has({FittingX, 0, 3}));
    EXPECT_FALSE(has({MortiseWood, 0, 0})); // nothing is let in for a label
    EXPECT_TRUE(has({HandleCentres}));
    EXPECT_FALSE(measureOf(Planned(bank(1)).plan, {HandleCentres})); // a knob
}

Length typedInto(Quantity quantity, WrittenLength typed, QuantityKind seen) {
    const Planned planned(withLabelsAndLock());
    const auto changed = setQuantity(planned.project, planned.plan, quantity, typed);
    const Planned after(changed.value());
    return *valueOf(after.plan, {seen, 0, quantity.index});
}

TEST(FittingQuantities, CanBeTyped) {
    EXPECT_EQ(typedInto({FittingX, 0, 0}, Length::inches(3), FittingX), Length::inches(3));
    EXPECT_EQ(typedInto({FittingX, 0, 1}, Length::inches(10), FittingX), Length::inches(10));
    EXPECT_EQ(typedInto({FittingY, 0, 0}, Length::inches(2), FittingY), Length::inches(2));
    EXPECT_EQ(typedInto({FittingScrewLength, 0, 0}, n64(48), FittingScrewLength), n64(48));
}

TEST(FittingQuantities, OfALocksHeightIsItsOwn) {
    const Planned planned(withLabelsAndLock());
    EXPECT_FALSE(setQuantity(planned.project, planned.plan, {FittingY, 0, 2}, n64(64)).ok());
    EXPECT_TRUE(setQuantity(planned.project, planned.plan, {FittingX, 0, 2}, n64(320)).ok());
}

TEST(FittingScrewsAndMountingScrews, KeepOutOfEachOthersWay) {
    // Where a lock's body lies before the upper row, that row moves out.
    Project project = bank(1);
    const Planned without(project);
    project.fronts.hardware.fittings = {
        {"lock", FittingAcross::FromLeft, Length::inches(1, 32), {}, {}, std::nullopt}};
    const Planned with(project);
    const auto& holes = with.front(0).mounting.holes;
    ASSERT_EQ(holes.size(), 4U);
    EXPECT_EQ(holes[0].at, without.front(0).mounting.holes[0].at);
    EXPECT_GT(holes[2].at.x, without.front(0).mounting.holes[2].at.x);
    for (const MountingHole& hole : holes)
        EXPECT_TRUE(hole.allowed);
}

} // namespace
} // namespace frontwright
