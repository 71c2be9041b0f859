// What stands round a case, in numbers. The top would overhang 10 mm at the sides, but the wall
// leaves it 2 mm and the neighbouring case nothing. The case is 900 × 720 of 18 mm panels; fronts
// keep 3 mm inside its outer edges.

#include "tests/core/plan/faced.h"
#include "tests/core/plan/round_case.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::framelessBanks;
using testing::mm;
using testing::Planned;
using testing::roundedWith;
using testing::tenths;
using enum QuantityKind;

struct Told {
    Quantity quantity;
    const char* formula;
    const char* figures;
};

// A1, A2, A3 lie below one another at the left, B1, B2, B3 at the right.
const std::vector<Told> toldOfRoundedCase{
    {{TotalWidth},
     "case + what the top stands out at the left and at the right",
     "900 mm + 2 mm + 0 mm = 902 mm"},
    {{TotalHeight}, "plinth or legs + case + top", "100 mm + 720 mm + 30 mm = 850 mm"},
    {{ToSurroundLeft, 0},
     "from the front to the case's outer edge + from there to what stands beside it",
     "3 mm + 2 mm = 5 mm"},
    {{ToSurroundRight, 3},
     "from the front to the case's outer edge + from there to what stands beside it",
     "3 mm + 1.5 mm = 4.5 mm"},
    {{ToSurroundTop, 0},
     "from the front to the case's outer edge − what covers that edge",
     "3 mm − 8 mm = -5 mm"},
    {{ToSurroundBottom, 2},
     "from the front to the case's outer edge − what covers that edge",
     "3 mm − 5 mm = -2 mm"},
    // A2: 225 high, 3 to A1
    {{FrontStep, 1}, "front's height + gap above it", "225 mm + 3 mm = 228 mm"},
};

TEST(NumbersRoundACase, SayHowTheyCameAbout) {
    const Planned planned(roundedWith(framelessBanks()));
    for (const Told& told : toldOfRoundedCase) {
        const auto derivation =
            derive(planned.project, planned.plan, told.quantity, {Unit::Millimetre, 16});
        ASSERT_TRUE(derivation.has_value()) << key(told.quantity.kind);
        EXPECT_EQ(derivation->formula, told.formula) << key(told.quantity.kind);
        EXPECT_EQ(derivation->figures, told.figures) << key(told.quantity.kind);
    }
}

TEST(NumbersRoundACase, AreToldWhereSomethingStandsOnly) {
    const Planned bare(framelessBanks());
    for (const Quantity quantity : allQuantities(bare.plan))
        EXPECT_FALSE(testing::isRoundCase(quantity.kind)) << key(quantity.kind);
    // A2 lies between A1 and A3, and beside B2: only the wall is beside it.
    const Planned planned(roundedWith(framelessBanks()));
    EXPECT_TRUE(valueOf(planned.plan, {ToSurroundLeft, 1}).has_value());
    EXPECT_FALSE(valueOf(planned.plan, {ToSurroundRight, 1}).has_value());
    EXPECT_FALSE(valueOf(planned.plan, {ToSurroundTop, 1}).has_value());
    // The uppermost of a bank steps to nothing.
    EXPECT_FALSE(valueOf(planned.plan, {FrontStep, 0}).has_value());
}

TEST(TheWholeCase, IsTheCaseWithAllThatStandsOut) {
    const Planned planned(roundedWith(framelessBanks()));
    EXPECT_EQ(planned.plan.whole, (CaseRect{mm(-2), mm(-100), mm(900), mm(750)}));
    EXPECT_EQ(planned.plan.outline, CaseRect::atOrigin(mm(900), mm(720)));
    EXPECT_EQ(Planned(framelessBanks()).plan.whole, planned.plan.outline);
}

TEST(StepsDownABank, GoFromBoxToBox) {
    using namespace testing;
    // Three openings of 228; the lower two fronts are on one box, so the one step is from the
    // lowest of them to the upper drawer: 2 · 228 above the bottom panel.
    const auto one = rows({share(opening()), share(opening())}, Length());
    const auto pair = faced(framelessWith(one, mm(459), mm(492))).casework.divisions;
    const Planned bank(roundedWith(
        framelessWith(rows({fixed(mm(228), opening()), share(pair)}, Length()), mm(459), mm(720))));
    ASSERT_EQ(bank.plan.faces.size(), 1U);
    EXPECT_FALSE(bank.front(2).step);
    ASSERT_TRUE(bank.front(1).step);
    EXPECT_EQ(*bank.front(1).step, bank.front(0).rect.bottom - bank.front(2).rect.bottom);
}

TEST(StepsDownABank, SumToTheDistanceOfItsEnds) {
    const Planned planned(roundedWith(framelessBanks()));
    const FrontPlan &top = planned.front(0), &low = planned.front(2);
    EXPECT_EQ(*planned.front(1).step + *low.step, top.rect.bottom - low.rect.bottom);
}

} // namespace
} // namespace frontwright
