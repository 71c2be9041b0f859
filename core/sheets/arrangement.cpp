#include "core/sheets/arrangement.h"

#include "core/sheets/correction.h"
#include "core/sheets/page_content.h"
#include "core/sheets/page_furniture.h"

#include <algorithm>

namespace frontwright {

namespace {

constexpr Length leastMargin = Length::fromMicrometres(6500);
/// Stands for names and numbers that are not known yet: as wide as any that will come.
constexpr const char* widestTile = "MM88";
constexpr const char* widestNumber = "88888";

/// What a template is laid with.
struct Laying {
    const Project& project;
    const Template& part;
    const SheetOptions& options;
    Orientation orientation;
    Legend legend;
};

std::optional<Error> unusable(const SheetOptions& options) {
    if (options.margin < leastMargin)
        return Error{text("margin"), text("a margin under 6.5 mm loses marks at the paper's edge"),
                     text("use 6.5 mm or more")};
    if (options.overlap < Length{})
        return Error{text("overlap"), text("an overlap can't be negative"),
                     text("use 0 for a butt joint")};
    if (options.paper.width <= Length{} || options.paper.height < Length{})
        return Error{text("paper"), text("the paper has no size"), text("choose a paper")};
    return std::nullopt;
}

Result<PageLayout> layoutFor(const Laying& laying, Spread spread, double map) {
    const std::string tile = spread == Spread::OnePage ? "" : widestTile;
    const Phrase title = pageLabel(laying.part, tile, widestNumber, widestNumber);
    const ScaleFactors factors = factorsOf(laying.options, laying.orientation);
    return layOut(
        {beforeCorrection(laying.options.paper, laying.orientation, factors), laying.orientation,
         laying.options.margin.inMillimetres(), laying.project.style.unit, spread, map,
         pageWords(laying.project, laying.part, laying.options, laying.orientation, title),
         laying.part.drawing.extent.sizes(), laying.legend, laying.options.language});
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

Result<Arranged> tiled(const Laying& laying, double map) {
    Result<PageLayout> layout = layoutFor(laying, Spread::SeveralPages, map);
    if (!layout.ok())
        return layout.error();
    const PointMm room = layout.value().drawing.sizes();
    const double overlap = laying.options.overlap.inMillimetres();
    if (room.minCoeff() < 3 * overlap)
        return Error{text("overlap"), text("the tiles would be mostly overlap"),
                     text("use a larger paper or a smaller overlap")};
    Arranged result{
        &laying.part, laying.orientation, layout.value(), tilingOf(laying.part, room, overlap), {}};
    for (const Tile& one : result.tiling.tiles)
        result.isUsed.push_back(showsPart(laying.part, one.trimmed));
    return result;
}

/// Without its legend where the paper is too small for it.
Result<Arranged> laid(Laying laying) {
    const BoxMm& extent = laying.part.drawing.extent;
    if (laying.legend == Legend::Drawn && !layoutFor(laying, Spread::SeveralPages, widestMap).ok())
        laying.legend = Legend::LeftOut;
    Result<PageLayout> single = layoutFor(laying, Spread::OnePage, 0);
    if (!single.ok())
        return single.error();
    if (fits(extent, single.value().drawing))
        return Arranged{&laying.part,
                        laying.orientation,
                        single.value(),
                        {1, 1, {{0, 0, extent, extent}}},
                        {true}};
    Result<Arranged> rough = tiled(laying, widestMap);
    if (!rough.ok())
        return rough.error();
    // A narrower map leaves the words more room, and the drawing too.
    return tiled(laying, mapWidth(rough.value().tiling.columns));
}

/// "corrected for Printer: × 1.0042 across, × 0.9983 up"
Phrase correctionWords(const SheetOptions& options, Orientation orientation) {
    const ScaleFactors factors = factorsOf(options, orientation);
    if (factors.areNone())
        return text("not corrected");
    const DecimalMark mark = options.language.decimalMark();
    const std::string across = factorText(factors.across, mark), up = factorText(factors.up, mark);
    return options.printer.empty()
               ? phrase("corrected: × %1 across, × %2 up", across, up)
               : phrase("corrected for %1: × %2 across, × %3 up", options.printer, across, up);
}

/// Lies as the options say, or as it takes the fewest pages.
Result<Arranged> arranged(const Project& project, const Template& part, const SheetOptions& options,
                          Legend legend) {
    if (options.orientation)
        return laid({project, part, options, *options.orientation, legend});
    Result<Arranged> upright = laid({project, part, options, Orientation::Portrait, legend});
    Result<Arranged> lying = laid({project, part, options, Orientation::Landscape, legend});
    if (!upright.ok())
        return lying.ok() ? lying : upright;
    return lying.ok() && lying.value().pageCount() < upright.value().pageCount() ? lying : upright;
}

} // namespace

std::size_t Arranged::pageCount() const {
    return static_cast<std::size_t>(std::count(isUsed.begin(), isUsed.end(), true));
}

Result<std::vector<Arranged>> arranged(const Project& project, std::span<const Template> parts,
                                       const SheetOptions& options) {
    if (auto error = unusable(options))
        return *error;
    std::vector<Arranged> all;
    for (const Template& part : parts) {
        Result<Arranged> one =
            arranged(project, part, options, all.empty() ? Legend::Drawn : Legend::LeftOut);
        if (!one.ok())
            return one.error();
        all.push_back(std::move(one).value());
    }
    return all;
}

PageText pageWords(const Project& project, const Template& part, const SheetOptions& options,
                   Orientation orientation, const Phrase& title) {
    const auto say = [&](const Phrase& phrase) { return told(phrase, options.language); };
    PageText words;
    words.title = say(title);
    const std::string& document =
        options.documentName.empty() ? project.title : options.documentName;
    std::string about;
    for (const std::string& word :
         {document, options.revision, say(correctionWords(options, orientation))})
        if (!word.empty())
            about += (about.empty() ? "" : " · ") + word;
    words.paragraphs.push_back(about);
    words.paragraphs.push_back(
        say(phrase("Print at 100 % / Actual size, not Fit. %1; %2.", part.face, part.up)));
    std::string parameters;
    for (const Phrase& sentence : part.parameters)
        parameters += (parameters.empty() ? "" : " ") + say(sentence);
    if (!parameters.empty())
        words.paragraphs.push_back(parameters);
    words.paragraphs.push_back(
        say(text("Test on scrap; measure the check bars before drilling; wear eye protection. Tool "
                 "makers' instructions and local codes come first.")));
    return words;
}

Phrase pageLabel(const Template& part, const std::string& tile, const std::string& number,
                 const std::string& count) {
    return tile.empty() ? phrase("%1 · page %2 of %3", part.title, number, count)
                        : phrase("%1 · tile %2 · page %3 of %4", part.title, tile, number, count);
}

} // namespace frontwright
