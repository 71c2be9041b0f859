#pragma once

#include "core/boards/board_numbers.h"
#include "core/plan/plan.h"

namespace frontwright {

/// Between which panels a board runs in an opening. Behind a face frame an outer panel's face is
/// flush with its stile's outer edge, and one behind a stile between columns stands in that stile's
/// middle (common practice; a case's document does not say how it is built behind its frame).
/// Frameless the opening's own panels guide the board: the lesser thickness of the two.
BoardPlace boardPlace(const Case&, const Layout&, const PlacedOpening&, Length sidePanel);

/// A board for the opening, of that unit's usual sizes, as deep as its case lets it be, with brads
/// and screws that hold in the panels and stay in them; see newBoard. Error: no such opening, or
/// the case cannot be laid out.
Result<BoardSpec> newBoardFor(const Project&, OpeningId);

/// Fits the boards of plan.spaces. Its season has to be known. Error: a screw or a species that is
/// not in the catalogue.
std::optional<Error> addBoards(Plan&, const Project&, const Catalogue&, const Layout&);

/// "Pull-out board A1"
Phrase titleOf(const Plan&, const PlannedBoard&);
/// All of its numbers: what is cut, then how it runs.
std::vector<BoardNumber> numbersOf(const PlannedBoard&, LengthStyle);

} // namespace frontwright
