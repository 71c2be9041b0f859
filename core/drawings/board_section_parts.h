#pragma once

#include "core/drawings/board_section.h"
#include "core/drawings/dimension_rows.h"
#include "core/drawings/sketch.h"

namespace frontwright {

/// What a board's section is drawn from.
struct BoardSubject {
    const Plan& plan;
    const PlannedBoard& board;
    const BoardSectionOptions& options;

    [[nodiscard]] const BoardPlan& sizes() const { return board.fitted.board; }
    [[nodiscard]] const KeeperStrip& strip() const { return board.fitted.strips[options.side]; }
    [[nodiscard]] Span keeperUpright() const {
        return {sizes().keeperUnderside,
                sizes().keeperUnderside + board.spec->keeper.height.length};
    }
    /// How deep the members round the opening are: the frame, or frameless the whole case.
    [[nodiscard]] Length members() const {
        return board.place.frameThickness > Length{} ? board.place.frameThickness
                                                     : sizes().strip.high;
    }
    /// Furring, plays and setup blocks are told as the templates draw them.
    [[nodiscard]] LengthStyle style() const { return {options.style.unit, 64, options.style.mark}; }
    [[nodiscard]] Length opening() const { return board.place.opening.height(); }
    [[nodiscard]] std::string say(const Phrase& words) const {
        return told(words, options.language);
    }
    [[nodiscard]] Part part(std::string name) const {
        return {board.opening, std::nullopt, std::move(name)};
    }
};

/// Rows of dimensions round all that has been drawn.
void drawBoardDimensions(Sketch&, const BoardSubject&);

/// What is measured between two places of one axis, with the pattern's words.
Measured boardMeasure(const BoardSubject&, Length a, Length b, Text pattern);
/// Along the depth: pulled out, the board, what is free behind it; inside the case.
void layBoardDepths(DimensionRows&, const BoardSubject&);
/// The note's line: how far out it is safe.
Phrase boardStrength(const BoardSubject&);

} // namespace frontwright
