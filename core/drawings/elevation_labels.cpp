#include "core/drawings/elevation_parts.h"

#include "core/drawings/dimension_marks.h"
#include "core/drawings/lettering.h"
#include "core/lengths/format.h"

#include <algorithm>

namespace frontwright {

namespace {

constexpr double freeRound = 0.7;     // of a label, on paper
constexpr double smallest = 1.8;      // height of capitals
constexpr double betweenLines = 1.3;  // from one line's base to the next one's capitals
constexpr double betweenWords = 1.8;  // from a name to the size beside it
constexpr double descenderPart = 0.3; // of the height of capitals

/// A label's lines and how much paper they take.
struct Block {
    struct Line {
        std::string words;
        double height = 0; ///< of capitals, on paper
    };
    enum class Arranged : std::uint8_t { FromTheTopDown, SideBySide };
    std::vector<Line> lines; ///< the name's first
    Arranged arranged = Arranged::FromTheTopDown;

    [[nodiscard]] double width() const {
        double widest = 0, sum = betweenWords * static_cast<double>(lines.size() - 1);
        for (const Line& line : lines) {
            widest = std::max(widest, textWidth(line.words, line.height));
            sum += textWidth(line.words, line.height);
        }
        return arranged == Arranged::SideBySide ? sum : widest;
    }
    /// From the first line's capitals to below the last one's descenders.
    [[nodiscard]] double height() const {
        double sum = betweenLines * static_cast<double>(lines.size() - 1);
        for (const Line& line : lines)
            sum += line.height;
        const Line& lowest = arranged == Arranged::SideBySide ? lines.front() : lines.back();
        return (arranged == Arranged::SideBySide ? lowest.height : sum) +
               descenderPart * lowest.height;
    }
    [[nodiscard]] double heightOfName() const { return lines.front().height; }
};

/// The two halves of a name, broken at the space that makes the longer one shortest; empty where
/// there is no space.
std::vector<std::string> halved(const std::string& name) {
    std::vector<std::string> halves;
    double best = 0;
    for (std::size_t at = name.find(' '); at != std::string::npos; at = name.find(' ', at + 1)) {
        const std::string first = name.substr(0, at), second = name.substr(at + 1);
        const double longer = std::max(textWidth(first, 1), textWidth(second, 1));
        if (halves.empty() || longer < best) {
            halves = {first, second};
            best = longer;
        }
    }
    return halves;
}

/// Ways to write a label, best first; heights after ISO 3098. One height of names wherever it fits,
/// so that a bank looks even. `size` is left out where it is empty.
std::vector<Block> blocksFor(const std::string& name, const std::string& size) {
    constexpr double large = 2.5, small = smallest;
    const std::vector<std::string> halves = halved(name);
    std::vector<Block> blocks;
    if (!size.empty()) {
        blocks.push_back({{{name, large}, {size, small}}});
        blocks.push_back({{{name, large}, {size, small}}, Block::Arranged::SideBySide});
        if (!halves.empty())
            blocks.push_back({{{halves[0], large}, {halves[1], large}, {size, small}}});
    }
    for (const double height : {large, small}) {
        blocks.push_back({{{name, height}}});
        if (!halves.empty())
            blocks.push_back({{{halves[0], height}, {halves[1], height}}});
    }
    return blocks;
}

BoxMm boxOf(const Block& block, const PointMm& centre, double paperScale) {
    const PointMm half(block.width() / 2 + freeRound, block.height() / 2 + freeRound);
    return {centre - half / paperScale, centre + half / paperScale};
}

bool meets(const BoxMm& box, const std::vector<BoxMm>& obstacles) {
    return std::any_of(obstacles.begin(), obstacles.end(),
                       [&](const BoxMm& other) { return box.intersects(other); });
}

/// Stretches of the room that are free for a block so tall round that height; widest first; one at
/// the left counts for more, so that the labels down a bank line up.
std::vector<BoxMm> freeAt(double middle, const BoxMm& room, const std::vector<BoxMm>& obstacles,
                          double height) {
    const double low = middle - height / 2, high = middle + height / 2;
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
    const auto worth = [&](const BoxMm& gap) {
        constexpr double ratherLeft = 1.25;
        return gap.sizes().x() * (gap.center().x() < room.center().x() ? ratherLeft : 1);
    };
    std::stable_sort(gaps.begin(), gaps.end(),
                     [&](const BoxMm& a, const BoxMm& b) { return worth(a) > worth(b); });
    return gaps;
}

/// Where a label's centre may lie, best first: the middle, beside what is in the way of that,
/// below the handle, above it.
std::vector<PointMm> placesFor(const BoxMm& room, const std::vector<BoxMm>& obstacles,
                               const BoxMm& handles, double height) {
    const PointMm middle = room.center();
    std::vector<PointMm> places{middle};
    for (const BoxMm& gap : freeAt(middle.y(), room, obstacles, height))
        places.push_back(gap.center());
    if (!handles.isEmpty()) {
        places.emplace_back(middle.x(), (room.min().y() + handles.min().y()) / 2);
        places.emplace_back(middle.x(), (room.max().y() + handles.max().y()) / 2);
    }
    return places;
}

/// Beside what is in the way at any height; the nearest to the middle first.
std::vector<PointMm> placesElsewhere(const BoxMm& room, const std::vector<BoxMm>& obstacles,
                                     double height, double step) {
    std::vector<PointMm> places;
    for (double away = step; away <= room.sizes().y() / 2; away += step)
        for (const double at : {room.center().y() + away, room.center().y() - away})
            for (const BoxMm& gap : freeAt(at, room, obstacles, height))
                places.push_back(gap.center());
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

/// On one base line, the last one's end at the block's.
void writeSideBySide(Sketch& sketch, const Block& block, const PointMm& centre, const Part& part) {
    const double half = sketch.forPaper(block.width() / 2);
    const double y = centre.y() + sketch.forPaper(block.height() / 2 - block.heightOfName());
    const Block::Line &name = block.lines.front(), &size = block.lines.back();
    sketch.text(Layer::Note, {{centre.x() - half, y}, name.words, name.height, Anchor::Start, 0},
                part);
    sketch.text(Layer::Note, {{centre.x() + half, y}, size.words, size.height, Anchor::End, 0},
                part);
}

void write(Sketch& sketch, const Block& block, const PointMm& centre, const Part& part) {
    if (block.arranged == Block::Arranged::SideBySide)
        return writeSideBySide(sketch, block, centre, part);
    double y = centre.y() + sketch.forPaper(block.height() / 2);
    for (const Block::Line& line : block.lines) {
        y -= sketch.forPaper(line.height);
        sketch.text(Layer::Note, {{centre.x(), y}, line.words, line.height, Anchor::Middle, 0},
                    part);
        y -= sketch.forPaper(betweenLines);
    }
}

/// What is to be written on a front, and where it may stand.
struct Label {
    std::string name;
    std::string size; ///< empty: not wanted
    BoxMm room;
    std::vector<BoxMm> handles;
    double paperScale = 1;
};
struct PlacedBlock {
    Block block;
    PointMm centre;
};
enum class Search : std::uint8_t { WhereUsual, AnyHeight };

/// The best way and place whose name is not lower than that; none where nothing fits.
std::optional<PlacedBlock> placed(const Label& label, const std::vector<BoxMm>& obstacles,
                                  double leastHeight, Search search) {
    BoxMm handles;
    for (const BoxMm& box : label.handles)
        handles.extend(box);
    for (const Block& block : blocksFor(label.name, label.size)) {
        if (block.heightOfName() < leastHeight)
            continue;
        const double height = (block.height() + 2 * freeRound) / label.paperScale;
        const std::vector<PointMm> places =
            search == Search::WhereUsual
                ? placesFor(label.room, obstacles, handles, height)
                : placesElsewhere(label.room, obstacles, height, 1 / label.paperScale);
        for (const PointMm& centre : places) {
            const BoxMm box = boxOf(block, centre, label.paperScale);
            if (label.room.contains(box) && !meets(box, obstacles))
                return PlacedBlock{block, centre};
        }
    }
    return std::nullopt;
}

std::string sizeText(const FrontPlan& front, LengthStyle style) {
    return shownBare(front.rect.width(), style) + " × " + shownBare(front.rect.height(), style);
}

} // namespace

void drawLabel(Sketch& sketch, const ElevationSubject& subject, const FrontPlan& front) {
    const ElevationOptions& options = subject.options;
    ElevationOptions calm = options;
    calm.keepFree.reset();
    const Label label{frontwright::label(subject.project, front),
                      options.sizes == Shown::Yes ? sizeText(front, options.style) : std::string(),
                      roomOn(front), handleBoxes(front, calm), options.paperScale};
    const auto usual = placed(label, obstaclesOn(front, calm), smallest, Search::WhereUsual);
    if (!usual)
        return;
    // What is emphasised for a while takes the size's place and moves a name, but shrinks none.
    const std::vector<Mark> inside = dimensionsInside(subject.plan, front, options);
    std::vector<BoxMm> obstacles = obstaclesOn(front, options);
    for (const BoxMm& box : boxesOf(inside, options.paperScale))
        obstacles.push_back(box);
    Label now = label;
    if (!inside.empty())
        now.size.clear();
    const double nameHeight = usual->block.heightOfName();
    auto found = placed(now, obstacles, nameHeight, Search::WhereUsual);
    if (!found)
        found = placed(now, obstacles, nameHeight, Search::AnyHeight);
    if (found)
        write(sketch, found->block, found->centre, {front.opening, std::nullopt, "label"});
}

} // namespace frontwright
