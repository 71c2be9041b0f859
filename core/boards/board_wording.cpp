#include "core/boards/board_wording.h"

#include "core/boards/board_figures.h"
#include "core/lengths/format.h"

namespace frontwright::boards {
namespace {

BoardFinding finding(BoardFault fault, Phrase sentence, Phrase reason, Phrase remedy,
                     Source source) {
    return {fault,
            gravityOf(fault),
            std::move(sentence),
            std::move(reason),
            std::move(remedy),
            std::move(source)};
}

BoardFinding doesNotPass(const Told& told) {
    const BoardPlan& board = told.fitted.board;
    const std::string lacks = shown(-board.underTopRail, told.style, Rounding::Up);
    return finding(BoardFault::DoesNotPass,
                   phrase("The board does not pass under the top rail: %1 are missing", lacks),
                   phrase("opening's height − runner's top %1 − board %2 is negative",
                          shown(board.runnerTop, told.style), shown(board.thickness, told.style)),
                   phrase("Set the runners lower by %1, or plane the board thinner", lacks),
                   commonPractice());
}

BoardFinding doesNotGoIn(const Told& told) {
    const BoardPlan& board = told.fitted.board;
    return finding(
        BoardFault::DoesNotGoIn,
        phrase("The board is deeper than its case by %1", shown(-board.behind, told.style)),
        phrase("frame and depth inside are %1, the board's depth is %2",
               shown(board.strip.high, told.style), shown(board.depth, told.style)),
        phrase("Make the board at most %1 deep",
               shown(board.strip.high, told.style, Rounding::Down)),
        commonPractice());
}

BoardFinding keeperMisses(const Told& told) {
    const BoardPlan& board = told.fitted.board;
    const std::string gap =
        shown(greatest(board.insideGap.left, board.insideGap.right), told.style);
    if (board.keeperGrip > Length{})
        return finding(
            BoardFault::KeeperMisses, text("There is no furring for the keeper strips to lie on"),
            text("They are to be screwed down into the furring's upper edge"),
            text("Fit furring, or screw the strips to the side panels"), commonPractice());
    return finding(BoardFault::KeeperMisses,
                   text("The keeper strips do not lie over the board, so that it tips out"),
                   phrase("They stand out by %1, and the board's edge is %2 away",
                          shown(told.spec.keeper.width, told.style), gap),
                   text("Make the strips wider, or fit furring"), commonPractice());
}

Phrase jamReason(const Told& told, const RunningJudgement& running) {
    return phrase("Pulled %1 from its middle, a board jams where no more than 2 × friction %2 × %1 "
                  "= %3 of it is guided: what presses at its two corners rubs as hard as it is "
                  "pulled, however hard that is",
                  shown(told.fitted.pullOffCentre, told.style),
                  number(frictionOfDryWood, 1, told.style), shown(running.least, told.style));
}

BoardFinding jams(const Told& told) {
    const FittedBoard& fitted = told.fitted;
    if (fitted.closedRunning.running == Running::Jams) {
        const RunningJudgement& running = fitted.closedRunning;
        const std::string guided = shown(running.guided, told.style);
        const Phrase reason = jamReason(told, running);
        if (fitted.closedSkew.guide == Guide::Frame)
            return finding(BoardFault::Jams,
                           phrase("The board jams: only the frame guides it, over %1", guided),
                           reason, text("Fit furring, which guides it over its whole depth"),
                           friction());
        return finding(BoardFault::Jams,
                       phrase("The board jams where it lies: %1 of it are guided, %2 of its width",
                              guided, number(running.toWidth, told.style)),
                       reason, text("Make the board deeper, or pull it nearer to its middle"),
                       friction());
    }
    return finding(BoardFault::Jams,
                   phrase("The board jams before it is %1 out: then %2 of it are guided",
                          shown(fitted.wanted, told.style),
                          shown(fitted.running.guided, told.style)),
                   jamReason(told, fitted.running),
                   phrase("Stop it at %1, make it deeper, or pull it nearer to its middle",
                          shown(fitted.safe.pullOut, told.style, Rounding::Down)),
                   friction());
}

BoardFinding tooFarOut(const Told& told) {
    const FittedBoard& fitted = told.fitted;
    const std::string wanted = shown(fitted.wanted, told.style);
    const Phrase remedy =
        phrase("Stop it at %1", shown(fitted.safe.pullOut, told.style, Rounding::Down));
    if (endOfHold(fitted.out) == PullOutEnd::Droops)
        return finding(
            BoardFault::TooFarOut,
            phrase("Pulled out %1, the board's front edge sinks by %2, more than %3", wanted,
                   fine(fitted.out.droop.value_or(Length{}), told.style),
                   shown(mostDroop, told.style)),
            phrase("droop = play in height × (pull-out + frame) / lever: %1 × (%2 + %3) / %4",
                   shown(fitted.board.playInHeight, told.style), wanted,
                   shown(fitted.board.strip.low, told.style),
                   shown(fitted.out.keeper.lever, told.style)),
            remedy, commonPractice());
    if (fitted.out.keeper.lever.isZero())
        return finding(
            BoardFault::TooFarOut,
            phrase("Pulled out %1, the board has no keeper strip over its back and tips", wanted),
            phrase("%1 of strip are left over the board",
                   shown(fitted.out.keeper.behind, told.style)),
            remedy, statics());
    return finding(
        BoardFault::TooFarOut,
        phrase("Pulled out %1, with %2 at its edge, the board lifts its keeper strip with %3",
               wanted, shown(fitted.load, told.style), shown(fitted.out.keeper.uplift, told.style)),
        phrase("The most loaded screw bears %1 times its design value; up to %2 it would not be "
               "more than once",
               number(fitted.out.keeper.use.value_or(Ratio()), told.style),
               shown(fitted.safe.pullOut, told.style)),
        remedy, statics());
}

Source movement() {
    return sourceNamed(SourceKind::Published,
                       text("Forest Products Laboratory, Wood Handbook, chapter 13: change of "
                            "size by coefficients"));
}

BoardFinding sticksAside(const Told& told) {
    const BoardSeason& season = *told.fitted.season;
    return finding(BoardFault::SticksAside,
                   phrase("In the wettest air the board is wider than its opening by %1",
                          fine(-season.sidePlay - season.sidePlay, told.style)),
                   phrase("Its width swells by %1, and its side play is 2 × %2",
                          fine(season.widthChange, told.style),
                          shown(told.fitted.board.sidePlay, told.style)),
                   phrase("Leave %1 on each side, or let its grain run from side to side",
                          fine(season.leastSidePlay, told.style)),
                   movement());
}

BoardFinding sticksInHeight(const Told& told) {
    const BoardSeason& season = *told.fitted.season;
    return finding(
        BoardFault::SticksInHeight,
        phrase(
            "In the wettest air the board is thicker than the room under its keeper strips by %1",
            fine(-season.playInHeight, told.style)),
        phrase("Its thickness swells by %1, and its play in height is %2",
               fine(season.thicknessChange, told.style),
               shown(told.fitted.board.playInHeight, told.style)),
        phrase("Leave %1 of play in height", fine(season.leastPlayInHeight, told.style)),
        movement());
}

BoardFinding runsHard(const Told& told) {
    const RunningJudgement& running = told.fitted.closedRunning;
    return finding(
        BoardFault::RunsHard,
        phrase("Pulled %1 from its middle, the board runs %2 times as hard as pulled straight",
               shown(told.fitted.pullOffCentre, told.style), number(running.harder, told.style)),
        phrase("%1 of it are guided, and at %2 it would jam; a board wider than it is guided "
               "racks",
               shown(running.guided, told.style), shown(running.least, told.style)),
        text("Make the board deeper, pull it in its middle, or wax its edges"), friction());
}

BoardFinding nearJam(const Told& told) {
    const FittedBoard& fitted = told.fitted;
    const RunningJudgement& running = fitted.running;
    return finding(
        BoardFault::NearJam,
        phrase("Pulled out %1, the board is near to jamming: %2 of it are guided, and at %3 it "
               "jams",
               shown(fitted.wanted, told.style), shown(running.guided, told.style),
               shown(running.least, told.style)),
        phrase("At least 5/4 × %1 = %2 should be guided, so that damp or dirt does not jam it",
               shown(running.least, told.style),
               shownPrecisely(leastSafelyGuided(running), told.style)),
        phrase("Stop it at %1, make it deeper, or pull it nearer to its middle",
               shown(fitted.safe.pullOut, told.style, Rounding::Down)),
        friction());
}

BoardFinding furringThin(const Told& told) {
    const KeeperHold& hold = told.fitted.hold;
    const std::string needed = shown(hold.leastFurring, told.style, Rounding::Up);
    return finding(
        BoardFault::FurringThin,
        phrase("The keeper strips' screws go down into a furring only %1 thick, less than %2: they "
               "may split it",
               shown(hold.furring, told.style), needed),
        phrase("least thickness = 2 × 2.5 × the screw's shank = %1: its least distance to an edge "
               "on both sides",
               shownPrecisely(hold.leastFurring, told.style)),
        text("Screw the strips sideways through the furring into the side panels, or use thinner "
             "screws"),
        sourceNamed(SourceKind::FromMemory,
                    text("NDS commentary, edge and end distances of wood screws, from memory")));
}

BoardFinding bearsNothing(const Told& told) {
    const FittedBoard& fitted = told.fitted;
    return finding(
        BoardFault::BearsNothing,
        phrase("The keeper strips' screws go only %1 into the wood behind and are not counted on: "
               "the board is safe to %2 only",
               shownPrecisely(fitted.hold.penetration, told.style),
               shown(fitted.safe.pullOut, told.style, Rounding::Down)),
        text("Across its shank a screw is counted on from 4 × the shank's diameter of penetration "
             "on"),
        text("Take thinner or longer screws, a narrower keeper strip, or a thicker side panel"),
        sourceNamed(SourceKind::FromMemory, text("Wood Handbook, chapter 8, older editions, across "
                                                 "the shank, from memory")));
}

BoardFinding noFurring(const Told& told) {
    const BoardPlan& board = told.fitted.board;
    return finding(
        BoardFault::NoFurring,
        phrase("Without furring the board turns by %1 in its case, its back aside by up to %2",
               degrees(told.fitted.closedSkew.angle, told.style),
               shown(greatest(board.insideGap.left, board.insideGap.right), told.style)),
        text("Behind the frame nothing guides it up to the side panels"),
        text("Fit furring from the side panels to the opening's edges"), commonPractice());
}

BoardFinding pieceLeftOut(const Told& told) {
    const bool isLeft = !told.fitted.strips.left.leftOut.empty();
    const KeeperStrip& strip = isLeft ? told.fitted.strips.left : told.fitted.strips.right;
    const std::string room = shown(strip.leftOut.front().size(), told.style);
    return finding(
        BoardFault::PieceLeftOut,
        isLeft ? phrase("Between fasteners on the left, %1 is too short for a piece of the keeper "
                        "strip",
                        room)
               : phrase("Between fasteners on the right, %1 is too short for a piece of the "
                        "keeper strip",
                        room),
        phrase("Pieces shorter than %1 are left out",
               shown(told.spec.keeper.leastPiece, told.style)),
        text("Nothing needs to be done where the other pieces hold the board"), commonPractice());
}

BoardFinding softerRunner() {
    return finding(BoardFault::SofterRunner,
                   text("The runners are of softer wood than the board that slides on them"),
                   text("The softer wood is worn hollow"),
                   text("Make the runners of wood as hard as the board"), commonPractice());
}

} // namespace

BoardFinding worded(BoardFault fault, const Told& told) {
    switch (fault) {
    case BoardFault::DoesNotPass:
        return doesNotPass(told);
    case BoardFault::DoesNotGoIn:
        return doesNotGoIn(told);
    case BoardFault::KeeperMisses:
        return keeperMisses(told);
    case BoardFault::Jams:
        return jams(told);
    case BoardFault::TooFarOut:
        return tooFarOut(told);
    case BoardFault::SticksAside:
        return sticksAside(told);
    case BoardFault::SticksInHeight:
        return sticksInHeight(told);
    case BoardFault::RunsHard:
        return runsHard(told);
    case BoardFault::NearJam:
        return nearJam(told);
    case BoardFault::FurringThin:
        return furringThin(told);
    case BoardFault::BearsNothing:
        return bearsNothing(told);
    case BoardFault::NoFurring:
        return noFurring(told);
    case BoardFault::PieceLeftOut:
        return pieceLeftOut(told);
    case BoardFault::SofterRunner:
        return softerRunner();
    case BoardFault::BradBlowsOut:
    case BoardFault::KeeperScrewBlowsOut:
    case BoardFault::BradTooShort:
    case BoardFault::KeeperScrewTooShort:
    case BoardFault::BradTipNear:
    case BoardFault::KeeperScrewTipNear:
        break;
    }
    return wordedFastener(fault, told);
}

} // namespace frontwright::boards
