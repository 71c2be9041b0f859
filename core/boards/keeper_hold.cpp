#include "core/boards/keeper_hold.h"

#include "core/holding/holding.h"
#include "core/holding/lateral.h"
#include "core/holding/withdrawal.h"

#include <algorithm>
#include <cassert>

namespace frontwright {
namespace {

Length lesserFurring(const BoardPlan& board) {
    return greatest({}, least(board.furring.left, board.furring.right));
}

/// The shorter one bears less.
Length shorterScrew(const KeeperSpec& spec) {
    return least(screwAt(spec, Side::Left).length, screwAt(spec, Side::Right).length);
}

Length penetrationOf(const KeeperSpec& spec, const BoardPlan& board) {
    const bool isSideways = spec.fastening == KeeperFastening::Sideways;
    const Length passed = isSideways ? spec.width.length : spec.height.length;
    const Length in = shorterScrew(spec) + spec.screwRecess.length - passed;
    const Length there = lesserFurring(board) + board.panelThickness;
    return greatest({}, isSideways ? least(in, there) : in);
}

Ratio pryingOf(const KeeperSpec& spec, const BoardPlan& board) {
    const Length gap = spec.width.length - board.keeperGrip;
    const double twiceOut = (spec.width.length + gap).inMillimetres();
    if (spec.fastening == KeeperFastening::Sideways)
        return Ratio::of(twiceOut, spec.height.length.inMillimetres());
    const double furring = lesserFurring(board).inMillimetres();
    return Ratio::of(2 * furring + twiceOut, furring);
}

} // namespace

KeeperHold keeperHold(const KeeperSpec& spec, const BoardPlan& board, const WoodScrew* screw,
                      const Species* wood) {
    KeeperHold hold;
    hold.isSheared = spec.fastening == KeeperFastening::Sideways;
    const bool hasGround = hold.isSheared || lesserFurring(board) > Length{};
    hold.holdsBoard = board.keeperGrip > Length{} && hasGround;
    hold.penetration = penetrationOf(spec, board);
    hold.prying = pryingOf(spec, board);
    if (!hold.isSheared) {
        hold.furring = lesserFurring(board);
        hold.leastFurring =
            screw ? 2 * screwDistances(screw->shankDiameter, Prebored::Yes).toEdge : Length{};
    }
    if (!screw || !wood || !wood->gravity)
        return hold;
    const Length shank = screw->shankDiameter;
    hold.withdrawal = designWithdrawal(gravityOvendry(*wood->gravity), shank,
                                       threadInWood(hold.penetration, shorterScrew(spec)));
    if (hold.isSheared)
        hold.lateral =
            designLateral(gravityAt12Percent(*wood->gravity), wood->kind, shank, hold.penetration);
    return hold;
}

std::optional<Ratio> useOf(const KeeperHold& hold, Force lift) {
    if (!hold.withdrawal || (hold.isSheared && !hold.lateral))
        return std::nullopt;
    if (lift <= Force())
        return Ratio();
    const auto most = static_cast<double>(Ratio::mostThousandths) / 1000;
    const auto part = [&](double load, Force bears) {
        return bears > Force() ? load / bears.inNewtons() : most;
    };
    const double prying = static_cast<double>(hold.prying.thousandths()) / 1000;
    double use = part(lift.inNewtons() * prying, *hold.withdrawal);
    if (hold.isSheared)
        use += part(lift.inNewtons(), *hold.lateral);
    return Ratio::of(use, 1);
}

double greatestPart(const KeeperPiece& piece, Length at) {
    assert(!piece.screws.empty());
    const auto n = static_cast<double>(piece.screws.size());
    double mean = 0;
    for (const Length y : piece.screws)
        mean += y.inMillimetres() / n;
    double squares = 0;
    for (const Length y : piece.screws)
        squares += (y.inMillimetres() - mean) * (y.inMillimetres() - mean);
    double greatest = 0;
    for (const Length y : piece.screws) {
        const double off = (at.inMillimetres() - mean) * (y.inMillimetres() - mean);
        greatest = std::max(greatest, 1 / n + (squares > 0 ? off / squares : 0));
    }
    return greatest;
}

} // namespace frontwright
