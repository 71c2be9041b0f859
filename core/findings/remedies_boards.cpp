#include "core/boards/new_board.h"
#include "core/edits/boards.h"
#include "core/edits/divisions.h"
#include "core/findings/remedying.h"
#include "core/lengths/format.h"

namespace frontwright::remedying {
namespace {

/// A search for edits that may cure what is to be heeded about one board.
struct BoardSearch {
    const PlannedBoard& board;
    const Project& project;
    const Catalogue& catalogue;
    std::string name;
    LengthStyle style;
    std::vector<Remedy>& found;

    [[nodiscard]] const BoardPlan& plan() const { return board.fitted.board; }
    [[nodiscard]] std::string say(Length length) const {
        return shown(length, {style.unit, 64, style.mark});
    }
    [[nodiscard]] BoardSpec spec() const { return *board.spec; }
    void propose(Phrase label, const BoardSpec& changed) const {
        found.push_back({std::move(label), [id = board.opening, changed](const Project& before) {
                             return setBoard(before, id, changed);
                         }});
    }
    /// The least whole number of 1/64 in or 0.1 mm that is not less.
    [[nodiscard]] Length up(Length length) const {
        const std::int64_t step = style.unit == Unit::Inch
                                      ? Length::fromSixtyFourths(1).nanometres()
                                      : Length::fromMicrometres(100).nanometres();
        return Length::fromNanometres((length.nanometres() + step - 1) / step * step);
    }
};

void addFurring(const BoardSearch& search) {
    if (search.board.spec->furred == Furred::Yes)
        return;
    BoardSpec spec = search.spec();
    spec.furred = Furred::Yes;
    search.propose(phrase("Fit furring beside board %1", search.name), spec);
}

void proposeBrads(const BoardSearch& search) {
    const auto lengths = bradsFor(*search.board.spec, search.plan(), search.project.limits,
                                  search.project.style.unit);
    if (!lengths)
        return;
    BoardSpec spec = search.spec();
    useBrads(spec, *lengths);
    search.propose(
        lengths->left == lengths->right
            ? phrase("Use brads of %1 beside board %2", search.say(lengths->left), search.name)
            : phrase("Use brads of %1 at the left and %2 at the right of board %3",
                     search.say(lengths->left), search.say(lengths->right), search.name),
        spec);
}

void proposeKeeperScrews(const BoardSearch& search) {
    const WoodScrew* screw = search.catalogue.woodScrew(search.board.spec->keeper.screw);
    if (screw == nullptr)
        return;
    const auto lengths =
        keeperScrewsFor(*search.board.spec, search.plan(), search.project.limits, screw->lengths);
    if (!lengths)
        return;
    BoardSpec spec = search.spec();
    useKeeperScrews(spec.keeper, *lengths);
    search.propose(
        lengths->left == lengths->right
            ? phrase("Use screws of %1 in the keeper strips over board %2",
                     search.say(lengths->left), search.name)
            : phrase("Use screws of %1 in the left and %2 in the right keeper strip over board %3",
                     search.say(lengths->left), search.say(lengths->right), search.name),
        spec);
}

/// Through the furring into the side panels, where a screw cannot split an edge.
void screwSideways(const BoardSearch& search) {
    BoardSpec spec = search.spec();
    spec.keeper.fastening = KeeperFastening::Sideways;
    const WoodScrew* screw = search.catalogue.woodScrew(spec.keeper.screw);
    const auto lengths =
        screw ? keeperScrewsFor(spec, search.plan(), search.project.limits, screw->lengths)
              : std::nullopt;
    if (lengths)
        useKeeperScrews(spec.keeper, *lengths);
    search.propose(
        phrase("Screw the keeper strips over board %1 sideways through the furring", search.name),
        spec);
}

void layInMiddle(const BoardSearch& search) {
    BoardSpec spec = search.spec();
    spec.runnerRise.reset();
    search.propose(phrase("Let board %1 lie in the middle of its opening's height", search.name),
                   spec);
}

void makeAsDeepAsCase(const BoardSearch& search) {
    const Length free =
        search.style.unit == Unit::Inch ? Length::inches(0, 32) : Length::millimetres(12);
    BoardSpec spec = search.spec();
    spec.depth = search.plan().strip.high - free;
    search.propose(phrase("Make board %1 %2 deep", search.name, search.say(spec.depth)), spec);
}

void widenKeepers(const BoardSearch& search) {
    BoardSpec spec = search.spec();
    const Length grip =
        search.style.unit == Unit::Inch ? Length::inches(0, 32) : Length::millimetres(12);
    spec.keeper.width =
        search.up(search.plan().insideGap.left) < search.up(search.plan().insideGap.right)
            ? search.up(search.plan().insideGap.right) + grip
            : search.up(search.plan().insideGap.left) + grip;
    search.propose(phrase("Make the keeper strips over board %1 %2 wide", search.name,
                          search.say(spec.keeper.width)),
                   spec);
}

void stopWhereSafe(const BoardSearch& search) {
    if (search.board.fitted.safe.pullOut <= Length{})
        return;
    BoardSpec spec = search.spec();
    spec.pullOut = search.board.fitted.safe.pullOut;
    search.propose(
        phrase("Stop board %1 at %2", search.name, search.say(search.board.fitted.safe.pullOut)),
        spec);
}

void leaveSidePlay(const BoardSearch& search) {
    BoardSpec spec = search.spec();
    spec.sidePlay = search.up(search.board.fitted.season->leastSidePlay);
    search.propose(
        phrase("Leave %1 of play on each side of board %2", search.say(spec.sidePlay), search.name),
        spec);
}

void leavePlayInHeight(const BoardSearch& search) {
    BoardSpec spec = search.spec();
    spec.playInHeight = search.up(search.board.fitted.season->leastPlayInHeight);
    search.propose(
        phrase("Leave %1 of play over board %2", search.say(spec.playInHeight), search.name), spec);
}

void makeRunnersAlike(const BoardSearch& search, const Opening* opening) {
    if (opening == nullptr)
        return;
    BoardSpec spec = search.spec();
    spec.runnerWood = opening->choices.stock ? opening->choices.stock->species
                                             : search.project.fronts.stock.species;
    search.propose(phrase("Make the runners of board %1 of the board's own wood", search.name),
                   spec);
}

void proposeFor(BoardFault fault, const BoardSearch& search) {
    switch (fault) {
    case BoardFault::BradBlowsOut:
    case BoardFault::BradTooShort:
    case BoardFault::BradTipNear:
        return proposeBrads(search);
    case BoardFault::KeeperScrewBlowsOut:
    case BoardFault::KeeperScrewTooShort:
    case BoardFault::KeeperScrewTipNear:
        return proposeKeeperScrews(search);
    case BoardFault::DoesNotPass:
        return layInMiddle(search);
    case BoardFault::DoesNotGoIn:
        return makeAsDeepAsCase(search);
    case BoardFault::KeeperMisses:
        addFurring(search);
        return widenKeepers(search);
    case BoardFault::Jams:
        addFurring(search);
        stopWhereSafe(search);
        return makeAsDeepAsCase(search);
    case BoardFault::TooFarOut:
        return stopWhereSafe(search);
    case BoardFault::NearJam:
        stopWhereSafe(search);
        return makeAsDeepAsCase(search);
    case BoardFault::FurringThin:
        return screwSideways(search);
    case BoardFault::SticksAside:
        return leaveSidePlay(search);
    case BoardFault::SticksInHeight:
        return leavePlayInHeight(search);
    case BoardFault::RunsHard:
        return makeAsDeepAsCase(search);
    case BoardFault::NoFurring:
        return addFurring(search);
    case BoardFault::PieceLeftOut:
    case BoardFault::BearsNothing:
        return;
    case BoardFault::SofterRunner:
        break;
    }
    makeRunnersAlike(search, findOpening(search.project, search.board.opening));
}

} // namespace

std::vector<Remedy> forBoard(const Finding& finding, const Project& project,
                             const Catalogue& catalogue, const Plan& plan, LengthStyle style) {
    const PlannedBoard* board = plan.boardOf(finding.where.opening.value_or(OpeningId{}));
    if (board == nullptr || !finding.fault)
        return {};
    std::vector<Remedy> found;
    proposeFor(*finding.fault,
               {*board, project, catalogue, label(plan.spaces[board->space]), style, found});
    return found;
}

} // namespace frontwright::remedying
