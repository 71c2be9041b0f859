#include "core/case/divisions.h"

namespace frontwright {
namespace {

/// Shared regions are the same without a look inside; that makes undo steps cheap to compare.
bool sameRegion(const RegionPtr& a, const RegionPtr& b) {
    if (a == b)
        return true;
    return a != nullptr && b != nullptr && *a == *b;
}

} // namespace

bool operator==(const Child& a, const Child& b) {
    return a.rule == b.rule && sameRegion(a.region, b.region);
}

bool operator==(const Case& a, const Case& b) {
    return a.width == b.width && a.height == b.height && a.depth == b.depth &&
           a.construction == b.construction && a.frame == b.frame &&
           a.frameThickness == b.frameThickness && a.grid == b.grid && a.unknowns == b.unknowns &&
           a.surroundings == b.surroundings && a.systemHoles == b.systemHoles &&
           sameRegion(a.divisions, b.divisions);
}

Length thicknessOfFrame(const Case& casework) {
    switch (casework.construction) {
    case Construction::FaceFrame:
        return casework.frameThickness;
    case Construction::Frameless:
        break;
    }
    return {};
}

Length depthOfMembers(const Case& casework) {
    switch (casework.construction) {
    case Construction::FaceFrame:
        return casework.frameThickness;
    case Construction::Frameless:
        break;
    }
    return casework.depth;
}

} // namespace frontwright
