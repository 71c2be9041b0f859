#include "core/plan/moving.h"

#include "tests/core/plan/planned.h"
#include "tests/core/plan/seasons.h"
#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::n64;

using testing::bank;
using testing::meters;
using testing::oakInAir;
using testing::Planned;

Length um(double micrometres) {
    return Length::nearestToMillimetres(micrometres / 1000);
}

/// Two fronts 13 1/2 in × 6 1/2 in (165.1 mm) with a gap of 3/4 in, screws in rows 1 in and 4 in up
/// the wall, which stands 1/8 in above the opening: 1 3/8 in up the front.
Project oakBank(int whenCut, int driest, int wettest) {
    Project project = bank(2);
    oakInAir(project, whenCut, driest, wettest);
    project.fronts.mounting.fromBottom = n64(64);
    project.fronts.mounting.fromTop = n64(5 * 64 + 40 - 256);
    return project;
}

TEST(Seasons, AreToldOnlyWhereThereIsAir) {
    const Planned planned{bank(2)};
    EXPECT_FALSE(planned.plan.season);
    for (const FrontPlan& front : planned.plan.fronts)
        EXPECT_FALSE(front.season);
    EXPECT_FALSE(planned.plan.spacers.front().season);
}

TEST(Seasons, OfAFrontAreWorkedByHand) {
    // Cut at 8 %, driest 6 %, wettest 12 %, 0.0025 for each: −0.005 and +0.010 of 165.1 mm.
    const Planned planned{oakBank(8, 6, 12)};
    const FrontSeason& season = *planned.front(0).season;
    EXPECT_EQ(season.height.least, Length::inches(6, 32) - um(825.5));
    EXPECT_EQ(season.height.greatest, Length::inches(6, 32) + um(1651));
    EXPECT_EQ(season.width, (SeasonRange{Length::inches(13, 32), Length::inches(13, 32)}));
}

TEST(Seasons, OfAGapTakeWhatBothFrontsGiveIt) {
    // Above its fixed row the lower front grows by 5 1/8 in × 0.01, below it the upper one by
    // 1 3/8 in × 0.01: together 6 1/2 in × 0.01.
    const Planned planned{oakBank(8, 6, 12)};
    const SeasonRange& gap = *planned.plan.spacers.front().season;
    EXPECT_NEAR(gap.least.inMillimetres(), (n64(48) - um(1651)).inMillimetres(), 2e-6);
    EXPECT_NEAR(gap.greatest.inMillimetres(), (n64(48) + um(825.5)).inMillimetres(), 2e-6);
    // The same seen from both fronts, and from the rail between them.
    EXPECT_EQ(planned.front(0).season->gap.bottom, gap);
    EXPECT_EQ(planned.front(1).season->gap.top, gap);
    EXPECT_EQ(*planned.beside(0, Side::Bottom).season, gap);
}

