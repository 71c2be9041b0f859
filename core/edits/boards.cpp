#include "core/edits/boards.h"

#include "core/edits/choices_checks.h"
#include "core/edits/divisions.h"
#include "core/edits/tree_paths.h"

#include <array>

namespace frontwright {
namespace {

std::optional<Error> impossible(const KeeperSpec& keeper) {
    if (auto error =
            notPositive(text("the spacing of a keeper strip's screws"), keeper.screwSpacing))
        return error;
    for (const WrittenLength& length :
         {keeper.width, keeper.height, keeper.allowance, keeper.leastPiece, keeper.screwFromEnd,
          keeper.screwLength, keeper.rightScrewLength.value_or(WrittenLength()),
          keeper.screwRecess})
        if (auto error = negative(text("a keeper strip's measure"), length))
            return error;
    for (const FastenerToReach& fastener : keeper.fasteners) {
        if (fastener.side != Side::Left && fastener.side != Side::Right)
            return Error{{}, text("a fastener to reach is on the left or on the right"), {}};
        for (const WrittenLength& length : {fastener.depth, fastener.reach})
            if (auto error = negative(text("a fastener's place"), length))
                return error;
    }
    return std::nullopt;
}

} // namespace

std::optional<Error> impossible(const BoardSpec& board) {
    if (auto error = notPositive(text("the thickness of a board"), board.thickness))
        return error;
    if (auto error = notPositive(text("the depth of a board"), board.depth))
        return error;
    const WrittenLength none;
    for (const WrittenLength& length :
         {board.sidePanel, board.sidePlay, board.playInHeight, board.workingAllowance,
          board.runnerRise.value_or(none), board.runnerHeight, board.pullOut.value_or(none),
          board.pullOffCentre.value_or(none), board.bradLength,
          board.rightBradLength.value_or(none), board.bradSet})
        if (auto error = negative(text("a board's measure"), length))
            return error;
    if (board.load && *board.load < Force{})
        return Error{{}, text("a load at a board's edge cannot be less than nothing"), {}};
    return impossible(board.keeper);
}

Result<Project> setBoard(const Project& project, OpeningId id, const BoardSpec& board) {
    if (std::optional<Error> error = impossible(board))
        return std::move(*error);
    const Opening* opening = findOpening(project, id);
    if (opening == nullptr)
        return noSuchOpening();
    if (opening->use != OpeningUse::Board)
        return Error{{}, text("the opening is not for a board"), text("make it one for a board")};
    return changeOpening(project, id, [&](Opening changed) {
        changed.board = board;
        return changed;
    });
}

} // namespace frontwright
