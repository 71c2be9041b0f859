#include "core/fastening/thin_rim.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

const Length thickness = Length::millimetres(20);
const Length aNanometre = Length::fromNanometres(1);

/// Losses are whole nanometres, so a gentle slope's border is known to a few of them only.
::testing::AssertionResult isNear(Length found, Length expected) {
    if ((found - expected).magnitude() <= 3 * aNanometre)
        return ::testing::AssertionSuccess();
    return ::testing::AssertionFailure()
           << found.inMillimetres() << " mm, not " << expected.inMillimetres() << " mm";
}

Profile profileOf(ProfileFamily family, Length width, Length depth, Length step = {}) {
    return {family, width, depth, step, PerSide<bool>::all(true)};
}

TEST(ThinRim, IsNothingOnASquareEdge) {
    const ThinRim rim = thinRim({}, thickness, Length::millimetres(12));
    EXPECT_EQ(rim.width, PerSide<Length>{});
    EXPECT_EQ(rim.fieldHolds, FieldHolds::Yes);
}

TEST(ThinRim, EndsWhereAChamferHasRisenEnough) {
    // 40 mm wide, 10 mm deep: 1 mm in 4. 16 mm of 20 are there from 40 − 4 × 4 = 24 mm on.
    const Profile chamfer =
        profileOf(ProfileFamily::Chamfer, Length::millimetres(40), Length::millimetres(10));
    const Length width = thinRim(chamfer, thickness, Length::millimetres(16)).width.left;
    EXPECT_TRUE(isNear(width, Length::millimetres(24)));
}

TEST(ThinRim, EndsAtTheStepOfARaisedFieldThatIsTooDeep) {
    // Bevel 30 mm wide with a step of 3 mm: it loses 3 mm or more all over, so where no more than
    // 2 mm may be lost only the field will do.
    const Profile raised = profileOf(ProfileFamily::Raised, Length::millimetres(30),
                                     Length::millimetres(9), Length::millimetres(3));
    EXPECT_EQ(thinRim(raised, thickness, Length::millimetres(18)).width.top,
              Length::millimetres(30));
    // 6 mm may be lost: halfway up the bevel (3 + 6 / 2).
    EXPECT_TRUE(isNear(thinRim(raised, thickness, Length::millimetres(14)).width.top,
                       Length::millimetres(15)));
}

TEST(ThinRim, OfAQuarterRoundIsByPythagoras) {
    // Radius 10: loss 10 − √(100 − u²) at u from the field. 2 mm lost: u = √(100 − 64) = 6, so the
    // rim is 4 mm.
    const Profile round =
        profileOf(ProfileFamily::Round, Length::millimetres(10), Length::millimetres(10));
    EXPECT_TRUE(isNear(thinRim(round, thickness, Length::millimetres(18)).width.left,
                       Length::millimetres(4)));
    // Cove: loss √(100 − x²) at x from the edge; 8 mm lost at x = 6.
    const Profile cove =
        profileOf(ProfileFamily::Cove, Length::millimetres(10), Length::millimetres(10));
    EXPECT_TRUE(isNear(thinRim(cove, thickness, Length::millimetres(12)).width.left,
                       Length::millimetres(6)));
}

TEST(ThinRim, IsNothingWhereTheEdgeItselfIsThickEnough) {
    const Profile chamfer =
        profileOf(ProfileFamily::Chamfer, Length::millimetres(40), Length::millimetres(10));
    EXPECT_EQ(thinRim(chamfer, thickness, Length::millimetres(10)).width, PerSide<Length>{});
}

TEST(ThinRim, RunsAlongProfiledEdgesOnly) {
    Profile chamfer =
        profileOf(ProfileFamily::Chamfer, Length::millimetres(40), Length::millimetres(10));
    chamfer.sides = {.left = true, .right = false, .bottom = false, .top = true};
    const ThinRim rim = thinRim(chamfer, thickness, Length::millimetres(20));
    EXPECT_TRUE(isNear(rim.width.left, Length::millimetres(40)));
    EXPECT_EQ(rim.width.right, Length{});
    EXPECT_EQ(rim.width.bottom, Length{});
    EXPECT_TRUE(isNear(rim.width.top, Length::millimetres(40)));
}

TEST(ThinRim, LeavesNothingOfAFrontThatIsTooThinAllOver) {
    const ThinRim rim = thinRim({}, Length::millimetres(10), Length::millimetres(12));
    EXPECT_EQ(rim.fieldHolds, FieldHolds::No);
    EXPECT_TRUE(rim.thickPart(FrontRect::atOrigin(thickness, thickness)).isEmpty());
}

TEST(ThickPart, IsTheFrontLessItsRim) {
    ThinRim rim;
    rim.width = {.left = Length::millimetres(1),
                 .right = Length::millimetres(2),
                 .bottom = Length::millimetres(3),
                 .top = Length::millimetres(4)};
    const FrontRect part =
        rim.thickPart(FrontRect::atOrigin(Length::millimetres(100), Length::millimetres(50)));
    EXPECT_EQ(part, (FrontRect{Length::millimetres(1), Length::millimetres(3),
                               Length::millimetres(98), Length::millimetres(46)}));
    EXPECT_TRUE(rim.thickPart(FrontRect::atOrigin(Length::millimetres(2), Length::millimetres(50)))
                    .isEmpty());
}

TEST(ThinRim, IsTheNarrowestThatDoesForEveryFamily) {
    for (ProfileFamily family : {ProfileFamily::Eased, ProfileFamily::Chamfer, ProfileFamily::Round,
                                 ProfileFamily::Raised, ProfileFamily::Cove})
        for (std::int64_t needed = 10; needed <= 20; ++needed) {
            const Profile profile =
                profileOf(family, Length::fromSixtyFourths(83), Length::fromSixtyFourths(31),
                          Length::fromSixtyFourths(family == ProfileFamily::Raised ? 6 : 0));
            const Length least = Length::millimetres(needed);
            const Length width = thinRim(profile, thickness, least).width.left;
            EXPECT_GE(thickness - lossAt(profile, width), least);
            if (!width.isZero()) {
                EXPECT_LT(thickness - lossAt(profile, width - aNanometre), least);
            }
        }
}

TEST(ThinRim, GrowsWithTheThicknessThatIsAskedFor) {
    const Profile round =
        profileOf(ProfileFamily::Round, Length::millimetres(25), Length::millimetres(9));
    Length before;
    for (std::int64_t um = 11'500; um <= 20'000; um += 500) {
        const Length width = thinRim(round, thickness, Length::fromMicrometres(um)).width.left;
        EXPECT_GT(width, before);
        before = width;
    }
}

} // namespace
} // namespace frontwright
