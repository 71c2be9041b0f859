#include "core/drawings/rendering.h"

#include "core/drawings/board_edge.h"
#include "core/drawings/drawing_note.h"
#include "core/drawings/rendering_parts.h"
#include "core/drawings/wood_figure.h"
#include "core/plan/chosen.h"

#include <algorithm>

namespace frontwright {

namespace {

// Our own choice, by eye.
constexpr double frameLight = 0.89; // the case steps back behind its fronts
constexpr double frontShadow = 0.6;
constexpr double margin = 5; // of paper, round the whole drawing
constexpr Tone dark{30, 20, 12, 255};
constexpr Tone bright{255, 250, 238, 255};

WoodPart woodOf(const RenderingSubject& subject, const Stock& stock, std::uint64_t seed) {
    WoodPart wood;
    const Species* species = subject.catalogue.speciesOf(stock.species);
    wood.tone = species != nullptr && species->tone ? *species->tone : middlingBrown;
    wood.cut = stock.cut;
    wood.grain = stock.grain;
    wood.seed = seed;
    return wood;
}

/// The case is of the wood that fronts have where they decide nothing else.
WoodPart frameWood(const RenderingSubject& subject, std::uint64_t seed) {
    return woodOf(subject, subject.project.fronts.stock, seed);
}

std::uint64_t seedOf(std::int32_t id) {
    return static_cast<std::uint64_t>(id) * 0x9e3779b97f4a7c15U;
}

/// A thin line along a closed outline, or a part of one.
void drawEdge(Sketch& sketch, std::vector<PointMm> points, const Tone& tone, const Part& part) {
    sketch.stroke(std::move(points), tone, sketch.forPaper(0.18), part);
}

void drawMember(Sketch& sketch, const RenderingSubject& subject, const MemberPlan& member) {
    const Part part{{}, member.id, "member"};
    const BoxMm box = toMm(member.rect);
    WoodPart wood = frameWood(subject, seedOf(member.id.number) + 1);
    wood.grain = isUpright(member.kind) ? Grain::AlongHeight : Grain::AlongLength;
    wood.cut = Cut::QuarterSawn; // narrow parts are straight-grained
    sketch.wash(cornersOf(box), lit(boardTone(wood), frameLight), part);
    drawFigure(sketch, box, wood, part);
    auto outline = cornersOf(box);
    outline.push_back(outline.front());
    drawEdge(sketch, std::move(outline), thin(dark, 0.28), part);
}

/// In the gap between two fronts on one box, back from their faces, where less light falls.
void drawFiller(Sketch& sketch, const RenderingSubject& subject, const Filler& filler) {
    constexpr double shaded = 0.74;
    const MemberPlan& member = subject.plan.members[filler.member];
    const Part part{{}, member.id, "filler strip"};
    const BoxMm &lower = subject.places.fronts[filler.lower],
                &upper = subject.places.fronts[filler.upper];
    const bool isStile = isUpright(member.kind);
    const PointMm from = lower.min().cwiseMax(upper.min()), to = lower.max().cwiseMin(upper.max());
    // Between them the two corners are exchanged across the gap.
    const BoxMm gap = isStile ? BoxMm(PointMm(to.x(), from.y()), PointMm(from.x(), to.y()))
                              : BoxMm(PointMm(from.x(), to.y()), PointMm(to.x(), from.y()));
    WoodPart wood = woodOf(subject, chosenStock(subject.project, subject.plan.fronts[filler.lower]),
                           seedOf(member.id.number));
    wood.grain = isStile ? Grain::AlongHeight : Grain::AlongLength;
    wood.cut = Cut::QuarterSawn; // narrow parts are straight-grained
    sketch.wash(cornersOf(gap), lit(boardTone(wood), shaded), part);
    drawFigure(sketch, gap, wood, part);
}

/// Into an open space: the dark of the case, lighter where light falls on its floor.
void drawInside(Sketch& sketch, const RenderingSubject& subject, std::size_t space) {
    const BoxMm& box = subject.places.spaces[space];
    const Part part{subject.plan.spaces[space].opening, {}, "inside"};
    const Tone wood = boardTone(frameWood(subject, 0));
    sketch.wash(cornersOf(box), mixed(dark, wood, 0.3), part);
    const double floor = 0.18 * box.sizes().y(), in = std::min(0.12 * box.sizes().x(), floor);
    sketch.wash({box.min(),
                 {box.max().x(), box.min().y()},
                 {box.max().x() - in, box.min().y() + floor},
                 {box.min().x() + in, box.min().y() + floor}},
                mixed(dark, wood, 0.45), part);
}

/// Where a part of an opening is drawn: it keeps the proportion in which it divides the opening.
BoxMm placedIn(const BoxMm& drawn, const CaseRect& opening, const CaseRect& part) {
    const BoxMm planned = toMm(opening), inside = toMm(part);
    const PointMm grown = drawn.sizes().cwiseQuotient(planned.sizes());
    return {drawn.min() + (inside.min() - planned.min()).cwiseProduct(grown),
            drawn.min() + (inside.max() - planned.min()).cwiseProduct(grown)};
}

/// A closed board's front edge, flush with the frame, so that it takes the same light.
void drawBoardEdge(Sketch& sketch, const RenderingSubject& subject, const PlannedBoard& board) {
    const CaseRect edge = edgeOf(board);
    if (edge.isEmpty() || board.place.opening.isEmpty())
        return;
    const Part part{board.opening, {}, "board edge"};
    const BoxMm box = placedIn(subject.places.spaces[board.space], board.place.opening, edge);
    WoodPart wood = frameWood(subject, seedOf(board.opening.number));
    wood.grain = Grain::AlongLength;
    sketch.wash(cornersOf(box), lit(boardTone(wood), frameLight), part);
    drawFigure(sketch, box, wood, part);
    auto outline = cornersOf(box);
    outline.push_back(outline.front());
    drawEdge(sketch, std::move(outline), thin(dark, 0.4), part);
}

/// How wide the opening shows round an inset front.
BoxMm openingRound(const RenderingSubject& subject, std::uint32_t index) {
    const FrontPlan& front = subject.plan.fronts[index];
    const auto gap = [&](Side side) {
        return front.fit[side] == Fit::Inset
                   ? -front.overlay[side].inMillimetres() * subject.places.reveals
                   : 0.0;
    };
    const BoxMm& box = subject.places.fronts[index];
    return {box.min() - PointMm(gap(Side::Left), gap(Side::Bottom)),
            box.max() + PointMm(gap(Side::Right), gap(Side::Top))};
}

/// Inset fronts lie flush in a dark gap; others stand out and throw a shadow on the frame.
void drawDepth(Sketch& sketch, const RenderingSubject& subject, std::uint32_t index) {
    const FrontPlan& front = subject.plan.fronts[index];
    const Part part{front.opening, {}, "reveal"};
    const BoxMm& box = subject.places.fronts[index];
    const BoxMm opening = openingRound(subject, index);
    if ((opening.sizes() - box.sizes()).maxCoeff() > 0) {
        sketch.wash(cornersOf(opening), dark, part);
        // Some light reaches into the gap where it faces the light.
        const BoxMm inner(box.min() + (opening.min() - box.min()) * 0.55,
                          box.max() + (opening.max() - box.max()) * 0.55);
        const Tone faint = mixed(dark, toneOf(frameWood(subject, 0).tone), 0.22);
        sketch.wash({opening.min(),
                     {opening.max().x(), opening.min().y()},
                     opening.max(),
                     {inner.max().x(), opening.max().y()},
                     {inner.max().x(), inner.min().y()},
                     {opening.min().x(), inner.min().y()}},
                    faint, part);
    }
    const bool standsOut = std::any_of(allSides.begin(), allSides.end(),
                                       [&](Side side) { return front.fit[side] != Fit::Inset; });
    if (standsOut)
        drawShadow(sketch, cornersOf(box), shadowPerMm * front.thickness.inMillimetres(),
                   frontShadow, {front.opening, {}, "front shadow"});
}

void drawFace(Sketch& sketch, const RenderingSubject& subject, std::uint32_t index) {
    const FrontPlan& front = subject.plan.fronts[index];
    const BoxMm& box = subject.places.fronts[index];
    const Part part{front.opening, {}, "front"};
    const WoodPart wood =
        woodOf(subject, chosenStock(subject.project, front), seedOf(front.opening.number));
    const Tone tone = boardTone(wood);
    sketch.wash(cornersOf(box), tone, part);
    drawProfileBands(sketch, box, *front.profile, tone, {front.opening, {}, "profile"});
    drawFigure(sketch, box, wood, {front.opening, {}, "figure"});
    const auto c = cornersOf(box);
    const Part edge{front.opening, {}, "front edge"};
    drawEdge(sketch, {c[0], c[1], c[2]}, thin(dark, 0.62), edge);
    drawEdge(sketch, {c[2], c[3], c[0]}, thin(dark, 0.34), edge);
    const double in = sketch.forPaper(0.2);
    drawEdge(sketch, {c[0] + PointMm(in, in), c[3] + PointMm(in, -in), c[2] + PointMm(-in, -in)},
             thin(bright, 0.38), edge);
}

/// Handles keep their size; their places keep the proportion in which they divide the front.
void drawHandles(Sketch& sketch, const RenderingSubject& subject, std::uint32_t index) {
    const FrontPlan& front = subject.plan.fronts[index];
    const BoxMm& box = subject.places.fronts[index];
    const PointMm planned = toMm(front.rect).sizes();
    if (front.fittings)
        for (std::size_t i = 0; i < front.fittings->size(); ++i) {
            const FittingPlan& fitting = (*front.fittings)[i];
            drawFittingTones(
                sketch, fitting,
                box.min() + toMm(fitting.centre).cwiseQuotient(planned).cwiseProduct(box.sizes()),
                {front.opening, {}, "fitting " + std::to_string(i + 1)});
        }
    if (!front.hardware)
        return;
    for (std::size_t i = 0; i < front.hardware->handles.size(); ++i) {
        const PointMm at = toMm(front.hardware->handles[i].centre);
        drawHandleTones(sketch, *front.hardware->form,
                        box.min() + at.cwiseQuotient(planned).cwiseProduct(box.sizes()),
                        {front.opening, {}, "handle " + std::to_string(i + 1)});
    }
}

} // namespace

Drawing caseRendering(const RenderingSubject& subject) {
    Sketch sketch(subject.paperScale);
    const Part part{{}, {}, "case"};
    const BoxMm& outline = subject.places.outline;
    if (subject.places.reveals == 1) {
        // Between two doors that meet nothing stands: one looks into the case.
        sketch.wash(cornersOf(outline), mixed(dark, boardTone(frameWood(subject, 0)), 0.3),
                    {{}, {}, "case inside"});
        for (const MemberPlan& member : subject.plan.members)
            if (isBuilt(member.kind))
                drawMember(sketch, subject, member);
    } else {
        sketch.wash(cornersOf(outline), lit(boardTone(frameWood(subject, 0)), frameLight), part);
        const PointMm below = outline.min() - PointMm(0, sketch.forPaper(6));
        const Phrase words = phrase("Reveals ×%1, not to scale",
                                    std::to_string(static_cast<int>(subject.places.reveals)));
        sketch.text(Layer::Note, {below, told(words, subject.language), 2.5, Anchor::Start, 0},
                    {{}, {}, "note"});
    }
    for (std::size_t i = 0; i < subject.plan.spaces.size(); ++i)
        drawInside(sketch, subject, i);
    for (const PlannedBoard& board : subject.plan.boards)
        drawBoardEdge(sketch, subject, board);
    for (const Filler& filler : subject.plan.fillers)
        drawFiller(sketch, subject, filler);
    auto edge = cornersOf(outline);
    edge.push_back(edge.front());
    drawEdge(sketch, std::move(edge), thin(dark, 0.75), part);
    return sketch.finished(0);
}

Drawing frontRendering(const RenderingSubject& subject, std::uint32_t front) {
    Sketch sketch(subject.paperScale);
    drawDepth(sketch, subject, front);
    drawFace(sketch, subject, front);
    drawHandles(sketch, subject, front);
    return sketch.finished(0);
}

Drawing rendering(const RenderingSubject& subject) {
    Sketch sketch(subject.paperScale);
    sketch.add(caseRendering(subject));
    for (std::uint32_t i = 0; i < subject.plan.fronts.size(); ++i)
        sketch.add(frontRendering(subject, i));
    return sketch.finished(margin);
}

} // namespace frontwright
