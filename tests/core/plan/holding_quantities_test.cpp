#include "core/plan/quantity.h"

#include "tests/core/plan/planned.h"

#include <gtest/gtest.h>

#include <set>

// What holds, and what it weighs, of one oak drawer: opening 13 in × 6 in, front 13 1/2 in × 6 1/2
// in × 3/4 in, box 12 in × 5 5/8 in × 16 in of 1/2 in on runners for 75 lb, a knob bolted to the
// front alone. G is 0.63 on volume at 12 %, 0.675 on ovendry volume; 706 kg/m³ = 0.0255 lb/in³.
namespace frontwright {
namespace {

using testing::bank;
using testing::Planned;

using enum QuantityKind;

struct Told {
    QuantityKind kind;
    const char* formula;
    const char* figures;
};

const std::vector<Told> toldOfOneDrawer{
    {CaseWeight, "fronts + boxes + face frame; sides, back and top of the case are not counted",
     "1.7 lb + 4.9 lb + 1.3 lb = 7.9 lb"},
    {CaseContents, "sum of the contents", "17.2 lb"},
    {CaseStorage, "sum of the drawers' enclosed storage", "0.5 ft³"},
    {ClearanceHole, "the catalogue's for the screw", "3/16 in"},
    {HeadBearing, "(the screw's head − the clearance hole) / 2",
     "(5/16 in − 3/16 in) / 2 = 1/16 in"},
    {PilotHole, "nearest drill to 90 % of the screw's root of 9/64 in", "1/8 in"},
    {ScrewThread, "screw + recess − wall, all of it thread", "1 in + 1/8 in − 1/2 in = 5/8 in"},
    {PullSafety, "ultimate withdrawal / share of the pull test, at the worst screw",
     "609 lbf / 14 lbf = 44.8"},
    {PullDesignSafety, "design value of withdrawal / share of the pull test, at the worst screw",
     "127 lbf / 14 lbf = 9.3"},
    {ScrewToEdge, "hole on the wall + wall from the front's bottom edge",
     "7/8 in + 3/8 in = 1 1/4 in"},
    {ScrewToEnd, "hole on the wall + wall from the front's left end", "7/8 in + 3/4 in = 1 5/8 in"},
    {ScrewUltimate, "15 700 (108.25 in N, mm) × G² × shank × thread in the front",
     "15700 × 0.630² × 0.156 in × 0.625 in = 609 lbf"},
    {ScrewDesign, "2850 (19.65 in N, mm) × G² × shank × thread in the front",
     "2850 × 0.675² × 0.156 in × 0.625 in = 127 lbf"},
    {ScrewPull, "pull test × (1 / screws + its part of the turning), at the handle",
     "50 lbf on 4 screws = 14 lbf"},
    {BoltEngagement, "bolt − grip", "1 1/2 in − 1 1/4 in = 1/4 in"},
    {FrontWeight, "width × height × thickness × density; the edge profile is left on",
     "13 1/2 in × 6 1/2 in × 3/4 in × 706 kg/m³ = 1.7 lb"},
    {BoxWeight, "two sides, two walls and the bottom × density, all as of the front's wood",
     "box 12 in × 5 5/8 in × 16 in, 706 kg/m³ = 4.9 lb"},
    {ContentsWeight, "15 lb for each square foot (718 Pa) of the bottom, inside", "17.2 lb"},
    {RunnerLoad, "front + box + contents", "1.7 lb + 4.9 lb + 17.2 lb = 23.8 lb"},
    {RunnerRating, "the catalogue's for the runner, a pair", "75.0 lb"},
    {RunnerSafety, "the runners' rating / their load", "75.0 lb / 23.8 lb = 3.2"},
    {StorageVolume, "(opening's top − bottom's top − 1/8 in) × inside width × inside depth",
     "5 1/4 in × 11 in × 15 in = 0.5 ft³"},
};

Project oneDrawer() {
    Project project = bank(1);
    project.fronts.stock.species = "oak";
    project.fronts.box.runner = "side-mounted";
    project.fronts.hardware.way = MountingWay::FrontAccessHole;
    return project;
}

Derivation told(const Planned& planned, Quantity quantity, Unit unit = Unit::Inch) {
    return derive(planned.project, planned.plan, quantity, {unit, 64}).value_or(Derivation{});
}

TEST(HoldingQuantities, TellTheirFormulaAndItsFigures) {
    const Planned planned(oneDrawer());
    std::set<QuantityKind> kinds;
    for (const Told& expected : toldOfOneDrawer) {
        const Derivation derivation = told(planned, {expected.kind});
        EXPECT_EQ(derivation.formula, expected.formula) << key(expected.kind);
        EXPECT_EQ(derivation.figures, expected.figures) << key(expected.kind);
        EXPECT_FALSE(derivation.source.title.empty()) << key(expected.kind);
        EXPECT_FALSE(derivation.inputs.empty()) << key(expected.kind);
        kinds.insert(expected.kind);
    }
    EXPECT_EQ(kinds.size(), 22U);
}

TEST(HoldingQuantities, ArePlainArithmetic) {
    const Planned planned(oneDrawer());
    // 15 700 · 0.63² · 0.15625 · 0.625
    EXPECT_NEAR(told(planned, {ScrewUltimate}).value.force().inPoundsForce(), 608.5, 0.1);
    // 13.5 · 6.5 · 0.75 in³ · 0.0255
    EXPECT_NEAR(told(planned, {FrontWeight}).value.mass().inPounds(), 1.678, 0.001);
    // sides 2 · 1/2 · 5.625 · 16, walls 2 · 1/2 · 11 · 5.625, bottom 11 · 15 · 1/4 in³
    EXPECT_NEAR(told(planned, {BoxWeight}).value.mass().inPounds(), 193.125 * 0.025492, 0.001);
    // 11 · 15 / 144 · 15 lb (ANSI/KCMA A161.1)
    EXPECT_NEAR(told(planned, {ContentsWeight}).value.mass().inPounds(), 17.1875, 1e-6);
    EXPECT_NEAR(told(planned, {StorageVolume}).value.volume().inCubicFeet(), 5.25 * 11 * 15 / 1728,
                1e-6);
}

TEST(HoldingQuantities, AreTheSameInEitherSystemOfUnits) {
    const Planned planned(oneDrawer());
    for (const Told& expected : toldOfOneDrawer)
        EXPECT_EQ(told(planned, {expected.kind}).value,
                  told(planned, {expected.kind}, Unit::Millimetre).value);
    EXPECT_EQ(told(planned, {ScrewUltimate}, Unit::Millimetre).figures,
              "108.25 × 0.630² × 3.97 mm × 15.88 mm = 2707 N");
    EXPECT_EQ(told(planned, {RunnerLoad}, Unit::Millimetre).figures,
              "0.8 kg + 2.2 kg + 7.8 kg = 10.8 kg");
}

TEST(HoldingQuantities, FollowThePurposeAndTheMakersLoad) {
    Project project = oneDrawer();
    const std::pair<DrawerPurpose, SourceKind> purposes[]{
        {DrawerPurpose::Household, SourceKind::Published},
        {DrawerPurpose::Clothing, SourceKind::FromMemory},
        {DrawerPurpose::School, SourceKind::CommonPractice},
        {DrawerPurpose::Empty, SourceKind::Maker}};
    for (const auto& [purpose, kind] : purposes) {
        project.fronts.box.purpose = purpose;
        EXPECT_EQ(told(Planned(project), {ContentsWeight}).source.kind, kind);
    }
    project.fronts.box.load = Mass::pounds(33);
    EXPECT_EQ(told(Planned(project), {ContentsWeight}).figures, "33.0 lb");
    EXPECT_EQ(told(Planned(project), {ContentsWeight}).formula, "as given");
}

TEST(HoldingQuantities, SayWhereTheEquationsTestsEnd) {
    Project project = oneDrawer();
    project.fronts.mounting.length = Length::inches(0, 40); // gauge 7.4 at 5/8 in: tested to 6
    const Derivation derivation = told(Planned(project), {ScrewUltimate});
    EXPECT_NE(derivation.formula.english().find("outside the handbook's tests"), std::string::npos);
}

TEST(HoldingQuantities, OfDrillsAreAsGivenWhereTheMakerDecides) {
    Project project = oneDrawer();
    project.fronts.mounting.pilotHole = Length::fromSixtyFourths(7);
    project.fronts.mounting.clearanceHole = Length::fromSixtyFourths(13);
    const Planned planned(project);
    EXPECT_EQ(told(planned, {PilotHole}).formula, "as given");
    EXPECT_EQ(told(planned, {ClearanceHole}).source.kind, SourceKind::Maker);
    EXPECT_EQ(told(planned, {PilotHole}).value, Length::fromSixtyFourths(7));
}

TEST(HoldingQuantities, AreMissingWhereWoodOrHandleIsNotKnown) {
    const Planned planned(bank(1)); // a wood of no known gravity, bolts through the wall
    for (const QuantityKind kind : {CaseWeight, PullSafety, ScrewUltimate, ScrewDesign, ScrewPull,
                                    FrontWeight, RunnerLoad, RunnerSafety})
        EXPECT_FALSE(measureOf(planned.plan, {kind}).has_value()) << key(kind);
    EXPECT_TRUE(measureOf(planned.plan, {ContentsWeight}).has_value());
    EXPECT_FALSE(valueOf(planned.plan, {ContentsWeight}).has_value()); // not a length
    EXPECT_EQ(told(planned, {PilotHole}).formula, "the catalogue's for the screw");
}

} // namespace
} // namespace frontwright
