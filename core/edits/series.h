#pragma once

#include "core/project/project.h"
#include "core/results/result.h"

#include <vector>

namespace frontwright {

/// What makes room for a series whose sizes do not fill the present one.
enum class SeriesRoom : std::uint8_t {
    Kept,       ///< first and last are exact; those between share what is left, in the same ratio
    CaseFollows ///< all are exact, to the grid; the case becomes as high (or wide) as they need
};

/// A geometric series between a given first and last size, for a split's children in their order.
///   ratio = (last / first)^(1 / (n − 1));  size of the i-th = first × ratio^i
struct Series {
    std::int64_t ratioMillionths = 1'000'000;
    std::vector<Length> ideal; ///< on the case's grid, first and last as given
    Length needed;             ///< their sum
    Length room;               ///< what the split has for them now
    std::vector<Length> sizes; ///< as SeriesRoom::Kept makes them; empty where it cannot
    friend bool operator==(const Series&, const Series&) = default;
};

/// The series for the split that decides the opening's size along `direction`: all its children,
/// but those between the first and the last that are locked. Error: the opening spans the case, a
/// size that is not more than 0, fewer than three children.
Result<Series> seriesBetween(const Project&, OpeningId, Direction, WrittenLength first,
                             WrittenLength last);

/// Makes it so: first and last become fixed sizes, those between a run of the series' ratio.
/// Error also where there is no room, or where the split does not span the case that shall follow.
Result<Project> fitSeries(const Project&, OpeningId, Direction, WrittenLength first,
                          WrittenLength last, SeriesRoom);

} // namespace frontwright
