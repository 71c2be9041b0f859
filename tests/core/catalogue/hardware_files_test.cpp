#include "tests/core/catalogue/program_catalogue.h"

#include "core/hardware/fittings.h"

#include <algorithm>
#include <set>

namespace frontwright {
namespace {

using testing::programCatalogue;
using testing::readProgramFile;

Length apart(const HardwareForm& form) {
    return form.holes.back().x - form.holes.front().x;
}

TEST(HardwareFile, HasPullsOfTheTradesCentres) {
    // Everyday trade sizes, common practice, no source.
    const Catalogue catalogue = programCatalogue();
    const std::array<std::pair<const char*, Length>, 7> pulls{{
        {"pull-96", Length::millimetres(96)},
        {"pull-128", Length::millimetres(128)},
        {"pull-160", Length::millimetres(160)},
        {"cup-64", Length::millimetres(64)},
        {"pull-3in", Length::inches(3)},
        {"pull-4in", Length::inches(4)},
        {"cup-3in", Length::inches(3)},
    }};
    for (const auto& [id, centres] : pulls) {
        const HardwareForm* form = catalogue.hardwareForm(id);
        ASSERT_NE(form, nullptr) << id;
        ASSERT_EQ(form->holes.size(), 2u) << id;
        EXPECT_EQ(apart(*form), centres) << id;
    }
}

TEST(HardwareFile, DoesNotTakeTheInchLabelOfAMetricPullForItsSize) {
    // 96 mm is labelled 3 3/4 in (95.25 mm), 128 mm 5 in (127 mm): 0.75 mm and 1 mm apart.
    const Catalogue catalogue = programCatalogue();
    EXPECT_EQ(apart(*catalogue.hardwareForm("pull-96")) - Length::inches(3, 48),
              Length::fromMicrometres(750));
    EXPECT_EQ(apart(*catalogue.hardwareForm("pull-128")) - Length::inches(5),
              Length::millimetres(1));
}

TEST(HardwareFile, HasKnobsAndARingWithOneHole) {
    const Catalogue catalogue = programCatalogue();
    for (const char* id : {"knob-32", "knob-32-m4", "knob-backplate", "ring-backplate"}) {
        const HardwareForm* form = catalogue.hardwareForm(id);
        ASSERT_NE(form, nullptr) << id;
        EXPECT_EQ(form->holes, std::vector<FrontPoint>{FrontPoint{}}) << id;
        EXPECT_EQ(form->footprint.shape, FootprintShape::Round) << id;
    }
    EXPECT_EQ(catalogue.hardwareForm("knob-32")->bolt, "bolt-8-32");
    EXPECT_EQ(catalogue.hardwareForm("knob-32-m4")->bolt, "bolt-m4");
    EXPECT_EQ(catalogue.hardwareForm("ring-backplate")->footprint.width, Length::millimetres(50));
    EXPECT_EQ(catalogue.hardwareForm("ring-backplate")->kind, HardwareKind::RingPull);
}

TEST(HardwareFile, NamesBoltsOfTheCatalogueInStockedLengths) {
    const Catalogue catalogue = programCatalogue();
    for (const HardwareForm& form : catalogue.hardware) {
        const Bolt* bolt = catalogue.bolt(form.bolt);
        ASSERT_NE(bolt, nullptr) << form.id;
        ASSERT_TRUE(form.suppliedBolt.has_value()) << form.id;
        EXPECT_TRUE(std::count(bolt->lengths.begin(), bolt->lengths.end(), *form.suppliedBolt))
            << form.id;
    }
}

TEST(HardwareFile, HasFormsThatAreAlikeOnBothSidesAndBearRoundTheirHoles) {
    const Catalogue catalogue = programCatalogue();
    for (const HardwareForm& form : catalogue.hardware) {
        EXPECT_EQ(form.holes.front().x + form.holes.back().x, Length{}) << form.id;
        const Bolt& bolt = *catalogue.bolt(form.bolt);
        EXPECT_GE(form.footprint.width, apart(form) + bolt.clearanceHole) << form.id;
        EXPECT_GE(form.footprint.height, bolt.clearanceHole) << form.id;
        EXPECT_GT(form.threadDepth, form.leastEngagement) << form.id;
        EXPECT_GE(form.leastEngagement, bolt.majorDiameter) << form.id;
        EXPECT_EQ(form.source.kind, SourceKind::CommonPractice) << form.id;
    }
}

TEST(SuppliedBolt, FitsAThreeQuarterFrontAloneAndIsTooShortThroughTheWall) {
    // 1 in: 3/4 + 1/4 = 1 … 1 1/4 without the wall; 1 1/2 … 1 3/4 with a wall of 1/2 in.
    // 25 mm: 19 + 5 = 24 … 29 without the wall; 36 … 41 with a wall of 12 mm.
    const Catalogue catalogue = programCatalogue();
    for (const HardwareForm& form : catalogue.hardware) {
        const bool metric = form.bolt == "bolt-m4";
        const Length front = metric ? Length::millimetres(19) : Length::inches(0, 48);
        const Length wall = metric ? Length::millimetres(12) : Length::inches(0, 32);
        HardwareSpec spec;
        spec.boltLength = *form.suppliedBolt;
        const auto verdict = [&](MountingWay way) {
            return planWay(way, spec, form, *catalogue.bolt(form.bolt), Limits{}, front, wall)
                .verdict;
        };
        EXPECT_EQ(verdict(MountingWay::FrontAccessHole), BoltVerdict::Fits) << form.id;
        EXPECT_EQ(verdict(MountingWay::ThroughWall), BoltVerdict::TooShort) << form.id;
    }
}

TEST(StockedBolts, FitEveryUsualFrontInEveryWay) {
    // Fronts of 5/8 in to 1 1/8 in, walls of 3/8 in to 5/8 in, by 1/16 in.
    const Catalogue catalogue = programCatalogue();
    for (const HardwareForm& form : catalogue.hardware)
        for (std::int64_t t = 40; t <= 72; t += 4)
            for (std::int64_t w = 24; w <= 40; w += 4)
                for (MountingWay way : allMountingWays) {
                    const WayPlan plan =
                        planWay(way, {}, form, *catalogue.bolt(form.bolt), Limits{},
                                Length::fromSixtyFourths(t), Length::fromSixtyFourths(w));
                    EXPECT_EQ(plan.verdict, BoltVerdict::Fits)
                        << form.id << ", front " << t << "/64, wall " << w << "/64 in";
                }
}

TEST(FittingFile, HoldsOfEachKindAnInchOneAndAMetricOne) {
    const Catalogue catalogue = programCatalogue();
    EXPECT_EQ(catalogue.fittings.size(), 12u);
    for (const FittingKind kind :
         {FittingKind::CupPull, FittingKind::EdgePull, FittingKind::RingPull,
          FittingKind::LabelHolder, FittingKind::Lock}) {
        const auto isInch = [&](bool inch) {
            return std::any_of(
                catalogue.fittings.begin(), catalogue.fittings.end(), [&](const FittingForm& form) {
                    const std::int64_t width = form.footprint.width.nanometres();
                    return form.kind == kind && (width % Length::nanometresPer64th == 0) == inch;
                });
        };
        EXPECT_TRUE(isInch(true)) << static_cast<int>(kind);
        EXPECT_TRUE(isInch(false)) << static_cast<int>(kind);
    }
    for (const FittingForm& form : catalogue.fittings)
        EXPECT_EQ(form.source.kind, SourceKind::CommonPractice) << form.id; // our round figures
}

TEST(StockedFittings, GoIntoEveryUsualFront) {
    // Fronts of 18 mm to 1 in, wide and high enough: a stocked screw holds each fitting, and every
    // mortise leaves 1/8 in.
    const Catalogue catalogue = programCatalogue();
    const Profile square;
    for (const FittingForm& form : catalogue.fittings)
        for (const Length thickness : {Length::millimetres(18), Length::inches(0, 48),
                                       Length::millimetres(22), Length::inches(1)}) {
            const FrontRect front = FrontRect::atOrigin(Length::inches(16), Length::inches(8));
            HardwareSpec spec;
            spec.fittings.emplace_back().form = form.id;
            const auto planned =
                planFittings(spec, catalogue, Limits{},
                             {front, front, thickness, &square, Length::inches(0, 32)});
            ASSERT_TRUE(planned.ok()) << form.id;
            const FittingPlan& plan = planned.value().front();
            EXPECT_TRUE(plan.screwLength) << form.id;
            EXPECT_GE(plan.leastWoodLeft().value_or(thickness), Length::inches(0, 8)) << form.id;
        }
}

TEST(RunnerFile, HasTheClearancesOfTheTrade) {
    // Common practice, no source.
    const Catalogue catalogue = programCatalogue();
    ASSERT_EQ(catalogue.runners.size(), 6u);
    EXPECT_EQ(catalogue.runner("wooden")->sideClearance, Length::inches(0, 4));
    // The box is 1 in narrower than its opening.
    EXPECT_EQ(2 * catalogue.runner("side-mounted")->sideClearance, Length::inches(1));
    EXPECT_EQ(2 * catalogue.runner("side-mounted-mm")->sideClearance, Length::inches(1));
    EXPECT_NE(catalogue.runner("under-mounted"), nullptr);
    // Lengths of a millimetre case step by 50 mm.
    for (const char* id : {"side-mounted-mm", "under-mounted-mm"})
        for (const Length length : catalogue.runner(id)->lengths)
            EXPECT_EQ(length.nanometres() % Length::millimetres(50).nanometres(), 0) << id;
    EXPECT_NE(catalogue.runner("centre"), nullptr);
    for (const RunnerKind& runner : catalogue.runners) {
        EXPECT_EQ(runner.source.kind, SourceKind::CommonPractice) << runner.id;
        EXPECT_GT(runner.sideClearance, Length{}) << runner.id;
        EXPECT_GT(runner.clearanceBelow, Length{}) << runner.id;
        EXPECT_GT(runner.clearanceAbove, Length{}) << runner.id;
    }
}

TEST(SpeciesFile, NamesTheTwentyFourWoods) {
    // Some of the woods of Forest Products Laboratory, Wood Handbook, tables 4-3, 4-4 and 13-5.
    std::vector<std::string> names;
    for (const Species& species : readProgramFile("species.json").species)
        names.push_back(species.name);
    const std::vector<std::string> woods{
        "White ash",        "Red alder",          "Quaking aspen",      "American basswood",
        "American beech",   "Yellow birch",       "Sweet birch",        "Butternut",
        "Black cherry",     "Sugar maple (hard)", "Red maple (soft)",   "Silver maple (soft)",
        "Northern red oak", "White oak",          "Black walnut",       "Yellow-poplar",
        "Sweetgum",         "Coast Douglas-fir",  "Eastern white pine", "Ponderosa pine",
        "Western redcedar", "White fir",          "True mahogany",      "Teak"};
    EXPECT_EQ(names, woods);
    EXPECT_EQ(programCatalogue().speciesOf("cherry")->name, "Black cherry");
}

TEST(CatalogueFiles, HoldOneKindEachAndSayWhereEveryEntryIsFrom) {
    EXPECT_EQ(readProgramFile("wood_screws.json").woodScrews.size(), 10u);
    EXPECT_EQ(readProgramFile("bolts.json").bolts.size(), 7u);
    EXPECT_EQ(readProgramFile("hardware.json").hardware.size(), 11u);
    EXPECT_EQ(readProgramFile("fittings.json").fittings.size(), 12u);
    EXPECT_TRUE(readProgramFile("bolts.json").woodScrews.empty());
    const Catalogue catalogue = programCatalogue();
    const auto check = [](const auto& entries) {
        for (const auto& entry : entries) {
            EXPECT_FALSE(entry.source.title.empty()) << entry.id;
            EXPECT_NE(entry.source.kind, SourceKind::Maker) << entry.id;
            EXPECT_FALSE(entry.name.empty()) << entry.id;
        }
    };
    check(catalogue.woodScrews);
    check(catalogue.bolts);
    check(catalogue.hardware);
    check(catalogue.runners);
}

} // namespace
} // namespace frontwright
