#include "core/drawings/board_section.h"

#include "core/drawings/board_section_parts.h"
#include "core/drawings/drawing_note.h"
#include "core/drawings/section_parts.h"
#include "core/lengths/format.h"

namespace frontwright {
namespace {

constexpr double margin = 5;       // of paper, round the whole drawing
constexpr double seenOfMember = 8; // of paper, above and below the opening
constexpr Hatching memberHatching{60, 2.8};
constexpr Hatching boardHatching{45, 2.2};

/// x to x behind the face, y to y above the opening's lower edge.
BoxMm boxOf(Span depth, Span upright) {
    return {PointMm(depth.low.inMillimetres(), upright.low.inMillimetres()),
            PointMm(depth.high.inMillimetres(), upright.high.inMillimetres())};
}

/// A member that is cut, broken off away from the opening: three edges and its hatch.
void drawMember(Sketch& sketch, const BoardSubject& subject, Side side) {
    const bool isAbove = side == Side::Top;
    const double edge = isAbove ? subject.opening().inMillimetres() : 0;
    const double end = edge + (isAbove ? 1 : -1) * sketch.forPaper(seenOfMember);
    const double back = subject.members().inMillimetres();
    const Part part = subject.part(isAbove ? "member above" : "member below");
    const std::vector<PointMm> outline{{0, end}, {0, edge}, {back, edge}, {back, end}};
    drawHatch(sketch, outline, memberHatching, {}, part);
    sketch.path(Layer::CutEdge, outline, PathMark::End::Open, part);
}

/// The case's back, as far as the members are drawn.
void drawBack(Sketch& sketch, const BoardSubject& subject) {
    const double x = subject.sizes().strip.high.inMillimetres();
    const double beyond = sketch.forPaper(seenOfMember);
    sketch.line(Layer::CutEdge, {x, -beyond}, {x, subject.opening().inMillimetres() + beyond},
                subject.part("back"));
}

/// What carries the board, behind the plane of the section.
void drawRunner(Sketch& sketch, const BoardSubject& subject) {
    const BoardPlan& sizes = subject.sizes();
    sketch.rectangle(Layer::MemberEdge,
                     boxOf(sizes.strip, {sizes.runnerUnderside, sizes.runnerTop}),
                     subject.part("runner"));
}

/// Sideways a circle with its cross, down the screw's centre line.
void drawScrew(Sketch& sketch, const BoardSubject& subject, Length at, const Part& part) {
    const double x = at.inMillimetres();
    const double low = subject.keeperUpright().low.inMillimetres();
    const double high = subject.keeperUpright().high.inMillimetres();
    const double beyond = sketch.forPaper(1);
    sketch.line(Layer::Centre, {x, low - beyond}, {x, high + beyond}, part);
    if (subject.board.spec->keeper.fastening == KeeperFastening::Down)
        return;
    const double middle = (low + high) / 2;
    sketch.circle(Layer::Fastener, {x, middle}, sketch.forPaper(0.6), part);
}

void drawKeepers(Sketch& sketch, const BoardSubject& subject) {
    int number = 0;
    for (const KeeperPiece& piece : subject.strip().pieces) {
        const Part part = subject.part("keeper piece " + std::to_string(++number));
        sketch.rectangle(Layer::MemberEdge, boxOf(piece.along, subject.keeperUpright()), part);
        for (const Length screw : piece.screws)
            drawScrew(sketch, subject, screw, part);
    }
}

void drawBoardItself(Sketch& sketch, const BoardSubject& subject) {
    const BoardPlan& sizes = subject.sizes();
    const Span upright{sizes.runnerTop, sizes.runnerTop + sizes.thickness};
    const Part part = subject.part("board");
    const BoxMm closed = boxOf({{}, sizes.depth}, upright);
    drawHatch(sketch, cornersOf(closed), boardHatching, {}, part);
    sketch.rectangle(Layer::CutEdge, closed, part);
    const Length out = subject.board.fitted.wanted;
    if (out <= Length{})
        return;
    // Only what leaves the closed board's outline: the rest would lie line on line.
    const BoxMm moved = boxOf({-out, sizes.depth - out}, upright);
    const double face = 0, end = moved.max().x();
    const Part pulled = subject.part("board, pulled out");
    sketch.path(Layer::Moved,
                {{face, moved.min().y()},
                 moved.min(),
                 {moved.min().x(), moved.max().y()},
                 {face, moved.max().y()}},
                PathMark::End::Open, pulled);
    if (end > face)
        sketch.line(Layer::Moved, {end, moved.min().y()}, {end, moved.max().y()}, pulled);
}

Phrase titleOf(const BoardSubject& subject) {
    const std::string name = label(subject.plan.spaces[subject.board.space]);
    return subject.options.side == Side::Left
               ? phrase("Board %1, section, seen from the right: left side", name)
               : phrase("Board %1, section, seen from the right: right side", name);
}

} // namespace

Phrase boardStrength(const BoardSubject& subject) {
    const FittedBoard& fitted = subject.board.fitted;
    const LengthStyle style = subject.options.style;
    return phrase("Pulled out %1; safe up to %2 with %3 at its edge", shown(fitted.wanted, style),
                  shown(fitted.safe.pullOut, style, Rounding::Down), shown(fitted.load, style));
}

Drawing boardSection(const Plan& plan, std::uint32_t board, const BoardSectionOptions& options) {
    const BoardSubject subject{plan, plan.boards[board], options};
    Sketch sketch(options.paperScale);
    for (const Side side : {Side::Bottom, Side::Top})
        drawMember(sketch, subject, side);
    drawBack(sketch, subject);
    drawRunner(sketch, subject);
    drawKeepers(sketch, subject);
    drawBoardItself(sketch, subject);
    drawBoardDimensions(sketch, subject);
    if (options.notes == SectionNotes::Below)
        drawNote(sketch, {titleOf(subject), {boardStrength(subject)}}, subject.style(),
                 options.language);
    return std::move(sketch).finished(margin);
}

} // namespace frontwright
