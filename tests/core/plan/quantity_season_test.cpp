#include "core/plan/quantity.h"

#include "tests/core/plan/planned.h"
#include "tests/core/plan/seasons.h"
#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

#include <set>

namespace frontwright {
namespace {

using testing::n64;

using testing::Planned;
using enum QuantityKind;

/// Two fronts 13 1/2 in × 6 1/2 in of oak, 0.0025; cut at 8 %, from 6 to 12 % in the room. The
/// second stands upright in its grain. Rows of screws 1 in and 4 in up the wall.
Project oakBank() {
    Project project = testing::bank(2);
    testing::oakInAir(project, 8, 6, 12);
    project.fronts.mounting.fromBottom = n64(64);
    project.fronts.mounting.fromTop = n64(5 * 64 + 40 - 256);
    return testing::withChoices(project, 1, [](FrontChoices& choices) {
        choices.stock = Stock{"oak", Cut::FlatSawn, Grain::AlongHeight, Build::Solid};
    });
}

const std::string swelling = "0.00250 for each 1 % of moisture, from 8.0 % when cut to 12.0 %";
const std::string shrinking = "0.00250 for each 1 % of moisture, from 8.0 % when cut to 6.0 %";

std::optional<Derivation> told(const Planned& planned, Quantity quantity) {
    return derive(planned.project, planned.plan, quantity, {Unit::Inch, 64});
}

TEST(QuantitiesOfTheSeason, OfSizesTellCoefficientAndMoisture) {
    const Planned planned{oakBank()};
    const auto least = told(planned, {SeasonHeight, 0, 0}),
               greatest = told(planned, {SeasonHeight, 0, 1});
    ASSERT_TRUE(least && greatest);
    EXPECT_EQ(least->formula, "height + change: " + shrinking);
    EXPECT_EQ(greatest->formula, "height + change: " + swelling);
    // 6 1/2 in × 0.01 = 0.065 in, 4.2/64 in
    EXPECT_EQ(greatest->figures, "6 1/2 in + 0.065 in = 6.565 in ≈ 6 9/16 in");
    EXPECT_EQ(told(planned, {SeasonWidth, 1, 1})->formula, "width + change: " + swelling);
    EXPECT_NE(greatest->source.title.find("Wood Handbook"), std::string::npos);
    EXPECT_EQ(greatest->source.kind, SourceKind::Published);
}

TEST(QuantitiesOfTheSeason, BeyondTheCoefficientsRangeSaySo) {
    Project project = oakBank();
    project.air->wettest.reading = Percent::whole(16);
    const Planned planned{project};
    EXPECT_EQ(told(planned, {SeasonHeight, 0, 1})->formula,
              "height + change: 0.00250 for each 1 % of moisture, from 8.0 % when cut to 16.0 %; "
              "beyond 6 to 14 % by the wider formula");
}

TEST(QuantitiesOfTheSeason, OfMoistureTellTheAirOrTheMeter) {
    Project project = oakBank();
    project.air->wettest = AirState::of(Temperature::celsius(20), Percent::whole(65));
    const Planned planned{project};
    const auto read = told(planned, {MoistureWhenCut});
    EXPECT_EQ(read->formula, "as read by a moisture meter");
    EXPECT_EQ(read->figures, "8.0 %");
    EXPECT_EQ(told(planned, {MoistureDriest})->value, Measure(Percent::whole(6)));
    const auto computed = told(planned, {MoistureWettest});
    EXPECT_EQ(computed->value, Measure(Percent::fromThousandths(11'996)));
    EXPECT_EQ(computed->figures, "in air of 20 °C and 65.0 % relative humidity: 12.0 %");
    EXPECT_NE(computed->source.title.find("equation 4-5"), std::string::npos);
}

TEST(QuantitiesOfTheSeason, OfGapsOverlaysAndRevealsSumFromWhenCut) {
    const Planned planned{oakBank()};
    int seen = 0;
    for (const Quantity quantity : allQuantities(planned.plan)) {
        const bool isSide = quantity.kind >= SeasonOverlayLeft && quantity.kind <= SeasonGapTop;
        if (!isSide && quantity.kind != SeasonReveal)
            continue;
        const auto derivation = told(planned, quantity);
        ASSERT_TRUE(derivation) << key(quantity.kind);
        EXPECT_TRUE(derivation->formula.english().starts_with("when cut + what "))
            << derivation->formula;
        EXPECT_FALSE(derivation->figures.empty());
        ++seen;
    }
    EXPECT_GT(seen, 20);
}

TEST(QuantitiesOfTheSeason, OfScrewRowsTellMovementHoleAndDrill) {
    const Planned planned{oakBank()};
    EXPECT_EQ(told(planned, {FixedRow})->figures, "1 in");
    EXPECT_FALSE(told(planned, {RowMovement})) << "the fixed row does not move";
    const auto movement = told(planned, {RowMovement, 0, 1});
    EXPECT_EQ(movement->formula,
              "distance from the row that holds the front × change: " + swelling);
    EXPECT_EQ(movement->value, Measure(Length::fromMicrometres(762)));
    EXPECT_EQ(told(planned, {RowHole, 0, 1})->figures, "5/32 in + 0.06 in = 0.216 in ≈ 7/32 in");
    EXPECT_EQ(told(planned, {RowDrill, 0, 1})->figures, "7/32 in");
}

TEST(QuantitiesOfTheSeason, AreOnlyOfWhatMoves) {
    const Planned planned{oakBank()};
    EXPECT_FALSE(told(planned, {SeasonWidth, 0, 0}));
    EXPECT_FALSE(told(planned, {SeasonHeight, 1, 0}));
    EXPECT_FALSE(told(planned, {SeasonHeight, 0, 2}));
    const Planned noAir{testing::bank(2)};
    for (const Quantity quantity : allQuantities(noAir.plan))
        EXPECT_FALSE(testing::isOfSeason(quantity.kind)) << key(quantity.kind);
}

} // namespace
} // namespace frontwright
