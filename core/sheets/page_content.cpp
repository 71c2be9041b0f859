#include "core/sheets/page_content.h"

#include "core/drawings/line_style.h"
#include "core/sheets/clipping.h"
#include "core/sheets/label_placing.h"

#include <algorithm>

namespace frontwright {

namespace {

constexpr double insideTrim = 0.8; ///< mm between a label and the trim line
constexpr double jointClear = 5;   ///< mm, as tile() keeps it

PointMm moved(const PointMm& p, const PointMm& by) {
    return p + by;
}

/// A mark that was cut, on its page.
Mark moved(Mark mark, const PointMm& by) {
    if (auto* line = std::get_if<LineMark>(&mark.shape)) {
        *line = {line->from + by, line->to + by};
    } else if (auto* path = std::get_if<PathMark>(&mark.shape)) {
        for (PointMm& p : path->points)
            p += by;
    } else if (auto* circle = std::get_if<CircleMark>(&mark.shape)) {
        circle->centre += by;
    } else if (auto* hatch = std::get_if<HatchMark>(&mark.shape)) {
        for (PointMm& p : hatch->outline)
            p += by;
    } else if (auto* text = std::get_if<TextMark>(&mark.shape)) {
        text->at += by;
    }
    return mark;
}

bool isOnTile(const TemplateLabel& label, const Tile& tile) {
    if (const auto* circle = std::get_if<CircleMark>(&label.beside))
        return isInside(*circle, tile.area);
    return clipped(std::get<LineMark>(label.beside), tile.trimmed).has_value();
}

/// What is to be drilled is labelled first, while there is most room.
std::vector<TemplateLabel> labelsOn(const Template& part, const Tile& tile) {
    std::vector<TemplateLabel> labels;
    std::copy_if(part.labels.begin(), part.labels.end(), std::back_inserter(labels),
                 [&](const TemplateLabel& label) { return isOnTile(label, tile); });
    std::stable_partition(labels.begin(), labels.end(), [](const TemplateLabel& label) {
        return std::holds_alternative<CircleMark>(label.beside);
    });
    return labels;
}

/// Register crosses take room too; they are the same from both sides of a joint.
void avoidCrosses(LabelPlacer& placer, const TileOnPage& place) {
    constexpr double reach = 4.5;
    const BoxMm& box = place.tile.trimmed;
    for (int axis : {0, 1}) {
        const int along = 1 - axis;
        for (double at : {box.min()[axis], box.max()[axis]})
            for (double cross :
                 crossPlaces(place.part, axis, at, box.min()[along], box.max()[along])) {
                const PointMm centre = axis == 0 ? PointMm(at, cross) : PointMm(cross, at);
                placer.avoid(BoxMm(centre - PointMm(reach, reach), centre + PointMm(reach, reach)));
            }
    }
}

void addLabels(Page& page, const TileOnPage& place, const std::vector<Mark>& drawn) {
    const PointMm inset(insideTrim, insideTrim);
    const BoxMm& trimmed = place.tile.trimmed;
    LabelPlacer placer({trimmed.min() + inset, trimmed.max() - inset});
    for (const Mark& mark : drawn)
        placer.avoid(mark);
    if (place.tiles.tiling.tiles.size() > 1)
        avoidCrosses(placer, place);
    for (const TemplateLabel& label : labelsOn(place.part, place.tile))
        for (Mark& mark : placer.place(label))
            page.drawing.marks.push_back(moved(std::move(mark), place.shift));
}

std::string corner(const PathMark& path, std::size_t index) {
    static constexpr std::array names{"lower left", "lower right", "upper right", "upper left"};
    if (path.points.size() == names.size())
        return names.at(index);
    return "corner " + std::to_string(index + 1);
}

} // namespace

void addContent(Page& page, const TileOnPage& place) {
    std::vector<Mark> drawn;
    for (const Mark& mark : place.part.drawing.marks)
        for (Mark& piece : clipped(mark, place.tile.area))
            drawn.push_back(std::move(piece));
    for (const Mark& mark : drawn)
        page.drawing.marks.push_back(moved(mark, place.shift));
    addLabels(page, place, drawn);
    for (PageMark& mark : pageMarks(place.part, place.tile.area, place.shift))
        page.marks.push_back(std::move(mark));
}

bool showsPart(const Template& part, const BoxMm& area) {
    const BoxMm common = area.intersection(part.part);
    if (common.isEmpty())
        return false;
    return std::any_of(part.drawing.marks.begin(), part.drawing.marks.end(), [&](const Mark& mark) {
        return mark.layer != Layer::Waste && mark.layer != Layer::Note &&
               !clipped(mark, common).empty();
    });
}

std::vector<PointMm> holesToKeepOffJoints(const Template& part) {
    std::vector<PointMm> points;
    for (const Mark& mark : part.drawing.marks)
        if (const auto* circle = std::get_if<CircleMark>(&mark.shape)) {
            points.push_back(circle->centre);
            const double beyond = circle->radius - jointClear;
            if (beyond > 0)
                for (const PointMm& to : {PointMm(beyond, 0), PointMm(0, beyond)}) {
                    points.push_back(circle->centre + to);
                    points.push_back(circle->centre - to);
                }
        }
    return points;
}

std::vector<PointMm> linesToKeepOffJoints(const Template& part) {
    std::vector<PointMm> points;
    const PointMm corner = part.drawing.extent.min(); // no joint is ever near it
    for (const Mark& mark : part.drawing.marks)
        if (const auto* line = std::get_if<LineMark>(&mark.shape);
            line && !mark.part.name.empty()) {
            if (line->from.x() == line->to.x())
                points.emplace_back(line->from.x(), corner.y());
            else if (line->from.y() == line->to.y())
                points.emplace_back(corner.x(), line->from.y());
        }
    return points;
}

std::vector<PageMark> pageMarks(const Template& part, const BoxMm& area, const PointMm& shift) {
    std::vector<PageMark> marks;
    const auto add = [&](std::string kind, const std::string& name, const PointMm& at) {
        if (!area.contains(at))
            return;
        const PointMm onPage = moved(at, shift);
        marks.push_back(
            {std::move(kind), part.title.english() + " / " + name, onPage.x(), onPage.y()});
    };
    for (const Mark& mark : part.drawing.marks) {
        if (mark.part.name.empty())
            continue;
        if (const auto* circle = std::get_if<CircleMark>(&mark.shape)) {
            add(std::string(key(mark.layer)), mark.part.name, circle->centre);
        } else if (const auto* path = std::get_if<PathMark>(&mark.shape)) {
            for (std::size_t i = 0; i < path->points.size(); ++i)
                add("corner", mark.part.name + ", " + corner(*path, i), path->points[i]);
        } else if (const auto* line = std::get_if<LineMark>(&mark.shape)) {
            if (const auto piece = clipped(*line, area)) {
                add(std::string(key(mark.layer)), mark.part.name + " / from", piece->from);
                add(std::string(key(mark.layer)), mark.part.name + " / to", piece->to);
            }
        }
    }
    return marks;
}

} // namespace frontwright
