#include "core/sheets/sheets.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <limits>

namespace frontwright {

namespace {

constexpr double clearOfJoint = 5; ///< mm; a hole nearer than this moves the joint
constexpr double tolerance = 1e-9; ///< mm

/// One axis of the extent, with what has to be laid on it.
struct Axis {
    double low;
    double high;
    double usable;
    double overlap;
    std::vector<double> holes;
    [[nodiscard]] double step() const { return usable - overlap; }
};

struct Joints {
    std::vector<double> at;
    double clearance = std::numeric_limits<double>::infinity(); ///< of the nearest hole
};

/// n areas and n − 1 overlaps: n × usable − (n − 1) × overlap >= length.
int leastCount(const Axis& axis) {
    const double length = axis.high - axis.low;
    if (length <= axis.usable + tolerance)
        return 1;
    return static_cast<int>(std::ceil((length - axis.overlap) / axis.step() - tolerance));
}

double clearance(const Axis& axis, double joint) {
    double nearest = std::numeric_limits<double>::infinity();
    for (double hole : axis.holes)
        nearest = std::min(nearest, std::abs(hole - joint));
    return nearest;
}

/// The place in low … high that is clear of holes and nearest to `wanted`; where none is clear,
/// the one that is farthest from a hole.
double placeJoint(const Axis& axis, double wanted, double low, double high) {
    std::vector<double> candidates{std::clamp(wanted, low, high), low, high};
    for (double hole : axis.holes)
        for (double candidate : {hole - clearOfJoint, hole + clearOfJoint})
            if (low <= candidate && candidate <= high)
                candidates.push_back(candidate);
    const auto isBetter = [&](double a, double b) {
        const double clearA = std::min(clearance(axis, a), clearOfJoint - tolerance);
        const double clearB = std::min(clearance(axis, b), clearOfJoint - tolerance);
        if (clearA != clearB)
            return clearA > clearB;
        return std::abs(a - wanted) < std::abs(b - wanted);
    };
    return *std::min_element(candidates.begin(), candidates.end(), isBetter);
}

/// Equal areas where no hole is in the way; each joint stays where the rest still fits, and no tile
/// becomes narrower than an overlap.
Joints joints(const Axis& axis, int count) {
    const double length = axis.high - axis.low;
    const double area = (length + (count - 1) * axis.overlap) / count;
    const double narrowest = std::min({axis.overlap, axis.step(), length / count / 2});
    Joints result;
    double begin = axis.low;
    for (int k = 1; k < count; ++k) {
        const int left = count - k;
        const double wanted = axis.low + k * (area - axis.overlap) + axis.overlap / 2;
        const double reach = k == 1 ? axis.usable - axis.overlap / 2 : axis.step();
        const double latest = std::min(begin + reach, axis.high - left * narrowest);
        const double earliest =
            std::max(begin + narrowest, axis.high - left * axis.step() - axis.overlap / 2);
        const double joint = placeJoint(axis, wanted, std::min(earliest, latest), latest);
        result.clearance = std::min(result.clearance, clearance(axis, joint));
        result.at.push_back(joint);
        begin = joint;
    }
    return result;
}

/// Where a hole stays too near to a joint, one page more gives the joints room to move.
std::vector<double> joints(const Axis& axis) {
    const int count = leastCount(axis);
    Joints fewest = joints(axis, count);
    if (fewest.clearance >= clearOfJoint - tolerance)
        return fewest.at;
    Joints roomier = joints(axis, count + 1);
    return roomier.clearance >= clearOfJoint - tolerance ? roomier.at : fewest.at;
}

/// Stretches between joints: the first begins at low, the last ends at high.
std::vector<std::array<double, 2>> stretches(const Axis& axis) {
    std::vector<std::array<double, 2>> result;
    double begin = axis.low;
    for (double joint : joints(axis)) {
        result.push_back({begin, joint});
        begin = joint;
    }
    result.push_back({begin, axis.high});
    return result;
}

/// A stretch with half the overlap beyond each of its joints.
std::array<double, 2> overlapped(std::array<double, 2> stretch, const Axis& axis) {
    return {std::max(axis.low, stretch[0] - axis.overlap / 2),
            std::min(axis.high, stretch[1] + axis.overlap / 2)};
}

Axis axisOf(int which, const BoxMm& extent, double usable, double overlap,
            std::span<const PointMm> holes) {
    Axis axis{extent.min()[which], extent.max()[which], usable, overlap, {}};
    for (const PointMm& hole : holes)
        axis.holes.push_back(hole[which]);
    return axis;
}

std::string rowLetters(int row) {
    std::string letters;
    for (int n = row + 1; n > 0; n = (n - 1) / 26)
        letters.insert(letters.begin(), static_cast<char>('A' + (n - 1) % 26));
    return letters;
}

} // namespace

Tiling tile(const BoxMm& extent, double usableWidth, double usableHeight, double overlap,
            std::span<const PointMm> holes) {
    assert(overlap >= 0 && usableWidth > overlap && usableHeight > overlap);
    const Axis across = axisOf(0, extent, usableWidth, overlap, holes);
    const Axis upright = axisOf(1, extent, usableHeight, overlap, holes);
    const auto columns = stretches(across);
    auto rows = stretches(upright);
    std::reverse(rows.begin(), rows.end()); // row A is the topmost
    Tiling result{static_cast<int>(columns.size()), static_cast<int>(rows.size()), {}};
    for (int row = 0; row < result.rows; ++row)
        for (int column = 0; column < result.columns; ++column) {
            const auto x = columns[static_cast<std::size_t>(column)];
            const auto y = rows[static_cast<std::size_t>(row)];
            const auto wideX = overlapped(x, across);
            const auto wideY = overlapped(y, upright);
            result.tiles.push_back({column,
                                    row,
                                    {PointMm(wideX[0], wideY[0]), PointMm(wideX[1], wideY[1])},
                                    {PointMm(x[0], y[0]), PointMm(x[1], y[1])}});
        }
    return result;
}

std::string tileName(const Tile& tile) {
    return rowLetters(tile.row) + std::to_string(tile.column + 1);
}

} // namespace frontwright
