#include "core/boards/board_figures.h"
#include "core/boards/board_wording.h"
#include "core/lengths/format.h"

namespace frontwright::boards {
namespace {

/// Of both sides the one whose cover (or, too short, whose penetration) is least.
LayerCheck worse(const PerSide<std::optional<LayerCheck>>& checks, Passage passage) {
    const auto of = [&](Side side) {
        return checks[side] && checks[side]->passage == passage ? checks[side] : std::nullopt;
    };
    const auto left = of(Side::Left);
    const auto right = of(Side::Right);
    if (!left || !right)
        return left ? *left : *right;
    return (passage == Passage::TooShort ? right->penetration < left->penetration
                                         : right->cover < left->cover)
               ? *right
               : *left;
}

Passage passageOf(BoardFault fault) {
    if (fault == BoardFault::BradBlowsOut || fault == BoardFault::KeeperScrewBlowsOut)
        return Passage::BlowsOut;
    const bool isShort =
        fault == BoardFault::BradTooShort || fault == BoardFault::KeeperScrewTooShort;
    return isShort ? Passage::TooShort : Passage::TipNear;
}

bool isBrad(BoardFault fault) {
    return fault == BoardFault::BradBlowsOut || fault == BoardFault::BradTooShort ||
           fault == BoardFault::BradTipNear;
}

Phrase blowsOut(bool brad, const std::string& out) {
    return brad ? phrase("The furring's brads come through the show side of the case by %1", out)
                : phrase("The keeper strips' screws come through the show side of the case by %1",
                         out);
}

Phrase tooShort(bool brad, const std::string& in, const std::string& least) {
    return brad ? phrase("The furring's brads go only %1 into the side panel, less than %2", in,
                         least)
                : phrase("The keeper strips' screws go only %1 into the side panel, less than %2",
                         in, least);
}

Phrase tipNear(bool brad, const std::string& cover, const std::string& least) {
    return brad ? phrase("Before the tips of the furring's brads only %1 of wood is left, less "
                         "than %2",
                         cover, least)
                : phrase("Before the tips of the keeper strips' screws only %1 of wood is left, "
                         "less than %2",
                         cover, least);
}

Phrase remedyOf(const LayerCheck& check, LengthStyle style) {
    if (check.greatestLength < check.leastLength)
        return text("No length fits: glue the parts, or change the thickness of one");
    return phrase("Use a length from %1 to %2", shown(check.leastLength, style, Rounding::Up),
                  shown(check.greatestLength, style, Rounding::Down));
}

} // namespace

BoardFinding wordedFastener(BoardFault fault, const Told& told) {
    const bool brad = isBrad(fault);
    const Passage passage = passageOf(fault);
    const LayerCheck check = worse(brad ? told.fitted.brads : told.fitted.keeperScrews, passage);
    const auto say = [&](Length length) { return shown(length, told.style); };
    BoardFinding finding;
    finding.fault = fault;
    finding.gravity = gravityOf(fault);
    if (passage == Passage::BlowsOut)
        finding.sentence = blowsOut(brad, say(-check.cover));
    else if (passage == Passage::TooShort)
        finding.sentence =
            tooShort(brad, say(greatest({}, check.penetration)), say(told.limits.leastPenetration));
    else
        finding.sentence = tipNear(brad, say(check.cover), say(told.limits.leastTipCover));
    finding.reason =
        phrase("length and set − layers passed %1 = %2 in a side panel of %3", say(check.passed),
               say(check.penetration), say(told.fitted.board.panelThickness));
    finding.remedy = remedyOf(check, told.style);
    finding.source = commonPractice();
    return finding;
}

} // namespace frontwright::boards
