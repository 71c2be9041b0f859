#pragma once

#include "core/boards/fitted_board.h"
#include "core/results/source.h"
#include "core/words/phrase.h"

#include <string>
#include <vector>

namespace frontwright {

/// One number of a pull-out board and how it came about.
struct BoardNumber {
    Phrase name;         ///< "Board width"
    std::string value;   ///< "17 7/8 in"
    Phrase formula;      ///< "opening − 2 × side play"
    std::string figures; ///< "18 in − 2 × 1/16 in = 17 7/8 in"
    Source source;
};

/// Sizes, setup blocks and pieces: what is cut.
std::vector<BoardNumber> sizesOf(const BoardSpec&, const BoardPlace&, const FittedBoard&,
                                 LengthStyle);
/// How it runs, droops and is held, and what its fasteners do.
std::vector<BoardNumber> runningOf(const BoardSpec&, const FittedBoard&, LengthStyle);

} // namespace frontwright
