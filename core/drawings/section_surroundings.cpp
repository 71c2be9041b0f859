#include "core/drawings/section_parts.h"
#include "core/plan/member_words.h"

#include <algorithm>

namespace frontwright {

namespace {

constexpr Hatching trimHatching{30, 2.4};
constexpr double mostOnPaper = 22; ///< how much is drawn, outward from the case

/// Cuts what stands at one side of the case. Outward is away from the case's inside along the
/// front; before the face x is less.
class Cutter {
public:
    Cutter(Sketch& sketch, const SectionSubject& subject, Side side)
        : m_sketch(sketch),
          m_subject(subject),
          m_sign(side == subject.highSide() ? 1 : -1),
          m_face(subject.face()) {
        const Span along = subject.alongCase(subject.plan.outline);
        const Length origin = subject.alongCase(subject.front.rect).low;
        m_edge = ((m_sign > 0 ? along.high : along.low) - origin).inMillimetres();
    }

    void operator()(const OpenSide&) const {}
    void operator()(const Wall& wall) const {
        const double near = mm(wall.distance);
        piece(near, near + m_sketch.forPaper(3), -m_subject.thickness() - m_sketch.forPaper(6),
              m_subject.boxEnd(), "wall");
    }
    void operator()(const NeighbouringCase& next) const {
        const double near = mm(next.distance), inside = mm(next.frontFromEdge);
        const double face = m_face - m_subject.thickness();
        piece(near + inside, near + inside + m_sketch.forPaper(9), face, m_face,
              "neighbour's front");
        piece(near, near + m_sketch.forPaper(9), m_face, m_subject.boxEnd(), "neighbouring case");
    }
    void operator()(const OverhangingTop& top) const {
        const double before = m_face - mm(top.overFront);
        piece(0, mm(top.thickness), before, m_subject.boxEnd(), "top");
        piece(-mm(top.lip), 0, before, m_face, "lip of the top");
    }
    void operator()(const Moulding& moulding) const {
        piece(-mm(moulding.height), 0, m_face - mm(moulding.projection), m_face, "moulding");
    }
    void operator()(const Plinth& plinth) const {
        piece(0, mm(plinth.height), m_face + mm(plinth.setback), m_subject.boxEnd(), "plinth");
        piece(-mm(plinth.lip), 0, m_face - m_subject.thickness(), m_face, "moulding of the plinth");
    }
    void operator()(const Legs& legs) const {
        piece(0, mm(legs.height), m_face + mm(legs.setback),
              m_face + mm(legs.setback) + mm(legs.width), "leg");
    }

private:
    static double mm(WrittenLength length) { return length.length.inMillimetres(); }

    /// Outward from `near` to `far`, broken off where that is much; x from `front` to `back`.
    void piece(double near, double far, double front, double back, const char* name) const {
        const double most = near + m_sketch.forPaper(mostOnPaper);
        if (far <= near || back <= front)
            return;
        const double end = std::min(far, most);
        const double y = m_edge + m_sign * near, yEnd = m_edge + m_sign * end;
        const std::vector<PointMm> outline{{front, yEnd}, {front, y}, {back, y}, {back, yEnd}};
        const Part part{std::nullopt, std::nullopt, name};
        drawHatch(m_sketch, outline, trimHatching, {}, part);
        m_sketch.path(Layer::Surrounding, outline,
                      far > most ? PathMark::End::Open : PathMark::End::Closed, part);
    }

    Sketch& m_sketch;
    const SectionSubject& m_subject;
    double m_sign;
    double m_face;
    double m_edge = 0;
};

} // namespace

void drawSurround(Sketch& sketch, const SectionSubject& subject, Side side) {
    const MemberPlan& member = subject.plan.members[subject.front.neighbours[side].member];
    if (outerSide(member.id) == side)
        std::visit(Cutter(sketch, subject, side), subject.plan.surroundings[side]);
}

void drawSystemRows(Sketch& sketch, const SectionSubject& subject) {
    if (subject.isLevel() || subject.plan.systemHoles.empty())
        return;
    const SystemHoles& holes = *subject.project.casework.systemHoles;
    const double radius = holes.diameter.length.inMillimetres() / 2;
    const std::uint32_t beside = subject.front.neighbours.right.member;
    const Length origin = subject.front.rect.bottom;
    const double x = subject.face() + holes.setback.length.inMillimetres();
    if (x + radius > subject.boxEnd())
        return;
    for (const PanelHoles& panel : subject.plan.systemHoles) {
        if (panel.member != beside || panel.face != Side::Left)
            continue;
        for (const Length height : panel.heights) {
            if (height < subject.front.openingRect.bottom || subject.front.openingRect.top < height)
                continue;
            sketch.circle(Layer::SystemHole, {x, (height - origin).inMillimetres()}, radius,
                          {subject.front.opening, std::nullopt, "system hole"});
        }
    }
}

} // namespace frontwright
