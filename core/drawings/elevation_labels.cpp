#include "core/drawings/elevation_parts.h"

#include "core/drawings/dimension_marks.h"
#include "core/drawings/lettering.h"
#include "core/lengths/format.h"

#include <algorithm>

namespace frontwright {

namespace {

constexpr double freeRound = 0.7;     // of a label, on paper
constexpr double betweenLines = 1.3;  // from the name's base line to the size's capitals
constexpr double descenderPart = 0.3; // of the height of capitals

/// One way to write a label: heights of capitals on paper; 0 = that line is left out.
struct Lettering {
    double name = 0;
    double size = 0;
};
/// Best first; ISO 3098 heights. One height of names wherever it fits, so that a bank looks even.
constexpr std::array letterings{Lettering{2.5, 1.8}, Lettering{2.5, 0}, Lettering{1.8, 0}};

/// A label's texts and how much paper they take.
struct Block {
    Lettering letters;
    std::string name;
    std::string size;
    [[nodiscard]] double width() const {
        return std::max(textWidth(name, letters.name), textWidth(size, letters.size));
    }
    /// From the name's capitals to below the last line's descenders.
    [[nodiscard]] double height() const {
        const double last = letters.size > 0 ? letters.size : letters.name;
        const double below = letters.size > 0 ? betweenLines + letters.size : 0;
        return letters.name + below + descenderPart * last;
    }
};

BoxMm boxOf(const Block& block, const PointMm& centre, double paperScale) {
    const PointMm half(block.width() / 2 + freeRound, block.height() / 2 + freeRound);
    return {centre - half / paperScale, centre + half / paperScale};
}

bool meets(const BoxMm& box, const std::vector<BoxMm>& obstacles) {
    return std::any_of(obstacles.begin(), obstacles.end(),
                       [&](const BoxMm& other) { return box.intersects(other); });
}

/// Stretches of the room at the middle of its height that are free for a block so tall; widest
/// first, of equal ones the left one first.
std::vector<BoxMm> freeAtMiddle(const BoxMm& room, const std::vector<BoxMm>& obstacles,
                                double height) {
    const double low = room.center().y() - height / 2, high = room.center().y() + height / 2;
    std::vector<std::pair<double, double>> taken;
    for (const BoxMm& box : obstacles)
        if (box.min().y() < high && low < box.max().y())
            taken.emplace_back(box.min().x(), box.max().x());
    std::sort(taken.begin(), taken.end());
    std::vector<BoxMm> gaps;
    double at = room.min().x();
    const auto add = [&](double end) {
        if (at < end)
            gaps.emplace_back(PointMm(at, low), PointMm(end, high));
    };
    for (const auto& [from, to] : taken) {
        add(std::min(from, room.max().x()));
        at = std::max(at, to);
    }
    add(room.max().x());
    constexpr double even = 1e-6;
    std::stable_sort(gaps.begin(), gaps.end(), [](const BoxMm& a, const BoxMm& b) {
        return a.sizes().x() > b.sizes().x() + even;
    });
    return gaps;
}

/// Where a label's centre may lie, best first: the middle, beside what is in the way of that,
/// below the handle, above it.
std::vector<PointMm> placesFor(const BoxMm& room, const std::vector<BoxMm>& obstacles,
                               const BoxMm& handles, double height) {
    const PointMm middle = room.center();
    std::vector<PointMm> places{middle};
    for (const BoxMm& gap : freeAtMiddle(room, obstacles, height))
        places.push_back(gap.center());
    if (!handles.isEmpty()) {
        places.emplace_back(middle.x(), (room.min().y() + handles.min().y()) / 2);
        places.emplace_back(middle.x(), (room.max().y() + handles.max().y()) / 2);
    }
    return places;
}

/// The field, as far as no edge of the opening shows through it.
BoxMm roomOn(const FrontPlan& front) {
    const FrontRect whole = FrontRect::atOrigin(front.rect.width(), front.rect.height());
    const FrontRect field = front.field.isEmpty() ? whole : front.field;
    const CasePoint origin = front.rect.lowerLeft();
    const CaseRect inside =
        front.openingRect.common({origin.x + field.left, origin.y + field.bottom,
                                  origin.x + field.right, origin.y + field.top});
    return inside.isEmpty() ? toMm(front.rect) : toMm(inside);
}

/// The paper that the dimensions inside an emphasised front need.
std::vector<BoxMm> boxesOf(const std::vector<Mark>& dimensions, double paperScale) {
    std::vector<BoxMm> boxes;
    for (const Mark& mark : dimensions)
        if (const auto* dimension = std::get_if<DimensionMark>(&mark.shape)) {
            const DimensionFigure figure = figureOf(*dimension, paperScale);
            BoxMm box = textBox(figure.text, paperScale);
            boxes.push_back(box.extend(figure.line.from).extend(figure.line.to));
        }
    return boxes;
}

void write(Sketch& sketch, const Block& block, const PointMm& centre, const Part& part) {
    const double top = centre.y() + sketch.forPaper(block.height() / 2);
    const auto line = [&](double below, double height, const std::string& words) {
        TextMark text;
        text.at = {centre.x(), top - sketch.forPaper(below)};
        text.text = words;
        text.height = height;
        text.anchor = Anchor::Middle;
        sketch.text(Layer::Note, std::move(text), part);
    };
    const Lettering& letters = block.letters;
    line(letters.name, letters.name, block.name);
    if (letters.size > 0)
        line(letters.name + betweenLines + letters.size, letters.size, block.size);
}

std::string sizeText(const FrontPlan& front, LengthStyle style) {
    return shownBare(front.rect.width(), style) + " × " + shownBare(front.rect.height(), style);
}

} // namespace

void drawLabel(Sketch& sketch, const ElevationSubject& subject, const FrontPlan& front) {
    const ElevationOptions& options = subject.options;
    const std::vector<Mark> inside = dimensionsInside(subject.plan, front, options);
    std::vector<BoxMm> obstacles = obstaclesOn(front, options);
    for (const BoxMm& box : boxesOf(inside, options.paperScale))
        obstacles.push_back(box);
    BoxMm handles;
    for (const BoxMm& box : handleBoxes(front, options))
        handles.extend(box);
    const BoxMm room = roomOn(front);
    const std::string name = label(subject.project, front);
    for (const Lettering& letters : letterings) {
        if (letters.size > 0 && !inside.empty())
            continue;
        Block block{letters, name, {}};
        if (letters.size > 0)
            block.size = sizeText(front, options.style);
        const double height = (block.height() + 2 * freeRound) / options.paperScale;
        for (const PointMm& place : placesFor(room, obstacles, handles, height)) {
            const BoxMm box = boxOf(block, place, options.paperScale);
            if (!room.contains(box) || meets(box, obstacles))
                continue;
            write(sketch, block, place, {front.opening, std::nullopt, "label"});
            return;
        }
    }
}

} // namespace frontwright
