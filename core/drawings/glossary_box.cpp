#include "core/drawings/glossary_parts.h"

namespace frontwright::glossary {

namespace {

/// From above, 1:10: the front below, the four walls of the box behind it.
Drawing fromAbove(Term term) {
    Picture picture(0.1);
    const bool whole = term == Term::DrawerBox;
    const auto lookOf = [](bool meant) { return meant ? Look::Meant : Look::Around; };
    picture.part(box(-30, -32, 430, 0));
    picture.part(box(0, 0, 400, 32), lookOf(whole || term == Term::BoxWall));
    picture.part(box(0, 32, 32, 330), lookOf(whole));
    picture.part(box(368, 32, 400, 330), lookOf(whole));
    picture.part(box(32, 298, 368, 330), lookOf(whole));
    return picture.finished();
}

/// Cut from front to back, 1:2: front, wall, and the bottom in the wall's groove.
Drawing bottom() {
    Picture picture(0.5);
    const double grooveFoot = 12, grooveTop = 18, grooveEnd = 26;
    picture.cut(box(0, -6, 20, 74), Grain::Falling);
    picture.cut({{20, 0},
                 {32, 0},
                 {32, grooveFoot},
                 {grooveEnd, grooveFoot},
                 {grooveEnd, grooveTop},
                 {32, grooveTop},
                 {32, 60},
                 {20, 60}},
                Grain::Rising);
    picture.cut(box(grooveEnd, grooveFoot, 110, grooveTop), Grain::Falling, Look::Meant);
    return picture.finished();
}

/// Cut across, 1:2: the case's side, the runner on it, the box's side that runs on it.
Drawing runner() {
    Picture picture(0.5);
    picture.cut(box(0, 0, 20, 80), Grain::Rising);
    picture.cut(box(20, 22, 33, 58), Grain::Falling, Look::Meant);
    picture.cut(box(33, 8, 45, 74), Grain::Rising);
    picture.cut(box(41, 18, 105, 24), Grain::Falling);
    return picture.finished();
}

/// Cut across, 1:2: rail under the box's side, guide beside it, kicker over it.
Drawing wooden(Term term) {
    Picture picture(0.5);
    const auto lookOf = [term](Term part) { return part == term ? Look::Meant : Look::Around; };
    picture.cut(box(0, 0, 18, 96), Grain::Rising);
    picture.cut(box(18, 0, 62, 18), Grain::Falling);
    picture.cut(box(18, 18, 38, 36), Grain::Falling, lookOf(Term::Guide));
    picture.cut(box(18, 78, 48, 96), Grain::Falling, lookOf(Term::Kicker));
    picture.cut(box(40, 18, 52, 75), Grain::Rising);
    picture.cut(box(48, 26, 112, 32), Grain::Falling);
    return picture.finished();
}

/// The box's back seen from behind, 1:5, between the ends of its sides.
Drawing notch() {
    Picture picture(0.2);
    picture.part(box(-16, 0, 0, 120));
    picture.part(box(0, 0, 260, 120));
    picture.part(box(260, 0, 276, 120));
    for (const double left : {0.0, 220.0})
        picture.part(box(left, 0, left + 40, 18), Look::Meant);
    return picture.finished();
}

} // namespace

Drawing ofBox(Term term) {
    if (term == Term::Bottom)
        return bottom();
    if (term == Term::Runner)
        return runner();
    if (term == Term::Kicker || term == Term::Guide)
        return wooden(term);
    if (term == Term::Notch)
        return notch();
    return fromAbove(term);
}

} // namespace frontwright::glossary
