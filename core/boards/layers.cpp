#include "core/boards/layers.h"

namespace frontwright {
namespace {

Passage passageOf(const LayerCheck& check, const Limits& limits) {
    if (check.cover <= Length{})
        return Passage::BlowsOut;
    if (check.penetration < limits.leastPenetration.length)
        return Passage::TooShort;
    if (check.cover < limits.leastTipCover.length)
        return Passage::TipNear;
    return Passage::Holds;
}

} // namespace

LayerCheck checkLayers(Length length, Length set, const std::vector<Length>& passed, Length last,
                       const Limits& limits) {
    LayerCheck check;
    for (const Length layer : passed)
        check.passed += layer;
    check.penetration = length + set - check.passed;
    check.cover = last - check.penetration;
    check.leastLength = check.passed - set + limits.leastPenetration.length;
    check.greatestLength = check.passed - set + last - limits.leastTipCover.length;
    check.passage = passageOf(check, limits);
    return check;
}

std::optional<LayerCheck> checkBrad(const BoardSpec& spec, const BoardPlan& board, Side side,
                                    const Limits& limits) {
    if (board.furring[side] <= Length{})
        return std::nullopt;
    return checkLayers(bradAt(spec, side), spec.bradSet, {board.furring[side]},
                       board.panelThickness, limits);
}

std::optional<LayerCheck> checkKeeperScrew(const KeeperSpec& spec, const BoardPlan& board,
                                           Side side, const Limits& limits) {
    if (spec.fastening == KeeperFastening::Down)
        return std::nullopt;
    return checkLayers(screwAt(spec, side), spec.screwRecess,
                       {spec.width, greatest({}, board.furring[side])}, board.panelThickness,
                       limits);
}

} // namespace frontwright
