#pragma once

#include "core/project/project.h"
#include "core/results/result.h"

#include <optional>
#include <span>
#include <vector>

namespace frontwright {

/// From a split to one of its children.
struct TreeStep {
    const Split* split = nullptr; ///< into the Project's tree; never null
    std::size_t child = 0;
};
/// From the case's whole region downwards; empty names that region itself.
using TreePath = std::vector<TreeStep>;
using TreePathView = std::span<const TreeStep>;

/// To the region that is the opening; none where there is no such opening.
std::optional<TreePath> pathTo(const Case&, OpeningId);

/// A member between two children of a split.
struct MemberPlace {
    TreePath path; ///< to the region that is the split
    const Split* split = nullptr;
    std::size_t member = 0;
};
/// None for the frame's outer members, too.
std::optional<MemberPlace> placeOf(const Case&, MemberId);

const Region& regionAt(const Case&, TreePathView path);
/// Openings in a region.
std::size_t openingCount(const Region&);
/// Splits on the way to the deepest opening of a region.
int depthOf(const Region&);
/// The first opening of a region in reading order.
const Opening& firstOpening(const Region&);

/// A new case with `region` at the path's end. Splits on the path are copied, all else is shared.
Project withRegion(const Project&, TreePathView path, RegionPtr region);
/// The same for a split's new content.
Project withSplit(const Project&, TreePathView path, Split split);

/// Size along `direction` of the region at the path's end. Error: the case cannot be laid out.
Result<Length> lengthAlong(const Case&, TreePathView path, Direction direction);

/// The split that decides an opening's size along a direction, and through which of its children.
struct SizePlace {
    TreePath path; ///< to the region that is the split
    const Split* split = nullptr;
    std::size_t child = 0;
};
/// Error: there is no such opening, or it spans the case.
Result<SizePlace> sizePlace(const Case&, OpeningId, Direction);

/// The same, with the split's present size and those of its children.
struct SizedPlace {
    SizePlace place;
    Length total;
    std::vector<Length> sizes;
};
Result<SizedPlace> sizedPlace(const Case&, SizePlace place);
Result<SizedPlace> sizedPlace(const Case&, OpeningId, Direction);

/// The project itself where its case can be laid out.
Result<Project> laidOut(Project);

Error noSuchOpening();
Error noSuchMember();

} // namespace frontwright
