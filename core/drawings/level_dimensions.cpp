#include "core/drawings/dimension_rows.h"
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
    // Depths at the ends, farther out where a text of the widths had to reach beyond the drawing.
    double beyondLow = 0, beyondHigh = 0;
    for (const DimensionRows* rows : {&below, &above})
        if (!rows->isEmpty()) {
            beyondLow = std::max(beyondLow, drawn.min().x() * scale - rows->lowest());
            beyondHigh = std::max(beyondHigh, rows->highest() - drawn.max().x() * scale);
        }
    DimensionRows left(Side::Left, drawn.min().x(), scale, first + beyondLow);
    DimensionRows right(Side::Right, drawn.max().x(), scale, first + beyondHigh);
    const MountingHole* hole = subject.hole();
    const bool isScrewLeft =
        hole == nullptr || toFront(subject.front.box, hole->at).x <= subject.length().half();
    layScrew(isScrewLeft ? left : right, subject);
    if (subject.front.hardware && !boltAxes(subject, *subject.front.hardware).empty())
        layBolt(isScrewLeft ? right : left, subject, *subject.front.hardware);
    for (const DimensionRows* rows : {&below, &above, &left, &right})
        for (Mark& mark : rows->marks())
            sketch.add(std::move(mark));
}

} // namespace frontwright
