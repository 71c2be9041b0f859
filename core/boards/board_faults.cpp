#include "core/boards/board_faults.h"

#include "core/boards/board_wording.h"

#include <algorithm>
#include <array>

namespace frontwright {
namespace {

struct Row {
    BoardFault fault;
    BoardGravity gravity;
    std::string_view key;
};
using enum BoardGravity;
constexpr std::array<Row, boardFaultCount> rows{
    {{BoardFault::BradBlowsOut, RuinsPart, "board_brad_through_show_side"},
     {BoardFault::KeeperScrewBlowsOut, RuinsPart, "board_keeper_screw_through_show_side"},
     {BoardFault::DoesNotPass, WillNotWork, "board_does_not_pass"},
     {BoardFault::DoesNotGoIn, WillNotWork, "board_does_not_go_in"},
     {BoardFault::KeeperMisses, WillNotWork, "board_keeper_misses"},
     {BoardFault::Jams, WillNotWork, "board_jams"},
     {BoardFault::TooFarOut, WillNotWork, "board_too_far_out"},
     {BoardFault::SticksAside, WillNotWork, "board_sticks_aside"},
     {BoardFault::SticksInHeight, WillNotWork, "board_sticks_in_height"},
     {BoardFault::BradTooShort, AgainstPractice, "board_brad_too_short"},
     {BoardFault::KeeperScrewTooShort, AgainstPractice, "board_keeper_screw_too_short"},
     {BoardFault::BradTipNear, AgainstPractice, "board_brad_tip_near"},
     {BoardFault::KeeperScrewTipNear, AgainstPractice, "board_keeper_screw_tip_near"},
     {BoardFault::RunsHard, AgainstPractice, "board_runs_hard"},
     {BoardFault::NearJam, AgainstPractice, "board_near_jam"},
     {BoardFault::FurringThin, AgainstPractice, "board_furring_thin"},
     {BoardFault::BearsNothing, AgainstPractice, "board_keeper_screws_bear_nothing"},
     {BoardFault::NoFurring, AgainstPractice, "board_no_furring"},
     {BoardFault::PieceLeftOut, ToKnow, "board_keeper_piece_left_out"},
     {BoardFault::SofterRunner, ToKnow, "board_softer_runner"}}};

constexpr bool eachAtItsPlace() {
    for (std::size_t i = 0; i < rows.size(); ++i)
        if (static_cast<std::size_t>(rows[i].fault) != i)
            return false;
    return true;
}
static_assert(eachAtItsPlace());

bool has(const PerSide<std::optional<LayerCheck>>& checks, Passage passage) {
    return std::any_of(allSides.begin(), allSides.end(),
                       [&](Side side) { return checks[side] && checks[side]->passage == passage; });
}

bool leavesOut(const FittedBoard& fitted) {
    return !fitted.strips.left.leftOut.empty() || !fitted.strips.right.leftOut.empty();
}

bool swingsOut(const BoardSpec& spec, const BoardPlan& board) {
    const Length gap = greatest(board.insideGap.left, board.insideGap.right);
    return spec.furred == Furred::No && gap > board.sidePlay + spec.workingAllowance.length;
}

bool jams(const FittedBoard& fitted) {
    return fitted.closedRunning.running == Running::Jams || fitted.running.running == Running::Jams;
}

/// Where it jams before it is too far out for another reason, it is told that it jams.
bool isTooFarOut(const FittedBoard& fitted) {
    return fitted.wanted > fitted.safe.pullOut && fitted.hold.holdsBoard && endOfHold(fitted.out) &&
           !(fitted.safe.end == PullOutEnd::Jams && jams(fitted));
}

bool isNearJam(const FittedBoard& fitted) {
    return fitted.wanted > fitted.safe.pullOut && !jams(fitted) &&
           fitted.running.guided < leastSafelyGuided(fitted.running);
}

bool isThere(BoardFault fault, const BoardSpec& spec, const FittedBoard& fitted) {
    switch (fault) {
    case BoardFault::BradBlowsOut:
        return has(fitted.brads, Passage::BlowsOut);
    case BoardFault::KeeperScrewBlowsOut:
        return has(fitted.keeperScrews, Passage::BlowsOut);
    case BoardFault::DoesNotPass:
        return fitted.board.underTopRail < Length{};
    case BoardFault::DoesNotGoIn:
        return fitted.board.behind < Length{};
    case BoardFault::KeeperMisses:
        return !fitted.hold.holdsBoard;
    case BoardFault::Jams:
        return jams(fitted);
    case BoardFault::TooFarOut:
        return isTooFarOut(fitted);
    case BoardFault::SticksAside:
        return fitted.season && fitted.season->sidePlay < Length{};
    case BoardFault::SticksInHeight:
        return fitted.season && fitted.season->playInHeight < Length{};
    case BoardFault::BradTooShort:
        return has(fitted.brads, Passage::TooShort);
    case BoardFault::KeeperScrewTooShort:
        return has(fitted.keeperScrews, Passage::TooShort);
    case BoardFault::BradTipNear:
        return has(fitted.brads, Passage::TipNear);
    case BoardFault::KeeperScrewTipNear:
        return has(fitted.keeperScrews, Passage::TipNear);
    case BoardFault::RunsHard:
        return fitted.closedRunning.running == Running::Hard && !jams(fitted);
    case BoardFault::NearJam:
        return isNearJam(fitted);
    case BoardFault::FurringThin:
        return fitted.hold.furring > Length{} && fitted.hold.furring < fitted.hold.leastFurring;
    case BoardFault::BearsNothing:
        return fitted.hold.holdsBoard && fitted.hold.isSheared && fitted.hold.lateral == Force();
    case BoardFault::NoFurring:
        return swingsOut(spec, fitted.board);
    case BoardFault::PieceLeftOut:
        return leavesOut(fitted);
    case BoardFault::SofterRunner:
        break;
    }
    return fitted.isRunnerSofter.value_or(false);
}

} // namespace

BoardGravity gravityOf(BoardFault fault) {
    return rows[static_cast<std::size_t>(fault)].gravity;
}

std::string_view key(BoardFault fault) {
    return rows[static_cast<std::size_t>(fault)].key;
}

std::vector<BoardFault> faultsOf(const BoardSpec& spec, const FittedBoard& fitted) {
    std::vector<BoardFault> faults;
    for (const Row& row : rows)
        if (isThere(row.fault, spec, fitted))
            faults.push_back(row.fault);
    return faults;
}

std::optional<BoardFinding> tell(BoardFault fault, const BoardSpec& spec, const FittedBoard& fitted,
                                 const Limits& limits, LengthStyle style) {
    if (!isThere(fault, spec, fitted))
        return std::nullopt;
    return boards::worded(fault, {spec, fitted, limits, style});
}

} // namespace frontwright
