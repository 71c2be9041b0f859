#pragma once

#include "core/results/result.h"
#include "core/sheets/sheets.h"

namespace frontwright {

/// A page's words, told already, each entry a paragraph.
struct PageText {
    std::string title;
    std::vector<std::string> paragraphs;
};

enum class Spread : std::uint8_t { OnePage, SeveralPages };
enum class Legend : std::uint8_t { LeftOut, Drawn };

/// What is fixed before a part is laid on its pages.
struct PageRequest {
    Paper paper;
    Orientation orientation = Orientation::Portrait;
    double margin = 10; ///< mm
    Unit unit = Unit::Millimetre;
    Spread spread = Spread::OnePage;
    double mapWidth = 0; ///< mm; SeveralPages only
    PageText text;       ///< the longest that any of its pages carries
    PointMm part;        ///< mm; a roll's length follows it
    Legend legend = Legend::LeftOut;
    Language language; ///< of the legend
};

/// Where everything lies on a page, in mm from its lower left corner. Nothing overlaps:
///
///     bars up | drawing
///             | bars across          (the shorter side's bars own the corner, if they can)
///             | text          | map
///             | legend
struct PageLayout {
    PointMm size;
    BoxMm levelBars;
    BoxMm uprightBars;
    // At the other end of a roll.
    std::optional<BoxMm> farLevelBars;
    std::optional<BoxMm> farUprightBars;
    BoxMm text;
    BoxMm map;     ///< empty where one page is enough
    BoxMm legend;  ///< empty where there is none
    BoxMm drawing; ///< what a tile may cover; neighbours' names have room round it
    Unit unit = Unit::Millimetre;
};

/// Room for neighbours' names, and for crosses that reach out of a butt joint.
inline constexpr double neighbourGutter = 4.5;

/// Error: no room for the check bars, or for the drawing; a page over 5 080 mm.
Result<PageLayout> layOut(const PageRequest&);

/// The text's lines as they are broken in that width, with their base lines.
std::vector<TextMark> textLines(const PageText&, const BoxMm& area);
double textHeight(const PageText&, double width);

} // namespace frontwright
