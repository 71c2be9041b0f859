#include "core/drawings/dimension_marks.h"
#include "core/drawings/dimension_rows.h"
#include "core/drawings/lettering.h"
#include "core/drawings/section_parts.h"
#include "core/lengths/format.h"

#include <algorithm>

namespace frontwright {

namespace {

constexpr double first = DimensionRows::defaultFirstRow;

/// What is measured along the front.
class Along {
public:
    Along(const SectionSubject& subject, const LongBreak& breaks)
        : m_subject(subject),
          m_breaks(breaks) {}

    [[nodiscard]] Measured between(Length a, Length b, std::string_view words,
                                   std::optional<Quantity> quantity) const {
        const Length low = least(a, b), high = greatest(a, b);
        return {at(low), at(high),
                std::string(words) + " " + shownBare(high - low, m_subject.options.style), quantity,
                Part{m_subject.front.opening, std::nullopt, std::string(words)}};
    }
    /// Where it is drawn.
    [[nodiscard]] double at(Length x) const { return m_breaks.placed(x.inMillimetres()); }
    [[nodiscard]] Quantity ofFront(QuantityKind kind, std::uint32_t index = 0) const {
        return {kind, m_subject.frontIndex, index};
    }

private:
    const SectionSubject& m_subject;
    const LongBreak& m_breaks;
};

/// At the show face: overlays and gaps, the handle, the whole width.
void layFront(DimensionRows& rows, const SectionSubject& subject, const LongBreak& breaks) {
    const Along measure(subject, breaks);
    const FrontPlan& front = subject.front;
    const Length width = front.rect.width();
    std::vector<Measured> ends;
    for (const Side side : {Side::Left, Side::Right}) {
        const bool isLeft = side == Side::Left;
        const Length edge = isLeft ? Length() : width;
        const Length overlay = front.overlay[side], gap = front.neighbours[side].gap;
        if (overlay > Length())
            ends.push_back(measure.between(
                edge, isLeft ? overlay : width - overlay, "overlay",
                measure.ofFront(isLeft ? QuantityKind::OverlayLeft : QuantityKind::OverlayRight)));
        if (front.neighbours[side].front || front.fit[side] == Fit::Inset)
            ends.push_back(measure.between(
                edge, isLeft ? edge - gap : edge + gap, gap < Length() ? "overlap" : "gap",
                measure.ofFront(isLeft ? QuantityKind::GapLeft : QuantityKind::GapRight)));
    }
    rows.addChain(std::move(ends));
    if (front.hardware && !front.hardware->holes.empty())
        rows.addChain({measure.between({}, front.hardware->holes.front().x, "handle at",
                                       measure.ofFront(QuantityKind::HandleX))});
    rows.addOverall(
        measure.between({}, width, "front width", measure.ofFront(QuantityKind::FrontWidth)));
}

/// Inside the box: clearances at its sides, holes from its left, access, the whole width.
void layBox(DimensionRows& rows, const SectionSubject& subject, const LongBreak& breaks) {
    const Along measure(subject, breaks);
    const FrontPlan& front = subject.front;
    const BoxPlan& box = front.box;
    const Length left = box.wallOnFront.x, right = left + box.width;
    const Length openingLeft = front.overlay.left;
    const Length openingRight = front.rect.width() - front.overlay.right;
    // Texts keep off the lines of what is measured farther out.
    for (const Length x : {left, right})
        rows.keepClear(measure.at(x));
    if (const MountingHole* hole = subject.hole())
        rows.keepClear(measure.at(left + hole->at.x));
    std::vector<Measured> clearances;
    if (!(left - openingLeft).isZero())
        clearances.push_back(measure.between(openingLeft, left, "side clearance", std::nullopt));
    if (!(openingRight - right).isZero())
        clearances.push_back(measure.between(right, openingRight, "side clearance", std::nullopt));
    rows.addChain(std::move(clearances));
    if (const MountingHole* hole = subject.hole())
        rows.addChain(
            {measure.between(left, left + hole->at.x, "hole at",
                             measure.ofFront(QuantityKind::HoleX, subject.options.mountingHole))});
    if (front.hardware && front.hardware->chosen == MountingWay::FrontAccessHole &&
        !boltAxes(subject, *front.hardware).empty()) {
        const Length x = front.hardware->holes.front().x;
        const Length r = front.hardware->accessDiameter.half();
        rows.addChain({measure.between(x - r, x + r, "access hole", std::nullopt)});
    }
    rows.addOverall(
        measure.between(left, right, "box width", measure.ofFront(QuantityKind::BoxWidth)));
}

/// How far a text of the widths reaches past what is drawn, mm on paper; `outwards` is −1 to the
/// left, 1 to the right.
double beyond(const DimensionRows& below, const DimensionRows& above, double edge, int outwards) {
    double reach = 0;
    for (const DimensionRows* rows : {&below, &above})
        if (!rows->isEmpty())
            reach = std::max(reach, outwards < 0 ? edge - rows->lowest() : rows->highest() - edge);
    return reach;
}

/// Dimension lines and texts, without the extension lines.
std::vector<BoxMm> figuresOf(const std::vector<Mark>& marks, double scale) {
    std::vector<BoxMm> boxes;
    for (const Mark& mark : marks)
        if (const auto* dimension = std::get_if<DimensionMark>(&mark.shape)) {
            const DimensionFigure figure = figureOf(*dimension, scale);
            boxes.push_back(textBox(figure.text, scale));
            boxes.push_back(BoxMm(figure.line.from).extend(figure.line.to));
        }
    return boxes;
}

bool meet(const std::vector<Mark>& some, const std::vector<Mark>& others, double scale) {
    const std::vector<BoxMm> ones = figuresOf(some, scale), twos = figuresOf(others, scale);
    const PointMm free(1 / scale, 1 / scale);
    return std::any_of(ones.begin(), ones.end(), [&](const BoxMm& one) {
        const BoxMm around(one.min() - free, one.max() + free);
        return std::any_of(twos.begin(), twos.end(),
                           [&](const BoxMm& two) { return around.intersects(two); });
    });
}

/// What screw and bolt take up of wall and front: the screw at the end that it is nearer to.
class Depths {
public:
    explicit Depths(const SectionSubject& subject) : m_subject(subject) {
        const MountingHole* hole = subject.hole();
        m_isScrewLeft =
            hole == nullptr || toFront(subject.front.box, hole->at).x <= subject.length().half();
    }
    [[nodiscard]] std::vector<Mark> at(Side side, double edge, double scale,
                                       double firstRow) const {
        DimensionRows rows(side, edge, scale, firstRow);
        const auto& hardware = m_subject.front.hardware;
        if ((side == Side::Left) == m_isScrewLeft)
            layScrew(rows, m_subject);
        else if (hardware && !boltAxes(m_subject, *hardware).empty())
            layBolt(rows, m_subject, *hardware);
        return rows.marks();
    }

private:
    const SectionSubject& m_subject;
    bool m_isScrewLeft = true;
};

} // namespace

void drawLevelDimensions(Sketch& sketch, const SectionSubject& subject, const LongBreak& breaks) {
    const double scale = sketch.paperScale();
    const BoxMm drawn = extentOf({sketch.marks(), {}, scale});
    const double face = -subject.thickness(), end = subject.boxEnd();
    DimensionRows below(Side::Bottom, face, scale, first + (face - drawn.min().y()) * scale);
    layFront(below, subject, breaks);
    DimensionRows above(Side::Top, end, scale, first + (drawn.max().y() - end) * scale);
    if (subject.front.box.width > Length())
        layBox(above, subject, breaks);
    std::vector<Mark> widths = below.marks();
    for (Mark& mark : above.marks())
        widths.push_back(std::move(mark));
    // Depths at the ends, farther out where a text of the widths would be in their way.
    const double beyondLow = beyond(below, above, drawn.min().x() * scale, -1);
    const double beyondHigh = beyond(below, above, drawn.max().x() * scale, 1);
    const Depths depths(subject);
    std::vector<Mark> left = depths.at(Side::Left, drawn.min().x(), scale, first);
    if (meet(left, widths, scale))
        left = depths.at(Side::Left, drawn.min().x(), scale, first + beyondLow);
    std::vector<Mark> right = depths.at(Side::Right, drawn.max().x(), scale, first);
    if (meet(right, widths, scale))
        right = depths.at(Side::Right, drawn.max().x(), scale, first + beyondHigh);
    for (std::vector<Mark>* marks : {&widths, &left, &right})
        for (Mark& mark : *marks)
            sketch.add(std::move(mark));
}

} // namespace frontwright
