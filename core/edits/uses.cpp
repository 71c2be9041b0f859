#include "core/edits/uses.h"

#include "core/case/layout.h"
#include "core/edits/divisions.h"
#include "core/edits/every_opening.h"
#include "core/edits/tree_paths.h"
#include "core/plan/boards.h"

#include <algorithm>
#include <vector>

namespace frontwright {
namespace {

/// Ascending, each once, with all that share a divided face with one of them. Error: one of them
/// is not there.
Result<std::vector<OpeningId>> withTheirFaces(const Project& project,
                                              std::span<const OpeningId> openings) {
    std::vector<OpeningId> wanted(openings.begin(), openings.end());
    std::ranges::sort(wanted);
    const auto layout = layOut(project.casework);
    if (!layout.ok())
        return layout.error();
    const auto& all = layout.value().openings;
    const auto isWanted = [&](const PlacedOpening& opening) {
        return std::ranges::binary_search(wanted, opening.id);
    };
    std::vector<OpeningId> found;
    for (const PlacedOpening& opening : all)
        if (isWanted(opening))
            found.push_back(opening.id);
    std::ranges::sort(found);
    const auto repeated = std::ranges::unique(wanted);
    wanted.erase(repeated.begin(), repeated.end());
    if (found != wanted)
        return noSuchOpening();
    for (const DividedFace& face : layout.value().faces) {
        const auto fronts = std::span(all).subspan(face.first, face.count);
        if (std::ranges::any_of(fronts, isWanted))
            for (const PlacedOpening& opening : fronts)
                found.push_back(opening.id);
    }
    std::ranges::sort(found);
    return found;
}

} // namespace

Result<Project> setUse(const Project& project, std::span<const OpeningId> openings,
                       OpeningUse use) {
    const auto wanted = withTheirFaces(project, openings);
    if (!wanted.ok())
        return wanted.error();
    std::optional<Error> error;
    Project changed =
        withEveryOpening(project, [&](const Opening& opening) -> std::optional<Opening> {
            if (!std::ranges::binary_search(wanted.value(), opening.id) || opening.use == use)
                return std::nullopt;
            Opening used = opening;
            used.use = use;
            used.board.reset();
            if (use != OpeningUse::Board)
                return used;
            auto board = newBoardFor(project, opening.id);
            if (board.ok())
                used.board = std::move(board).value();
            else
                error = board.error();
            return used;
        });
    if (error)
        return std::move(*error);
    return laidOut(std::move(changed));
}

Result<Project> setHinge(const Project& project, std::span<const OpeningId> openings,
                         HingeSide side) {
    for (const OpeningId id : openings)
        if (findOpening(project, id) == nullptr)
            return noSuchOpening();
    return withEveryOpening(project, [&](const Opening& opening) -> std::optional<Opening> {
        if (opening.use != OpeningUse::Door ||
            std::ranges::find(openings, opening.id) == openings.end())
            return std::nullopt;
        Opening changed = opening;
        changed.hinge = side;
        return changed;
    });
}

} // namespace frontwright
