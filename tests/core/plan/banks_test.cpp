#include "core/plan/banks.h"

#include "tests/core/plan/planned.h"
#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::in;

using testing::banks;
using testing::columns;
using testing::opening;
using testing::Planned;
using testing::projectWith;
using testing::rows;
using testing::share;
using testing::withOpenings;

TEST(BankLetters, AreThoseOfALedgersColumns) {
    EXPECT_EQ(bankLetters(0), "A");
    EXPECT_EQ(bankLetters(25), "Z");
    EXPECT_EQ(bankLetters(26), "AA");
    EXPECT_EQ(bankLetters(51), "AZ");
    EXPECT_EQ(bankLetters(52), "BA");
    EXPECT_EQ(bankLetters(701), "ZZ");
    EXPECT_EQ(bankLetters(702), "AAA");
}

TEST(Bank, RunsFromTheTopAndLeftToRight) {
    const Planned chest(banks(2, 3));
    std::vector<std::string> labels;
    for (std::size_t i = 0; i < chest.plan.fronts.size(); ++i)
        labels.push_back(chest.labelOf(i));
    EXPECT_EQ(labels, (std::vector<std::string>{"A1", "A2", "A3", "B1", "B2", "B3"}));
}

TEST(Bank, IsOfOpeningsWithTheSameEdges) {
    // A wide drawer over two columns: it is a bank of its own, named before what lies below it.
    const auto column = [] { return rows({share(opening()), share(opening())}, in(1)); };
    const RegionPtr pair = columns({share(column()), share(column())}, in(2));
    const Planned chest(
        projectWith(rows({share(opening()), share(pair, 2)}, in(1)), in(40), in(30)));
    EXPECT_EQ(chest.labelOf(0), "A1");
    EXPECT_EQ(chest.labelOf(1), "B1");
    EXPECT_EQ(chest.labelOf(2), "B2");
    EXPECT_EQ(chest.labelOf(3), "C1");
    EXPECT_EQ(chest.labelOf(4), "C2");
}

TEST(Bank, GoesOnPastAWiderFrontBetween) {
    // Columns above and below a wide drawer line up: they are one bank.
    const auto pair = [] { return columns({share(opening()), share(opening())}, in(2)); };
    const Planned chest(
        projectWith(rows({share(pair()), share(opening()), share(pair())}, in(1)), in(40), in(30)));
    EXPECT_EQ(chest.labelOf(0), "A1");
    EXPECT_EQ(chest.labelOf(1), "C1");
    EXPECT_EQ(chest.labelOf(2), "B1") << "same left edge as A, but lower";
    EXPECT_EQ(chest.labelOf(3), "A2");
    EXPECT_EQ(chest.labelOf(4), "C2");
}

TEST(Bank, DoesNotDependOnTheOrderOfTheTree) {
    Layout layout;
    layout.openings.push_back({{5}, nullptr, {in(20), in(0), in(30), in(10)}, {}});
    layout.openings.push_back({{6}, nullptr, {in(0), in(0), in(10), in(10)}, {}});
    layout.openings.push_back({{7}, nullptr, {in(0), in(12), in(10), in(20)}, {}});
    EXPECT_EQ(banksOf(layout), (std::vector<BankPlace>{{1, 0}, {0, 1}, {0, 0}}));
}

TEST(Label, IsTheMakersNameWhereThereIsOne) {
    const Planned chest(withOpenings(banks(1, 3), [](Opening& leaf, std::size_t i) {
        if (i == 1)
            leaf.name = "Brushes";
    }));
    EXPECT_EQ(chest.labelOf(0), "A1");
    EXPECT_EQ(chest.labelOf(1), "Brushes");
    EXPECT_EQ(chest.labelOf(2), "A3") << "a name does not move its neighbours' numbers";
}

} // namespace
} // namespace frontwright
