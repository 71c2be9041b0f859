#include "tests/core/hardware/handles.h"
#include "tests/core/words/untold.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::inchBolt;
using testing::knob;
using testing::metricBolt;
using testing::profiledFront;
using testing::pull;
using testing::squareFront;

const Length width = Length::millimetres(400);
const Length height = Length::millimetres(160);

Catalogue shop() {
    Catalogue catalogue;
    catalogue.bolts = {inchBolt(), metricBolt()};
    catalogue.hardware = {knob(), pull()};
    return catalogue;
}
HardwareSpec specFor(std::string form) {
    HardwareSpec spec;
    spec.form = std::move(form);
    return spec;
}
HardwarePlan planned(const HardwareSpec& spec, const HardwareForm& form, const Bolt& bolt,
                     const FrontStock& stock) {
    return *planHardware(spec, &form, &bolt, Limits{}, stock);
}

TEST(HardwarePlan, IsNoneWhereNoHandleIsChosen) {
    const Catalogue catalogue = shop();
    const auto plan = planHardware(specFor(""), catalogue, Limits{}, squareFront(width, height));
    ASSERT_TRUE(plan.ok());
    EXPECT_FALSE(plan.value().has_value());
    EXPECT_FALSE(planHardware({}, nullptr, nullptr, Limits{}, squareFront(width, height)));
}

TEST(HardwarePlan, NamesTheHandleThatIsNotInTheCatalogue) {
    const auto plan = planHardware(specFor("latch"), shop(), Limits{}, squareFront(width, height));
    ASSERT_FALSE(plan.ok());
    EXPECT_EQ(plan.error().place, "hardware.form");
    EXPECT_EQ(plan.error().what, "there is no handle \"latch\" in the catalogue");
    EXPECT_EQ(testing::untold(plan.error().sentence(), {"hardware", "form", "latch"}),
              std::vector<std::string>{});
}

TEST(HardwarePlan, NamesTheBoltThatIsNotInTheCatalogue) {
    Catalogue catalogue = shop();
    catalogue.hardware[0].bolt = "bolt-m6";
    const auto plan =
        planHardware(specFor("knob"), catalogue, Limits{}, squareFront(width, height));
    ASSERT_FALSE(plan.ok());
    EXPECT_EQ(plan.error().what, "there is no bolt \"bolt-m6\" in the catalogue");
}

TEST(HardwarePlan, IsTheSameLookedUpOrHandedOver) {
    const Catalogue catalogue = shop();
    const FrontStock stock = squareFront(width, height);
    const auto lookedUp = planHardware(specFor("pull"), catalogue, Limits{}, stock);
    ASSERT_TRUE(lookedUp.ok());
    EXPECT_EQ(lookedUp.value(), planHardware(specFor("pull"), catalogue.hardwareForm("pull"),
                                             catalogue.bolt("bolt-m4"), Limits{}, stock));
}

