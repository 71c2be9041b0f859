#include "core/drawings/clear_rows.h"
#include "core/drawings/section_parts.h"
#include "core/lengths/format.h"

#include <algorithm>

namespace frontwright {

namespace {

/// Makes what is measured in this section, with words before its figure.
class Measurer {
public:
    explicit Measurer(const SectionSubject& subject) : m_subject(subject) {}

    /// Between two places in either order. `size` is the plan's exact value.
    [[nodiscard]] Measured between(double a, double b, Text pattern, Length size,
                                   std::optional<Quantity> quantity) const {
        return {std::min(a, b), std::max(a, b),
                m_subject.say({pattern, {shownBare(size.magnitude(), m_subject.options.style)}}),
                quantity, Part{m_subject.front.opening, std::nullopt, partName(pattern)}};
    }
    [[nodiscard]] Quantity ofFront(QuantityKind kind, std::uint32_t index = 0) const {
        return {kind, m_subject.frontIndex, index};
    }

private:
    const SectionSubject& m_subject;
};
} // namespace

std::string partName(Text pattern) {
    return std::string(pattern.english.substr(0, pattern.english.find(" %1")));
}

/// The order puts what ends farther right nearer to the
/// drawing, so that no extension line runs through a text.
void layScrew(DimensionRows& rows, const SectionSubject& subject) {
    const Measurer measure(subject);
    const MountingHole* hole = subject.hole();
    const MountingPlan& mounting = subject.front.mounting;
    const double face = -subject.thickness();
    rows.keepClear(face);
    // A door lies on the frame's face, and nothing is bored behind it.
    if (subject.front.hasBox())
        rows.addChain({measure.between(0, subject.wall(), text("wall %1"),
                                       subject.front.box.wallThickness, std::nullopt)});
    else if (subject.wall() > 0)
        rows.addChain(
            {measure.between(subject.face(), subject.face() + subject.wall(), text("frame %1"),
                             subject.front.box.wallThickness, std::nullopt)});
    const auto reach = hole != nullptr ? screwReach(subject, *hole) : std::nullopt;
    if (hole != nullptr) {
        const Length neck = mounting.wall - mounting.recess;
        const Length web = neck - mounting.screw->headHeight;
        if (mounting.recess > Length{})
            rows.addChain({measure.between(neck.inMillimetres(), subject.wall(), text("recess %1"),
                                           mounting.recess, std::nullopt)});
        if (web > Length{})
            rows.addChain(
                {measure.between(0, web.inMillimetres(), text("web %1"), web, std::nullopt)});
    }
    if (reach) {
        const std::uint32_t i = subject.options.mountingHole;
        const double local = -hole->thickness.inMillimetres();
        const bool isThrough = hole->tipCover < Length{};
        rows.addChain(
            {measure.between(reach->head, reach->tip, text("screw length %1"), *mounting.length,
                             measure.ofFront(QuantityKind::ScrewLength))});
        rows.addChain({measure.between(
            reach->tip, local, isThrough ? text("through by %1") : text("tip cover %1"),
            hole->tipCover, measure.ofFront(QuantityKind::ScrewTipCover, i))});
        if (hole->penetration > Length{})
            rows.addChain({measure.between(0, reach->tip, text("drill depth %1"), hole->penetration,
                                           measure.ofFront(QuantityKind::ScrewPenetration, i))});
    }
    rows.addChain({measure.between(face, 0, text("thickness %1"), subject.front.thickness,
                                   measure.ofFront(QuantityKind::FrontThickness))});
}

/// What ends farther right is nearer to the drawing, as above.
void layBolt(DimensionRows& rows, const SectionSubject& subject, const HardwarePlan& hardware) {
    const Measurer measure(subject);
    const WayPlan& way = hardware.chosenWay();
    const BoltReach reach = boltReach(subject, hardware);
    const auto index = static_cast<std::uint32_t>(hardware.chosen);
    rows.keepClear(reach.end);
    if (hardware.chosen == MountingWay::FrontAccessHole) {
        const Length reached =
            subject.front.box.wallThickness + way.counterbore - hardware.bolt->headHeight;
        if (reached > Length{})
            rows.addChain({measure.between(reach.headTop, subject.wall(),
                                           text("driver reaches in %1"), reached, std::nullopt)});
    }
    if (!way.counterbore.isZero())
        rows.addChain(
            {measure.between(reach.underHead, reach.bored, text("counterbore %1"), way.counterbore,
                             measure.ofFront(QuantityKind::Counterbore, index))});
    rows.addChain({measure.between(-subject.thickness(), reach.underHead, text("grip %1"), way.grip,
                                   measure.ofFront(QuantityKind::BoltGrip, index))});
    if (way.length)
        rows.addChain(
            {measure.between(reach.end, reach.underHead, text("bolt length %1"), *way.length,
                             measure.ofFront(QuantityKind::BoltLength, index))});
}

void layRunner(DimensionRows& rows, const SectionSubject& subject) {
    if (!subject.front.runner)
        return;
    const Measurer measure(subject);
    const Length setback = subject.front.runner->reach.setback, box = subject.front.box.setback;
    if (setback > Length{} && (setback - box).inMillimetres() < subject.boxEnd())
        rows.addChain({measure.between(-box.inMillimetres(), (setback - box).inMillimetres(),
                                       text("runner back %1"), setback,
                                       measure.ofFront(QuantityKind::RunnerSetback))});
}

namespace {

/// Heights on the front, at its show face.
void layFrontHeights(DimensionRows& rows, const SectionSubject& subject) {
    const Measurer measure(subject);
    const FrontPlan& front = subject.front;
    const double height = subject.height();
    rows.keepWithin(0, height);
    rows.keepClear(0);
    rows.keepClear(height);
    std::vector<Measured> overlays;
    if (front.overlay.bottom > Length{})
        overlays.push_back(measure.between(0, front.overlay.bottom.inMillimetres(),
                                           text("overlay %1"), front.overlay.bottom,
                                           measure.ofFront(QuantityKind::OverlayBottom)));
    if (front.overlay.top > Length{})
        overlays.push_back(measure.between(height - front.overlay.top.inMillimetres(), height,
                                           text("overlay %1"), front.overlay.top,
                                           measure.ofFront(QuantityKind::OverlayTop)));
    for (const Side side : {Side::Bottom, Side::Top})
        if (const Neighbour& next = front.neighbours[side];
            next.front || front.fit[side] == Fit::Inset) {
            const double edge = side == Side::Top ? height : 0;
            const double gap = next.gap.inMillimetres();
            overlays.push_back(
                measure.between(edge, side == Side::Top ? edge + gap : edge - gap,
                                next.gap < Length{} ? text("overlap %1") : text("gap %1"), next.gap,
                                measure.ofFront(side == Side::Top ? QuantityKind::GapTop
                                                                  : QuantityKind::GapBottom)));
        }
    rows.addChain(std::move(overlays));
    if (front.hardware && !front.hardware->holes.empty()) {
        const Length y = front.hardware->holes.front().y;
        rows.addChain({measure.between(0, y.inMillimetres(), text("handle at %1"), y,
                                       measure.ofFront(QuantityKind::HandleY))});
    }
    rows.addOverall(measure.between(0, height, text("front height %1"), front.rect.height(),
                                    measure.ofFront(QuantityKind::FrontHeight)));
}

/// Heights in the box, from its lower edge.
void layBoxHeights(DimensionRows& rows, const SectionSubject& subject) {
    const Measurer measure(subject);
    const BoxPlan& box = subject.front.box;
    const double foot = subject.boxFoot();
    const double top = foot + box.height.inMillimetres();
    rows.keepClear(top);
    if (const MountingHole* hole = subject.hole())
        rows.addChain({measure.between(
            foot, foot + hole->at.y.inMillimetres(), text("hole at %1"), hole->at.y,
            measure.ofFront(QuantityKind::HoleY, subject.options.mountingHole))});
    rows.addChain({measure.between(foot, foot + box.bottomTop.inMillimetres(), text("bottom at %1"),
                                   box.bottomTop, measure.ofFront(QuantityKind::BottomTop))});
    if (const auto& runner = subject.front.runner; runner && runner->top > Length{})
        rows.addChain(
            {measure.between(foot, foot + runner->top.inMillimetres(), text("runner to %1"),
                             runner->top, measure.ofFront(QuantityKind::RunnerTop))});
    if (const auto& runner = subject.front.runner; runner && runner->kickerPlay)
        rows.addChain(
            {measure.between(top, top + runner->kickerPlay->inMillimetres(),
                             text("play under the kicker %1"), *runner->kickerPlay, std::nullopt)});
    rows.addOverall(measure.between(foot, top, text("box height %1"), box.height,
                                    measure.ofFront(QuantityKind::BoxHeight)));
}

/// What an extension line would have to cross is led to the outline first.
void leadOut(Sketch& sketch, const SectionSubject& subject) {
    const double face = -subject.thickness(), height = subject.height();
    const auto lead = [&](double y, std::string name) {
        sketch.line(Layer::Dimension, {face, y}, {0, y},
                    {subject.front.opening, std::nullopt, std::move(name)});
    };
    if (subject.front.overlay.bottom > Length{})
        lead(subject.front.overlay.bottom.inMillimetres(), "overlay");
    if (subject.front.overlay.top > Length{})
        lead(height - subject.front.overlay.top.inMillimetres(), "overlay");
}

} // namespace

void drawSectionDimensions(Sketch& sketch, const SectionSubject& subject) {
    const double scale = sketch.paperScale();
    const BoxMm drawn = extentOf({sketch.marks(), {}, scale});
    const MountingHole* hole = subject.hole();
    const bool isScrewLow =
        hole == nullptr ||
        toFront(subject.front.box, hole->at).y.inMillimetres() <= subject.height() / 2;
    constexpr double first = DimensionRows::defaultFirstRow;
    const double beyondFace = -subject.thickness() - drawn.min().x();
    DimensionRows left(Side::Left, -subject.thickness(), scale, first + beyondFace * scale);
    layFrontHeights(left, subject);
    const double beyondEnd = drawn.max().x() - subject.boxEnd();
    DimensionRows right(Side::Right, subject.boxEnd(), scale, first + beyondEnd * scale);
    if (subject.front.hasBox() && subject.front.box.height > Length{})
        layBoxHeights(right, subject);
    std::vector<Mark> heights = left.marks();
    for (Mark& mark : right.marks())
        heights.push_back(std::move(mark));
    const auto depths = [&](Side side, double edge, int outwards) {
        const double reach = reachPast({&left, &right}, edge * scale, outwards);
        return laidClear({side, edge, scale, reach}, heights, [&](DimensionRows& rows) {
            if ((side == Side::Bottom) == isScrewLow)
                layScrew(rows, subject);
            else if (subject.front.hardware)
                layBolt(rows, subject, *subject.front.hardware);
            if ((side == Side::Bottom) != isScrewLow)
                layRunner(rows, subject);
        });
    };
    leadOut(sketch, subject);
    for (const auto& marks : {depths(Side::Bottom, drawn.min().y(), -1),
                              depths(Side::Top, drawn.max().y(), 1), heights})
        for (const Mark& mark : marks)
            sketch.add(mark);
}

} // namespace frontwright
