#include "core/plan/chosen.h"

#include "tests/core/plan/planned.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::bank;
using testing::Planned;
using testing::withChoices;

TEST(Chosen, IsTheCasesWhereTheOpeningDecidesNothing) {
    const Planned planned(bank(2));
    const FrontPlan& front = planned.front(0);
    EXPECT_EQ(&chosenThickness(planned.project, front), &planned.project.fronts.thickness);
    EXPECT_EQ(&chosenProfile(planned.project, front), &planned.project.fronts.profile);
    EXPECT_EQ(&chosenBox(planned.project, front), &planned.project.fronts.box);
    EXPECT_EQ(&chosenMounting(planned.project, front), &planned.project.fronts.mounting);
    EXPECT_EQ(&chosenHardware(planned.project, front), &planned.project.fronts.hardware);
    EXPECT_EQ(&chosenFit(planned.project, front, Side::Top), &planned.project.fronts.fit.top);
}

TEST(Chosen, IsTheOpeningsOwnWhereItDecides) {
    const Planned planned(withChoices(bank(2), 1, [](FrontChoices& choices) {
        choices.thickness = Length::inches(1);
        choices.fit.left = SideFit{Fit::Gap, Length::inches(0, 8)};
        choices.hardware = HardwareSpec{};
        choices.hardware->form = "pull-96";
    }));
    EXPECT_EQ(chosenThickness(planned.project, planned.front(1)).length, Length::inches(1));
    EXPECT_EQ(chosenFit(planned.project, planned.front(1), Side::Left).fit, Fit::Gap);
    EXPECT_EQ(chosenFit(planned.project, planned.front(1), Side::Right).fit, Fit::Overlay);
    EXPECT_EQ(chosenHardware(planned.project, planned.front(1)).form, "pull-96");
    EXPECT_EQ(chosenHardware(planned.project, planned.front(0)).form, "knob-32");
}

} // namespace
} // namespace frontwright
