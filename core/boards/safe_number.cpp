#include "core/boards/board_figures.h"
#include "core/lengths/format.h"

#include <algorithm>

namespace frontwright::boards {
namespace {

struct Asked {
    const FittedBoard& fitted;
    LengthStyle style;

    [[nodiscard]] std::string term(Length length) const { return shownPrecisely(length, style); }
    [[nodiscard]] std::string value() const {
        return shown(fitted.safe.pullOut, style, Rounding::Down);
    }
    [[nodiscard]] Length frame() const { return fitted.board.strip.low; }
};

struct Reason {
    Phrase formula;
    std::string figures;
    Source source;
};

/// "5/4 × 8 15/16 in"
std::string reserve(const Asked& asked) {
    return "5/4 × " + asked.term(asked.fitted.running.least);
}

/// Up to the last whole step of the pull-out: "6 53/64 in ≥ 6 13/16 in".
std::string inSteps(const Asked& asked, Length most) {
    const std::string sum = asked.term(most);
    return sum == asked.value() ? sum : sum + " ≥ " + asked.value();
}

Reason untilItJams(const Asked& asked) {
    const BoardPlan& board = asked.fitted.board;
    const Length needed = leastSafelyGuided(asked.fitted.running);
    const Length most = board.depth - needed;
    const bool isByFrame = asked.fitted.beyondSkew.guide == Guide::Frame;
    if (!isByFrame && most >= asked.fitted.safe.pullOut)
        return {
            text("depth − 5/4 × length at which it jams: a quarter more is kept guided, so that "
                 "it does not jam"),
            asked.term(board.depth) + " − " + reserve(asked) + " = " + inSteps(asked, most),
            friction()};
    const Length guided = isByFrame ? asked.fitted.beyondSkew.guided : board.depth;
    return {isByFrame ? text("until only the frame guides it, over less than 5/4 × the length at "
                             "which it jams")
                      : text("less of it is guided than 5/4 × the length at which it jams, even "
                             "closed"),
            asked.term(guided) + " < " + reserve(asked) + " = " + asked.term(needed), friction()};
}

/// Screws that go too little into the wood are not counted on at all.
Reason untilItWouldTip(const Asked& asked) {
    return {text("until it would tip by itself: the keeper strips' screws go less than 4 × their "
                 "shank into the wood behind, and are not counted on to bear across it; take "
                 "thinner or longer ones, or a thicker panel"),
            asked.term(asked.fitted.hold.penetration) + " < 4 × D; " + asked.value(),
            sourceNamed(SourceKind::FromMemory,
                        text("Wood Handbook, chapter 8, older editions, across the shank, from "
                             "memory"))};
}

/// "12 in: 638 lbf·in / 3 1/4 in = 196 lbf, 0.984; 12 1/16 in: 1.007 > 1"
Reason untilAScrewYields(const Asked& asked) {
    const KeeperHold& hold = asked.fitted.hold;
    if (hold.isSheared && hold.lateral == Force())
        return untilItWouldTip(asked);
    const PulledOut& at = asked.fitted.safeOut;
    const auto use = [&](const PulledOut& out) {
        // Thousandths: a hundredth more than 1 would read as 1.
        return number(static_cast<double>(out.keeper.use.value_or(Ratio()).thousandths()) / 1000, 3,
                      asked.style);
    };
    const std::string beyond =
        asked.term(asked.fitted.beyond.pullOut) + ": " + use(asked.fitted.beyond) + " > 1";
    const Phrase formula =
        text("until the most loaded screw of the keeper strip bears its design value: its use by "
             "uplift = moment / lever, 1 at most");
    if (at.keeper.use.value_or(Ratio()) > Ratio::fromThousandths(1000))
        return {formula, asked.term(at.pullOut) + ": " + use(at) + " > 1", statics()};
    return {formula,
            asked.term(at.pullOut) + ": " + shownMoment(at.moment, asked.style) + " / " +
                asked.term(at.keeper.lever) + " = " + shown(at.keeper.uplift, asked.style) + ", " +
                use(at) + "; " + beyond,
            statics()};
}

/// "1/32 in × (13 7/16 in + 3/4 in) / 1 13/16 in = 0.245 in ≤ 1/4 in"
Reason untilItDroops(const Asked& asked) {
    const PulledOut& at = asked.fitted.safeOut;
    const Length droop = at.droop.value_or(Length{});
    return {text("until its front edge sinks too far: play in height × (pull-out + frame) / lever"),
            asked.term(asked.fitted.board.playInHeight) + " × (" + asked.term(at.pullOut) + " + " +
                asked.term(asked.frame()) + ") / " + asked.term(at.keeper.lever) + " = " +
                fine(droop, asked.style) + (droop <= mostDroop ? " ≤ " : " > ") +
                asked.term(mostDroop),
            commonPractice()};
}

/// Where the board's back leaves the strip that ends first.
Reason untilItTips(const Asked& asked) {
    if (!asked.fitted.hold.holdsBoard)
        return {text("the keeper strips do not hold its back down"), asked.value(), statics()};
    Length front;
    for (const Side side : {Side::Left, Side::Right}) {
        const auto& pieces = asked.fitted.strips[side].pieces;
        front =
            greatest(front, pieces.empty() ? asked.fitted.board.depth : pieces.front().along.low);
    }
    const Length most = asked.fitted.board.depth - front;
    return {text("depth − front end of the keeper strip: until nothing is left to hold its back "
                 "down"),
            asked.term(asked.fitted.board.depth) + " − " + asked.term(front) + " = " +
                inSteps(asked, most),
            statics()};
}

Reason reasonOf(const Asked& asked) {
    switch (asked.fitted.safe.end) {
    case PullOutEnd::Keeper:
        return untilAScrewYields(asked);
    case PullOutEnd::Droops:
        return untilItDroops(asked);
    case PullOutEnd::Jams:
        return untilItJams(asked);
    case PullOutEnd::Tips:
        break;
    }
    return untilItTips(asked);
}

} // namespace

BoardNumber safePullOutNumber(const FittedBoard& fitted, LengthStyle style) {
    const Asked asked{fitted, style};
    Reason reason = reasonOf(asked);
    return {text("Safe pull-out"), asked.value(), std::move(reason.formula),
            std::move(reason.figures), std::move(reason.source)};
}

} // namespace frontwright::boards
