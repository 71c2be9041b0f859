#include "core/drawings/glossary_parts.h"

namespace frontwright::glossary {

namespace {

// Cut through one fastener, 1:1 but for the screen: show face at x = 0, the front behind it, then
// the box wall; the inside of the box is at the right. The fastener's axis is y = 0.
constexpr double paperScale = 0.8;
constexpr double frontBack = 20, wallBack = 33, half = 20;

using Outline = std::vector<PointMm>;

/// Mirrored at the axis: given from the left end to the right end above it.
Outline turned(const Outline& above) {
    Outline outline = above;
    for (auto p = above.rbegin(); p != above.rend(); ++p)
        outline.emplace_back(p->x(), -p->y());
    return outline;
}

Outline screwFrom(double tip, double head) {
    return turned({{tip, 0.1}, {tip + 4, 2}, {head - 3.5, 2}, {head, 4.6}});
}
/// The end of its thread at `end`, the underside of its head at `head`.
Outline boltFrom(double end, double head) {
    return turned({{end, 2}, {head, 2}, {head, 4.2}, {head + 3, 3.4}});
}

struct Holes {
    Outline front; ///< empty: none
    Outline wall;
};

void drawWood(Picture& picture, const Holes& holes) {
    const auto without = [](const Outline& hole) {
        return hole.empty() ? std::vector<Outline>() : std::vector<Outline>{hole};
    };
    picture.cut(box(0, -half, frontBack, half), Grain::Falling, Look::Around, without(holes.front));
    picture.cut(box(frontBack, -half, wallBack, half), Grain::Rising, Look::Around,
                without(holes.wall));
}

/// A knob before the face, cut along its axis only by its outline.
void drawKnob(Picture& picture) {
    picture.part(turned({{-26, 8}, {-22, 13}, {-17, 13}, {-12, 6}, {0, 7}}));
}

Drawing screwed(Term term) {
    Picture picture(paperScale);
    const Outline screw = screwFrom(6, wallBack);
    drawWood(picture, {screw, screw});
    picture.steel(screw, term == Term::MountingScrew ? Look::Meant : Look::Around);
    picture.axis({-4, 0}, {wallBack + 6, 0});
    if (term == Term::TipCover)
        picture.length({0, -half}, {6, -half}, -7);
    return picture.finished();
}

Drawing drilled(Term term) {
    Picture picture(paperScale);
    if (term == Term::PilotHole) {
        const Outline pilot = turned({{7, 0.1}, {8, 1.4}, {frontBack, 1.4}});
        drawWood(picture, {pilot, {}});
        picture.steel(pilot, Look::Meant);
    } else {
        const Outline clearance = turned({{frontBack, 2.3}, {wallBack, 2.3}});
        const Outline sunk = turned({{frontBack, 2.3}, {wallBack - 3, 2.3}, {wallBack, 5}});
        const Outline& hole = term == Term::Countersink ? sunk : clearance;
        drawWood(picture, {{}, hole});
        picture.steel(hole, term == Term::ClearanceHole ? Look::Meant : Look::Around);
    }
    if (term == Term::Countersink) {
        picture.edge({{wallBack - 3, 2.3}, {wallBack, 5}});
        picture.edge({{wallBack - 3, -2.3}, {wallBack, -5}});
    }
    picture.axis({-4, 0}, {wallBack + 6, 0});
    return picture.finished();
}

/// Held from the front's back alone: head in a counterbore, reached through the wall.
Drawing bored(Term term) {
    Picture picture(paperScale);
    const bool isAccess = term == Term::AccessHole;
    const double head = isAccess ? frontBack : 13;
    const Outline bolt = boltFrom(-9, head);
    const Outline bore = turned({{head, 6}, {frontBack, 6}});
    const Outline access = turned({{frontBack, 6.5}, {wallBack, 6.5}});
    const Outline through = turned({{0, 2.3}, {head, 2.3}, {head, 6}, {frontBack, 6}});
    const Outline plain = turned({{0, 2.3}, {frontBack, 2.3}});
    drawWood(picture, {isAccess ? plain : through, isAccess ? access : Outline()});
    drawKnob(picture);
    picture.steel(isAccess ? access : bore, Look::Meant);
    picture.steel(bolt, Look::Around);
    picture.axis({-30, 0}, {wallBack + 6, 0});
    return picture.finished();
}

Drawing bolted(Term term) {
    Picture picture(paperScale);
    const double end = -9;
    const Outline bolt = boltFrom(end, wallBack);
    const Outline hole = turned({{0, 2.3}, {wallBack, 2.3}});
    drawWood(picture, {hole, hole});
    drawKnob(picture);
    picture.steel(bolt, term == Term::Bolt ? Look::Meant : Look::Around);
    picture.axis({-30, 0}, {wallBack + 8, 0});
    if (term == Term::Grip)
        picture.length({0, -half}, {wallBack, -half}, -7);
    if (term == Term::Engagement)
        picture.length({end, -13}, {0, -13}, -13);
    return picture.finished();
}

} // namespace

Drawing ofFasteners(Term term) {
    if (term == Term::MountingScrew || term == Term::TipCover)
        return screwed(term);
    if (term == Term::PilotHole || term == Term::ClearanceHole || term == Term::Countersink)
        return drilled(term);
    if (term == Term::AccessHole || term == Term::Counterbore)
        return bored(term);
    return bolted(term);
}

} // namespace frontwright::glossary
