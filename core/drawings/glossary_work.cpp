#include "core/drawings/glossary_parts.h"

namespace frontwright::glossary {

namespace {

/// A stick beside a bank: every edge that counts is marked on it.
Drawing storyStick() {
    Picture picture(0.1);
    const BoxMm stick = box(0, 0, 40, 400);
    picture.part(stick, Look::Meant);
    double bottom = 20;
    for (const double height : {135.0, 110.0, 85.0}) {
        picture.part(box(90, bottom, 330, bottom + height));
        for (const double edge : {bottom, bottom + height})
            picture.axis({0, edge}, {90, edge});
        bottom += height + 12;
    }
    return picture.finished();
}

/// Between fence and blade: it sets the distance without a rule.
Drawing setupBlock() {
    Picture picture(0.4);
    picture.line({-10, 0}, {130, 0});
    picture.part(box(0, 0, 16, 60));
    picture.part(box(16, 0, 76, 40), Look::Meant);
    picture.part(box(76, 0, 80, 70));
    return picture.finished();
}

/// Two fronts on one drawer box, the strip between them stays with the drawer.
Drawing fillerStrip() {
    Picture picture(0.1);
    picture.hidden(box(30, 40, 470, 250));
    picture.part(box(0, 0, 235, 290));
    picture.part(box(265, 0, 500, 290));
    picture.part(box(235, 0, 265, 290), Look::Meant);
    return picture.finished();
}

/// From the side: a board that slides out above the drawers.
Drawing pullOutBoard() {
    Picture picture(0.08);
    picture.part(box(200, 0, 600, 400));
    picture.part(box(0, 330, 480, 352), Look::Meant);
    picture.part(box(180, 30, 200, 160));
    picture.part(box(180, 175, 200, 310));
    return picture.finished();
}

/// From above: strips bring the case's side out to the edge of the face frame.
Drawing furring() {
    Picture picture(0.5);
    picture.cut(box(0, -20, 45, 0), Grain::Rising);
    picture.cut(box(0, 0, 18, 70), Grain::Falling);
    picture.cut(box(18, 8, 45, 62), Grain::Rising, Look::Meant);
    picture.line({45, 0}, {45, 72});
    return picture.finished();
}

/// Cut across, at the left side: runner under the board, keeper strip over it, both on furring.
Drawing keeperStrip() {
    Picture picture(0.5);
    picture.cut(box(0, -10, 18, 70), Grain::Falling);
    picture.cut(box(18, 0, 36, 62), Grain::Rising);
    picture.cut(box(36, 0, 56, 20), Grain::Falling);
    picture.cut(box(38, 20, 110, 40), Grain::Rising);
    picture.cut(box(36, 42, 56, 62), Grain::Falling, Look::Meant);
    return picture.finished();
}

Drawing kerf() {
    Picture picture(0.8);
    picture.cut({{0, 0}, {70, 0}, {70, 22}, {37, 22}, {37, 8}, {33, 8}, {33, 22}, {0, 22}},
                Grain::Rising);
    picture.edge({{33, 22}, {33, 8}, {37, 8}, {37, 22}});
    picture.length({33, 22}, {37, 22}, 8);
    return picture.finished();
}

} // namespace

Drawing ofWork(Term term) {
    if (term == Term::StoryStick)
        return storyStick();
    if (term == Term::SetupBlock)
        return setupBlock();
    if (term == Term::FillerStrip)
        return fillerStrip();
    if (term == Term::PullOutBoard)
        return pullOutBoard();
    if (term == Term::Furring)
        return furring();
    if (term == Term::KeeperStrip)
        return keeperStrip();
    return kerf();
}

} // namespace frontwright::glossary
