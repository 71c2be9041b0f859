#include "core/boards/keeper_pieces.h"

#include "tests/core/boards/worked_board.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace frontwright {
namespace {

using namespace testing;

const Span strip{in(0, 48), in(18, 48)};

KeeperSpec withFasteners(std::vector<FastenerToReach> fasteners) {
    KeeperSpec spec;
    spec.fasteners = std::move(fasteners);
    return spec;
}

TEST(Keeper, IsOnePieceWhereNothingMustBeReached) {
    const KeeperStrip keeper = keeperStrip({}, strip, Side::Left);
    ASSERT_EQ(keeper.pieces.size(), 1u);
    EXPECT_EQ(keeper.pieces[0].along, strip);
    EXPECT_TRUE(keeper.interruptions.empty());
    EXPECT_TRUE(keeper.leftOut.empty());
}

// Two screws of the top at 5 and 12 in, a driver of 1 in, 1/8 in round it.
TEST(Keeper, IsInterruptedRoundFastenersThatStayWithinReach) {
    const KeeperSpec spec =
        withFasteners({{Side::Left, in(12), in(1)}, {Side::Left, in(5), in(1)}});
    const KeeperStrip keeper = keeperStrip(spec, strip, Side::Left);
    ASSERT_EQ(keeper.pieces.size(), 3u);
    EXPECT_EQ(keeper.interruptions,
              (std::vector<Span>{{in(4, 24), in(5, 40)}, {in(11, 24), in(12, 40)}}));
    EXPECT_EQ(keeper.pieces[0].along.size(), in(3, 40)); // 3/4 … 4 3/8
    EXPECT_EQ(keeper.pieces[1].along.size(), in(5, 48)); // 5 5/8 … 11 3/8
    EXPECT_EQ(keeper.pieces[2].along.size(), in(6, 8));  // 12 5/8 … 18 3/4
    EXPECT_EQ(keeperStrip(spec, strip, Side::Right).pieces.size(), 1u) << "the other side is whole";
}

TEST(Keeper, HasOneInterruptionForFastenersThatAreClose) {
    const KeeperStrip keeper = keeperStrip(
        withFasteners({{Side::Left, in(6), in(1)}, {Side::Left, in(7), in(1)}}), strip, Side::Left);
    EXPECT_EQ(keeper.interruptions, (std::vector<Span>{{in(5, 24), in(7, 40)}}));
    EXPECT_EQ(keeper.pieces.size(), 2u);
}

TEST(Keeper, LeavesOutAPieceThatIsTooShort) {
    // 1 3/8 in between 5 5/8 and 7: less than 2 in.
    const KeeperStrip keeper =
        keeperStrip(withFasteners({{Side::Left, in(5), in(1)}, {Side::Left, in(7, 40), in(1)}}),
                    strip, Side::Left);
    EXPECT_EQ(keeper.leftOut, (std::vector<Span>{{in(5, 40), in(7)}}));
    EXPECT_EQ(keeper.pieces.size(), 2u);
}

TEST(Keeper, BeginsBehindAFastenerAtItsEnd) {
    const KeeperStrip keeper =
        keeperStrip(withFasteners({{Side::Left, in(1), in(1)}}), strip, Side::Left);
    EXPECT_EQ(keeper.interruptions, (std::vector<Span>{{in(0, 48), in(1, 40)}}));
    ASSERT_EQ(keeper.pieces.size(), 1u);
    EXPECT_EQ(keeper.pieces[0].along.low, in(1, 40));
    EXPECT_TRUE(keeper.leftOut.empty());
}

TEST(Keeper, IsNotInterruptedByAFastenerBeyondIt) {
    EXPECT_TRUE(
        keeperStrip(withFasteners({{Side::Left, in(0, 4), in(0, 16)}, {Side::Left, in(30), in(1)}}),
                    strip, Side::Left)
            .interruptions.empty());
}

TEST(KeeperScrews, AreSpacedEquallyFromEndToEnd) {
    // 18 in, first at 1 in: 16 in in steps of at most 4 in.
    EXPECT_EQ(screwsAlong(strip, in(1), in(4)),
              (std::vector<Length>{in(1, 48), in(5, 48), in(9, 48), in(13, 48), in(17, 48)}));
    EXPECT_EQ(screwsAlong({in(0), in(6)}, in(1), in(4)), (std::vector<Length>{in(1), in(5)}));
    EXPECT_EQ(screwsAlong({in(0), in(6, 1)}, in(1), in(4)).size(), 3u);
}

TEST(KeeperScrews, AreOneInTheMiddleOfAShortPiece) {
    EXPECT_EQ(screwsAlong({in(4), in(6)}, in(1), in(4)), (std::vector<Length>{in(5)}));
    EXPECT_EQ(screwsAlong({in(4), in(5)}, in(1), in(4)), (std::vector<Length>{in(4, 32)}));
}

std::vector<Span> allParts(const KeeperStrip& keeper) {
    std::vector<Span> parts = keeper.interruptions;
    parts.insert(parts.end(), keeper.leftOut.begin(), keeper.leftOut.end());
    for (const KeeperPiece& piece : keeper.pieces)
        parts.push_back(piece.along);
    std::sort(parts.begin(), parts.end(), [](Span a, Span b) { return a.low < b.low; });
    return parts;
}

TEST(AnyKeeper, AndItsInterruptionsMakeUpTheWholeStrip) {
    RandomBoards random(21);
    for (int i = 0; i < 500; ++i) {
        const KeeperSpec spec = random.spec().keeper;
        const KeeperStrip keeper = keeperStrip(spec, strip, Side::Left);
        Length at = strip.low;
        for (const Span part : allParts(keeper)) {
            EXPECT_EQ(part.low, at);
            EXPECT_GT(part.size(), Length{});
            at = part.high;
        }
        EXPECT_EQ(at, strip.high);
        for (const KeeperPiece& piece : keeper.pieces) {
            EXPECT_GE(piece.along.size(), in(2));
            for (std::size_t s = 1; s < piece.screws.size(); ++s)
                EXPECT_LE(piece.screws[s] - piece.screws[s - 1], in(4));
            EXPECT_TRUE(piece.along.contains(piece.screws.front()));
            EXPECT_TRUE(piece.along.contains(piece.screws.back()));
        }
        for (const FastenerToReach& fastener : spec.fasteners)
            for (const KeeperPiece& piece : keeper.pieces)
                if (fastener.side == Side::Left)
                    EXPECT_FALSE(piece.along.low < fastener.depth.length &&
                                 fastener.depth.length < piece.along.high)
                        << "a strip lies over the fastener";
    }
}

TEST(AnyKeeper, IsMirroredBySidesWithItsFasteners) {
    RandomBoards random(22);
    for (int i = 0; i < 300; ++i) {
        KeeperSpec spec = random.spec().keeper;
        const KeeperStrip left = keeperStrip(spec, strip, Side::Left);
        const KeeperStrip right = keeperStrip(spec, strip, Side::Right);
        for (FastenerToReach& fastener : spec.fasteners)
            fastener.side = opposite(fastener.side);
        EXPECT_EQ(keeperStrip(spec, strip, Side::Right), left);
        EXPECT_EQ(keeperStrip(spec, strip, Side::Left), right);
    }
}

TEST(AnyKeeper, IsMirroredFrontToBackWithItsFasteners) {
    RandomBoards random(23);
    const auto turned = [](Span along) {
        const Length sum = strip.low + strip.high;
        return Span{sum - along.high, sum - along.low};
    };
    for (int i = 0; i < 300; ++i) {
        KeeperSpec spec = random.spec().keeper;
        const KeeperStrip before = keeperStrip(spec, strip, Side::Left);
        for (FastenerToReach& fastener : spec.fasteners)
            fastener.depth = strip.low + strip.high - fastener.depth.length;
        const KeeperStrip after = keeperStrip(spec, strip, Side::Left);
        ASSERT_EQ(after.pieces.size(), before.pieces.size());
        for (std::size_t p = 0; p < after.pieces.size(); ++p) {
            const KeeperPiece& twin = before.pieces[before.pieces.size() - 1 - p];
            EXPECT_EQ(after.pieces[p].along, turned(twin.along));
            EXPECT_EQ(after.pieces[p].screws.size(), twin.screws.size());
        }
    }
}

} // namespace
} // namespace frontwright
