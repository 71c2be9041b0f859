#include "core/boards/board_faults.h"

#include "tests/core/boards/fitted.h"
#include "tests/core/shorthand.h"
#include "tests/core/words/untold.h"

#include <gtest/gtest.h>

#include <set>

namespace frontwright {
namespace {

using testing::sixtyFourths;

using namespace testing;

std::string keysOf(const std::vector<BoardFinding>& findings) {
    std::string keys;
    for (const BoardFinding& finding : findings)
        keys += std::string(key(finding.fault)) + " ";
    return keys;
}

TEST(GoodBoard, HasNothingSaidAgainstIt) {
    EXPECT_EQ(keysOf(BoardCase().findings()), "");
}

TEST(FaultyBoard, IsToldItsFault) {
    std::set<BoardFault> provoked;
    for (const auto& [fault, board] : faultyBoards()) {
        EXPECT_TRUE(board.finding(fault)) << key(fault) << ": " << keysOf(board.findings());
        provoked.insert(fault);
    }
    EXPECT_EQ(provoked.size(), boardFaultCount) << "each has a board that provokes it";
}

TEST(FaultyBoard, CanBeToldInEveryLanguage) {
    for (const auto& [fault, board] : faultyBoards())
        for (const BoardFinding& finding : board.findings()) {
            EXPECT_EQ(untold(finding.sentence), std::vector<std::string>{}) << finding.sentence;
            EXPECT_EQ(untold(finding.reason), std::vector<std::string>{}) << finding.reason;
            EXPECT_EQ(untold(finding.remedy), std::vector<std::string>{}) << finding.remedy;
            EXPECT_FALSE(finding.sentence.empty() || finding.reason.empty() ||
                         finding.remedy.empty() || finding.source.title.empty());
        }
}

TEST(BoardFindings, ComeGravestFirst) {
    BoardCase board;
    board.spec.bradLength = in(1, 32);
    board.spec.playInHeight = Length{};
    board.spec.depth = in(16);
    EXPECT_EQ(keysOf(board.findings()),
              "board_brad_through_show_side board_sticks_in_height board_runs_hard "
              "board_near_jam ");
}

TEST(BoardFinding, SaysHowFarTheBradComesOut) {
    BoardCase board;
    board.spec.bradLength = in(1, 32);
    const auto found = board.findings(sixtyFourths);
    ASSERT_EQ(found.size(), 1u);
    EXPECT_EQ(found[0].sentence,
              "The furring's brads come through the show side of the case by 1/32 in");
    EXPECT_EQ(found[0].reason,
              "length and set − layers passed 23/32 in = 25/32 in in a side panel of 3/4 in");
    EXPECT_EQ(found[0].remedy, "Use a length from 1 3/32 in to 1 11/32 in");
    EXPECT_EQ(found[0].gravity, BoardGravity::RuinsPart);
}

TEST(BoardFinding, TellsTheWorseSide) {
    BoardCase board;
    board.spec.bradLength = in(1, 32);
    board.place.leftPanel += in(0, 8); // 19/32 of furring on the left
    const auto found = board.findings(sixtyFourths);
    EXPECT_EQ(found[0].sentence,
              "The furring's brads come through the show side of the case by 5/32 in");
}

TEST(BoardFinding, SaysWhyItJams) {
    BoardCase board;
    board.spec.pullOut = in(9, 4);
    const auto found = board.finding(BoardFault::Jams);
    ASSERT_TRUE(found);
    EXPECT_EQ(found->sentence, "The board jams before it is 9 1/16 in out: then 8 15/16 in of it "
                               "are guided");
    EXPECT_EQ(found->reason,
              "Pulled 8 15/16 in from its middle, a board jams where no more than 2 × friction 0.5 "
              "× 8 15/16 in = 8 15/16 in of it is guided: what presses at its two corners rubs as "
              "hard as it is pulled, however hard that is");
    EXPECT_EQ(found->remedy,
              "Stop it at 6 13/16 in, make it deeper, or pull it nearer to its middle");
}

TEST(BoardFinding, SaysHowNearItIsToJamming) {
    BoardCase board;
    board.spec.pullOut = in(8);
    const auto found = board.finding(BoardFault::NearJam);
    ASSERT_TRUE(found);
    EXPECT_EQ(found->sentence, "Pulled out 8 in, the board is near to jamming: 10 in of it are "
                               "guided, and at 8 15/16 in it jams");
    EXPECT_EQ(found->reason, "At least 5/4 × 8 15/16 in = 11 11/64 in should be guided, so that "
                             "damp or dirt does not jam it");
    EXPECT_EQ(found->gravity, BoardGravity::AgainstPractice);
}

// Furring stands at the side panels, 3/4 in from the opening's edges, less 1/32 in of allowance.
TEST(Furring, IsTooThinForScrewsDownIntoItsEdge) {
    BoardCase board;
    board.spec.keeper.fastening = KeeperFastening::Down;
    const auto found = board.finding(BoardFault::FurringThin);
    ASSERT_TRUE(found);
    EXPECT_TRUE(found->sentence.english().starts_with(
        "The keeper strips' screws go down into a furring only ≈ 3/4 in thick, less than ≈ 7/8 in"))
        << found->sentence;
    // 0.82 in + 1/32 in are 54.5/64 in.
    board.place.leftPanel = board.place.opening.left - in(0, 55);
    board.place.rightPanel = board.place.opening.right + in(0, 55);
    EXPECT_FALSE(board.finding(BoardFault::FurringThin));
    board.place.leftPanel = board.place.opening.left - in(0, 54);
    EXPECT_TRUE(board.finding(BoardFault::FurringThin));
}

// No. 8 screws of 0.164 in: 4 × 0.164 = 0.656 in, 42/64. They pass a strip of 3/4 in.
TEST(KeeperScrews, AreNotCountedOnWhereTheyGoTooLittleIntoThePanel) {
    BoardCase board;
    board.place.leftPanel = board.place.opening.left;
    board.place.rightPanel = board.place.opening.right;
    board.spec.keeper.screwLength = in(1, 16);
    const auto found = board.finding(BoardFault::BearsNothing);
    ASSERT_TRUE(found);
    EXPECT_TRUE(found->sentence.english().starts_with(
        "The keeper strips' screws go only 1/2 in into the wood behind and are not counted on: the "
        "board is safe to "))
        << found->sentence;
    board.spec.keeper.screwLength = in(1, 26); // 42/64 in
    EXPECT_FALSE(board.finding(BoardFault::BearsNothing));
}

TEST(BoardFinding, EndsJustThisSideOfTheLimit) {
    BoardCase board;
    board.spec.pullOut = in(9);
    EXPECT_FALSE(board.finding(BoardFault::Jams));
    EXPECT_TRUE(board.finding(BoardFault::NearJam));
    board.spec.pullOut = in(6, 52); // 11 3/16 in guided, 11 11/64 wanted
    EXPECT_FALSE(board.finding(BoardFault::NearJam));
    board.spec.pullOut = in(6, 56);
    EXPECT_TRUE(board.finding(BoardFault::NearJam));
    board.spec.bradLength = in(1, 22);
    EXPECT_FALSE(board.finding(BoardFault::BradTipNear));
    board.spec.bradLength = in(1, 23);
    EXPECT_TRUE(board.finding(BoardFault::BradTipNear));
    board.spec.runnerRise = in(0, 16);
    EXPECT_FALSE(board.finding(BoardFault::DoesNotPass));
    board.spec.depth = in(18, 48);
    EXPECT_FALSE(board.finding(BoardFault::DoesNotGoIn));
    board.spec.depth = in(18, 49);
    EXPECT_TRUE(board.finding(BoardFault::DoesNotGoIn));
}

TEST(BoardFinding, OfTheSeasonIsCuredByThePlayThatItAsksFor) {
    BoardCase board;
    board.stock.grain = Grain::AlongHeight;
    ASSERT_TRUE(board.finding(BoardFault::SticksAside));
    board.spec.sidePlay = board.fitted().season->leastSidePlay;
    EXPECT_FALSE(board.finding(BoardFault::SticksAside));
}

TEST(BoardFinding, OfThePullOutIsCuredByStoppingItWhereItIsSafe) {
    RandomBoards random(71);
    int cured = 0;
    for (int i = 0; i < 100; ++i) {
        BoardCase board;
        board.spec = random.spec();
        board.place = random.place();
        board.spec.pullOut = random.upTo(64 * 24);
        if (!board.finding(BoardFault::TooFarOut))
            continue;
        board.spec.pullOut = board.fitted().safe.pullOut;
        EXPECT_FALSE(board.finding(BoardFault::TooFarOut) && !board.spec.pullOut->length.isZero())
            << i;
        ++cured;
    }
    EXPECT_GT(cured, 5);
}

TEST(BoardFaults, HaveNamesOfTheirOwn) {
    std::set<std::string_view> keys;
    for (std::size_t i = 0; i < boardFaultCount; ++i)
        keys.insert(key(static_cast<BoardFault>(i)));
    EXPECT_EQ(keys.size(), boardFaultCount);
}

} // namespace
} // namespace frontwright
