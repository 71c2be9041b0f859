#include "core/findings/remedying.h"

#include "tests/core/findings/provoking.h"

#include <gtest/gtest.h>

namespace frontwright::remedying {
namespace {

using testing::bank;
using testing::Found;
using testing::n64;
using testing::um;
using testing::withChoices;

/// A search in a small case, with what it proposed.
struct Searched {
    explicit Searched(const Project& from, LengthStyle style = {Unit::Inch, 16})
        : found(from),
          search{finding,        found.project, found.catalogue, found.plan,
                 found.front(0), style,         proposed,        proposedForCase} {}
    Searched(const Searched&) = delete;
    Searched& operator=(const Searched&) = delete;

    const Found found;
    const Finding finding{};
    std::vector<Remedy> proposed;
    std::vector<Remedy> proposedForCase;
    const Search search;
};

TEST(Search, RoundsToWhatAMakerSetsByHand) {
    const Searched inches(bank(2));
    EXPECT_EQ(inches.search.grid(), n64(4));
    EXPECT_EQ(inches.search.down(n64(7)), n64(4));
    EXPECT_EQ(inches.search.up(n64(5)), n64(8));
    EXPECT_EQ(inches.search.up(n64(8)), n64(8));
    EXPECT_EQ(inches.search.down(-n64(1)), -n64(4));
    EXPECT_EQ(inches.search.up(-n64(1)), Length{});
    const Searched metric(bank(2), {Unit::Millimetre, 16});
    EXPECT_EQ(metric.search.down(um(2'900)), um(2'000));
    EXPECT_EQ(metric.search.up(um(2'001)), um(3'000));
}

TEST(Search, SaysLengthsAsFineAsTheyAre) {
    const Searched inches(bank(2));
    EXPECT_EQ(inches.search.say(n64(6)), "3/32 in");
    EXPECT_EQ(inches.search.say(um(10'000)), "≈ 25/64 in");
}

Label sinkScrews() {
    return {phrase("Sink the screws of %1", std::string("A1")),
            text("Sink the screws of the whole case")};
}

TEST(Search, ProposesForTheFrontAndForTheCaseItFollows) {
    const Searched follows(bank(2));
    MountingSpec spec = follows.found.project.fronts.mounting;
    spec.recess = n64(4);
    follows.search.propose(sinkScrews(), spec);
    ASSERT_EQ(follows.proposed.size(), 1U);
    ASSERT_EQ(follows.proposedForCase.size(), 1U);
    EXPECT_EQ(follows.proposed[0].label, "Sink the screws of A1");
    EXPECT_EQ(follows.proposedForCase[0].label, "Sink the screws of the whole case");
    const Found one(follows.proposed[0].apply(follows.found.project).value());
    EXPECT_EQ(one.front(0).mounting.recess, n64(4));
    EXPECT_EQ(one.front(1).mounting.recess, n64(8));
    const Found all(follows.proposedForCase[0].apply(follows.found.project).value());
    EXPECT_EQ(all.front(1).mounting.recess, n64(4));
}

TEST(Search, ProposesNothingForTheCaseWhereThatWouldNotReachTheFront) {
    const Searched decides(withChoices(bank(2), 0, [](FrontChoices& choices) {
        choices.mounting = testing::smallDefaults().mounting;
    }));
    decides.search.propose(sinkScrews(), decides.found.project.fronts.mounting);
    EXPECT_EQ(decides.proposed.size(), 1U);
    EXPECT_TRUE(decides.proposedForCase.empty());
    const Searched alone(bank(1));
    alone.search.propose(sinkScrews(), alone.found.project.fronts.mounting);
    EXPECT_TRUE(alone.proposedForCase.empty());
}

WallRegion wallOf(Length width, Length height) {
    return {WallRect::atOrigin(width, height), {}, {}};
}

TEST(NearestAllowed, IsThePlaceItselfWhereThatIsAllowed) {
    EXPECT_EQ(nearestAllowed(wallOf(n64(640), n64(320)), {n64(64), n64(32)}, n64(4)),
              (WallPoint{n64(64), n64(32)}));
}

TEST(NearestAllowed, IsOnTheBorderForAPlaceOutside) {
    const WallRegion wall = wallOf(n64(640), n64(320));
    EXPECT_EQ(nearestAllowed(wall, {n64(-20), n64(100)}, n64(4)), (WallPoint{{}, n64(100)}));
    EXPECT_EQ(nearestAllowed(wall, {n64(700), n64(400)}, n64(4)), (WallPoint{n64(640), n64(320)}));
}

TEST(NearestAllowed, IsOnTheGridInsideBordersThatAreNot) {
    WallRegion wall = wallOf(n64(640), n64(320));
    wall.outer.bottom = n64(50);
    EXPECT_EQ(nearestAllowed(wall, {n64(100), n64(10)}, n64(4)), (WallPoint{n64(100), n64(52)}));
}

TEST(NearestAllowed, KeepsOutOfWhatIsTakenAway) {
    WallRegion wall = wallOf(n64(640), n64(320));
    wall.withoutRects.push_back({n64(80), n64(80), n64(160), n64(160)});
    wall.withoutDiscs.push_back({{n64(400), n64(160)}, n64(40)});
    // The left border of the rectangle is 12/64 away, the others more.
    EXPECT_EQ(nearestAllowed(wall, {n64(92), n64(120)}, n64(4)), (WallPoint{n64(80), n64(120)}));
    const auto besideDisc = nearestAllowed(wall, {n64(404), n64(160)}, n64(4));
    EXPECT_EQ(besideDisc, (WallPoint{n64(440), n64(160)}));
}

TEST(NearestAllowed, IsNoneWhereNothingIsAllowed) {
    WallRegion wall = wallOf(n64(640), n64(320));
    wall.outer.top = -n64(1);
    EXPECT_EQ(nearestAllowed(wall, {n64(10), n64(10)}, n64(4)), std::nullopt);
    WallRegion full = wallOf(n64(640), n64(320));
    full.withoutRects.push_back({-n64(1), -n64(1), n64(641), n64(321)});
    EXPECT_EQ(nearestAllowed(full, {n64(10), n64(10)}, n64(4)), std::nullopt);
}

TEST(NearestAllowed, FindsASliverThatTheGridMisses) {
    const WallRegion sliver{{n64(5), n64(5), n64(7), n64(7)}, {}, {}};
    EXPECT_EQ(nearestAllowed(sliver, {}, n64(4)), (WallPoint{n64(5), n64(5)}));
}

TEST(NearestAllowed, IsAllowedAndNoFurtherThanAnyOtherPlaceOnTheGrid) {
    testing::Dice dice(2024);
    for (int round = 0; round < 40; ++round) {
        WallRegion wall = wallOf(dice.sixtyFourths(100, 900), dice.sixtyFourths(80, 400));
        for (int i = 0; i < 3; ++i)
            wall.withoutDiscs.push_back({{dice.sixtyFourths(0, 900), dice.sixtyFourths(0, 400)},
                                         dice.sixtyFourths(10, 80)});
        const WallPoint p{dice.sixtyFourths(-100, 1000), dice.sixtyFourths(-100, 500)};
        const auto nearest = nearestAllowed(wall, p, n64(8));
        if (!nearest)
            continue;
        EXPECT_TRUE(wall.contains(*nearest));
        const auto apart = [&](WallPoint q) {
            const double dx = (q.x - p.x).inMillimetres(), dy = (q.y - p.y).inMillimetres();
            return dx * dx + dy * dy;
        };
        for (Length x; x <= wall.outer.right; x += n64(8))
            for (Length y; y <= wall.outer.top; y += n64(8))
                if (wall.contains({x, y})) {
                    EXPECT_GE(apart({x, y}) + 1e-9, apart(*nearest));
                }
    }
}

} // namespace
} // namespace frontwright::remedying
