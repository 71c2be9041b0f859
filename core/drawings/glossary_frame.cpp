#include "core/drawings/glossary_parts.h"

namespace frontwright::glossary {

namespace {

// A case 500 mm × 340 mm, drawn 1:10: a divider with one opening beside it and two on the left.
constexpr double paperScale = 0.1;
constexpr double wide = 500, high = 340, member = 40;
constexpr double dividerLeft = 230, dividerRight = 270;
constexpr double railLow = 150, railHigh = 190;

Look lookIf(bool meant) {
    return meant ? Look::Meant : Look::Around;
}

void drawMembers(Picture& picture, Term term) {
    const bool frame = term == Term::FaceFrame;
    const Look stiles = lookIf(frame || term == Term::Stile);
    const Look rails = lookIf(frame || term == Term::Rail);
    const Look divider = lookIf(frame || term == Term::Divider);
    picture.part(box(0, 0, member, high), stiles);
    picture.part(box(wide - member, 0, wide, high), stiles);
    picture.part(box(member, 0, wide - member, member), rails);
    picture.part(box(member, high - member, wide - member, high), rails);
    picture.part(box(member, railLow, dividerLeft, railHigh), rails);
    picture.part(box(dividerLeft, member, dividerRight, high - member), divider);
}

/// The whole: its front with what lies behind it, drawn obliquely.
void drawBody(Picture& picture) {
    const PointMm back(70, 50);
    const PointMm lowerRight(wide, 0), upperRight(wide, high), upperLeft(0, high);
    picture.part({upperLeft, upperLeft + back, upperRight + back, upperRight}, Look::Meant);
    picture.part({lowerRight, lowerRight + back, upperRight + back, upperRight}, Look::Meant);
    picture.edge({PointMm(0, 0), upperLeft, upperRight, lowerRight, PointMm(0, 0)});
}

/// Nothing is there: its edges, and the crossed diagonals of a void.
void drawOpening(Picture& picture) {
    const PointMm low(dividerRight, member), high2(wide - member, high - member);
    const PointMm lowRight(high2.x(), low.y()), highLeft(low.x(), high2.y());
    picture.edge({low, lowRight, high2, highLeft, low});
    picture.line(low, high2);
    picture.line(lowRight, highLeft);
}

/// Under the case or before its upper edge.
void drawAround(Picture& picture, Term term) {
    constexpr double under = 70, legWide = 45, inside = 20, past = 18;
    if (term == Term::Plinth)
        picture.part(box(0, -under, wide, 0), Look::Meant);
    if (term == Term::Moulding)
        picture.part(box(-past, high - member / 2, wide + past, high + past), Look::Meant);
    if (term == Term::Leg)
        for (const double left : {inside, wide - inside - legWide})
            picture.part(box(left, -under, left + legWide, 0), Look::Meant);
}

/// A side panel's inner face with two rows of holes.
Drawing drawRows() {
    constexpr double deep = 300, pitch = 32, radius = 5;
    Picture picture(paperScale);
    picture.part(box(0, 0, deep, high));
    for (const double x : {37.0, deep - 60})
        for (double y = 26; y < high; y += pitch)
            picture.sketch().circle(Layer::FrontEdge, {x, y}, radius, {});
    picture.length({37, 26 + 8 * pitch}, {37, 26 + 9 * pitch}, -5);
    return picture.finished();
}

} // namespace

Drawing ofFrame(Term term) {
    if (term == Term::SystemHoles)
        return drawRows();
    Picture picture(paperScale);
    if (term == Term::Case)
        drawBody(picture);
    drawMembers(picture, term);
    drawAround(picture, term);
    if (term == Term::Opening)
        drawOpening(picture);
    return picture.finished();
}

} // namespace frontwright::glossary
