#include "core/geometry/frames.h"

#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

#include <type_traits>

namespace frontwright {
namespace {

using testing::mm;

constexpr Length nm(std::int64_t whole) {
    return Length::fromNanometres(whole);
}

TEST(Side, FacesItsOpposite) {
    EXPECT_EQ(opposite(Side::Left), Side::Right);
    EXPECT_EQ(opposite(Side::Bottom), Side::Top);
    for (Side side : allSides) {
        EXPECT_EQ(opposite(opposite(side)), side);
        EXPECT_EQ(isLeftOrRight(opposite(side)), isLeftOrRight(side));
        EXPECT_NE(opposite(side), side);
    }
}

TEST(PerSide, KeepsOneValueForEachSide) {
    PerSide<int> values{1, 2, 3, 4};
    EXPECT_EQ(values[Side::Left], 1);
    EXPECT_EQ(values[Side::Right], 2);
    EXPECT_EQ(values[Side::Bottom], 3);
    EXPECT_EQ(values[Side::Top], 4);
    values[Side::Bottom] = 7;
    EXPECT_EQ(values, (PerSide<int>{1, 2, 7, 4}));
    EXPECT_EQ(PerSide<int>::all(5), (PerSide<int>{5, 5, 5, 5}));
}

TEST(Frames, DoNotMix) {
    EXPECT_FALSE((std::is_convertible_v<FrontPoint, WallPoint>));
    EXPECT_FALSE((std::is_convertible_v<CasePoint, FrontPoint>));
    EXPECT_FALSE((std::is_convertible_v<WallRect, FrontRect>));
}

TEST(Span, SharesACommonStretch) {
    const Span low{mm(0), mm(10)}, high{mm(6), mm(20)};
    EXPECT_EQ(low.common(high), (Span{mm(6), mm(10)}));
    EXPECT_EQ(high.common(low), low.common(high));
    EXPECT_EQ(low.common(high).size(), mm(4));
    EXPECT_TRUE((low.common({mm(11), mm(12)}).isEmpty()));
    EXPECT_FALSE((low.common({mm(10), mm(12)}).isEmpty())) << "they touch in one point";
}

TEST(Span, ContainsItsEnds) {
    const Span span{mm(1), mm(2)};
    EXPECT_TRUE(span.contains(mm(1)));
    EXPECT_TRUE(span.contains(mm(2)));
    EXPECT_FALSE(span.contains(mm(2) + nm(1)));
    EXPECT_FALSE(span.contains(mm(1) - nm(1)));
}

TEST(Span, HasAMiddleWithinOneNanometre) {
    EXPECT_EQ((Span{mm(2), mm(8)}.middle()), mm(5));
    EXPECT_EQ((Span{nm(0), nm(3)}.middle()), nm(1));
    EXPECT_EQ((Span{nm(-3), nm(0)}.middle()), nm(-2));
}

TEST(Rect, TellsItsSizeAndMiddle) {
    const CaseRect rect{mm(10), mm(20), mm(40), mm(80)};
    EXPECT_EQ(rect.width(), mm(30));
    EXPECT_EQ(rect.height(), mm(60));
    EXPECT_EQ(rect.centre(), (CasePoint{mm(25), mm(50)}));
    EXPECT_EQ(rect.lowerLeft(), (CasePoint{mm(10), mm(20)}));
    EXPECT_EQ(rect.across(), (Span{mm(10), mm(40)}));
    EXPECT_EQ(rect.upright(), (Span{mm(20), mm(80)}));
}

TEST(Rect, IsClosed) {
    const FrontRect rect = FrontRect::atOrigin(mm(30), mm(20));
    EXPECT_TRUE(rect.contains(FrontPoint{mm(0), mm(0)}));
    EXPECT_TRUE(rect.contains(FrontPoint{mm(30), mm(20)}));
    EXPECT_FALSE(rect.contains(FrontPoint{mm(30) + nm(1), mm(20)}));
    EXPECT_FALSE(rect.contains(FrontPoint{mm(0), nm(-1)}));
    EXPECT_TRUE(rect.contains(rect));
    EXPECT_FALSE(rect.contains(rect.inset(nm(-1))));
}

TEST(Rect, LosesTwiceTheInset) {
    const FrontRect rect = FrontRect::atOrigin(mm(30), mm(20));
    EXPECT_EQ(rect.inset(mm(3)).width(), mm(24));
    EXPECT_EQ(rect.inset(mm(3)).height(), mm(14));
    EXPECT_EQ(rect.inset(mm(3)).inset(mm(-3)), rect);
    EXPECT_FALSE(rect.inset(mm(10)).isEmpty()) << "a line is left";
    EXPECT_TRUE(rect.inset(mm(11)).isEmpty());
}

TEST(Rect, SharesACommonPart) {
    const CaseRect a{mm(0), mm(0), mm(10), mm(10)}, b{mm(6), mm(7), mm(20), mm(20)};
    EXPECT_EQ(a.common(b), (CaseRect{mm(6), mm(7), mm(10), mm(10)}));
    EXPECT_EQ(a.common(b), b.common(a));
    EXPECT_TRUE(a.common(b.movedBy({mm(5), mm(0)})).isEmpty());
}

TEST(Disc, HoldsWhatIsNearerThanItsRadius) {
    const WallPoint centre{mm(10), mm(10)};
    EXPECT_TRUE(isWithin({mm(13), mm(13)}, centre, mm(5)));
    EXPECT_FALSE(isWithin({mm(13), mm(14)}, centre, mm(5))) << "3, 4, 5: on the circle";
    EXPECT_TRUE(isWithin({mm(13), mm(14) - nm(1)}, centre, mm(5)));
}

} // namespace
} // namespace frontwright
