#include "core/wood/air.h"
#include "core/wood/movement.h"
#include "tests/core/catalogue/program_catalogue.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::programCatalogue;

std::string sentence(const AirState& state) {
    const auto error = impossible(state);
    return error ? error->sentence().english() : std::string();
}

TEST(AirStates, TellTheWoodsMoistureByAirOrByMeter) {
    EXPECT_NEAR(moistureOf(AirState::of(Temperature::celsius(20), Percent::whole(50))), 9.271,
                0.0006);
    EXPECT_EQ(moistureOf(AirState::meter(Percent::fromThousandths(7500))), 7.5);
}

TEST(AirStates, OutsideARangeAreRefusedWithTheRange) {
    EXPECT_EQ(sentence(AirState::of(Temperature::celsius(20), Percent::fromThousandths(100'500))),
              "the relative humidity, 100.5 %, is outside 0 to 100 %");
    EXPECT_EQ(sentence(AirState::of(Temperature::celsius(20), Percent::whole(-1))),
              "the relative humidity, −1.0 %, is outside 0 to 100 %");
    EXPECT_EQ(
        sentence(AirState::of(Temperature::celsius(-5), Percent::whole(50))),
        "the air's temperature, −5 °C, is outside −1.1 to 132.2 °C, the range of the equation "
        "for the wood's moisture; give the temperature of the room, or read the wood with a "
        "moisture meter");
    EXPECT_NE(sentence(AirState::of(Temperature::fahrenheit(280), Percent::whole(50)))
                  .find("is outside 30 to 270 °F"),
              std::string::npos);
    EXPECT_NE(sentence(AirState::meter(Percent::whole(31))).find("is outside 0 to 30 %"),
              std::string::npos);
}

TEST(AirStates, AtTheEndsOfARangeAreTaken) {
    for (const int humidity : {0, 100})
        EXPECT_EQ(sentence(AirState::of(Temperature::fahrenheit(30), Percent::whole(humidity))),
                  "");
    for (const int reading : {0, 30})
        EXPECT_EQ(sentence(AirState::meter(Percent::whole(reading))), "");
    // What is not asked for is not judged.
    AirState state = AirState::meter(Percent::whole(8));
    state.temperature = Temperature::celsius(-50);
    EXPECT_EQ(sentence(state), "");
}

TEST(Airs, WhoseDriestIsWetterAreRefused) {
    const AirState dry = AirState::meter(Percent::whole(6)),
                   damp = AirState::meter(Percent::whole(11));
    EXPECT_FALSE(impossible(Air{dry, dry, damp}));
    EXPECT_FALSE(impossible(Air{damp, dry, dry}));
    const auto error = impossible(Air{dry, damp, dry});
    ASSERT_TRUE(error);
    EXPECT_EQ(error->sentence(), "wood in the driest air would have 11.0 % moisture, more than in "
                                 "the wettest, 6.0 %; exchange the two");
    const auto named = impossible(Air{dry, dry, AirState::meter(Percent::whole(40))});
    ASSERT_TRUE(named);
    EXPECT_EQ(named->place, "wettest");
}

TEST(OrdinaryAirs, AreThoseOfTheHandbookAndATradeGuide) {
    // Wood Handbook, table 13-1, from memory: average and range of moisture indoors. Swedish timber
    // trade guide, read: heated home in mid-Sweden, winter at 10 to 25 % humidity 2 to 6 %, summer
    // at 45 to 60 % 7 to 12 %, 7.5 % over the year.
    struct Row {
        const char* id;
        double average, driest, wettest;
        SourceKind source;
    };
    const Row rows[] = {{"us-interior", 8, 5, 10, SourceKind::FromMemory},
                        {"us-damp-coast", 11, 8, 13, SourceKind::FromMemory},
                        {"us-dry-southwest", 6, 4, 9, SourceKind::FromMemory},
                        {"sweden-heated", 7.5, 2, 12, SourceKind::Published}};
    const Catalogue catalogue = programCatalogue();
    ASSERT_EQ(catalogue.airs.size(), std::size(rows));
    for (const Row& row : rows) {
        const AirRange* air = catalogue.airRange(row.id);
        ASSERT_NE(air, nullptr) << row.id;
        EXPECT_EQ(moistureOf(air->average), row.average);
        EXPECT_EQ(moistureOf(air->driest), row.driest);
        EXPECT_EQ(moistureOf(air->wettest), row.wettest);
        EXPECT_EQ(air->source.kind, row.source);
    }
}

TEST(OrdinaryAirs, AreNearWhatTheEquationMakesOfTheirHumidities) {
    // The trade guide's humidities in a room of 20 °C: 10 and 25 % in winter, 45 and 60 % in
    // summer. It gives whole per cents and rounds outwards at the ends, so one point.
    const Temperature room = Temperature::celsius(20);
    EXPECT_NEAR(equilibriumMoisture(room, 10), 2, 1);
    EXPECT_NEAR(equilibriumMoisture(room, 25), 6, 1);
    EXPECT_NEAR(equilibriumMoisture(room, 45), 7, 1.6);
    EXPECT_NEAR(equilibriumMoisture(room, 60), 12, 1.01);
}

TEST(OrdinaryAirs, TakeInWhatFurnitureStockIsDriedTo) {
    // 6 to 8 %: Wood Handbook, chapter 13, read.
    for (const double dried : {6.0, 8.0})
        for (const char* id : {"us-interior", "us-dry-southwest", "sweden-heated"}) {
            const Catalogue catalogue = programCatalogue();
            const AirRange* air = catalogue.airRange(id);
            EXPECT_LE(moistureOf(air->driest), dried) << id;
            EXPECT_GE(moistureOf(air->wettest), dried) << id;
        }
}

// From meter to air and back: the moisture is the line's own.
TEST(AirStates, AreToldTheOtherWayWithTheSameMoisture) {
    const AirState air =
        toldBy(AirState::meter(Percent::whole(8)), MoistureBy::Air, TemperatureUnit::Fahrenheit);
    EXPECT_EQ(air.by, MoistureBy::Air);
    EXPECT_EQ(air.temperature, Temperature::fahrenheit(68));
    EXPECT_NEAR(moistureOf(air), 8, 0.02);
    EXPECT_EQ(air.humidity.thousandths() % 100, 0) << "tenths of a per cent";
    const AirState meter = toldBy(air, MoistureBy::Meter, TemperatureUnit::Fahrenheit);
    EXPECT_TRUE(tellTheSame(meter, AirState::meter(Percent::whole(8))));
    // 20 °C and 50 % come to 9.271 %.
    const AirState shop = AirState::of(Temperature::celsius(20), Percent::whole(50));
    const AirState read = toldBy(shop, MoistureBy::Meter, TemperatureUnit::Celsius);
    EXPECT_TRUE(tellTheSame(read, AirState::meter(Percent::fromThousandths(9300))));
    EXPECT_TRUE(tellTheSame(toldBy(read, MoistureBy::Air, TemperatureUnit::Celsius), shop))
        << "what the maker typed comes back";
}

TEST(AirStates, ToldTheOtherWayKeepTheTemperatureThatWasGiven) {
    AirState meter = AirState::meter(Percent::whole(10));
    meter.temperature = Temperature::celsius(25);
    EXPECT_EQ(toldBy(meter, MoistureBy::Air, TemperatureUnit::Fahrenheit).temperature,
              Temperature::celsius(25));
}

// Air of 20 °C brings wood to 28.8 % at most.
TEST(AirStates, ToldByAirEndAtTheEquationsEnds) {
    const auto humidityOf = [](int reading) {
        return toldBy(AirState::meter(Percent::whole(reading)), MoistureBy::Air,
                      TemperatureUnit::Celsius)
            .humidity;
    };
    EXPECT_EQ(humidityOf(30), Percent::whole(100));
    EXPECT_EQ(humidityOf(0), Percent{});
}

TEST(AirStates, ToldTheOtherWayStayWithinATenthForEveryReading) {
    for (int tenths = 0; tenths <= 280; ++tenths) {
        const AirState meter = AirState::meter(Percent::fromThousandths(tenths * 100));
        for (const TemperatureUnit unit : {TemperatureUnit::Celsius, TemperatureUnit::Fahrenheit}) {
            const AirState air = toldBy(meter, MoistureBy::Air, unit);
            ASSERT_FALSE(impossible(air));
            EXPECT_NEAR(moistureOf(air), meter.reading.value(), 0.1) << tenths;
        }
    }
}

TEST(AirStates, ThatAreImpossibleAreOnlyToldTheOtherWay) {
    const AirState wet = AirState::of(Temperature::celsius(20), Percent::whole(120));
    const AirState read = toldBy(wet, MoistureBy::Meter, TemperatureUnit::Celsius);
    EXPECT_EQ(read.by, MoistureBy::Meter);
    EXPECT_EQ(read.reading, AirState{}.reading);
    const AirState soaked =
        toldBy(AirState::meter(Percent::whole(45)), MoistureBy::Air, TemperatureUnit::Celsius);
    EXPECT_EQ(soaked.humidity, AirState{}.humidity);
}

TEST(AirStates, AreInTheCasesUnits) {
    EXPECT_EQ(temperatureUnitBeside(Unit::Inch), TemperatureUnit::Fahrenheit);
    EXPECT_EQ(temperatureUnitBeside(Unit::Millimetre), TemperatureUnit::Celsius);
}

} // namespace
} // namespace frontwright
