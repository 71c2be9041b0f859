#include "core/edits/construction.h"

#include "core/edits/choices_checks.h"
#include "core/edits/tree_paths.h"

namespace frontwright {

namespace {

constexpr std::array<Text, allSurroundMeasures.size()> measureWords{
    text("the distance from the case"),
    text("the distance of the neighbour's front from its case's edge"),
    text("the thickness"),
    text("the height"),
    text("the width"),
    text("the overhang at the front"),
    text("the overhang at the sides"),
    text("the projection"),
    text("the setback"),
    text("the lip"),
    text("the gap"),
};

std::optional<Error> impossible(const SystemHoles& holes) {
    if (auto error = notPositive(text("the diameter of the system holes"), holes.diameter))
        return error;
    if (auto error = notPositive(text("the pitch of the system holes"), holes.pitch))
        return error;
    if (!isPossiblePitch(holes))
        return Error{{},
                     text("holes at this pitch run into one another"),
                     text("the pitch is from centre to centre: 32 mm is usual")};
    if (auto error = negative(text("the height of the first hole"), holes.first))
        return error;
    if (auto error = negative(text("the setback of the front row"), holes.setback))
        return error;
    if (holes.rear && holes.rear->length <= holes.setback.length)
        return Error{{},
                     text("the rear row must stand behind the front row"),
                     text("measure both from the panels' front edge")};
    return std::nullopt;
}

} // namespace

Result<Project> setConstruction(const Project& project, Construction construction) {
    Project changed = project;
    changed.casework.construction = construction;
    return laidOut(std::move(changed));
}

Result<Project> setSurround(const Project& project, Side side, const Surround& surround) {
    if (!canStandAt(side, kindOf(surround)))
        return Error{{},
                     text("that cannot stand at this side of the case"),
                     text("a top lies above, a plinth and legs stand below")};
    for (const SurroundMeasure measure : allSurroundMeasures)
        if (const WrittenLength* length = lengthOf(surround, measure))
            if (auto error = negative(measureWords[static_cast<std::size_t>(measure)], *length))
                return std::move(*error);
    Project changed = project;
    changed.casework.surroundings[side] = surround;
    return changed;
}

Result<Project> setSystemHoles(const Project& project, const std::optional<SystemHoles>& holes) {
    if (holes)
        if (auto error = impossible(*holes))
            return std::move(*error);
    Project changed = project;
    if (holes)
        changed.casework.systemHoles = *holes;
    else
        changed.casework.systemHoles.reset();
    return changed;
}

} // namespace frontwright
