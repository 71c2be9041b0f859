#include "core/wood/moisture.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

// Worked out from equation 4-5 of the Wood Handbook (GTR-282, 2021), three decimals; those marked
// agree with a second, independent calculation that was found.
struct Worked {
    double celsius;
    double humidity;
    double moisture;
};

Temperature celsius(double degrees) {
    return {static_cast<std::int64_t>(degrees * 1000 + 0.5), TemperatureUnit::Celsius};
}

TEST(EquilibriumMoisture, IsWhatTheEquationGivesInCelsius) {
    const Worked all[] = {{20, 30, 6.188},
                          {20, 40, 7.722},
                          {20, 50, 9.271} /* found */,
                          {20, 60, 11.000},
                          {20, 65, 11.996} /* found */,
                          {20, 70, 13.129},
                          {20, 75, 14.451} /* found */,
                          {20, 80, 16.037} /* found */,
                          {20, 85, 18.002} /* found */,
                          {20, 90, 20.531} /* found */,
                          {20, 95, 23.941} /* found */,
                          {5, 85, 18.470} /* found */,
                          {2, 83, 17.658} /* found */,
                          {25, 50, 9.132},
                          {21.1, 50, 9.243} /* found */};
    for (const Worked& worked : all)
        EXPECT_NEAR(equilibriumMoisture(celsius(worked.celsius), worked.humidity), worked.moisture,
                    0.0006)
            << worked.celsius << ' ' << worked.humidity;
}

TEST(EquilibriumMoisture, AtKilnTemperatureIsTheEquationsAndNotTheTables) {
    // An encyclopaedia prints 8.4 from the equation against 8.0 in the table.
    EXPECT_NEAR(equilibriumMoisture(Temperature::fahrenheit(140), 55), 8.378, 0.0006);
}

TEST(EquilibriumMoisture, StaysFiniteInSaturatedAir) {
    EXPECT_NEAR(equilibriumMoisture(Temperature::celsius(20), 100), 28.838, 0.0006);
    EXPECT_EQ(equilibriumMoisture(Temperature::celsius(20), 0), 0);
}

TEST(EquilibriumMoisture, AgreesWithARuleOfThumb) {
    // 30 / 50 / 65 / 80 % humidity are 6 / 9 / 12 / 16 % moisture: an extension specialist's
    // column; whole per cents, so half of one.
    const Worked rule[] = {{20, 30, 6}, {20, 50, 9}, {20, 65, 12}, {20, 80, 16}};
    for (const Worked& worked : rule)
        EXPECT_NEAR(equilibriumMoisture(celsius(worked.celsius), worked.humidity), worked.moisture,
                    0.5);
}

TEST(HumidityForMoisture, IsTheEquationTurnedRound) {
    const Worked all[] = {{20, 28.81, 6},  {20, 41.83, 8},  {20, 54.41, 10}, {20, 65.02, 12},
                          {20, 76.84, 15}, {20, 79.89, 16}, {20, 84.99, 18}, {20, 89.06, 20}};
    for (const Worked& worked : all)
        EXPECT_NEAR(humidityFor(celsius(worked.celsius), worked.moisture), worked.humidity, 0.006);
}

TEST(HumidityForMoisture, GivesTheHumidityBackAtEveryTemperature) {
    for (int degrees = 0; degrees <= 130; degrees += 13)
        for (int humidity = 1; humidity < 100; humidity += 7) {
            const Temperature t = Temperature::celsius(degrees);
            EXPECT_NEAR(humidityFor(t, equilibriumMoisture(t, humidity)), humidity, 1e-9);
        }
}

TEST(HumidityForMoisture, StopsAtTheEndsOfTheScale) {
    EXPECT_NEAR(humidityFor(Temperature::celsius(20), 40), 100, 1e-9);
    EXPECT_NEAR(humidityFor(Temperature::celsius(20), 0), 0, 1e-9);
}

TEST(EquilibriumMoisture, RisesWithHumidityAndFallsWithWarmth) {
    for (int degrees = -1; degrees <= 60; degrees += 3)
        for (int humidity = 5; humidity <= 95; humidity += 5) {
            const double here = equilibriumMoisture(Temperature::celsius(degrees), humidity);
            EXPECT_LT(here, equilibriumMoisture(Temperature::celsius(degrees), humidity + 1));
            if (degrees >= 5) // below, damp air is a little otherwise: 95 % at 40 and 30 °F
                EXPECT_GT(here, equilibriumMoisture(Temperature::celsius(degrees + 3), humidity));
        }
}

TEST(EquilibriumMoisture, IsTheSameInEitherUnit) {
    // The two sets of constants differ by 0.013 at most from 30 to 150 °F, by 0.041 to 270 °F.
    for (int degrees = 30; degrees <= 270; degrees += 5)
        for (int humidity = 5; humidity <= 95; humidity += 5) {
            const Temperature f = Temperature::fahrenheit(degrees);
            EXPECT_NEAR(equilibriumMoisture(f, humidity),
                        equilibriumMoisture(converted(f, TemperatureUnit::Celsius), humidity),
                        degrees <= 150 ? 0.0135 : 0.0415)
                << degrees << ' ' << humidity;
        }
}

TEST(Temperatures, AreConvertedAndShown) {
    EXPECT_EQ(converted(Temperature::fahrenheit(212), TemperatureUnit::Celsius),
              Temperature::celsius(100));
    EXPECT_EQ(converted(Temperature::celsius(-40), TemperatureUnit::Fahrenheit),
              Temperature::fahrenheit(-40));
    EXPECT_EQ(converted(Temperature::fahrenheit(70), TemperatureUnit::Celsius).thousandths, 21'111);
    EXPECT_EQ(converted(Temperature::fahrenheit(30), TemperatureUnit::Celsius).thousandths, -1'111);
    EXPECT_EQ(shown(Temperature{70'500, TemperatureUnit::Fahrenheit}), "70.5 °F");
    EXPECT_EQ(shown(Temperature{-1'000, TemperatureUnit::Celsius}), "−1 °C");
    EXPECT_EQ(shown(Temperature{20'005, TemperatureUnit::Celsius}), "20.005 °C");
}

TEST(Temperatures, AreInRangeFromThirtyToTwoHundredAndSeventyFahrenheit) {
    EXPECT_TRUE(isInRange(Temperature::fahrenheit(30)));
    EXPECT_TRUE(isInRange(Temperature::fahrenheit(270)));
    EXPECT_FALSE(isInRange(Temperature::fahrenheit(29)));
    EXPECT_FALSE(isInRange(Temperature::fahrenheit(271)));
    EXPECT_TRUE(isInRange(Temperature::celsius(-1)));
    EXPECT_FALSE(isInRange(Temperature::celsius(-2)));
    EXPECT_FALSE(isInRange(Temperature::celsius(133)));
}

} // namespace
} // namespace frontwright