TEST(HardwareHoles, LieRoundTheHandlesCentre) {
    // Centre 200, 80; holes 48 mm to either side; 106 mm by 10 mm on the front.
    const HardwareForm form = pull();
    const Bolt bolt = metricBolt();
    const HardwarePlan plan = planned({}, form, bolt, squareFront(width, height));
    ASSERT_EQ(plan.handles.size(), 1u);
    EXPECT_EQ(plan.handles[0].footprint,
              (FrontRect{Length::millimetres(147), Length::millimetres(75),
                         Length::millimetres(253), Length::millimetres(85)}));
    ASSERT_EQ(plan.holes.size(), 2u);
    EXPECT_EQ(plan.holes[0], (FrontPoint{Length::millimetres(152), Length::millimetres(80)}));
    EXPECT_EQ(plan.holes[1], (FrontPoint{Length::millimetres(248), Length::millimetres(80)}));
    EXPECT_EQ(plan.holeDiameter, Length::fromMicrometres(4'500));
}

TEST(HardwareHoles, AreListedHandleByHandleFromTheLeft) {
    HardwareSpec spec;
    spec.twoPast = Length::millimetres(300);
    const HardwareForm form = pull();
    const Bolt bolt = metricBolt();
    const HardwarePlan plan = planned(spec, form, bolt, squareFront(width, height));
    ASSERT_EQ(plan.holes.size(), 4u);
    const std::array<std::int64_t, 4> across{52, 148, 252, 348};
    for (std::size_t i = 0; i < across.size(); ++i)
        EXPECT_EQ(plan.holes[i].x, Length::millimetres(across[i]));
}

TEST(RoundFootprint, IsAsHighAsItIsWide) {
    HardwareForm form = knob();
    form.footprint = {FootprintShape::Round, Length::millimetres(50), Length{}};
    const Bolt bolt = inchBolt();
    const FrontRect footprint =
        planned({}, form, bolt, squareFront(width, height)).handles[0].footprint;
    EXPECT_EQ(footprint.width(), Length::millimetres(50));
    EXPECT_EQ(footprint.height(), Length::millimetres(50));
    EXPECT_EQ(footprint.centre(), (FrontPoint{Length::millimetres(200), Length::millimetres(80)}));
}

TEST(CounterboreAndAccessHole, PassTheHeadWithTheAllowanceRoundIt) {
    // 0.322 + 2 × 1/16 = 0.447 in
    const HardwareForm form = knob();
    const Bolt bolt = inchBolt();
    HardwareSpec spec;
    HardwarePlan plan = planned(spec, form, bolt, squareFront(width, height));
    EXPECT_EQ(plan.counterboreDiameter, Length::fromNanometres(447 * 25'400));
    EXPECT_EQ(plan.accessDiameter, Length::fromNanometres(447 * 25'400));

    spec.counterboreDiameter = Length::inches(0, 32);
    spec.accessDiameter = Length::inches(0, 40);
    plan = planned(spec, form, bolt, squareFront(width, height));
    EXPECT_EQ(plan.counterboreDiameter, Length::inches(0, 32));
    EXPECT_EQ(plan.accessDiameter, Length::inches(0, 40));
}

TEST(HardwareWays, AreAllComputedWhicheverIsChosen) {
    const HardwareForm form = knob();
    const Bolt bolt = inchBolt();
    HardwareSpec spec;
    for (MountingWay chosen : allMountingWays) {
        spec.way = chosen;
        const HardwarePlan plan = planned(spec, form, bolt, squareFront(width, height));
        EXPECT_EQ(plan.chosenWay().way, chosen);
        for (MountingWay way : allMountingWays)
            EXPECT_EQ(plan.ways[static_cast<std::size_t>(way)],
                      planWay(way, spec, form, bolt, Limits{}, Length::inches(0, 48),
                              Length::inches(0, 32)));
    }
}

// A chamfer of 40 mm that loses 10 mm at the edge: 0.25 mm of thickness for 1 mm of way.
class HandleOnAChamfer : public ::testing::Test {
protected:
    Profile chamfer{ProfileFamily::Chamfer, Length::millimetres(40), Length::millimetres(10), {}};
    HardwareForm form = knob();
    Bolt bolt = metricBolt();
    HardwareSpec spec;

    HardwarePlan at(std::int64_t y) {
        FrontStock stock = profiledFront(width, height, chamfer);
        stock.thickness = Length::millimetres(20);
        spec.placedAt = FrontPoint{Length::millimetres(200), Length::millimetres(y)};
        return planned(spec, form, bolt, stock);
    }
};

TEST_F(HandleOnAChamfer, HasLessWoodUnderItsHole) {
    // Hole 4.5 mm: its lowest point 20 − 2.25 = 17.75 mm up; 40 − 17.75 = 22.25 mm short of the
    // field; 22.25 / 4 = 5.5625 mm lost.
    EXPECT_EQ(at(20).thickness, Length::fromNanometres(14'437'500));
    EXPECT_EQ(at(20).chosenWay().throughWood,
              Length::fromNanometres(14'437'500) + Length::inches(0, 32));
}

TEST_F(HandleOnAChamfer, HasStillLessUnderItsCounterbore) {
    // Counterbore 20 mm wide: 10 mm up; 30 mm short of the field; 7.5 mm lost.
    spec.counterboreDiameter = Length::millimetres(20);
    spec.way = MountingWay::FrontCounterbore;
    const HardwarePlan plan = at(20);
    EXPECT_EQ(plan.thickness, Length::fromMicrometres(12'500));
    EXPECT_EQ(plan.chosenWay().throughWood, Length::fromMicrometres(12'500));
    // The others have no counterbore in the front, so theirs is the hole's.
    EXPECT_EQ(plan.ways[2].throughWood, Length::fromNanometres(14'437'500));
}

TEST_F(HandleOnAChamfer, CountsACounterboreOnlyWhereItReachesTheFront) {
    spec.counterboreDiameter = Length::millimetres(20);
    spec.counterbore = Length::inches(0, 32); // as deep as the wall is thick
    EXPECT_EQ(at(20).thickness, Length::fromNanometres(14'437'500));
    spec.counterbore = Length::inches(0, 33);
    EXPECT_EQ(at(20).thickness, Length::fromMicrometres(12'500));
    spec.way = MountingWay::FrontAccessHole;
    spec.counterbore = Length::inches(0, 4);
    EXPECT_EQ(at(20).thickness, Length::fromMicrometres(12'500));
}

TEST_F(HandleOnAChamfer, HasTheFullThicknessInTheField) {
    EXPECT_EQ(at(80).thickness, Length::millimetres(20));
    EXPECT_EQ(at(43).thickness, Length::millimetres(20)); // its hole ends 0.75 mm in the field
}

TEST_F(HandleOnAChamfer, IsJudgedByTheWorstOfItsHoles) {
    form = pull(); // holes at 12 mm and 108 mm across
    FrontStock stock = profiledFront(width, height, chamfer);
    stock.thickness = Length::millimetres(20);
    spec.placedAt = FrontPoint{Length::millimetres(60), Length::millimetres(80)};
    // 12 − 2.25 = 9.75; (40 − 9.75) / 4 = 7.5625 lost
    EXPECT_EQ(planned(spec, form, bolt, stock).thickness, Length::fromNanometres(12'437'500));
}

} // namespace
} // namespace frontwright
