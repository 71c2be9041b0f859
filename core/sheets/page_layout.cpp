#include "core/sheets/page_layout.h"

#include "core/sheets/check_bars.h"
#include "core/sheets/legend.h"
#include "core/sheets/text_lines.h"

#include <cmath>

namespace frontwright {

namespace {

constexpr double gap = 2;              ///< mm between blocks
constexpr double narrowestMap = 18;    ///< mm
constexpr double leastText = 80;       ///< mm, for "Print at 100 % / Actual size, not Fit."
constexpr double leastMapHeight = 20;  ///< mm
constexpr double leastDrawing = 40;    ///< mm in each direction
constexpr double longestPage = 5080;   ///< mm: 14 400 pt (ISO 32000-1, implementation limits)
constexpr double shortestRoll = 104;   ///< mm inside the margins: a 4 in bar
constexpr double roundingRoom = 0.001; ///< mm, so that a part of a roll's own length fits

/// Which way a roll's length runs.
enum class Free : std::uint8_t { Nothing, Width, Height };

Free freeSide(const PageRequest& request) {
    if (!request.paper.isRoll())
        return Free::Nothing;
    return request.orientation == Orientation::Portrait ? Free::Height : Free::Width;
}

/// Breadth of a strip of bars; on a roll always that of the most lines, since its length is not
/// known before its strips are.
double breadth(const PageRequest& request, double room) {
    const std::size_t lines =
        request.paper.isRoll() ? mostBarLines : barLines(room, request.unit).size();
    return barStripBreadth(lines);
}

double gutter(const PageRequest& request) {
    return request.spread == Spread::OnePage ? 0 : neighbourGutter;
}
/// As wide as it was asked for, but never so wide that the words to print at 100 % are broken.
double mapWidth(const PageRequest& request, double room) {
    return std::max(narrowestMap, std::min(request.mapWidth, room - gap - leastText));
}
double textWidthBeside(const PageRequest& request, double room) {
    return request.spread == Spread::OnePage ? room : room - gap - mapWidth(request, room);
}
double legendBlock(const PageRequest& request, double room) {
    return request.legend == Legend::Drawn ? legendHeight(room, request.language) : 0;
}
/// Text, map and legend.
double textBlock(const PageRequest& request, double room) {
    const double height = textHeight(request.text, textWidthBeside(request, room));
    return legendBlock(request, room) +
           (request.spread == Spread::OnePage ? height : std::max(height, leastMapHeight));
}

/// Length of a roll's page: strips at both ends and the part between them.
double rollLength(const PageRequest& request, double fixed) {
    const double inside = fixed - 2 * request.margin;
    const double strip = barStripBreadth(mostBarLines);
    const bool isUpright = freeSide(request) == Free::Height;
    const double part = isUpright ? request.part.y() : request.part.x();
    double length = part + 2 * (gutter(request) + gap) + 2 * strip + roundingRoom;
    if (isUpright)
        length += textBlock(request, inside - strip - gap) + gap;
    return std::max(length, shortestRoll) + 2 * request.margin;
}

PointMm pageSize(const PageRequest& request) {
    const double width = request.paper.width.inMillimetres();
    const double height = request.paper.height.inMillimetres();
    switch (freeSide(request)) {
    case Free::Nothing:
        break;
    case Free::Height:
        return {width, rollLength(request, width)};
    case Free::Width:
        return {rollLength(request, width), width};
    }
    return request.orientation == Orientation::Portrait ? PointMm(width, height)
                                                        : PointMm(height, width);
}

/// Which bars run the whole length of their side.
enum class Corner : std::uint8_t { Level, Upright };

/// The shorter side's, so that they too are long.
Corner preferredCorner(const PageRequest& request, const PointMm& size) {
    switch (freeSide(request)) {
    case Free::Nothing:
        break;
    case Free::Width:
        return Corner::Level;
    case Free::Height:
        return Corner::Upright;
    }
    return size.x() <= size.y() ? Corner::Level : Corner::Upright;
}

Error tooSmall(Phrase what) {
    return {text("paper"), std::move(what), text("use a larger paper or a smaller margin")};
}

struct Strips {
    double left = 0;   ///< breadth of the upright bars
    double level = 0;  ///< breadth of the level bars
    double text = 0;   ///< height of the text below them
    double bottom = 0; ///< left end of bars and text, from the inside's left
};

Strips strips(const PageRequest& request, Corner corner, const PointMm& inside) {
    Strips result;
    if (corner == Corner::Level) {
        result.level = breadth(request, inside.x());
        result.text = textBlock(request, inside.x());
        result.left = breadth(request, inside.y() - result.level - result.text - 2 * gap);
    } else {
        result.left = breadth(request, inside.y());
        result.bottom = result.left + gap;
        result.level = breadth(request, inside.x() - result.bottom);
        result.text = textBlock(request, inside.x() - result.bottom);
    }
    return result;
}

BoxMm box(double left, double bottom, double right, double top) {
    return {PointMm(left, bottom), PointMm(right, top)};
}

PageLayout placed(const PageRequest& request, const PointMm& size, Corner corner) {
    const PointMm low(request.margin, request.margin), high = size - low;
    const Strips s = strips(request, corner, high - low);
    const double left = low.x() + s.bottom, textTop = low.y() + s.text;
    const double levelTop = textTop + gap + s.level;
    PageLayout layout;
    layout.size = size;
    layout.unit = request.unit;
    const double room = high.x() - left;
    const double textLow = low.y() + legendBlock(request, room);
    layout.text = box(left, textLow, left + textWidthBeside(request, room), textTop);
    if (request.spread == Spread::SeveralPages)
        layout.map = box(high.x() - mapWidth(request, room), textLow, high.x(), textTop);
    if (request.legend == Legend::Drawn)
        layout.legend = box(left, low.y(), high.x(), textLow);
    layout.levelBars = box(left, textTop + gap, high.x(), levelTop);
    const double uprightLow = s.bottom > 0 ? low.y() : levelTop + gap;
    layout.uprightBars = box(low.x(), uprightLow, low.x() + s.left, high.y());
    PointMm drawingHigh = high;
    const double far = barStripBreadth(mostBarLines);
    if (freeSide(request) == Free::Height) {
        layout.farLevelBars = box(left, high.y() - far, high.x(), high.y());
        drawingHigh.y() -= far + gap;
    } else if (freeSide(request) == Free::Width) {
        layout.farUprightBars = box(high.x() - far, uprightLow, high.x(), high.y());
        drawingHigh.x() -= far + gap;
    }
    const PointMm names(gutter(request), gutter(request));
    layout.drawing = {PointMm(low.x() + s.left + gap, levelTop + gap) + names, drawingHigh - names};
    return layout;
}

Result<PageLayout> tried(const PageRequest& request, const PointMm& size, Corner corner) {
    const PageLayout layout = placed(request, size, corner);
    if (barLines(layout.levelBars.sizes().x(), request.unit).empty() ||
        barLines(layout.uprightBars.sizes().y(), request.unit).empty())
        return tooSmall(
            phrase("%1 with these margins has no room for the check bars of 100 mm and 4 in",
                   nameOf(request.paper)));
    const double least = request.paper.isRoll() ? 0 : leastDrawing;
    if (layout.drawing.sizes().minCoeff() <= least)
        return tooSmall(phrase(
            "%1 with these margins has no room for a drawing beside its check bars and words",
            nameOf(request.paper)));
    return layout;
}

} // namespace

Result<PageLayout> layOut(const PageRequest& request) {
    const PointMm size = pageSize(request);
    if (size.maxCoeff() > longestPage)
        return Error{text("paper"), text("a page would be longer than 5 080 mm"),
                     text("use sheets instead of a roll, or a smaller paper")};
    const Corner corner = preferredCorner(request, size);
    Result<PageLayout> preferred = tried(request, size, corner);
    if (preferred.ok())
        return preferred;
    Result<PageLayout> other =
        tried(request, size, corner == Corner::Level ? Corner::Upright : Corner::Level);
    return other.ok() ? other : preferred;
}

std::vector<TextMark> textLines(const PageText& text, const BoxMm& area) {
    std::vector<TextMark> lines;
    double y = area.max().y();
    const auto add = [&](const std::string& paragraph, double height) {
        for (std::string& line : wrapped(paragraph, height, area.sizes().x())) {
            y -= linePitch(height);
            // The pitch leaves room for descenders below the base line.
            lines.push_back(
                {{area.min().x(), y + 0.4 * height}, std::move(line), height, Anchor::Start, 0});
        }
    };
    add(text.title, titleText);
    for (const std::string& paragraph : text.paragraphs)
        add(paragraph, smallText);
    return lines;
}

double textHeight(const PageText& text, double width) {
    double height =
        static_cast<double>(wrapped(text.title, titleText, width).size()) * linePitch(titleText);
    for (const std::string& paragraph : text.paragraphs)
        height +=
            static_cast<double>(wrapped(paragraph, smallText, width).size()) * linePitch(smallText);
    return height;
}

} // namespace frontwright
