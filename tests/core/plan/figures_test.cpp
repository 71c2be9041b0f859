#include "core/plan/figures.h"

#include "core/limits/limits.h"
#include "core/words/approximate.h"
#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::in;
using testing::sixteenths;

TEST(Figures, AreWrittenAsAMakerWouldWriteThem) {
    EXPECT_EQ(
        Figures(sixteenths).plus(in(12, 40)).plus(in(0, 16)).plus(in(0, 16)).equals(in(13, 8)),
        "12 5/8 in + 1/4 in + 1/4 in = 13 1/8 in");
    EXPECT_EQ(Figures(sixteenths).plus(in(13)).minusTwice(in(0, 4)).text(), "13 in − 2 × 1/16 in");
    EXPECT_EQ(Figures(sixteenths).plus(in(2)).minus(in(0, 8)).halved().text(),
              "(2 in − 1/8 in) / 2");
    EXPECT_EQ(Figures(sixteenths).plusPart(in(10), 25, 100).plusPart(in(6), 1, 2).text(),
              "10 in × 25 / 100 + 6 in / 2");
}

TEST(Figures, TurnTheSignOfANegativeTerm) {
    EXPECT_EQ(Figures(sixteenths).plus(in(2)).plus(-in(1)).minus(-in(3)).text(),
              "2 in − 1 in + 3 in");
    EXPECT_EQ(Figures(sixteenths).plus(-in(1)).text(), "−1 in");
    EXPECT_EQ(Figures(sixteenths).plus(in(1)).minus({}).text(), "1 in − 0 in");
}

// 6 mm are 0.23622 in, 15/16 in and 6 mm 1.17372 in.
TEST(Figures, ComeOutRightToWhoeverAddsThem) {
    EXPECT_EQ(Figures(sixteenths).plus(in(0, 1)).plus(in(1)).equals(in(1, 1)),
              "1/64 in + 1 in = 1 1/64 in ≈ 1 in");
    EXPECT_EQ(Figures(sixteenths)
                  .plus(in(0, 60))
                  .plus(Length::millimetres(6))
                  .equals(in(0, 60) + Length::millimetres(6)),
              "15/16 in + 0.2362 in = 1.174 in ≈ 1 3/16 in");
}

TEST(Figures, SayOfAnApproximateResultThatItIsNotEqual) {
    EXPECT_EQ(withApproximateResults("a = ≈ b; c = d; e = ≈ f"), "a ≈ b; c = d; e ≈ f");
}

TEST(SourceOfALimit, IsTheMakersOnceTheMakerChangedIt) {
    const Limits limits;
    EXPECT_EQ(sourceOfLimit(limits.leastGap, limits.leastGap), commonPractice());
    EXPECT_EQ(sourceOfLimit(in(0, 6), limits.leastGap).kind, SourceKind::Maker);
    EXPECT_EQ(makersDecision().kind, SourceKind::Maker);
}

} // namespace
} // namespace frontwright
