#include "core/sheets/label_candidates.h"

#include "core/drawings/lettering.h"
#include "core/sheets/text_lines.h"

#include <algorithm>
#include <array>

namespace frontwright {

namespace {

constexpr double besideReach = 5; ///< mm; farther away a label needs a leader
constexpr double gridPitch = 3;   ///< mm
constexpr std::array nearDistances{1.0, 2.5, 4.5, 7.0, 10.0, 14.0, 19.0, 25.0};

BoxMm boxAt(const PointMm& lowerLeft, const PointMm& size) {
    return {lowerLeft, PointMm(lowerLeft + size)};
}
PointMm nearestIn(const BoxMm& box, const PointMm& p) {
    return p.cwiseMax(box.min()).cwiseMin(box.max());
}

/// Into the quadrants of a hole's cross: right above, left above, right below, left below.
void addQuadrants(std::vector<BoxMm>& places, const PointMm& centre, const PointMm& offset,
                  const PointMm& size) {
    for (double up : {1.0, -1.0})
        for (double right : {1.0, -1.0}) {
            const double x = right > 0 ? offset.x() : -offset.x() - size.x();
            const double y = up > 0 ? offset.y() : -offset.y() - size.y();
            places.push_back(boxAt(centre + PointMm(x, y), size));
        }
}

} // namespace

PointMm sizeOf(const TemplateLabel& label) {
    double width = 0;
    for (const std::string& line : label.lines)
        width = std::max(width, textWidth(line, smallText));
    const double height = (ascent + descent) * smallText +
                          static_cast<double>(label.lines.size() - 1) * linePitch(smallText);
    return label.turned == 0 ? PointMm(width, height) : PointMm(height, width);
}

std::vector<Mark> textsOf(const TemplateLabel& label, const PointMm& at) {
    std::vector<Mark> marks;
    const PointMm size = sizeOf(label);
    for (std::size_t i = 0; i < label.lines.size(); ++i) {
        const double down = ascent * smallText + static_cast<double>(i) * linePitch(smallText);
        const PointMm base = label.turned == 0 ? PointMm(at.x(), at.y() + size.y() - down)
                                               : PointMm(at.x() + down, at.y());
        marks.push_back({Layer::Note,
                         TextMark{base, label.lines[i], smallText, Anchor::Start, label.turned},
                         label.part});
    }
    return marks;
}

std::vector<BoxMm> placesBeside(const CircleMark& circle, const PointMm& size) {
    std::vector<BoxMm> places;
    const double corner = 0.75 * circle.radius; // a quadrant's corner lies on the circle at 0.71 r
    for (double d : nearDistances) {
        addQuadrants(places, circle.centre, {corner + 1, corner + d}, size);
        addQuadrants(places, circle.centre, {corner + d, corner + 1}, size);
        addQuadrants(places, circle.centre, {corner + d, corner + d}, size);
    }
    return places;
}

std::vector<BoxMm> placesBeside(const LineMark& line, const PointMm& size,
                                TemplateLabel::Prefer prefer) {
    std::vector<BoxMm> places;
    const int along = line.from.y() == line.to.y() ? 0 : 1, across = 1 - along;
    const double low = std::min(line.from[along], line.to[along]);
    const double room = (line.to - line.from).norm() - size[along];
    const bool isHighFirst = prefer == TemplateLabel::Prefer::High;
    for (double d : nearDistances)
        for (bool isHigh : {isHighFirst, !isHighFirst})
            for (double part : {0.5, 0.25, 0.75, 0.125, 0.375, 0.625, 0.875, 0.0, 1.0}) {
                PointMm at;
                at[along] = low + part * room;
                at[across] = line.from[across] + (isHigh ? d : -d - size[across]);
                places.push_back(boxAt(at, size));
            }
    return places;
}

std::vector<BoxMm> placesWithin(const BoxMm& bounds, const PointMm& size, const PointMm& to) {
    std::vector<BoxMm> places;
    const PointMm last = bounds.max() - size;
    for (double y = bounds.min().y(); y <= last.y(); y += gridPitch)
        for (double x = bounds.min().x(); x <= last.x(); x += gridPitch)
            places.push_back(boxAt({x, y}, size));
    const auto distance = [&](const BoxMm& box) { return (nearestIn(box, to) - to).norm(); };
    std::stable_sort(places.begin(), places.end(),
                     [&](const BoxMm& a, const BoxMm& b) { return distance(a) < distance(b); });
    return places;
}

std::optional<LineMark> leaderTo(const BoxMm& box, const CircleMark& circle) {
    const PointMm end = nearestIn(box, circle.centre);
    const double distance = (end - circle.centre).norm();
    if (distance - circle.radius <= besideReach)
        return std::nullopt;
    return LineMark{circle.centre + (end - circle.centre) * (circle.radius / distance), end};
}

std::optional<LineMark> leaderTo(const BoxMm& box, const LineMark& line) {
    const BoxMm lineBox(line.from.cwiseMin(line.to), line.from.cwiseMax(line.to));
    const PointMm start = nearestIn(lineBox, box.center());
    const PointMm end = nearestIn(box, start);
    if ((end - start).norm() <= besideReach)
        return std::nullopt;
    return LineMark{start, end};
}

} // namespace frontwright
