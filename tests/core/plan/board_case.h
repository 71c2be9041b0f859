#pragma once

#include "core/plan/boards.h"
#include "tests/core/plan/small_case.h"

#include <algorithm>

namespace frontwright::testing {

/// The same case, with a new board in the opening at that place in reading order.
inline Project withBoard(Project project, std::size_t which) {
    OpeningId id;
    withOpenings(project, [&](const Opening& opening, std::size_t index) {
        if (index == which)
            id = opening.id;
    });
    const BoardSpec board = newBoardFor(project, id).value();
    return withOpenings(std::move(project), [&](Opening& opening, std::size_t index) {
        if (index != which)
            return;
        opening.use = OpeningUse::Board;
        opening.board = board;
    });
}

/// A writing desk's upper part: one opening 18 in wide and 1 in high over a drawer, stiles 1 1/2
/// in, 20 in deep behind a frame of 3/4 in.
inline Project boardOverDrawer() {
    return withBoard(projectWith(rows({fixed(Length::inches(1), opening()), share(opening())},
                                      Length::inches(0, 48)),
                                 Length::inches(21), Length::inches(10)),
                     0);
}

} // namespace frontwright::testing
