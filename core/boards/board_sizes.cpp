#include "core/boards/board_figures.h"
#include "core/lengths/format.h"

namespace frontwright {
namespace {

using namespace boards;

struct Asked {
    const BoardSpec& spec;
    const BoardPlace& place;
    const FittedBoard& fitted;
    LengthStyle style;

    /// What is cut and set up to these sizes, the templates draw exactly.
    [[nodiscard]] std::string set(Length length) const { return shownInFull(length, style); }
    [[nodiscard]] std::string term(Length length) const { return shownPrecisely(length, style); }
    [[nodiscard]] BoardNumber row(Phrase name, Length value, Phrase formula,
                                  const std::string& figures) const {
        return {std::move(name), set(value), std::move(formula), figures + " = " + set(value),
                commonPractice()};
    }
};

BoardNumber width(const Asked& asked) {
    const BoardPlan& board = asked.fitted.board;
    return asked.row(text("Board width"), board.width, text("opening − 2 × side play"),
                     asked.term(asked.place.opening.width()) + " − 2 × " +
                         asked.term(board.sidePlay));
}

BoardNumber furring(const Asked& asked, Side side) {
    const bool isLeft = side == Side::Left;
    const Length back = isLeft ? asked.place.opening.left - asked.place.leftPanel
                               : asked.place.rightPanel - asked.place.opening.right;
    return asked.row(isLeft ? text("Furring on the left, thickness")
                            : text("Furring on the right, thickness"),
                     asked.fitted.board.furring[side],
                     text("side panel to the opening's edge − working allowance"),
                     asked.term(back) + " − " + asked.term(asked.spec.workingAllowance));
}

BoardNumber runnerTop(const Asked& asked) {
    const BoardPlan& board = asked.fitted.board;
    const Text name = text("Setup block for the runner: its top above the opening's lower edge");
    if (asked.spec.runnerRise)
        return {name, asked.set(board.runnerTop), text("as given"), asked.set(board.runnerTop),
                makersDecision()};
    return asked.row(name, board.runnerBlock, text("(opening's height − board) / 2"),
                     "(" + asked.term(asked.place.opening.height()) + " − " +
                         asked.term(board.thickness) + ") / 2");
}

BoardNumber runnerUnderside(const Asked& asked) {
    const BoardPlan& board = asked.fitted.board;
    return asked.row(text("Runner's underside above the opening's lower edge"),
                     board.runnerUnderside, text("runner's top − its height"),
                     asked.term(board.runnerTop) + " − " + asked.term(asked.spec.runnerHeight));
}

BoardNumber keeperBlock(const Asked& asked) {
    const BoardPlan& board = asked.fitted.board;
    return asked.row(text("Setup block for the keeper strip: its underside above the runner"),
                     board.keeperBlock, text("board + play in height"),
                     asked.term(board.thickness) + " + " + asked.term(board.playInHeight));
}

BoardNumber keeperUnderside(const Asked& asked) {
    const BoardPlan& board = asked.fitted.board;
    return asked.row(text("Keeper strip's underside above the opening's lower edge"),
                     board.keeperUnderside, text("runner's top + board + play in height"),
                     asked.term(board.runnerTop) + " + " + asked.term(board.thickness) + " + " +
                         asked.term(board.playInHeight));
}

BoardNumber underTopRail(const Asked& asked) {
    const BoardPlan& board = asked.fitted.board;
    return asked.row(text("Left under the top rail"), board.underTopRail,
                     text("opening's height − runner's top − board"),
                     asked.term(asked.place.opening.height()) + " − " +
                         asked.term(board.runnerTop) + " − " + asked.term(board.thickness));
}

BoardNumber behind(const Asked& asked) {
    const BoardPlan& board = asked.fitted.board;
    return asked.row(text("Left behind the closed board"), board.behind,
                     text("frame + depth inside − board's depth"),
                     asked.term(asked.place.frameThickness) + " + " +
                         asked.term(asked.place.caseDepth) + " − " + asked.term(board.depth));
}

BoardNumber piece(const Asked& asked, Side side, std::size_t i) {
    const Span along = asked.fitted.strips[side].pieces[i].along;
    const std::string count = std::to_string(i + 1);
    return asked.row(side == Side::Left ? phrase("Keeper strip on the left, piece %1", count)
                                        : phrase("Keeper strip on the right, piece %1", count),
                     along.size(), text("its end − its beginning, from the case's front"),
                     asked.term(along.high) + " − " + asked.term(along.low));
}

} // namespace

std::vector<BoardNumber> sizesOf(const BoardSpec& spec, const BoardPlace& place,
                                 const FittedBoard& fitted, LengthStyle style) {
    const Asked asked{spec, place, fitted, style};
    std::vector<BoardNumber> rows{width(asked)};
    for (const Side side : {Side::Left, Side::Right})
        if (fitted.board.furring[side] > Length{})
            rows.push_back(furring(asked, side));
    for (const auto make :
         {runnerTop, runnerUnderside, keeperBlock, keeperUnderside, underTopRail, behind})
        rows.push_back(make(asked));
    for (const Side side : {Side::Left, Side::Right})
        for (std::size_t i = 0; i < fitted.strips[side].pieces.size(); ++i)
            rows.push_back(piece(asked, side, i));
    return rows;
}

} // namespace frontwright
