// What is to be bought: handles, fittings, bolts and screws, counted over the case.
#include "core/reports/hardware_list.h"

#include "tests/core/plan/planned.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using Kind = HardwareRow::Kind;
using testing::Planned;

const HardwareRow* row(const std::vector<HardwareRow>& rows, Kind kind, std::string_view id) {
    for (const HardwareRow& each : rows)
        if (each.kind == kind && each.id == id)
            return &each;
    return nullptr;
}

TEST(HardwareList, CountsHandlesWithTheirBolts) {
    // Three fronts, each a knob with a bolt and four mounting screws.
    const Planned planned(testing::bank(3));
    const auto rows = hardwareList(planned.plan);
    ASSERT_EQ(rows.size(), 3U);
    EXPECT_EQ(row(rows, Kind::Handle, "knob-32")->count, 3U);
    EXPECT_EQ(row(rows, Kind::Bolt, "bolt-8-32")->count, 3U);
    EXPECT_EQ(row(rows, Kind::WoodScrew, "wood-screw-8")->count, 12U);
    EXPECT_EQ(rows.front().fronts, (std::vector<std::uint32_t>{0, 1, 2}));
}

TEST(HardwareList, AddsTheScrewsOfFittingsByTheirLength) {
    // Two labels with two screws of 5/8 in each on one of two fronts; the fronts' own are 1 in.
    Project project = testing::bank(2);
    project = testing::withChoices(std::move(project), 1, [&](FrontChoices& choices) {
        choices.hardware = project.fronts.hardware;
        choices.hardware->form.clear();
        choices.hardware->fittings = {{"label-holder", FittingAcross::BothSides, Length::inches(3),
                                       FittingUpright::Middle, Length{}, std::nullopt}};
    });
    const Planned planned(project);
    const auto rows = hardwareList(planned.plan);
    EXPECT_EQ(row(rows, Kind::Handle, "knob-32")->count, 1U);
    EXPECT_EQ(row(rows, Kind::Fitting, "label-holder")->count, 2U);
    EXPECT_EQ(row(rows, Kind::Fitting, "label-holder")->fronts, (std::vector<std::uint32_t>{1}));
    std::size_t shortOnes = 0, longOnes = 0;
    for (const HardwareRow& each : rows)
        if (each.kind == Kind::WoodScrew)
            (each.length == Length::fromSixtyFourths(40) ? shortOnes : longOnes) += each.count;
    EXPECT_EQ(shortOnes, 4U);
    EXPECT_EQ(longOnes, 8U);
}

} // namespace
} // namespace frontwright
