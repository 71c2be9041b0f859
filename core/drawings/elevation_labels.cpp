#include "core/drawings/elevation_parts.h"

#include "core/drawings/dimension_marks.h"
#include "core/drawings/lettering.h"
#include "core/lengths/format.h"

#include <algorithm>

namespace frontwright {

namespace {

constexpr double freeRound = 1.0;     // of a label, on paper
constexpr double betweenLines = 1.6;  // from the name's base line to the size's capitals
constexpr double descenderPart = 0.3; // of the height of capitals

/// One way to write a label: heights of capitals on paper; 0 = that line is left out.
struct Lettering {
    double name = 0;
    double size = 0;
};
/// Best first; ISO 3098 heights.
constexpr std::array letterings{Lettering{3.5, 2.5}, Lettering{2.5, 1.8}, Lettering{3.5, 0},
                                Lettering{2.5, 0}, Lettering{1.8, 0}};

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

/// Where a label's centre may lie, best first: the middle, beside the handle, below it, above it.
std::vector<PointMm> placesFor(const BoxMm& room, const FrontPlan& front) {
    std::vector<PointMm> places{room.center()};
    if (!front.hardware || front.hardware->handles.empty())
        return places;
    BoxMm handles;
    for (const HandlePlan& handle : front.hardware->handles) {
        const FrontRect& r = handle.footprint;
        handles.extend(inCase(front, {r.left, r.bottom}));
        handles.extend(inCase(front, {r.right, r.top}));
    }
    const PointMm middle = room.center();
    places.emplace_back((room.min().x() + handles.min().x()) / 2, middle.y());
    places.emplace_back(middle.x(), (room.min().y() + handles.min().y()) / 2);
    places.emplace_back(middle.x(), (room.max().y() + handles.max().y()) / 2);
    places.emplace_back((room.max().x() + handles.max().x()) / 2, middle.y());
    return places;
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
    std::vector<BoxMm> obstacles = obstaclesOn(front, options);
    const std::vector<Mark> inside = dimensionsInside(subject.plan, front, options);
    for (const Mark& mark : inside)
        if (const auto* dimension = std::get_if<DimensionMark>(&mark.shape)) {
            const DimensionFigure figure = figureOf(*dimension, options.paperScale);
            BoxMm box = textBox(figure.text, options.paperScale);
            box.extend(figure.line.from).extend(figure.line.to);
            obstacles.push_back(box);
        }
    const bool hasField = !front.field.isEmpty();
    const BoxMm room = hasField ? BoxMm(inCase(front, front.field.lowerLeft()),
                                        inCase(front, {front.field.right, front.field.top}))
                                : toMm(front.rect);
    const std::string name = label(subject.project, front);
    for (const Lettering& letters : letterings) {
        if (letters.size > 0 && !inside.empty())
            continue;
        Block block{letters, name, {}};
        if (letters.size > 0)
            block.size = sizeText(front, options.style);
        for (const PointMm& place : placesFor(room, front)) {
            const BoxMm box = boxOf(block, place, options.paperScale);
            if (!room.contains(box) || meets(box, obstacles))
                continue;
            write(sketch, block, place, {front.opening, std::nullopt, "label"});
            return;
        }
    }
}

} // namespace frontwright
