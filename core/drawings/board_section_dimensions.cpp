#include "core/drawings/board_section_parts.h"
#include "core/drawings/clear_rows.h"
#include "core/drawings/dimension_marks.h"
#include "core/drawings/section_parts.h"
#include "core/lengths/format.h"

#include <algorithm>

namespace frontwright {
namespace {

/// Heights behind the case, above the opening's lower edge.
void layHeights(DimensionRows& rows, const BoardSubject& subject) {
    const BoardPlan& sizes = subject.sizes();
    rows.keepClear(0);
    rows.keepClear(subject.opening().inMillimetres());
    rows.addChain(
        {boardMeasure(subject, {}, sizes.runnerTop, text("runner block %1")),
         boardMeasure(subject, sizes.runnerTop, sizes.keeperUnderside, text("keeper block %1"))});
    rows.addOverall(boardMeasure(subject, {}, subject.opening(), text("opening %1")));
}

/// Without its word where that has no room: the pieces beside it tell what it is.
Measured lengthOf(const BoardSubject& subject, const KeeperPiece& piece) {
    Measured length = boardMeasure(subject, piece.along.low, piece.along.high, text("piece %1"));
    if (!fitsBetweenTicks(length.text, (length.high - length.low) * subject.options.paperScale))
        length.text = shownBare(piece.along.size(), subject.style());
    return length;
}

/// The keeper strip's pieces and what is left free between them, from the frame's face.
void layPieces(DimensionRows& rows, const BoardSubject& subject) {
    std::vector<Measured> pieces, places;
    for (const KeeperPiece& piece : subject.strip().pieces) {
        rows.keepClear(piece.along.low.inMillimetres());
        pieces.push_back(lengthOf(subject, piece));
        places.push_back(boardMeasure(subject, {}, piece.along.low, text("begins at %1")));
    }
    rows.keepClear(0);
    rows.addChain(std::move(pieces));
    for (Measured& place : places)
        rows.addChain({std::move(place)});
}

} // namespace

Measured boardMeasure(const BoardSubject& subject, Length a, Length b, Text pattern) {
    const Length size = (b - a).magnitude();
    return {least(a, b).inMillimetres(), greatest(a, b).inMillimetres(),
            subject.say({pattern, {shownBare(size, subject.style())}}), std::nullopt,
            subject.part(partName(pattern))};
}

void layBoardDepths(DimensionRows& rows, const BoardSubject& subject) {
    const BoardPlan& sizes = subject.sizes();
    const Length out = subject.board.fitted.wanted;
    rows.keepClear(0);
    std::vector<Measured> chain;
    if (out > Length{})
        chain.push_back(boardMeasure(subject, -out, {}, text("pulled out %1")));
    chain.push_back(boardMeasure(subject, {}, sizes.depth, text("board %1")));
    if (sizes.behind > Length{})
        chain.push_back(boardMeasure(subject, sizes.depth, sizes.strip.high, text("free %1")));
    rows.addChain(std::move(chain));
    rows.addOverall(boardMeasure(subject, {}, sizes.strip.high, text("inside %1")));
}

void drawBoardDimensions(Sketch& sketch, const BoardSubject& subject) {
    const double scale = sketch.paperScale();
    const BoxMm drawn = extentOf({sketch.marks(), {}, scale});
    DimensionRows right(Side::Right, drawn.max().x(), scale);
    layHeights(right, subject);
    const std::vector<Mark> heights = right.marks();
    const auto depths = [&](Side side, double edge, int outwards, auto lay) {
        const double reach = reachPast({&right}, edge * scale, outwards);
        return laidClear({side, edge, scale, reach}, heights,
                         [&](DimensionRows& rows) { lay(rows, subject); });
    };
    for (const auto& marks : {depths(Side::Bottom, drawn.min().y(), -1, layBoardDepths),
                              depths(Side::Top, drawn.max().y(), 1, layPieces), heights})
        for (const Mark& mark : marks)
            sketch.add(mark);
}

} // namespace frontwright
