#include "core/drawings/clear_rows.h"
#include "core/drawings/section_parts.h"
#include "core/lengths/format.h"

namespace frontwright {

namespace {

constexpr double first = DimensionRows::defaultFirstRow;

/// What is measured along the front.
class Along {
public:
    Along(const SectionSubject& subject, const LongBreak& breaks)
        : m_subject(subject),
          m_breaks(breaks) {}

    [[nodiscard]] Measured between(Length a, Length b, Text pattern,
                                   std::optional<Quantity> quantity) const {
        const Length low = least(a, b), high = greatest(a, b);
        return {at(low), at(high),
                m_subject.say({pattern, {shownBare(high - low, m_subject.options.style)}}),
                quantity, Part{m_subject.front.opening, std::nullopt, partName(pattern)}};
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
                edge, isLeft ? overlay : width - overlay, text("overlay %1"),
                measure.ofFront(isLeft ? QuantityKind::OverlayLeft : QuantityKind::OverlayRight)));
        if (front.neighbours[side].front || front.fit[side] == Fit::Inset)
            ends.push_back(measure.between(
                edge, isLeft ? edge - gap : edge + gap,
                gap < Length() ? text("overlap %1") : text("gap %1"),
                measure.ofFront(isLeft ? QuantityKind::GapLeft : QuantityKind::GapRight)));
    }
    rows.addChain(std::move(ends));
    if (front.hardware && !front.hardware->holes.empty())
        rows.addChain({measure.between({}, front.hardware->holes.front().x, text("handle at %1"),
                                       measure.ofFront(QuantityKind::HandleX))});
    rows.addOverall(measure.between({}, width, text("front width %1"),
                                    measure.ofFront(QuantityKind::FrontWidth)));
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
    const auto isAtMember = [&](Side side) {
        return isBuilt(subject.plan.members[front.neighbours[side].member].kind);
    };
    if (!(left - openingLeft).isZero() && isAtMember(Side::Left))
        clearances.push_back(measure.between(openingLeft, left, text("side clearance %1"),
                                             measure.ofFront(QuantityKind::SideClearance)));
    if (!(openingRight - right).isZero() && isAtMember(Side::Right))
        clearances.push_back(measure.between(right, openingRight, text("side clearance %1"),
                                             measure.ofFront(QuantityKind::SideClearance)));
    rows.addChain(std::move(clearances));
    if (front.runner && front.runner->furring)
        rows.addChain(
            {measure.between(openingLeft - *front.runner->furring, openingLeft, text("furring %1"),
                             measure.ofFront(QuantityKind::RunnerFurring))});
    if (const MountingHole* hole = subject.hole())
        rows.addChain(
            {measure.between(left, left + hole->at.x, text("hole at %1"),
                             measure.ofFront(QuantityKind::HoleX, subject.options.mountingHole))});
    if (front.hardware && front.hardware->chosen == MountingWay::FrontAccessHole &&
        !boltAxes(subject, *front.hardware).empty()) {
        const Length x = front.hardware->holes.front().x;
        const Length r = front.hardware->accessDiameter.half();
        rows.addChain({measure.between(x - r, x + r, text("access hole %1"), std::nullopt)});
    }
    rows.addOverall(measure.between(left, right, text("box width %1"),
                                    measure.ofFront(QuantityKind::BoxWidth)));
}

/// Behind a fixed front there is only the frame: the hole from the front's left edge.
void layFrame(DimensionRows& rows, const SectionSubject& subject, const LongBreak& breaks) {
    const Along measure(subject, breaks);
    if (const MountingHole* hole = subject.hole())
        rows.addChain(
            {measure.between({}, toFront(subject.front.box, hole->at).x, text("hole at %1"),
                             measure.ofFront(QuantityKind::HoleX, subject.options.mountingHole))});
}

} // namespace

void drawLevelDimensions(Sketch& sketch, const SectionSubject& subject, const LongBreak& breaks) {
    const double scale = sketch.paperScale();
    const BoxMm drawn = extentOf({sketch.marks(), {}, scale});
    const double face = -subject.thickness(), end = subject.boxEnd();
    DimensionRows below(Side::Bottom, face, scale, first + (face - drawn.min().y()) * scale);
    layFront(below, subject, breaks);
    DimensionRows above(Side::Top, end, scale, first + (drawn.max().y() - end) * scale);
    if (subject.front.hasBox() && subject.front.box.width > Length())
        layBox(above, subject, breaks);
    else
        layFrame(above, subject, breaks);
    std::vector<Mark> widths = below.marks();
    for (Mark& mark : above.marks())
        widths.push_back(std::move(mark));
    // Depths at the ends: what a screw takes up at the one that it is nearer to.
    const MountingHole* hole = subject.hole();
    const bool isScrewLeft =
        hole == nullptr || toFront(subject.front.box, hole->at).x <= subject.length().half();
    const auto depths = [&](Side side, double edge, int outwards) {
        const double reach = reachPast({&below, &above}, edge * scale, outwards);
        return laidClear({side, edge, scale, reach}, widths, [&](DimensionRows& rows) {
            const auto& hardware = subject.front.hardware;
            if ((side == Side::Left) == isScrewLeft)
                layScrew(rows, subject);
            else if (hardware && !boltAxes(subject, *hardware).empty())
                layBolt(rows, subject, *hardware);
            if ((side == Side::Left) != isScrewLeft)
                layRunner(rows, subject);
        });
    };
    for (const auto& marks :
         {depths(Side::Left, drawn.min().x(), -1), depths(Side::Right, drawn.max().x(), 1), widths})
        for (const Mark& mark : marks)
            sketch.add(mark);
}

} // namespace frontwright
