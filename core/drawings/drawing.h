#pragma once

#include "core/geometry/mm.h"
#include "core/plan/quantity.h"

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace frontwright {

/// What a line means; how it looks follows from that (line_style.h). Back to front.
enum class Layer : std::uint8_t {
    Wash, ///< tones of a rendering, without lines
    CaseOutline,
    Surrounding, ///< what stands round the case: top, moulding, plinth, legs, wall, neighbour
    MemberEdge,
    SystemHole,  ///< of the rows in the panels; hidden
    OpeningEdge, ///< hidden behind an overlay front
    FrontEdge,
    ProfileLine, ///< where the field begins
    BoxEdge,     ///< hidden behind the front
    BottomPanel,
    Runner,        ///< seen or cut
    HiddenRunner,  ///< behind the box's side or under its bottom
    FieldEdge,     ///< the field, where it is asked for
    AllowedRegion, ///< where a mounting screw may go
    CutEdge,       ///< of what a section cuts
    CutHatch,
    Waste, ///< hatched waste on templates
    Hole,  ///< true diameter
    Counterbore,
    AccessHole,
    Fastener, ///< screw or bolt seen in a section
    Handle,
    Moved,  ///< where a part lies once it is pulled out: phantom line
    Centre, ///< centre lines and crosses
    Dimension,
    PartDimension, ///< of the hole or handle that is being placed
    Note,          ///< text
    Trim,          ///< where a tile is cut
    Register,      ///< crosses that neighbouring tiles share
    CheckBar
};

/// What a mark belongs to: for hit-testing, for emphasis, and for the marks of a page.
struct Part {
    std::optional<OpeningId> opening;
    std::optional<MemberId> member;
    std::string name; ///< "hole 2", "left edge"; stable, for files
    friend bool operator==(const Part&, const Part&) = default;
};

struct LineMark {
    PointMm from;
    PointMm to;
    friend bool operator==(const LineMark&, const LineMark&) = default;
};
/// Closed where the last point is to be joined to the first.
struct PathMark {
    std::vector<PointMm> points;
    enum class End : std::uint8_t { Open, Closed } end = End::Closed;
    friend bool operator==(const PathMark&, const PathMark&) = default;
};
struct CircleMark {
    PointMm centre;
    double radius = 0;
    friend bool operator==(const CircleMark&, const CircleMark&) = default;
};
/// Parallel lines inside a closed outline; 45°, `spacing` on paper. They run on a grid through the
/// drawing's origin, so that hatches of one part in several outlines line up.
struct HatchMark {
    std::vector<PointMm> outline;
    double spacing = 3;
    double angle = 45;                         ///< degrees, anticlockwise from x
    std::vector<std::vector<PointMm>> without; ///< closed outlines left free: holes, fasteners
    friend bool operator==(const HatchMark&, const HatchMark&) = default;
};
enum class Anchor : std::uint8_t { Start, Middle, End };
/// One line of text. `at` is on its base line.
struct TextMark {
    PointMm at;
    std::string text;
    double height = 2.5; ///< of capitals, mm on paper (ISO 3098 series)
    Anchor anchor = Anchor::Start;
    double turned = 0; ///< degrees, anticlockwise
    friend bool operator==(const TextMark&, const TextMark&) = default;
};
/// A dimension: from and to are what is measured; the line runs `offset` paper mm away from it
/// (+ left of the direction from → to). Ticks, extension lines and figures follow ISO 129-1. A
/// figure that does not fit between the ticks stands beyond `to`.
struct DimensionMark {
    PointMm from;
    PointMm to;
    double offset = 8;
    std::string text;
    std::optional<Quantity> quantity; ///< what is shown: can be asked, and typed where it is input
    friend bool operator==(const DimensionMark&, const DimensionMark&) = default;
};
/// A colour (sRGB) laid on with some strength. It is the thing's own colour (wood stays wood), so
/// it does not follow a theme.
struct Tone {
    std::uint8_t red = 0;
    std::uint8_t green = 0;
    std::uint8_t blue = 0;
    std::uint8_t opacity = 255; ///< 255 covers what lies below
    friend bool operator==(const Tone&, const Tone&) = default;
};
/// A wash: an outline filled with a tone, or, where `width` is more than 0 drawn mm, a line of that
/// width. Later ones lie on earlier ones.
struct ToneMark {
    std::vector<PointMm> points;
    Tone tone;
    double width = 0;
    friend bool operator==(const ToneMark&, const ToneMark&) = default;
};

struct Mark {
    Layer layer = Layer::Note;
    std::variant<LineMark, PathMark, CircleMark, HatchMark, TextMark, DimensionMark, ToneMark>
        shape;
    Part part;
    friend bool operator==(const Mark&, const Mark&) = default;
};

/// Marks in millimetres, y up, independent of screen and paper. Text heights, offsets and line
/// widths are paper millimetres: they do not grow with `paperScale`.
struct Drawing {
    std::vector<Mark> marks;
    BoxMm extent;          ///< of everything, dimensions included, at the given scale
    double paperScale = 1; ///< paper mm per drawn mm: 1 for templates, 0.1 for 1:10
};

} // namespace frontwright
