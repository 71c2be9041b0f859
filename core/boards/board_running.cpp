#include "core/boards/board_figures.h"
#include "core/lengths/format.h"

namespace frontwright {
namespace {

using namespace boards;

struct Asked {
    const BoardSpec& spec;
    const FittedBoard& fitted;
    LengthStyle style;

    [[nodiscard]] std::string say(Length length) const { return shown(length, style); }
    [[nodiscard]] std::string term(Length length) const { return shownPrecisely(length, style); }
    [[nodiscard]] std::string say(Force force) const { return shown(force, style); }
    /// Of the frame, that the load's arm counts from.
    [[nodiscard]] Length frame() const { return fitted.board.strip.low; }
};
using Rows = std::vector<BoardNumber>;

/// "1/16 in + 3/32 in over 16 in: 0.56°"
BoardNumber skewRow(const Asked& asked, Phrase name, const Skew& skew) {
    const BoardPlan& board = asked.fitted.board;
    const bool isInside = skew.guide == Guide::Inside;
    const Length other =
        isInside ? greatest(board.insideGap.left, board.insideGap.right) : board.sidePlay;
    const std::string angle = degrees(skew.angle, asked.style);
    return {std::move(name), angle,
            isInside ? text("width × cos θ + length guided × sin θ = width + play at the frame + "
                            "play inside")
                     : text("width × cos θ + frame × sin θ = width + 2 × side play: the frame "
                            "alone holds it"),
            "(" + asked.term(board.sidePlay) + " + " + asked.term(other) + "), " +
                asked.term(skew.guided) + ": θ = " + angle,
            commonPractice()};
}

BoardNumber aside(const Asked& asked) {
    const Skew& skew = asked.fitted.skew;
    const std::string value = fine(skew.aside, asked.style);
    return {text("Front edge aside, pulled out"), value, text("sin θ × pull-out"),
            "sin " + degrees(skew.angle, asked.style) + " × " + asked.term(asked.fitted.wanted) +
                " = " + value,
            commonPractice()};
}

BoardNumber leastGuided(const Asked& asked) {
    const std::string value = shown(asked.fitted.running.least, asked.style, Rounding::Up);
    return {text("Jams at this length in the case"), value,
            text("2 × friction × how far from the middle it is pulled"),
            "2 × " + number(frictionOfDryWood, 1, asked.style) + " × " +
                asked.term(asked.fitted.pullOffCentre) + " = " +
                shownAsResult(asked.fitted.running.least, asked.style, Rounding::Up),
            friction()};
}

BoardNumber harder(const Asked& asked, Phrase name, const RunningJudgement& running) {
    const std::string value = number(running.harder, asked.style);
    return {std::move(name), value, text("1 / (1 − length at which it jams / length in the case)"),
            "1 / (1 − " + asked.term(running.least) + " / " + asked.term(running.guided) +
                ") = " + value,
            friction()};
}

BoardNumber moment(const Asked& asked) {
    const FittedBoard& fitted = asked.fitted;
    const std::string value = shownMoment(fitted.out.moment, asked.style);
    std::string figures = asked.say(fitted.load) + " × (" + asked.term(fitted.wanted) + " + " +
                          asked.term(asked.frame()) + ")";
    if (!fitted.weight)
        return {text("Moment about the runners' front end"), value,
                text("load × (pull-out + frame)"), figures + " = " + value, statics()};
    figures += " + " + shown(*fitted.weight, asked.style) + " × (" + asked.term(fitted.wanted) +
               " + " + asked.term(asked.frame()) + " − " + asked.term(fitted.board.depth) + " / 2)";
    return {text("Moment about the runners' front end"), value,
            text("load × (pull-out + frame) + board's weight × (pull-out + frame − depth / 2), "
                 "at least 0"),
            figures + " = " + value, statics()};
}

void addKeeper(Rows& rows, const Asked& asked) {
    const KeeperLoad& keeper = asked.fitted.out.keeper;
    rows.push_back({text("Keeper strip left over the board"), asked.say(keeper.behind),
                    text("all pieces before the board's back"), asked.say(keeper.behind),
                    commonPractice()});
    if (keeper.lever.isZero())
        return;
    rows.push_back({text("Uplift of the keeper strip"), asked.say(keeper.uplift),
                    text("moment / lever"),
                    shownMoment(asked.fitted.out.moment, asked.style) + " / " +
                        asked.term(keeper.lever) + " = " + asked.say(keeper.uplift),
                    statics()});
    const std::string prying = number(asked.fitted.hold.prying, asked.style);
    rows.push_back({text("Pull on the most loaded screw"), asked.say(keeper.pull),
                    text("its part of the uplift × prying"),
                    asked.say(keeper.lift) + " × " + prying + " = " + asked.say(keeper.pull),
                    statics()});
    const Length drop = *asked.fitted.out.droop;
    rows.push_back({text("Droop at the front edge"), fine(drop, asked.style),
                    text("play in height × (pull-out + frame) / lever"),
                    asked.term(asked.fitted.board.playInHeight) + " × (" +
                        asked.term(asked.fitted.wanted) + " + " + asked.term(asked.frame()) +
                        ") / " + asked.term(keeper.lever) + " = " + fine(drop, asked.style),
                    commonPractice()});
}

void addUse(Rows& rows, const Asked& asked) {
    const KeeperLoad& keeper = asked.fitted.out.keeper;
    const KeeperHold& hold = asked.fitted.hold;
    if (!keeper.use)
        return;
    const std::string value = number(*keeper.use, asked.style);
    std::string figures = asked.say(keeper.pull) + " / " + asked.say(*hold.withdrawal);
    if (hold.lateral)
        figures += " + " + asked.say(keeper.lift) + " / " + asked.say(*hold.lateral);
    rows.push_back({text("Use of the most loaded screw"), value,
                    hold.isSheared ? text("pull / withdrawal + uplift / load across the shank, "
                                          "design values; 1 at most")
                                   : text("pull / withdrawal, design value; 1 at most"),
                    figures + " = " + value,
                    sourceNamed(SourceKind::FromMemory,
                                text("National Design Specification (NDS), withdrawal; Wood "
                                     "Handbook, chapter 8, older editions, across the shank, from "
                                     "memory"))});
}

void addFastener(Rows& rows, const Asked& asked, Phrase name, Phrase formula,
                 const std::optional<LayerCheck>& check, Length length, Length set) {
    if (!check)
        return;
    rows.push_back(
        {std::move(name), shownInFull(check->penetration, asked.style), std::move(formula),
         asked.term(length) + " + " + asked.term(set) + " − " + asked.term(check->passed) + " = " +
             shownInFull(check->penetration, asked.style),
         commonPractice()});
}

void addFasteners(Rows& rows, const Asked& asked, Side side) {
    const bool isLeft = side == Side::Left;
    const KeeperSpec& keeper = asked.spec.keeper;
    addFastener(rows, asked,
                isLeft ? text("Brad in the left side panel") : text("Brad in the right side panel"),
                text("brad + set − furring"), asked.fitted.brads[side], bradAt(asked.spec, side),
                asked.spec.bradSet);
    addFastener(rows, asked,
                isLeft ? text("Keeper's screw in the left side panel")
                       : text("Keeper's screw in the right side panel"),
                text("screw + recess − keeper strip − furring"), asked.fitted.keeperScrews[side],
                screwAt(keeper, side), keeper.screwRecess);
}

void addSeason(Rows& rows, const Asked& asked) {
    if (!asked.fitted.season)
        return;
    const BoardSeason& season = *asked.fitted.season;
    const auto play = [&](Phrase name, Phrase formula, Length dry, Length takes, Length left) {
        rows.push_back({std::move(name), fine(left, asked.style), std::move(formula),
                        fine(dry, asked.style) + " − " + fine(takes, asked.style) + " = " +
                            fine(left, asked.style),
                        sourceNamed(SourceKind::Published,
                                    text("Forest Products Laboratory, Wood Handbook, chapter 13: "
                                         "change of size by coefficients"))});
    };
    play(text("Side play in the wettest air"), text("side play − half of what the width swells"),
         asked.fitted.board.sidePlay, season.leastSidePlay, season.sidePlay);
    play(text("Play in height in the wettest air"),
         text("play in height − what the thickness swells"), asked.fitted.board.playInHeight,
         season.leastPlayInHeight, season.playInHeight);
}

} // namespace

std::vector<BoardNumber> runningOf(const BoardSpec& spec, const FittedBoard& fitted,
                                   LengthStyle style) {
    const Asked asked{spec, fitted, style};
    Rows rows{
        skewRow(asked, text("Skew, closed"), fitted.closedSkew),
        skewRow(asked, text("Skew, pulled out"), fitted.skew),
        aside(asked),
        leastGuided(asked),
        harder(asked, text("Times as hard to pull as straight, closed"), fitted.closedRunning),
        harder(asked, text("Times as hard to pull as straight, pulled out"), fitted.running),
        safePullOutNumber(fitted, style),
        moment(asked)};
    addKeeper(rows, asked);
    addUse(rows, asked);
    for (const Side side : {Side::Left, Side::Right})
        addFasteners(rows, asked, side);
    addSeason(rows, asked);
    return rows;
}

} // namespace frontwright
