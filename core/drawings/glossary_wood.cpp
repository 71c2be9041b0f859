#include "core/drawings/glossary_parts.h"

namespace frontwright::glossary {

namespace {

// The end of a board, 1:2.
constexpr double boardScale = 0.5;
constexpr double wide = 110, thick = 26;

/// As far as it lies within the board's end.
void drawRing(Picture& picture, const std::vector<PointMm>& ring) {
    std::vector<PointMm> run;
    const auto finish = [&] {
        if (run.size() > 1)
            picture.sketch().path(Layer::ProfileLine, run, PathMark::End::Open, {});
        run.clear();
    };
    for (const PointMm& p : ring) {
        const bool inside = p.x() >= 0 && p.x() <= wide && p.y() >= 0 && p.y() <= thick;
        if (inside)
            run.push_back(p);
        else
            finish();
    }
    finish();
}

void drawEnd(Picture& picture) {
    const auto corners = cornersOf(box(0, 0, wide, thick));
    picture.edge({corners[0], corners[1], corners[2], corners[3], corners[0]});
}

/// Rings lie flat along the face.
Drawing flatSawn() {
    Picture picture(boardScale);
    drawEnd(picture);
    const PointMm heart(wide / 2, -70);
    for (double radius = 73; radius < 118; radius += 5)
        drawRing(picture, arc(heart, radius, 25, 155));
    return picture.finished();
}

/// Rings stand upright to the face.
Drawing quarterSawn() {
    Picture picture(boardScale);
    drawEnd(picture);
    for (double x = 5; x < wide - 4; x += 6)
        picture.sketch().line(Layer::ProfileLine, {x, 0}, {x + 3, thick}, {});
    return picture.finished();
}

/// A foot square and an inch thick, drawn obliquely.
Drawing boardFoot() {
    Picture picture(0.1);
    constexpr double foot = 304.8, inch = 25.4;
    const PointMm back(130, 110);
    const PointMm lowLeft(0, 0), lowRight(foot, 0), topLeft(0, inch), topRight(foot, inch);
    picture.part({topLeft, topRight, topRight + back, topLeft + back}, Look::Meant);
    picture.part({lowLeft, lowRight, topRight, topLeft}, Look::Meant);
    picture.part({lowRight, lowRight + back, topRight + back, topRight}, Look::Meant);
    picture.sketch().add({Layer::Dimension, DimensionMark{lowLeft, lowRight, -8, "12 in", {}}, {}});
    picture.sketch().add(
        {Layer::Dimension, DimensionMark{lowRight, lowRight + back, -8, "12 in", {}}, {}});
    picture.sketch().add({Layer::Dimension, DimensionMark{lowLeft, topLeft, 8, "1 in", {}}, {}});
    return picture.finished();
}

/// The same board moist (hidden line) and dry: it shrinks across the grain.
Drawing moistureContent() {
    Picture picture(boardScale);
    constexpr double shrunk = 7;
    picture.hidden(box(0, 0, wide, thick));
    picture.cut(box(shrunk, 0.8, wide - shrunk, thick - 0.8), Grain::Rising, Look::Meant);
    picture.length({wide - shrunk, 0}, {wide, 0}, -8);
    picture.length({0, 0}, {shrunk, 0}, -8);
    return picture.finished();
}

} // namespace

Drawing ofWood(Term term) {
    if (term == Term::FlatSawn)
        return flatSawn();
    if (term == Term::QuarterSawn)
        return quarterSawn();
    if (term == Term::BoardFoot)
        return boardFoot();
    return moistureContent();
}

} // namespace frontwright::glossary
