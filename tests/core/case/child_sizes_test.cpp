#include "core/case/child_sizes.h"
#include "tests/core/case/laid_out.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numeric>

namespace frontwright {
namespace {

using namespace frontwright::testing;

// Hand-worked; plain arithmetic.

using Sizes = std::vector<Length>;
constexpr Length sixteenth = Length::inches(0, 4);

Split splitOf(const RegionPtr& region) {
    return std::get<Split>(region->content);
}
Sizes sizesIn(const RegionPtr& region, Length total) {
    const auto sizes = childSizes(splitOf(region), total, sixteenth);
    EXPECT_TRUE(sizes.ok()) << (sizes.ok() ? std::string() : sizes.error().sentence().english());
    return sizes.ok() ? sizes.value() : Sizes{};
}
std::string errorIn(const RegionPtr& region, Length total) {
    const auto sizes = childSizes(splitOf(region), total, sixteenth);
    return sizes.ok() ? "" : sizes.error().sentence().english();
}

TEST(FourEqualOpenings, ShareWhatThreeRailsLeaveOfThirtyInches) {
    // 30 − 3 × 1 1/4 = 26 1/4; 26 1/4 / 4 = 6 9/16
    const auto bank =
        rows({share(opening()), share(opening()), share(opening()), share(opening())}, in(1, 16));
    EXPECT_EQ(sizesIn(bank, in(30)), Sizes(4, in(6, 36)));
}

TEST(ThreeEqualOpenings, GiveTheOddSixteenthsToTheNamedOne) {
    // 30 − 2 × 1 1/4 = 27 1/2; a third is 9 1/8 and 2/3 of a sixteenth; 2/16 are left over
    auto bank = splitOf(rows({share(opening()), share(opening()), share(opening())}, in(1, 16)));
    EXPECT_EQ(childSizes(bank, in(30), sixteenth).value(), (Sizes{in(9, 8), in(9, 8), in(9, 16)}));
    bank.remainderChild = 0;
    EXPECT_EQ(childSizes(bank, in(30), sixteenth).value(), (Sizes{in(9, 16), in(9, 8), in(9, 8)}));
}

TEST(Shares, DivideWhatTheFixedSizesLeaveByTheirWeights) {
    // 30 − 2 − 4 = 24; 1 : 2 gives 8 and 16
    const auto bank = rows({fixed(in(4), opening()), share(opening()), share(opening(), 2)}, in(1));
    EXPECT_EQ(sizesIn(bank, in(30)), (Sizes{in(4), in(8), in(16)}));
}

TEST(ArithmeticRun, GrowsByItsStepFromTopToBottom) {
    // 30 − 3 × 1 1/4 = 26 1/4 = 4a + 6 × 1; a = 5 1/16
    const auto bank = graduated(
        rows({place(opening()), place(opening()), place(opening()), place(opening())}, in(1, 16)),
        ArithmeticRun{in(1)});
    EXPECT_EQ(sizesIn(bank, in(30)), (Sizes{in(5, 4), in(6, 4), in(7, 4), in(8, 4)}));
}

TEST(ArithmeticRun, ShrinksWithANegativeStep) {
    // 24 = 3a − 3 × 1 1/2; a = 9 1/2
    const auto bank = graduated(rows({place(opening()), place(opening()), place(opening())}, in(1)),
                                ArithmeticRun{-in(1, 32)});
    EXPECT_EQ(sizesIn(bank, in(26)), (Sizes{in(9, 32), in(8), in(6, 32)}));
}

TEST(GeometricRun, DoublesFromPlaceToPlace) {
    const auto bank = graduated(rows({place(opening()), place(opening()), place(opening())}, in(1)),
                                GeometricRun{2'000'000});
    EXPECT_EQ(sizesIn(bank, in(23)), (Sizes{in(3), in(6), in(12)}));
}

TEST(GeometricRun, IsExactWhereTheRatioAllows) {
    // 16 : 20 : 25 of 15 1/4 is 4, 5, 6 1/4
    const auto bank = graduated(rows({place(opening()), place(opening()), place(opening())}, in(1)),
                                GeometricRun{1'250'000});
    EXPECT_EQ(sizesIn(bank, in(17, 16)), (Sizes{in(4), in(5), in(6, 16)}));
}

TEST(GeometricRun, OfManyPlacesFollowsItsRatioToTheGrid) {
    constexpr std::size_t places = 60;
    const auto bank = graduated(rows(std::vector<Child>(places, place(opening())), in(1)),
                                GeometricRun{1'050'000});
    const Length total = in(1000);
    const Sizes sizes = sizesIn(bank, total);
    const double room = 1000.0 - 59.0;
    const double sum = (std::pow(1.05, 60) - 1) / 0.05;
    for (std::size_t k = 0; k + 1 < places; ++k) {
        const double ideal = room * std::pow(1.05, static_cast<double>(k)) / sum;
        EXPECT_LE(sizes[k].inInches(), ideal + 1e-6) << k;
        EXPECT_GT(sizes[k].inInches(), ideal - 1.0 / 16 - 1e-6) << k;
    }
    EXPECT_EQ(std::accumulate(sizes.begin(), sizes.end(), Length()), total - in(59));
}

TEST(GeometricRun, OfARatioUnderOneGetsSmaller) {
    const auto bank =
        graduated(rows(std::vector<Child>(30, place(opening())), in(1)), GeometricRun{930'000});
    auto split = splitOf(bank);
    split.remainderChild = 0;
    const Sizes sizes = childSizes(split, in(400), sixteenth).value();
    EXPECT_TRUE(std::ranges::is_sorted(sizes, std::greater<>()));
    EXPECT_GT(sizes.front(), in(25)); // 371 × 0.07 / (1 − 0.93^30) = 29.3
    EXPECT_LT(sizes.back(), in(4));   // 29.3 × 0.93^29 = 3.6
}

TEST(GraduatedPlaces, CountAsMuchAsAnAverageShare) {
    // room 25 − 3 − 4 = 18 for three: 6 each; the run 6 − 1 and 6 + 1
    const auto bank = graduated(
        rows({fixed(in(4), opening()), share(opening()), place(opening()), place(opening())},
             in(1)),
        ArithmeticRun{in(2)});
    EXPECT_EQ(sizesIn(bank, in(25)), (Sizes{in(4), in(6), in(5), in(7)}));
}

TEST(GraduatedPlaces, DoNotMoveWhenSharesDivideTheirPartOtherwise) {
    const auto bank = graduated(
        rows({share(opening(), 500), place(opening()), place(opening()), share(opening(), 100)},
             in(1)),
        ArithmeticRun{in(2)});
    EXPECT_EQ(sizesIn(bank, in(27)), (Sizes{in(10), in(5), in(7), in(2)}));
}

TEST(TheRemainder, GoesToTheLastFlexibleOpeningWhereTheNamedOneIsFixed) {
    auto bank =
        splitOf(rows({share(opening()), share(opening()), fixed(in(5, 1), opening())}, in(1)));
    EXPECT_EQ(childSizes(bank, in(20), sixteenth).value(), (Sizes{in(6, 28), in(6, 35), in(5, 1)}));
}

TEST(FixedSizes, StayAsTheMakerGaveThem) {
    const auto bank = rows({fixed(Length::millimetres(100), opening()), share(opening())}, in(1));
    const Sizes sizes = sizesIn(bank, in(20));
    EXPECT_EQ(sizes[0], Length::millimetres(100));
    EXPECT_EQ(sizes[1], in(19) - Length::millimetres(100));
}

TEST(TooLittleRoom, SaysHowMuchIsMissing) {
    const auto bank = rows({fixed(in(20), opening()), fixed(in(15), opening())}, in(1));
    EXPECT_EQ(errorIn(bank, in(30)),
              "6 in of room is missing: 1 member and 2 fixed sizes take 36 in of 30 in; make the "
              "case larger or a size smaller");
}

TEST(TooLittleRoom, CountsAGridStepForEveryFlexibleOpening) {
    // 10 + 2 in members leave nothing for two shares: 2/16 in are missing
    const auto bank = rows({fixed(in(10), opening()), share(opening()), share(opening())}, in(1));
    EXPECT_EQ(errorIn(bank, in(12)),
              "1/8 in of room is missing: 2 members and 1 fixed size take 12 in of 12 in; make the "
              "case larger or a size smaller");
    EXPECT_EQ(sizesIn(bank, in(12, 8)), (Sizes{in(10), sixteenth, sixteenth}));
}

TEST(TooLittleRoom, IsFoundForAStepThatIsTooSteep) {
    // a = (10 − 3 × 4) / 3 < 0; for a = 1/16 it takes 12 3/16
    const auto bank = graduated(rows({place(opening()), place(opening()), place(opening())}, in(1)),
                                ArithmeticRun{in(4)});
    EXPECT_EQ(errorIn(bank, in(12)).substr(0, 8), "2 3/16 i");
    EXPECT_TRUE(childSizes(splitOf(bank), in(14, 12), sixteenth).ok());
    EXPECT_FALSE(childSizes(splitOf(bank), in(14, 8), sixteenth).ok());
}

TEST(FixedSizesOnly, MustAddUpToTheirTotal) {
    const auto bank = rows({fixed(in(10), opening()), fixed(in(9), opening())}, in(1));
    EXPECT_EQ(sizesIn(bank, in(20)), (Sizes{in(10), in(9)}));
    EXPECT_EQ(errorIn(bank, in(22)),
              "2 in is left over: 1 member and 2 fixed sizes take 20 in of 22 in; let one of the "
              "sizes be a share");
}

TEST(ImpossibleRules, AreRefused) {
    EXPECT_NE(errorIn(rows({share(opening(), 0), share(opening())}, in(1)), in(20)), "");
    EXPECT_NE(errorIn(rows({fixed(in(0), opening()), share(opening())}, in(1)), in(20)), "");
    EXPECT_NE(errorIn(rows({share(opening()), share(opening())}, -in(1)), in(20)), "");
    EXPECT_NE(
        errorIn(rows({share(opening(), mostShareWeight + 1), share(opening())}, in(1)), in(20)),
        "");
}

TEST(TheGreatestWeights, AreStillDividedExactly) {
    const auto bank =
        rows({share(opening(), mostShareWeight), share(opening(), mostShareWeight)}, in(1));
    EXPECT_EQ(sizesIn(bank, in(21)), (Sizes{in(10), in(10)}));
}

TEST(AMillimetreGrid, SpeaksInMillimetres) {
    const auto bank = rows({fixed(Length::millimetres(300), opening()), share(opening())},
                           Length::millimetres(20));
    const auto sizes = childSizes(splitOf(bank), Length::millimetres(310), Length::millimetres(1));
    ASSERT_FALSE(sizes.ok());
    EXPECT_EQ(sizes.error().what,
              "11 mm of room is missing: 1 member and 1 fixed size take 320 mm of 310 mm");
}

TEST(LeastTotal, IsTheFirstTotalAtWhichEveryOpeningIsLargeEnough) {
    Dice dice(11);
    for (int round = 0; round < 300; ++round) {
        const auto region = anyRegion(dice, in(60), in(60), in(3), 1);
        const auto* split = std::get_if<Split>(&region->content);
        if (split == nullptr || demandOf(*split).flexible() == 0)
            continue;
        const Sizes least(split->children.size(), in(3));
        const Length total = leastTotal(*split, least, sixteenth);
        const std::size_t taker = *remainderTaker(*split);
        for (const Length more : {Length(), sixteenth, in(5, 3)}) {
            const Sizes sizes = childSizes(*split, total + more, sixteenth).value();
            for (std::size_t i = 0; i < sizes.size(); ++i) {
                const bool counts = isFlexible(split->children[i].rule);
                EXPECT_TRUE(!counts || sizes[i] >= in(3)) << round;
            }
        }
        // Below it one is too small, or only the remainder keeps its taker up.
        const auto below = childSizes(*split, total - Length::fromNanometres(1), sixteenth);
        if (!below.ok())
            continue;
        bool isOneSmaller = below.value()[taker] < in(3) + sixteenth * 5;
        for (std::size_t i = 0; i < below.value().size(); ++i)
            isOneSmaller =
                isOneSmaller || (isFlexible(split->children[i].rule) && below.value()[i] < in(3));
        EXPECT_TRUE(isOneSmaller) << round;
    }
}

TEST(MostTotal, KeepsEveryOpeningWithinItsLimit) {
    Dice dice(12);
    int limited = 0;
    for (int round = 0; round < 300; ++round) {
        const auto region = anyRegion(dice, in(60), in(60), in(3), 1);
        const auto* split = std::get_if<Split>(&region->content);
        if (split == nullptr)
            continue;
        std::vector<std::optional<Length>> most(split->children.size());
        EXPECT_EQ(mostTotal(*split, most, sixteenth).has_value(), demandOf(*split).flexible() == 0);
        const auto which =
            static_cast<std::size_t>(dice.between(0, static_cast<std::int64_t>(most.size()) - 1));
        most[which] = in(20);
        const auto total = mostTotal(*split, most, sixteenth);
        if (!total || !isFlexible(split->children[which].rule))
            continue;
        const auto sizes = childSizes(*split, *total, sixteenth);
        if (!sizes.ok())
            continue;
        ++limited;
        EXPECT_LE(sizes.value()[which], in(20)) << round;
        const auto above = childSizes(*split, *total + in(2), sixteenth);
        EXPECT_GT(above.value()[which], in(19, 32)) << round;
    }
    EXPECT_GT(limited, 50);
}

} // namespace
} // namespace frontwright
