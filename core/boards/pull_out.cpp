#include "core/boards/pull_out.h"

#include <algorithm>
#include <tuple>

namespace frontwright {
namespace {

constexpr double standardGravity = 9.80665; // m/s², ISO 80000-3
constexpr double mostNewtons = 9e12;        // a Force in micronewtons holds it
constexpr Length leastLever = Length::millimetres(1);

Force forceOf(double newtons) {
    return Force::nearestToNewtons(std::clamp(newtons, 0.0, mostNewtons));
}

double momentOf(const LoadedBoard& loaded, Length pullOut) {
    const double arm = (pullOut + loaded.board.strip.low).inMillimetres() / 1000;
    const double half = loaded.board.depth.inMillimetres() / 2000;
    const double weight = loaded.weight ? loaded.weight->inKilograms() * standardGravity : 0;
    return std::max(0.0, loaded.load.inNewtons() * arm + weight * (arm - half));
}

/// Strip left over the board, and the piece on which its back bears.
struct Bearing {
    const KeeperPiece* piece = nullptr;
    Length at;
    Length behind;
};
Bearing bearingOf(const KeeperStrip& strip, Length back) {
    Bearing bearing;
    for (const KeeperPiece& piece : strip.pieces) {
        const Length end = least(piece.along.high, back);
        if (end <= piece.along.low)
            break;
        bearing.piece = &piece;
        bearing.at = end;
        bearing.behind += end - piece.along.low;
    }
    return bearing;
}

KeeperLoad loadOn(const LoadedBoard& loaded, Side side, Length pullOut, double moment) {
    const Bearing bearing = bearingOf(loaded.strips[side], loaded.board.depth - pullOut);
    const Length lever = bearing.at - loaded.board.strip.low;
    KeeperLoad load;
    load.side = side;
    load.behind = bearing.behind;
    if (!loaded.hold.holdsBoard || !bearing.piece || lever < leastLever)
        return load;
    load.lever = lever;
    load.uplift = forceOf(moment * 1000 / lever.inMillimetres());
    load.lift = forceOf(load.uplift.inNewtons() * greatestPart(*bearing.piece, bearing.at));
    load.pull = forceOf(load.lift.inNewtons() *
                        static_cast<double>(loaded.hold.prying.thousandths()) / 1000);
    load.use = useOf(loaded.hold, load.lift);
    return load;
}

/// One that holds nothing is worst; then what bears more, then the shorter lever and strip.
bool isWorse(const KeeperLoad& a, const KeeperLoad& b) {
    if (a.lever.isZero() != b.lever.isZero())
        return a.lever.isZero();
    if (a.use != b.use)
        return a.use > b.use;
    if (a.lift != b.lift)
        return a.lift > b.lift;
    return std::tie(a.lever, a.behind) < std::tie(b.lever, b.behind);
}

std::optional<PullOutEnd> endAt(const LoadedBoard& loaded, Length offCentre, Length pullOut) {
    if (const auto end = endOfHold(pulledOut(loaded, pullOut)))
        return end;
    const RunningJudgement running =
        judgeRunning(loaded.board, skewOf(loaded.board, pullOut), offCentre);
    if (running.running == Running::Jams || running.guided < leastSafelyGuided(running))
        return PullOutEnd::Jams;
    return std::nullopt;
}

} // namespace

Moment Moment::nearestToNewtonMetres(double nm) {
    const double micro = std::clamp(nm, -9e9, 9e9) * 1e6;
    return Moment(static_cast<std::int64_t>(micro + (micro < 0 ? -0.5 : 0.5)));
}

PulledOut pulledOut(const LoadedBoard& loaded, Length pullOut) {
    const double moment = momentOf(loaded, pullOut);
    const KeeperLoad left = loadOn(loaded, Side::Left, pullOut, moment);
    const KeeperLoad right = loadOn(loaded, Side::Right, pullOut, moment);
    PulledOut out;
    out.pullOut = pullOut;
    out.moment = Moment::nearestToNewtonMetres(moment);
    out.keeper = isWorse(right, left) ? right : left;
    if (!out.keeper.lever.isZero())
        out.droop = Length::nearestToMillimetres(
            loaded.board.playInHeight.inMillimetres() *
            (pullOut + loaded.board.strip.low).inMillimetres() / out.keeper.lever.inMillimetres());
    return out;
}

std::optional<PullOutEnd> endOfHold(const PulledOut& out) {
    const KeeperLoad& keeper = out.keeper;
    if (keeper.lever.isZero())
        return PullOutEnd::Tips;
    if (keeper.use && *keeper.use > Ratio::fromThousandths(1000))
        return PullOutEnd::Keeper;
    if (out.droop && *out.droop > mostDroop)
        return PullOutEnd::Droops;
    return std::nullopt;
}

SafePullOut safePullOut(const LoadedBoard& loaded, Length offCentre, Length step) {
    SafePullOut safe;
    for (Length out; out <= loaded.board.depth; out += step) {
        if (const auto end = endAt(loaded, offCentre, out)) {
            safe.end = *end;
            return safe;
        }
        safe.pullOut = out;
    }
    return safe;
}

} // namespace frontwright
