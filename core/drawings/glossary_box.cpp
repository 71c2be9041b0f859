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

} // namespace

Drawing ofBox(Term term) {
    if (term == Term::Bottom)
        return bottom();
    if (term == Term::Runner)
        return runner();
    return fromAbove(term);
}

} // namespace frontwright::glossary
