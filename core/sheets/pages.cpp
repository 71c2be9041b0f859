#include "core/sheets/page_content.h"
#include "core/sheets/page_furniture.h"
#include "core/sheets/page_layout.h"
#include "core/sheets/text_lines.h"

#include <algorithm>
#include <cmath>

namespace frontwright {

namespace {

constexpr Length leastMargin = Length::fromMicrometres(6500);
/// Stands for names and numbers that are not known yet: as wide as any that will come.
constexpr const char* widestTile = "MM88";
constexpr const char* widestNumber = "88888";

/// A template with its tiles chosen, before pages are numbered.
struct LaidOut {
    const Template* part = nullptr;
    PageLayout layout;
    Tiling tiling;
    std::vector<bool> isUsed;
    [[nodiscard]] std::size_t pageCount() const {
        return static_cast<std::size_t>(std::count(isUsed.begin(), isUsed.end(), true));
    }
};

std::optional<Error> unusable(const SheetOptions& options) {
    if (options.margin < leastMargin)
        return Error{"margin", "a margin under 6.5 mm loses marks at the paper's edge",
                     "use 6.5 mm or more"};
    if (options.overlap < Length{})
        return Error{"overlap", "an overlap can't be negative", "use 0 for a butt joint"};
    if (options.paper.width <= Length{} || options.paper.height < Length{})
        return Error{"paper", "the paper has no size", "choose a paper"};
    return std::nullopt;
}

std::string pageLabel(const Template& part, const std::string& tile, const std::string& number,
                      const std::string& count) {
    return part.title + (tile.empty() ? "" : " \u00b7 tile " + tile) + " \u00b7 page " + number +
           " of " + count;
}

PageText words(const Project& project, const Template& part, const SheetOptions& options,
               const std::string& title) {
    PageText text;
    text.title = title;
    const std::string& document =
        options.documentName.empty() ? project.title : options.documentName;
    if (!document.empty() || !options.revision.empty())
        text.paragraphs.push_back(document +
                                  (document.empty() || options.revision.empty() ? "" : " \u00b7 ") +
                                  options.revision);
    text.paragraphs.push_back("Print at 100 % / Actual size, not Fit. " + part.face + "; " +
                              part.up + ".");
    std::string parameters;
    for (const std::string& line : part.parameters)
        parameters += (parameters.empty() ? "" : " ") + line;
    if (!parameters.empty())
        text.paragraphs.push_back(parameters);
    text.paragraphs.push_back(
        "Test on scrap; measure the check bars before drilling; wear eye protection. Tool makers' "
        "instructions and local codes come first.");
    return text;
}

Result<PageLayout> layoutFor(const Project& project, const Template& part,
                             const SheetOptions& options, Spread spread, double map) {
    const std::string tile = spread == Spread::OnePage ? "" : widestTile;
    return layOut({options.paper, options.orientation, options.margin.inMillimetres(),
                   project.style.unit, spread, map,
                   words(project, part, options, pageLabel(part, tile, widestNumber, widestNumber)),
                   part.drawing.extent.sizes()});
}

bool fits(const BoxMm& part, const BoxMm& room) {
    return (room.sizes() - part.sizes()).minCoeff() >= 0;
}

/// Joints keep off holes, be it with a page more, and off lines where that costs no page.
Tiling tilingOf(const Template& part, const PointMm& room, double overlap) {
    std::vector<PointMm> points = holesToKeepOffJoints(part);
    const auto cut = [&] { return tile(part.drawing.extent, room.x(), room.y(), overlap, points); };
    Tiling offHoles = cut();
    for (const PointMm& line : linesToKeepOffJoints(part))
        points.push_back(line);
    Tiling offLines = cut();
    return offLines.tiles.size() > offHoles.tiles.size() ? offHoles : offLines;
}

Result<LaidOut> tiled(const Project& project, const Template& part, const SheetOptions& options,
                      double map) {
    Result<PageLayout> layout = layoutFor(project, part, options, Spread::SeveralPages, map);
    if (!layout.ok())
        return layout.error();
    const PointMm room = layout.value().drawing.sizes();
    const double overlap = options.overlap.inMillimetres();
    if (room.minCoeff() < 3 * overlap)
        return Error{"overlap", "the tiles would be mostly overlap",
                     "use a larger paper or a smaller overlap"};
    LaidOut result{&part, layout.value(), tilingOf(part, room, overlap), {}};
    for (const Tile& one : result.tiling.tiles)
        result.isUsed.push_back(showsPart(part, one.trimmed));
    return result;
}

Result<LaidOut> laidOut(const Project& project, const Template& part, const SheetOptions& options) {
    const BoxMm& extent = part.drawing.extent;
    Result<PageLayout> single = layoutFor(project, part, options, Spread::OnePage, 0);
    if (!single.ok())
        return single.error();
    if (fits(extent, single.value().drawing))
        return LaidOut{&part, single.value(), {1, 1, {{0, 0, extent, extent}}}, {true}};
    Result<LaidOut> rough = tiled(project, part, options, widestMap);
    if (!rough.ok())
        return rough.error();
    // A narrower map leaves the words more room, and the drawing too.
    return tiled(project, part, options, mapWidth(rough.value().tiling.columns));
}

/// Whole micrometres, so that places on the page are plain numbers.
PointMm shiftOf(const Tile& tile, const PageLayout& layout) {
    const PointMm exact = layout.drawing.center() - tile.area.center();
    return {std::floor(exact.x() * 1000) / 1000, std::floor(exact.y() * 1000) / 1000};
}

void calibrate(Page& page, const std::array<double, 2>& factors) {
    const auto scale = [&](PointMm& p) { p = {p.x() * factors[0], p.y() * factors[1]}; };
    for (Mark& mark : page.drawing.marks) {
        if (auto* line = std::get_if<LineMark>(&mark.shape)) {
            scale(line->from);
            scale(line->to);
        } else if (auto* path = std::get_if<PathMark>(&mark.shape)) {
            std::for_each(path->points.begin(), path->points.end(), scale);
        } else if (auto* circle = std::get_if<CircleMark>(&mark.shape)) {
            scale(circle->centre); // a drill's circle stays round: 2 % of its radius at most
        } else if (auto* hatch = std::get_if<HatchMark>(&mark.shape)) {
            std::for_each(hatch->outline.begin(), hatch->outline.end(), scale);
        } else if (auto* text = std::get_if<TextMark>(&mark.shape)) {
            scale(text->at);
        }
    }
    for (PageMark& mark : page.marks) {
        mark.x *= factors[0];
        mark.y *= factors[1];
    }
}

Page pageOf(const Project& project, const SheetOptions& options, const TileOnPage& place,
            const PageLayout& layout, std::size_t number, std::size_t count) {
    const bool isOneOfMany = place.tiles.tiling.tiles.size() > 1;
    Page page;
    page.width = layout.size.x();
    page.height = layout.size.y();
    page.tile = isOneOfMany ? tileName(place.tile) : "";
    page.label = pageLabel(place.part, page.tile, std::to_string(number), std::to_string(count));
    page.drawing.extent = {PointMm(0, 0), layout.size};
    addContent(page, place);
    if (isOneOfMany) {
        addJoints(page, place);
        addTileMap(page, layout.map, place);
    }
    addStrips(page, layout, words(project, place.part, options, page.label));
    if (options.calibration != std::array{1.0, 1.0})
        calibrate(page, options.calibration);
    return page;
}

} // namespace

Result<std::vector<Page>> pages(const Project& project, const Plan&,
                                std::span<const Template> parts, const SheetOptions& options) {
    if (auto error = unusable(options))
        return *error;
    std::vector<LaidOut> all;
    std::size_t count = 0;
    for (const Template& part : parts) {
        Result<LaidOut> one = laidOut(project, part, options);
        if (!one.ok())
            return one.error();
        count += one.value().pageCount();
        all.push_back(std::move(one).value());
    }
    std::vector<Page> result;
    result.reserve(count);
    for (const LaidOut& one : all) {
        const UsedTiles used{one.tiling, one.isUsed};
        for (std::size_t i = 0; i < one.tiling.tiles.size(); ++i) {
            const Tile& tile = one.tiling.tiles[i];
            if (one.isUsed[i])
                result.push_back(pageOf(project, options,
                                        {*one.part, used, tile, shiftOf(tile, one.layout)},
                                        one.layout, result.size() + 1, count));
        }
    }
    return result;
}

} // namespace frontwright
