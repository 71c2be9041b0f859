#include "core/edits/series.h"

#include "core/case/child_sizes.h"
#include "core/edits/snap.h"
#include "core/edits/tree_paths.h"
#include "core/lengths/format.h"

#include <algorithm>
#include <cmath>

namespace frontwright {
namespace {

/// The children that the series is for: the first, the last, and the unlocked ones between.
std::vector<std::size_t> placesOf(const Split& split) {
    std::vector<std::size_t> places{0};
    for (std::size_t i = 1; i + 1 < split.children.size(); ++i)
        if (isFlexible(split.children[i].rule))
            places.push_back(i);
    places.push_back(split.children.size() - 1);
    return places;
}

double ratioOf(Length first, Length last, std::size_t count) {
    return std::pow(last.inMillimetres() / first.inMillimetres(),
                    1.0 / static_cast<double>(count - 1));
}

std::vector<Length> idealSizes(Length first, Length last, std::size_t count, Length grid) {
    const double ratio = ratioOf(first, last, count);
    std::vector<Length> sizes{first};
    for (std::size_t i = 1; i + 1 < count; ++i) {
        const Length size = Length::nearestToMillimetres(first.inMillimetres() *
                                                         std::pow(ratio, static_cast<double>(i)));
        sizes.push_back(grid > Length{} ? onGrid(size, grid) : size);
    }
    sizes.push_back(last);
    return sizes;
}

Split withSeries(const Split& split, const Series& series, WrittenLength first,
                 WrittenLength last) {
    Split changed = split;
    for (const std::size_t i : placesOf(split))
        changed.children[i].rule = GraduatedPlace{};
    changed.children.front().rule = FixedSize{first};
    changed.children.back().rule = FixedSize{last};
    changed.graduation = GeometricRun{series.ratioMillionths};
    if (changed.remainderChild == 0 || changed.remainderChild + 1 == changed.children.size())
        changed.remainderChild = placesOf(split)[1];
    return changed;
}

/// Whether nothing above the path's end divides the case along the direction.
bool spansCase(TreePathView path, Direction direction) {
    return std::ranges::none_of(
        path, [&](const TreeStep& step) { return step.split->direction == direction; });
}

struct Fitted {
    SizedPlace sized;
    Series series;
};

Result<Fitted> fitted(const Project& project, OpeningId id, Direction direction,
                      WrittenLength first, WrittenLength last) {
    if (first.length <= Length{} || last.length <= Length{})
        return Error{{}, text("the first and the last size must be more than 0"), {}};
    auto found = sizedPlace(project.casework, id, direction);
    if (!found.ok())
        return found.error();
    SizedPlace sized = std::move(found).value();
    const Split& split = *sized.place.split;
    if (split.children.size() < 3)
        return Error{{},
                     text("a series has a first, a last and at least one between"),
                     text("split the opening into three or more")};
    const std::vector<std::size_t> places = placesOf(split);
    if (places.size() < 3)
        return Error{{},
                     text("all sizes between the first and the last are locked"),
                     text("unlock them first")};
    Series series;
    const double ratio = ratioOf(first, last, places.size());
    if (ratio > 1000 || ratio < 0.001)
        return Error{{}, text("the first and the last size are too unlike"), {}};
    series.ratioMillionths = std::llround(ratio * 1e6);
    series.ideal = idealSizes(first, last, places.size(), project.casework.grid);
    for (std::size_t i = 0; i < places.size(); ++i) {
        series.needed += series.ideal[i];
        series.room += sized.sizes[places[i]];
    }
    std::vector<Length> kept;
    if (appendSizes(withSeries(split, series, first, last), sized.total, project.casework.grid,
                    kept))
        for (const std::size_t i : places)
            series.sizes.push_back(kept[i]);
    return Fitted{std::move(sized), std::move(series)};
}

} // namespace

Result<Series> seriesBetween(const Project& project, OpeningId id, Direction direction,
                             WrittenLength first, WrittenLength last) {
    auto found = fitted(project, id, direction, first, last);
    if (!found.ok())
        return found.error();
    return std::move(found).value().series;
}

Result<Project> fitSeries(const Project& project, OpeningId id, Direction direction,
                          WrittenLength first, WrittenLength last, SeriesRoom room) {
    auto found = fitted(project, id, direction, first, last);
    if (!found.ok())
        return found.error();
    const auto& [sized, series] = found.value();
    const TreePath& path = sized.place.path;
    Project changed = withSplit(project, path, withSeries(*sized.place.split, series, first, last));
    if (room == SeriesRoom::Kept && series.sizes.empty())
        return Error{{},
                     phrase("there is no room between a first of %1 and a last of %2",
                            shown(first, project.style), shown(last, project.style)),
                     text("let the case follow, or take smaller ones")};
    if (room == SeriesRoom::CaseFollows) {
        if (!spansCase(path, direction))
            return Error{{},
                         text("the bank does not span the case"),
                         text("keep the room, or choose a bank that does")};
        WrittenLength& size =
            direction == Direction::Rows ? changed.casework.height : changed.casework.width;
        size = size.length + (series.needed - series.room);
    }
    return laidOut(std::move(changed));
}

} // namespace frontwright
