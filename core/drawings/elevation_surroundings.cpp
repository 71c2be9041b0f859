#include "core/drawings/elevation_parts.h"

#include <algorithm>

namespace frontwright {

namespace {

constexpr double wallOnPaper = 3;      ///< how much of a wall is drawn
constexpr double neighbourOnPaper = 9; ///< how much of a neighbouring case

BoxMm boxed(double left, double bottom, double right, double top) {
    return {PointMm(left, bottom), PointMm(right, top)};
}

/// What lies between `from` and `to`, outward from the case's edge at that side, along all of it.
BoxMm along(const BoxMm& rect, Side side, double from, double to) {
    switch (side) {
    case Side::Left:
        return boxed(rect.min().x() - to, rect.min().y(), rect.min().x() - from, rect.max().y());
    case Side::Right:
        return boxed(rect.max().x() + from, rect.min().y(), rect.max().x() + to, rect.max().y());
    case Side::Bottom:
        return boxed(rect.min().x(), rect.min().y() - to, rect.max().x(), rect.min().y() - from);
    case Side::Top:
        break;
    }
    return boxed(rect.min().x(), rect.max().y() + from, rect.max().x(), rect.max().y() + to);
}

/// The corners of `along`, from the far one at the low end round by the near ones: left open they
/// show that the thing goes on.
std::vector<PointMm> openOutward(const BoxMm& box, Side side) {
    std::vector<PointMm> corners =
        cornersOf(box); // lower left, lower right, upper right, upper left
    switch (side) {
    case Side::Left:
        break;
    case Side::Right:
        std::rotate(corners.begin(), corners.begin() + 2, corners.end());
        break;
    case Side::Bottom:
        std::rotate(corners.begin(), corners.begin() + 1, corners.end());
        break;
    case Side::Top:
        std::rotate(corners.begin(), corners.begin() + 3, corners.end());
        break;
    }
    return corners;
}

class Around {
public:
    Around(Sketch& sketch, const Plan& plan, Side side)
        : m_sketch(sketch),
          m_plan(plan),
          m_side(side),
          m_case(toMm(plan.outline)) {}

    void operator()(const OpenSide&) const {}

    void operator()(const Wall& wall) const {
        const double near = wall.distance.length.inMillimetres();
        const BoxMm whole = toMm(m_plan.whole);
        const BoxMm box =
            along(boxed(m_case.min().x(), whole.min().y(), m_case.max().x(), whole.max().y()),
                  m_side, near, near + m_sketch.forPaper(wallOnPaper));
        // A ceiling lies over the case itself, whatever stands out at its sides.
        const BoxMm strip = isLeftOrRight(m_side) ? box
                                                  : along(m_case, m_side, near,
                                                          near + m_sketch.forPaper(wallOnPaper));
        m_sketch.add({Layer::Surrounding, HatchMark{cornersOf(strip), 2.2, 45, {}}, part("wall")});
        const auto face = openOutward(strip, m_side);
        m_sketch.line(Layer::Surrounding, face[1], face[2], part("wall"));
    }

    void operator()(const NeighbouringCase& next) const {
        const double near = next.distance.length.inMillimetres();
        const double inside = next.frontFromEdge.length.inMillimetres();
        const double far = near + std::max(inside, 0.0) + m_sketch.forPaper(neighbourOnPaper);
        m_sketch.path(Layer::Surrounding, openOutward(along(m_case, m_side, near, far), m_side),
                      PathMark::End::Open, part("neighbouring case"));
        BoxMm front = along(m_case, m_side, near + inside, far);
        const PointMm narrower = isLeftOrRight(m_side) ? PointMm(0, inside) : PointMm(inside, 0);
        front = BoxMm(front.min() + narrower, front.max() - narrower);
        m_sketch.path(Layer::Surrounding, openOutward(front, m_side), PathMark::End::Open,
                      part("neighbour's front"));
    }

    void operator()(const OverhangingTop& top) const {
        const BoxMm whole = toMm(m_plan.whole);
        m_sketch.rectangle(
            Layer::Surrounding,
            boxed(whole.min().x(), m_case.max().y(), whole.max().x(), whole.max().y()),
            part("top"));
        band(top.lip, "lip of the top");
    }

    void operator()(const Moulding& moulding) const { band(moulding.height, "moulding"); }

    void operator()(const Plinth& plinth) const {
        m_sketch.rectangle(Layer::Surrounding,
                           along(m_case, m_side, 0, plinth.height.length.inMillimetres()),
                           part("plinth"));
        band(plinth.lip, "moulding of the plinth");
    }

    void operator()(const Legs& legs) const {
        const double width = legs.width.length.inMillimetres();
        const double inside = legs.setback.length.inMillimetres();
        const double top = m_case.min().y(), foot = top - legs.height.length.inMillimetres();
        const double left = m_case.min().x() + inside, right = m_case.max().x() - inside;
        m_sketch.rectangle(Layer::Surrounding, boxed(left, foot, left + width, top), part("leg"));
        m_sketch.rectangle(Layer::Surrounding, boxed(right - width, foot, right, top), part("leg"));
    }

private:
    static Part part(std::string name) { return {{}, {}, std::move(name)}; }

    /// What lies before the case's edge: a line at a third shows that it is moulded.
    void band(Length height, const char* name) const {
        if (height <= Length{})
            return;
        const double h = height.inMillimetres();
        m_sketch.rectangle(Layer::Surrounding, along(m_case, m_side, -h, 0), part(name));
        if (m_sketch.paperScale() * h / 3 < nearestParallel)
            return;
        const auto third = openOutward(along(m_case, m_side, -h * 2 / 3, 0), m_side);
        m_sketch.line(Layer::Surrounding, third[1], third[2], part(name));
    }

    Sketch& m_sketch;
    const Plan& m_plan;
    Side m_side;
    BoxMm m_case;
};

} // namespace

void drawSurroundings(Sketch& sketch, const Plan& plan) {
    for (const Side side : allSides)
        std::visit(Around(sketch, plan, side), plan.surroundings[side]);
}

BoxMm reachOfSurroundings(const Plan& plan, double paperScale) {
    Sketch sketch(paperScale);
    drawSurroundings(sketch, plan);
    BoxMm reach = toMm(plan.outline);
    const BoxMm drawn = extentOf(std::move(sketch).unmeasured());
    return drawn.isEmpty() ? reach : reach.extend(drawn);
}

void drawSystemHoles(Sketch& sketch, const Project& project, const Plan& plan) {
    if (plan.systemHoles.empty())
        return;
    const double radius = project.casework.systemHoles->diameter.length.inMillimetres() / 2;
    for (const PanelHoles& panel : plan.systemHoles) {
        const MemberPlan& member = plan.members[panel.member];
        const BoxMm rect = toMm(member.rect);
        // How deep they are bored is not the drawing's to say: a third of the panel is shown.
        const double deep = rect.sizes().x() / 3;
        const bool isRight = panel.face == Side::Right;
        const double face = isRight ? rect.max().x() : rect.min().x();
        const Part part{{}, member.id, "system hole"};
        for (const Length height : panel.heights) {
            const double y = height.inMillimetres();
            const double inner = isRight ? face - deep : face + deep;
            sketch.path(
                Layer::SystemHole,
                {{face, y - radius}, {inner, y - radius}, {inner, y + radius}, {face, y + radius}},
                PathMark::End::Open, part);
        }
    }
}

} // namespace frontwright
