#pragma once

#include "core/drawings/drawing.h"
#include "core/sheets/calibration.h"
#include "core/sheets/paper.h"
#include "core/words/language.h"

#include <array>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace frontwright {

enum class TemplateKind : std::uint8_t {
    Front,      ///< the front, read from its show face
    BoxWall,    ///< the box wall, read from inside the box (mirrored left to right)
    StoryStick, ///< a bank's heights, a row's widths, a panel's row of system holes
    KeeperStrip ///< of a pull-out board: its pieces with their screws
};

/// Text that belongs to a hole or a line. Each page places it anew beside what it names, inside
/// what is left after trimming and clear of lines and of other texts.
struct TemplateLabel {
    std::vector<std::string> lines;            ///< told already; one below the other
    std::variant<CircleMark, LineMark> beside; ///< lines: upright or level only
    enum class Prefer : std::uint8_t { High, Low } prefer = Prefer::High; ///< above or right, …
    double turned = 0;                                                    ///< 0 or 90 degrees
    Part part;
};

/// One full-scale template, before it is laid on pages; identical fronts share one.
struct Template {
    TemplateKind kind = TemplateKind::Front;
    Phrase title;                      ///< "Front A2", "Box wall A2", "Story stick, bank A"
    Phrase face;                       ///< "Read from the show face"
    std::vector<OpeningId> parts;      ///< all that it serves; the count is printed
    std::vector<Phrase> parameters;    ///< sentences beside it: drills, depths, order of work
    Drawing drawing;                   ///< 1:1, origin at the part's lower left corner; no text
    std::vector<TemplateLabel> labels; ///< the drawing's text
    Phrase up;                         ///< "the front's top edge up"
    BoxMm part;                        ///< outline of the part itself (without waste and notes)
};

/// All templates of a plan: fronts, box walls, story sticks, rows of system holes, keeper strips of
/// pull-out boards, each kind in the order of the elevation. Their labels are of that language.
std::vector<Template> templates(const Project&, const Plan&, LengthStyle, const Language& = {});

struct SheetOptions {
    Paper paper;
    /// nullopt: each template lies the way that takes the fewest pages; upright where both do.
    std::optional<Orientation> orientation = Orientation::Portrait;
    Length margin = Length::millimetres(10);  ///< at least 6.5 mm: marks stay inside
    Length overlap = Length::millimetres(10); ///< 0 = butt joint
    /// A printer's factors for upright and for landscape pages; none for files.
    std::array<ScaleFactors, 2> calibration;
    std::string printer; ///< whose factors they are; told on each page
    std::string documentName;
    std::string revision; ///< text printed on each page, e.g. a date; empty = none
    Language language;    ///< of the pages' words; that of the templates' labels
};

/// A place on a page that can be measured against the printed page. Kinds:
///   hole, counterbore, access-hole   the centre of a circle
///   corner                           of an outline: of the part, or of its field
///   check-bar, trim                  both ends of a line
///   register                         the centre of a cross that two tiles share
///   centre, dimension, front-edge, … both ends of a named line in that layer, cut to the tile
struct PageMark {
    std::string kind;
    std::string part; ///< "Front A2 / hole 1": in English, so that files stay alike
    double x = 0;     ///< mm from the page's lower left corner
    double y = 0;
};

/// Which piece of which template a page shows.
struct PagePlace {
    std::size_t part = 0; ///< of the templates that were laid
    int column = 0;       ///< as in Tile
    int row = 0;
    int columns = 1; ///< of the whole tiling
    int rows = 1;
    friend bool operator==(const PagePlace&, const PagePlace&) = default;
};

/// One page, ready for any surface: screen, printer, PDF, SVG.
struct Page {
    PagePlace place;
    double width = 0;  ///< mm
    double height = 0; ///< mm
    Phrase label;      ///< "Front A2 · tile B1 · page 3 of 12"
    std::string tile;  ///< "B1"; empty where one page is enough
    Drawing drawing;   ///< 1:1, origin at the page's lower left corner, already clipped
    std::vector<PageMark> marks;
};

/// How a part of `width` × `height` mm is cut into tiles: pure arithmetic, no drawing.
struct Tile {
    int column = 0; ///< 0 = leftmost: number 1
    int row = 0;    ///< 0 = topmost: letter A
    BoxMm area;     ///< of the part's frame that this tile shows, overlap included
    BoxMm trimmed;  ///< what is left after trimming; these tile the extent exactly
};
struct Tiling {
    int columns = 1;
    int rows = 1;
    std::vector<Tile> tiles; ///< in reading order; joints moved away from `holes` where possible
};
/// Holes nearer than 5 mm to a joint move the joint where there is room.
Tiling tile(const BoxMm& extent, double usableWidth, double usableHeight, double overlap,
            std::span<const PointMm> holes);
std::string tileName(const Tile&); ///< "A1": row letter, column number

/// A document's marks as JSON text: for every page its number, label, width,
/// height and marks with kind, part, x and y in mm from the page's lower left corner, six decimals
/// at most; in English.
std::string marksJson(std::span<const Page>);

/// Lays templates on pages. Error: paper too small, margin under 6.5 mm, page over 5 080 mm.
Result<std::vector<Page>> pages(const Project&, const Plan&, std::span<const Template>,
                                const SheetOptions&);

/// How many pages that makes, without drawing them. Errors as of pages().
Result<std::size_t> pageCount(const Project&, std::span<const Template>, const SheetOptions&);

} // namespace frontwright
