#include "core/drawings/glossary_parts.h"

namespace frontwright::glossary {

namespace {

/// Seen from above, 1:2: the face frame's members are cut, the fronts lie before them (below).
constexpr double sectionScale = 0.5;
constexpr double thick = 20;

Drawing overlay() {
    Picture picture(sectionScale);
    picture.cut(box(0, 0, 45, thick), Grain::Rising);
    picture.cut(box(30, -thick, 110, 0), Grain::Falling, Look::Meant);
    picture.length({30, -thick}, {45, -thick}, -8);
    picture.axis({45, 6}, {45, -thick - 22});
    return picture.finished();
}

Drawing inset() {
    Picture picture(sectionScale);
    picture.cut(box(0, 0, 30, thick), Grain::Rising);
    picture.cut(box(33, 0, 92, thick), Grain::Falling, Look::Meant);
    picture.cut(box(95, 0, 125, thick), Grain::Rising);
    return picture.finished();
}

Drawing reveal() {
    Picture picture(sectionScale);
    picture.cut(box(30, 0, 80, thick), Grain::Rising);
    picture.cut(box(-5, -thick, 42, 0), Grain::Falling);
    picture.cut(box(68, -thick, 115, 0), Grain::Falling);
    picture.edge({{42, 0}, {68, 0}});
    picture.length({42, -thick}, {68, -thick}, -8);
    return picture.finished();
}

// Seen from before, 1:10: three fronts of a bank beside another bank's.
constexpr double elevationScale = 0.1;

void drawBanks(Picture& picture, Look firstBank) {
    picture.part(box(0, 0, 500, 380));
    double bottom = 20;
    for (const double height : {130.0, 105.0, 85.0}) {
        picture.part(box(25, bottom, 240, bottom + height), firstBank);
        picture.part(box(260, bottom, 475, bottom + height));
        bottom += height + 10;
    }
}

Drawing front() {
    Picture picture(elevationScale);
    picture.part(box(0, 0, 500, 340));
    const BoxMm shown = box(60, 70, 440, 270);
    picture.part(shown, Look::Meant);
    picture.hidden(box(90, 100, 410, 240));
    return picture.finished();
}

Drawing spacer() {
    Picture picture(0.2);
    picture.part(box(0, 0, 220, 200));
    picture.part(box(20, 10, 200, 90));
    picture.part(box(20, 110, 200, 190));
    picture.part(box(50, 90, 80, 110), Look::Meant);
    picture.part(box(140, 90, 170, 110), Look::Meant);
    return picture.finished();
}

/// Clamped to the stile, its edge where the front's edge is to come.
Drawing stop() {
    Picture picture(0.2);
    picture.part(box(0, 0, 60, 200));
    picture.hidden(box(60, 30, 240, 170));
    picture.part(box(45, 15, 240, 185));
    picture.part(box(5, 70, 45, 130), Look::Meant);
    return picture.finished();
}

Drawing field() {
    Picture picture(0.15);
    const BoxMm whole = box(0, 0, 300, 180), flat = box(40, 40, 260, 140);
    picture.part(whole);
    picture.part(flat, Look::Meant);
    const auto outer = cornersOf(whole), inner = cornersOf(flat);
    for (std::size_t i = 0; i < outer.size(); ++i)
        picture.line(outer[i], inner[i]);
    return picture.finished();
}

/// The edge of a raised front, cut: face above, edge at the left.
Drawing edgeProfile() {
    Picture picture(0.8);
    const PointMm edgeLow(0, 0), edgeTop(0, 9), stepFoot(30, 16), stepTop(30, 20), right(60, 20);
    picture.cut({edgeLow, PointMm(60, 0), right, stepTop, stepFoot, edgeTop}, Grain::Rising);
    picture.edge({edgeLow, edgeTop, stepFoot, stepTop});
    return picture.finished();
}

} // namespace

Drawing ofFronts(Term term) {
    if (term == Term::Overlay)
        return overlay();
    if (term == Term::Inset)
        return inset();
    if (term == Term::Reveal)
        return reveal();
    if (term == Term::Spacer)
        return spacer();
    if (term == Term::Stop)
        return stop();
    if (term == Term::Field)
        return field();
    if (term == Term::EdgeProfile)
        return edgeProfile();
    if (term == Term::Front)
        return front();
    Picture picture(elevationScale);
    drawBanks(picture, Look::Meant);
    return picture.finished();
}

} // namespace frontwright::glossary
