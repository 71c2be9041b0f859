#include "core/fronts/profile.h"

#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

#include <array>
#include <random>

namespace frontwright {
namespace {

using testing::mm;

constexpr Length oneNanometre = Length::fromNanometres(1);
constexpr std::array families{ProfileFamily::Square, ProfileFamily::Eased,  ProfileFamily::Chamfer,
                              ProfileFamily::Round,  ProfileFamily::Raised, ProfileFamily::Cove};

Profile profile(ProfileFamily family, Length width, Length depth, Length step = {}) {
    Profile result;
    result.family = family;
    result.width = width;
    result.depth = depth;
    result.step = step;
    return result;
}

// Losses worked by hand from right triangles of 3, 4 and 5.

TEST(Profile, SquareLosesNothing) {
    const Profile square = profile(ProfileFamily::Square, mm(10), mm(5));
    EXPECT_EQ(lossAt(square, mm(0)), mm(0));
    EXPECT_EQ(lossAt(square, mm(4)), mm(0));
    EXPECT_EQ(edgeThickness(square, mm(20), Side::Top), mm(20));
    EXPECT_EQ(field(square, FrontRect::atOrigin(mm(300), mm(150))),
              FrontRect::atOrigin(mm(300), mm(150)));
}

TEST(Profile, EasedIsAQuarterCircle) {
    const Profile eased = profile(ProfileFamily::Eased, mm(5), mm(5));
    EXPECT_EQ(lossAt(eased, mm(0)), mm(5));
    EXPECT_EQ(lossAt(eased, mm(1)), mm(2)); // 4 from the centre line: 5 − 3
    EXPECT_EQ(lossAt(eased, mm(2)), mm(1)); // 3 from the centre line: 5 − 4
    EXPECT_EQ(lossAt(eased, mm(5)), mm(0));
}

TEST(Profile, ChamferSlopesStraight) {
    const Profile chamfer =
        profile(ProfileFamily::Chamfer, Length::inches(0, 32), Length::inches(0, 16));
    EXPECT_EQ(lossAt(chamfer, mm(0)), Length::inches(0, 16));
    EXPECT_EQ(lossAt(chamfer, Length::inches(0, 8)), Length::inches(0, 12)); // 3/4 of 1/4
    EXPECT_EQ(lossAt(chamfer, Length::inches(0, 16)), Length::inches(0, 8));
    EXPECT_EQ(lossAt(chamfer, Length::inches(0, 32)), mm(0));
}

TEST(Profile, RoundIsAConvexQuarterEllipse) {
    const Profile round = profile(ProfileFamily::Round, mm(10), mm(5));
    EXPECT_EQ(lossAt(round, mm(0)), mm(5));
    EXPECT_EQ(lossAt(round, mm(2)), mm(2)); // 5 · (1 − 3/5)
    EXPECT_EQ(lossAt(round, mm(4)), mm(1)); // 5 · (1 − 4/5)
    EXPECT_EQ(lossAt(round, mm(10)), mm(0));
}

TEST(Profile, RaisedEndsInAStepUpToTheField) {
    const Profile raised = profile(ProfileFamily::Raised, mm(40), mm(8), mm(2));
    EXPECT_EQ(lossAt(raised, mm(0)), mm(8));
    EXPECT_EQ(lossAt(raised, mm(10)), Length::fromMicrometres(6500)); // 2 + 6 · 3/4
    EXPECT_EQ(lossAt(raised, mm(20)), mm(5));
    EXPECT_EQ(lossAt(raised, mm(40) - oneNanometre), mm(2)) << "foot of the step";
    EXPECT_EQ(lossAt(raised, mm(40)), mm(0)) << "the field";
}

TEST(Profile, CoveIsAConcaveQuarterEllipse) {
    const Profile cove = profile(ProfileFamily::Cove, mm(10), mm(5));
    EXPECT_EQ(lossAt(cove, mm(0)), mm(5));
    EXPECT_EQ(lossAt(cove, mm(6)), mm(4)); // 5 · 4/5
    EXPECT_EQ(lossAt(cove, mm(8)), mm(3)); // 5 · 3/5
    EXPECT_EQ(lossAt(cove, mm(10)), mm(0));
}

TEST(Profile, LosesNothingOffItsWidth) {
    for (ProfileFamily family : families) {
        const Profile any = profile(family, mm(10), mm(5), mm(1));
        EXPECT_EQ(lossAt(any, -oneNanometre), mm(0));
        EXPECT_EQ(lossAt(any, mm(10)), mm(0));
        EXPECT_EQ(lossAt(any, mm(400)), mm(0));
        EXPECT_EQ(lossAt(profile(family, mm(0), mm(5)), mm(0)), mm(0)) << "no width, no profile";
    }
}

TEST(Profile, LosesNeverMoreFurtherIn) {
    for (ProfileFamily family : families) {
        const Profile any = profile(family, Length::inches(1, 5), Length::inches(0, 21), mm(1));
        Length before = lossAt(any, mm(0));
        EXPECT_LE(before, any.depth);
        for (std::int64_t um = 0; um < 30'000; um += 7) {
            const Length loss = lossAt(any, Length::fromMicrometres(um));
            ASSERT_LE(loss, before) << "family " << static_cast<int>(family) << ", " << um << " µm";
            ASSERT_GE(loss, mm(0));
            before = loss;
        }
    }
}

TEST(Profile, RoundBulgesAboveTheChamferAndTheCoveHollowsBelowIt) {
    for (std::int64_t um = 100; um < 10'000; um += 100) {
        const Length x = Length::fromMicrometres(um);
        const Length straight = lossAt(profile(ProfileFamily::Chamfer, mm(10), mm(5)), x);
        EXPECT_LT(lossAt(profile(ProfileFamily::Round, mm(10), mm(5)), x), straight);
        EXPECT_GT(lossAt(profile(ProfileFamily::Cove, mm(10), mm(5)), x), straight);
    }
}

TEST(EdgeThickness, IsWhatTheDepthLeaves) {
    Profile chamfer = profile(ProfileFamily::Chamfer, mm(20), mm(7));
    EXPECT_EQ(edgeThickness(chamfer, mm(19), Side::Left), mm(12));
    chamfer.sides.left = false;
    EXPECT_EQ(edgeThickness(chamfer, mm(19), Side::Left), mm(19));
    EXPECT_EQ(edgeThickness(chamfer, mm(19), Side::Top), mm(12));
}

TEST(EdgeThickness, IsNothingWhereTheProfileIsTooDeep) {
    EXPECT_EQ(edgeThickness(profile(ProfileFamily::Cove, mm(20), mm(25)), mm(19), Side::Top),
              mm(0));
}

TEST(Field, IsTheFrontLessTheProfileAtEachSideThatCarriesIt) {
    Profile raised = profile(ProfileFamily::Raised, mm(40), mm(8), mm(2));
    const FrontRect front = FrontRect::atOrigin(mm(300), mm(150));
    EXPECT_EQ(field(raised, front), (FrontRect{mm(40), mm(40), mm(260), mm(110)}));
    raised.sides = {true, true, false, false};
    EXPECT_EQ(field(raised, front), (FrontRect{mm(40), mm(0), mm(260), mm(150)}));
}

TEST(Field, IsEmptyWhereTheProfilesMeet) {
    const Profile raised = profile(ProfileFamily::Raised, mm(40), mm(8), mm(2));
    EXPECT_TRUE(field(raised, FrontRect::atOrigin(mm(300), mm(79))).isEmpty());
    EXPECT_EQ(field(raised, FrontRect::atOrigin(mm(300), mm(80))).height(), mm(0));
}

TEST(LocalThickness, IsFullBehindTheFieldAndThinBehindTheRim) {
    const Profile chamfer = profile(ProfileFamily::Chamfer, mm(20), mm(10));
    const FrontRect front = FrontRect::atOrigin(mm(300), mm(150));
    EXPECT_EQ(localThickness(chamfer, front, mm(19), {mm(150), mm(75)}), mm(19));
    EXPECT_EQ(localThickness(chamfer, front, mm(19), {mm(20), mm(75)}), mm(19));
    EXPECT_EQ(localThickness(chamfer, front, mm(19), {mm(10), mm(75)}), mm(14));
    EXPECT_EQ(localThickness(chamfer, front, mm(19), {mm(150), mm(150)}), mm(9)) << "at the edge";
}

TEST(LocalThickness, TakesTheGreaterLossInTheMitre) {
    const Profile chamfer = profile(ProfileFamily::Chamfer, mm(20), mm(10));
    const FrontRect front = FrontRect::atOrigin(mm(300), mm(150));
    EXPECT_EQ(localThickness(chamfer, front, mm(19), {mm(4), mm(16)}), mm(11)); // 4 in: loses 8
    EXPECT_EQ(localThickness(chamfer, front, mm(19), {mm(16), mm(4)}), mm(11));
}

TEST(LocalThickness, HeedsOnlySidesThatCarryTheProfile) {
    Profile chamfer = profile(ProfileFamily::Chamfer, mm(20), mm(10));
    chamfer.sides = {false, true, true, true};
    const FrontRect front = FrontRect::atOrigin(mm(300), mm(150));
    EXPECT_EQ(localThickness(chamfer, front, mm(19), {mm(0), mm(75)}), mm(19));
    EXPECT_EQ(localThickness(chamfer, front, mm(19), {mm(300), mm(75)}), mm(9));
    chamfer.sides = PerSide<bool>::all(false);
    EXPECT_EQ(localThickness(chamfer, front, mm(19), {mm(300), mm(150)}), mm(19));
}

TEST(LocalThickness, IsNothingOffTheFrontAndNeverLess) {
    const Profile cove = profile(ProfileFamily::Cove, mm(20), mm(30));
    const FrontRect front = FrontRect::atOrigin(mm(300), mm(150));
    EXPECT_EQ(localThickness(cove, front, mm(19), {-oneNanometre, mm(75)}), mm(0));
    EXPECT_EQ(localThickness(cove, front, mm(19), {mm(150), mm(151)}), mm(0));
    EXPECT_EQ(localThickness(cove, front, mm(19), {mm(1), mm(75)}), mm(0)) << "deeper than thick";
    const Profile square;
    EXPECT_EQ(localThickness(square, front, mm(19), {mm(-1), mm(75)}), mm(0));
}

TEST(LeastThickness, IsAtThePointNearestToAnEdge) {
    const Profile chamfer = profile(ProfileFamily::Chamfer, mm(20), mm(10));
    const FrontRect front = FrontRect::atOrigin(mm(300), mm(150));
    EXPECT_EQ(leastThickness(chamfer, front, mm(19), {{mm(150), mm(14)}, mm(4)}), mm(14));
    EXPECT_EQ(leastThickness(chamfer, front, mm(19), {{mm(150), mm(24)}, mm(4)}), mm(19));
    EXPECT_EQ(leastThickness(chamfer, front, mm(19), {{mm(4), mm(75)}, mm(4)}), mm(9))
        << "touches the edge";
}

TEST(LeastThickness, IsNothingWhereTheDiscReachesOffTheFront) {
    const FrontRect front = FrontRect::atOrigin(mm(300), mm(150));
    const FrontDisc disc{{mm(4), mm(75)}, mm(4) + oneNanometre};
    EXPECT_EQ(leastThickness(Profile{}, front, mm(19), disc), mm(0));
}

TEST(LeastThickness, IsNeverMoreThanAtAnyPointOfTheDisc) {
    std::mt19937 dice(7); // raw values only: the same with every compiler
    const auto below = [&](unsigned limit) { return static_cast<std::int64_t>(dice() % limit); };
    const FrontRect front = FrontRect::atOrigin(mm(120), mm(90));
    for (int i = 0; i < 2000; ++i) {
        Profile any =
            profile(families[static_cast<std::size_t>(below(6))], mm(1 + below(30)), mm(below(12)));
        for (Side side : allSides)
            any.sides[side] = below(4) != 0;
        const FrontDisc disc{{mm(below(120)), mm(below(90))}, mm(below(10))};
        const Length least = leastThickness(any, front, mm(19), disc);
        // Points of 3-4-5 triangles on the circle, and its four ends.
        const Length r = disc.radius,
                     r3 = Length::fromMicrometres(600) * (r.nanometres() / 1'000'000),
                     r4 = Length::fromMicrometres(800) * (r.nanometres() / 1'000'000);
        for (const FrontPoint d :
             {FrontPoint{r, {}}, FrontPoint{-r, {}}, FrontPoint{{}, r}, FrontPoint{{}, -r},
              FrontPoint{r3, r4}, FrontPoint{-r4, -r3}, FrontPoint{}})
            ASSERT_LE(least, localThickness(any, front, mm(19), disc.centre + d)) << "case " << i;
    }
}

TEST(LocalThickness, MirrorsWithTheFront) {
    std::mt19937 dice(11);
    const auto below = [&](unsigned limit) { return static_cast<std::int64_t>(dice() % limit); };
    const FrontRect front = FrontRect::atOrigin(mm(120), mm(90));
    for (int i = 0; i < 1000; ++i) {
        Profile any =
            profile(families[static_cast<std::size_t>(below(6))], mm(1 + below(30)), mm(8), mm(3));
        for (Side side : allSides)
            any.sides[side] = below(2) != 0;
        Profile mirrored = any;
        std::swap(mirrored.sides.left, mirrored.sides.right);
        const FrontPoint p{Length::fromMicrometres(below(120'000)),
                           Length::fromMicrometres(below(90'000))};
        ASSERT_EQ(localThickness(any, front, mm(19), p),
                  localThickness(mirrored, front, mm(19), {mm(120) - p.x, p.y}));
    }
}

} // namespace
} // namespace frontwright
