#include "tests/core/hardware/handles.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::profiledFront;
using testing::squareFront;

const Length width = Length::inches(13, 8);  // 13 1/8 in
const Length height = Length::inches(6, 32); // 6 1/2 in

TEST(HandleCentre, IsTheFrontsMiddle) {
    // 13 1/8 / 2 = 6 9/16, 6 1/2 / 2 = 3 1/4
    const auto centres = handleCentres({}, squareFront(width, height));
    ASSERT_EQ(centres.size(), 1u);
    EXPECT_EQ(centres[0], (FrontPoint{Length::inches(6, 36), Length::inches(3, 16)}));
}

TEST(HandleCentre, IsTheFieldsMiddleInBothDirections) {
    Profile bevel{ProfileFamily::Chamfer, Length::inches(1), Length::inches(0, 16), {}, {}};
    bevel.sides = {.left = true, .right = false, .bottom = false, .top = true};
    HardwareSpec spec;
    spec.placing = Placing::CentredInField;
    // Field from 1 in to 13 1/8 in across: middle 7 1/16; from 0 to 5 1/2 in up: middle 2 3/4.
    const auto centres = handleCentres(spec, profiledFront(width, height, bevel));
    ASSERT_EQ(centres.size(), 1u);
    EXPECT_EQ(centres[0], (FrontPoint{Length::inches(7, 4), Length::inches(2, 48)}));
}

TEST(HandleCentre, IsTheFrontsMiddleWhereProfilesLeaveNoField) {
    const Profile wide{ProfileFamily::Chamfer, Length::inches(4), Length::inches(0, 16), {}};
    HardwareSpec spec;
    spec.placing = Placing::CentredInField;
    const FrontStock stock = profiledFront(width, height, wide);
    ASSERT_TRUE(stock.field.isEmpty());
    EXPECT_EQ(handleCentres(spec, stock)[0], stock.front.centre());
}

TEST(HandleCentre, LiesTheGivenDistanceBelowTheTop) {
    HardwareSpec spec;
    spec.placing = Placing::FromTop;
    spec.distance = Length::inches(2, 16);
    // 6 1/2 − 2 1/4 = 4 1/4
    EXPECT_EQ(handleCentres(spec, squareFront(width, height))[0],
              (FrontPoint{Length::inches(6, 36), Length::inches(4, 16)}));
}

TEST(HandleCentre, KeepsOneDistanceFromTheTopDownABank) {
    HardwareSpec spec;
    spec.placing = Placing::FromTop;
    spec.distance = Length::millimetres(50);
    for (std::int64_t mm : {90, 140, 333}) {
        const Length tall = Length::millimetres(mm);
        EXPECT_EQ(tall - handleCentres(spec, squareFront(width, tall))[0].y,
                  Length::millimetres(50));
    }
}

TEST(HandleCentre, IsRaisedByATwentiethOfTheHeightForTheEye) {
    HardwareSpec spec;
    spec.placing = Placing::OpticalCentre;
    // 160 / 2 + 160 / 20 = 88
    EXPECT_EQ(handleCentres(spec, squareFront(width, Length::millimetres(160)))[0].y,
              Length::millimetres(88));
    spec.opticalPart = 40; // 160 / 2 + 160 / 40 = 84
    EXPECT_EQ(handleCentres(spec, squareFront(width, Length::millimetres(160)))[0].y,
              Length::millimetres(84));
    spec.opticalPart = 0; // no part at all
    EXPECT_EQ(handleCentres(spec, squareFront(width, Length::millimetres(160)))[0].y,
              Length::millimetres(80));
}

TEST(TwoHandles, StandAtAQuarterOfTheWidthFromEitherSide) {
    HardwareSpec spec;
    spec.twoPast = Length::millimetres(600);
    const auto centres =
        handleCentres(spec, squareFront(Length::millimetres(800), Length::millimetres(160)));
    ASSERT_EQ(centres.size(), 2u);
    EXPECT_EQ(centres[0], (FrontPoint{Length::millimetres(200), Length::millimetres(80)}));
    EXPECT_EQ(centres[1], (FrontPoint{Length::millimetres(600), Length::millimetres(80)}));
}

TEST(TwoHandles, AreForFrontsWiderThanTheGivenWidthOnly) {
    HardwareSpec spec;
    spec.twoPast = Length::millimetres(600);
    const auto count = [&](Length w) { return handleCentres(spec, squareFront(w, height)).size(); };
    EXPECT_EQ(count(Length::millimetres(600)), 1u);
    EXPECT_EQ(count(Length::millimetres(600) + Length::fromNanometres(1)), 2u);
}

TEST(TwoHandles, AreListedLeftToRightWhicheverProportionIsGiven) {
    HardwareSpec spec;
    spec.twoPast = Length::millimetres(100);
    spec.twoAtPercent = 80; // the same places as 20
    const auto centres =
        handleCentres(spec, squareFront(Length::millimetres(1'000), Length::millimetres(100)));
    ASSERT_EQ(centres.size(), 2u);
    EXPECT_EQ(centres[0].x, Length::millimetres(200));
    EXPECT_EQ(centres[1].x, Length::millimetres(800));
}

TEST(TwoHandles, StandAlikeFromBothSidesForEveryWidthAndProportion) {
    HardwareSpec spec;
    spec.twoPast = Length{};
    for (std::int64_t n = 200; n < 900; n += 7)
        for (std::int64_t percent : {1, 17, 25, 33, 50}) {
            spec.twoAtPercent = percent;
            const Length w = Length::fromSixtyFourths(n);
            const auto centres = handleCentres(spec, squareFront(w, height));
            EXPECT_EQ(centres[0].x + centres[1].x, w);
            const double share = centres[0].x.inMillimetres() / w.inMillimetres();
            EXPECT_NEAR(share, static_cast<double>(percent) / 100, 1e-7);
        }
}

TEST(HandleByHand, StandsAloneWhereItWasPut) {
    HardwareSpec spec;
    spec.twoPast = Length::millimetres(100);
    spec.placing = Placing::FromTop;
    spec.placedAt = FrontPoint{Length::millimetres(70), Length::millimetres(40)};
    const auto centres = handleCentres(spec, squareFront(width, height));
    ASSERT_EQ(centres.size(), 1u);
    EXPECT_EQ(centres[0], *spec.placedAt);
}

TEST(HandleCentres, OfThreeHaveTheThirdInTheMiddle) {
    HardwareSpec spec;
    spec.twoPast = Length::inches(20);
    spec.threePast = Length::inches(36);
    const auto on = [&](Length wide) {
        return handleCentres(spec, squareFront(wide, Length::inches(6)));
    };
    EXPECT_EQ(on(Length::inches(20)).size(), 1U);
    EXPECT_EQ(on(Length::inches(36)).size(), 2U);
    const auto three = on(Length::inches(40));
    ASSERT_EQ(three.size(), 3U);
    EXPECT_EQ(three[0].x, Length::inches(10)); // a quarter
    EXPECT_EQ(three[1].x, Length::inches(20));
    EXPECT_EQ(three[2].x, Length::inches(30));
    EXPECT_EQ(three[1].y, three[0].y);
}

} // namespace
} // namespace frontwright
