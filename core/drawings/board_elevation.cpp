#include "core/drawings/board_edge.h"
#include "core/drawings/elevation_parts.h"

namespace frontwright {
namespace {

Part partOf(const PlannedBoard& board, const char* name) {
    return {board.opening, std::nullopt, name};
}

/// A strip on one side of the case, as it is seen from the front.
struct Strip {
    const char* name;
    Length width; ///< from the panel, or from the furring, towards the middle
    Span upright; ///< above the opening's lower edge
};

void drawStrip(Sketch& sketch, const PlannedBoard& board, Side side, Length from,
               const Strip& strip) {
    if (strip.width <= Length{} || strip.upright.size() <= Length{})
        return;
    const Length foot = board.place.opening.bottom;
    const Length to = side == Side::Left ? from + strip.width : from - strip.width;
    sketch.rectangle(Layer::BoxEdge,
                     toMm(CaseRect{least(from, to), foot + strip.upright.low, greatest(from, to),
                                   foot + strip.upright.high}),
                     partOf(board, strip.name));
}

void drawSide(Sketch& sketch, const PlannedBoard& board, Side side) {
    const BoardPlan& plan = board.fitted.board;
    const KeeperSpec& keeper = board.spec->keeper;
    const Length panel = side == Side::Left ? board.place.leftPanel : board.place.rightPanel;
    const Length furring = greatest({}, plan.furring[side]);
    const Length inside = side == Side::Left ? panel + furring : panel - furring;
    const Span over{plan.keeperUnderside, plan.keeperUnderside + keeper.height.length};
    const bool liesOnFurring = keeper.fastening == KeeperFastening::Down;
    drawStrip(sketch, board, side, panel,
              {"furring",
               furring,
               {plan.runnerUnderside, liesOnFurring ? plan.keeperUnderside : over.high}});
    drawStrip(sketch, board, side, inside,
              {"runner", keeper.width, {plan.runnerUnderside, plan.runnerTop}});
    drawStrip(sketch, board, side, liesOnFurring ? panel : inside,
              {"keeper strip", liesOnFurring ? keeper.width + furring : keeper.width.length, over});
}

} // namespace

void drawBoard(Sketch& sketch, const Plan& all, const PlannedBoard& board) {
    const CaseRect edge = edgeOf(board);
    if (!edge.isEmpty()) {
        sketch.rectangle(Layer::MemberEdge, toMm(edge), partOf(board, "board edge"));
        nameBoard(sketch, all.spaces[board.space], toMm(edge));
    }
    for (const Side side : {Side::Left, Side::Right})
        drawSide(sketch, board, side);
}

} // namespace frontwright