TEST(Seasons, OfAnOverlayGoByTheDistanceFromTheRowThatHolds) {
    const Planned planned{oakBank(8, 6, 12)};
    const FrontSeason& season = *planned.front(0).season;
    EXPECT_EQ(season.held, Length::inches(1, 24));
    EXPECT_EQ(season.overlay.top.least, n64(16) - um(5.125 * 25'400 * 0.005));
    EXPECT_EQ(season.overlay.top.greatest, n64(16) + um(5.125 * 25'400 * 0.010));
    EXPECT_EQ(season.overlay.bottom.greatest, n64(16) + um(1.375 * 25'400 * 0.010));
    EXPECT_EQ(season.overlay.left, (SeasonRange{n64(16), n64(16)}));
}

TEST(Seasons, OfScrewsGiveTheHoleAndTheDrillThatTheyNeed) {
    // 3 in × 0.01 = 0.03 in at the upper row: shank 5/32 in + 0.06 in = 0.21625 in, 13.84/64 in.
    const Planned planned{oakBank(8, 6, 12)};
    const FrontSeason& season = *planned.front(0).season;
    ASSERT_EQ(season.rows.size(), 2U);
    EXPECT_EQ(season.fixedRow, 0U);
    EXPECT_EQ(season.rows[0].driest, Length{});
    EXPECT_EQ(season.rows[0].hole, n64(10));
    EXPECT_EQ(season.rows[0].drill, n64(12)); // the clearance hole as it is
    EXPECT_EQ(season.rows[1].wettest, um(762));
    EXPECT_EQ(season.rows[1].driest, -um(381));
    EXPECT_EQ(season.rows[1].hole, n64(10) + um(1524));
    EXPECT_EQ(season.rows[1].drill, n64(14));
}

TEST(Seasons, OfUprightGrainMoveTheWidthFromTheColumnNearestTheMiddle) {
    Project project = oakBank(8, 6, 12);
    project.fronts.stock.grain = Grain::AlongHeight;
    project.fronts.mounting.pattern = ScrewPattern::Six;
    const Planned planned{project};
    const FrontSeason& season = *planned.front(0).season;
    EXPECT_EQ(season.height.least, season.height.greatest);
    EXPECT_EQ(season.width.greatest, Length::inches(13, 32) + um(13.5 * 25'400 * 0.010));
    ASSERT_EQ(season.rows.size(), 3U);
    EXPECT_EQ(season.fixedRow, 1U);
    EXPECT_EQ(season.held, Length::inches(6, 48));
    EXPECT_EQ(season.rows[0].wettest, -season.rows[2].wettest);
}

TEST(Seasons, OfAnInsetFrontTakeFromItsGap) {
    Project project = oakBank(8, 6, 12);
    project.fronts.fit = FrontFit::all({Fit::Inset, n64(8)});
    const Planned planned{project};
    const FrontSeason& season = *planned.front(0).season;
    EXPECT_LT(season.gap.top.least, n64(8));
    EXPECT_GT(season.gap.top.greatest, n64(8));
    EXPECT_EQ(season.gap.left, (SeasonRange{n64(8), n64(8)}));
}

TEST(Seasons, OfQuarterSawnStockAreHalfOfFlatSawnsAndOfStableStockNone) {
    Project project = oakBank(8, 6, 12);
    project.fronts.stock.cut = Cut::QuarterSawn; // 0.00125
    EXPECT_EQ(Planned(project).front(0).season->height.greatest, Length::inches(6, 32) + um(825.5));
    project.fronts.stock.cut = Cut::Rift; // 0.001875
    EXPECT_EQ(Planned(project).front(0).season->height.greatest,
              Length::inches(6, 32) + um(1238.25));
    project.fronts.stock.build = Build::Stable;
    const Planned stable(project);
    EXPECT_EQ(stable.front(0).season->height,
              (SeasonRange{Length::inches(6, 32), Length::inches(6, 32)}));
    EXPECT_EQ(stable.plan.spacers.front().season->least, n64(48));
}

TEST(Seasons, OfOneFrontGoByItsOwnStock) {
    Project project = oakBank(8, 6, 12);
    project = testing::withChoices(project, 0, [](FrontChoices& choices) {
        choices.stock = Stock{"oak", Cut::FlatSawn, Grain::AlongLength, Build::Stable};
    });
    const Planned planned{project};
    EXPECT_EQ(planned.front(0).season->height.least, planned.front(0).season->height.greatest);
    EXPECT_LT(planned.front(1).season->height.least, planned.front(1).season->height.greatest);
}

TEST(Seasons, OfWoodWithoutFiguresAreSaidNotToBeKnown) {
    Project project = oakBank(8, 6, 12);
    project.fronts.stock.species = "cherry"; // of the small catalogue
    const Planned planned{project};
    EXPECT_FALSE(planned.front(0).season->isKnown);
    EXPECT_EQ(planned.front(0).season->height.greatest, Length::inches(6, 32));
}

TEST(Seasons, OfAnImpossibleAirAreRefused) {
    Project project = oakBank(8, 6, 12);
    project.air->wettest = AirState::of(Temperature::celsius(20), Percent::whole(101));
    const Catalogue catalogue = testing::smallCatalogue();
    const auto plan = makePlan(project, catalogue);
    ASSERT_FALSE(plan.ok());
    EXPECT_NE(plan.error().what.english().find("outside 0 to 100 %"), std::string::npos);
}

TEST(Seasons, OfAnUnknownSpeciesOfOneFrontAreRefused) {
    const Project project = testing::withChoices(
        oakBank(8, 6, 12), 0, [](FrontChoices& choices) { choices.stock = Stock{"ironwood"}; });
    const Catalogue catalogue = testing::smallCatalogue();
    const auto plan = makePlan(project, catalogue);
    ASSERT_FALSE(plan.ok());
    EXPECT_EQ(plan.error().sentence(),
              "front A1: no species \"ironwood\" in the catalogue; choose one that is there");
}

// Laws.

TEST(Seasons, WithoutAChangeOfMoistureAreNone) {
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        Project project = testing::randomProject(seed);
        oakInAir(project, 9, 9, 9);
        const Planned planned(project);
        for (const FrontPlan& front : planned.plan.fronts) {
            EXPECT_EQ(front.season->height.least, front.rect.height());
            EXPECT_EQ(front.season->height.greatest, front.rect.height());
            for (const Side side : allSides) {
                EXPECT_EQ(front.season->gap[side].least, front.neighbours[side].gap);
                EXPECT_EQ(front.season->overlay[side].greatest, front.overlay[side]);
            }
        }
        for (const Spacer& spacer : planned.plan.spacers)
            EXPECT_EQ(spacer.season, (SeasonRange{spacer.width, spacer.width}));
    }
}

TEST(Seasons, AreMonotoneInHumidity) {
    Project project = oakBank(8, 0, 30);
    Length heightBefore;
    Length gapBefore = Length::inches(100);
    for (int humidity = 5; humidity <= 95; humidity += 5) {
        const Temperature room = Temperature::fahrenheit(70);
        project.air->driest = AirState::meter(Percent{});
        project.air->wettest = AirState::of(room, Percent::whole(humidity));
        const Planned planned(project);
        EXPECT_GT(planned.front(0).season->height.greatest, heightBefore) << humidity;
        EXPECT_LT(planned.plan.spacers.front().season->least, gapBefore) << humidity;
        heightBefore = planned.front(0).season->height.greatest;
        gapBefore = planned.plan.spacers.front().season->least;
    }
}

TEST(Seasons, AreTheSameWhateverTheUnitOfLengthAndOfTemperature) {
    const auto fahrenheit = [](int humidity) {
        return AirState::of(Temperature::fahrenheit(68), Percent::whole(humidity));
    };
    const auto celsius = [](int humidity) {
        return AirState::of(Temperature::celsius(20), Percent::whole(humidity));
    };
    Project inches = oakBank(8, 6, 12);
    inches.air = Air{fahrenheit(40), fahrenheit(25), fahrenheit(70)};
    Project millimetres = inches;
    millimetres.style.unit = Unit::Millimetre;
    millimetres.air = Air{celsius(40), celsius(25), celsius(70)};
    for (std::size_t i = 0; i < 2; ++i) {
        const FrontSeason a = *Planned(inches).front(i).season;
        const FrontSeason b = *Planned(millimetres).front(i).season;
        // The two sets of constants differ by 0.013 % moisture at most: 0.006 mm of these fronts.
        EXPECT_NEAR(a.height.least.inMillimetres(), b.height.least.inMillimetres(), 0.006);
        EXPECT_NEAR(a.height.greatest.inMillimetres(), b.height.greatest.inMillimetres(), 0.006);
    }
}

TEST(MovedPlans, HaveTheSizesOfTheSeason) {
    for (std::uint64_t seed = 30; seed <= 40; ++seed) {
        Project project = testing::randomProject(seed);
        oakInAir(project, 9, 6, 13);
        const Planned planned(project);
        const Plan dry = movedPlan(planned.project, planned.plan, 6, 1);
        const Plan wet = movedPlan(planned.project, planned.plan, 13, 1);
        for (std::size_t i = 0; i < dry.fronts.size(); ++i) {
            const FrontSeason& season = *planned.front(i).season;
            // Edges are rounded one by one.
            EXPECT_NEAR(dry.fronts[i].rect.height().inMillimetres(),
                        season.height.least.inMillimetres(), 3e-6);
            EXPECT_NEAR(wet.fronts[i].rect.height().inMillimetres(),
                        season.height.greatest.inMillimetres(), 3e-6);
            for (const Side side : allSides)
                EXPECT_EQ(wet.fronts[i].overlay[side], season.overlay[side].greatest);
        }
        EXPECT_EQ(brokenInvariant(wet).find("spacer"), std::string::npos);
    }
}

TEST(MovedPlans, ExaggerateByChoice) {
    const Planned planned{oakBank(8, 6, 12)};
    const Plan once = movedPlan(planned.project, planned.plan, 12, 1);
    const Plan tenfold = movedPlan(planned.project, planned.plan, 12, 10);
    const Length h = planned.front(0).rect.height();
    EXPECT_NEAR((tenfold.fronts[0].rect.height() - h).inMillimetres(),
                10 * (once.fronts[0].rect.height() - h).inMillimetres(), 1e-4);
    EXPECT_EQ(movedPlan(planned.project, planned.plan, 8, 10).fronts[0].rect,
              planned.front(0).rect);
}

TEST(SmallestGaps, AreThoseOfTheSeasonAtItsEnds) {
    const Planned planned{oakBank(8, 6, 12)};
    EXPECT_EQ(*smallestGap(planned.project, planned.plan, 12),
              planned.plan.spacers.front().season->least);
    EXPECT_EQ(*smallestGap(planned.project, planned.plan, 8), n64(48));
    EXPECT_FALSE(smallestGap(planned.project, Planned(bank(2)).plan, 8));
    EXPECT_FALSE(
        smallestGap(planned.project, Planned(testing::oneOpening(n64(640), n64(640))).plan, 8));
}

} // namespace
} // namespace frontwright
