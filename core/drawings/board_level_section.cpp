#include "core/drawings/board_section_parts.h"
#include "core/drawings/clear_rows.h"
#include "core/drawings/drawing_note.h"
#include "core/drawings/section_parts.h"
#include "core/lengths/format.h"

namespace frontwright {
namespace {

constexpr double margin = 5;        // of paper, round the whole drawing
constexpr double seenOfMember = 12; // of paper, beside the opening
constexpr Hatching memberHatching{60, 2.8};
constexpr Hatching furringHatching{120, 2.2};
constexpr Hatching boardHatching{45, 2.2};

/// Seen from above: x from the opening's left edge, y = depth behind the frame's face.
class BoardFromAbove {
public:
    BoardFromAbove(Sketch& sketch, const BoardSubject& subject)
        : m_sketch(sketch),
          m_subject(subject),
          m_width(subject.board.place.opening.width()),
          m_inside(subject.sizes().strip) {}

    void draw() const {
        for (const Side side : {Side::Left, Side::Right}) {
            drawPanel(side);
            drawMember(side);
            drawFurring(side);
        }
        drawBack();
        drawBoardItself();
    }

    /// From the opening's left edge: where furring at that side begins, and where it ends.
    [[nodiscard]] Span furring(Side side) const {
        const Length panel = panelFace(side), width = m_subject.sizes().furring[side];
        return side == Side::Left ? Span{panel, panel + width} : Span{panel - width, panel};
    }
    [[nodiscard]] bool isFurred(Side side) const {
        return m_subject.sizes().furring[side] > Length{};
    }
    [[nodiscard]] Span board() const {
        const Length play = m_subject.sizes().sidePlay;
        return {play, m_width - play};
    }

private:
    [[nodiscard]] Length panelFace(Side side) const {
        const BoardPlace& place = m_subject.board.place;
        return (side == Side::Left ? place.leftPanel : place.rightPanel) - place.opening.left;
    }
    [[nodiscard]] BoxMm boxOf(Span across, Span depth) const {
        return {PointMm(across.low.inMillimetres(), depth.low.inMillimetres()),
                PointMm(across.high.inMillimetres(), depth.high.inMillimetres())};
    }
    void drawCut(const BoxMm& box, const Hatching& hatching, std::string name) const {
        const Part part = m_subject.part(std::move(name));
        drawHatch(m_sketch, cornersOf(box), hatching, {}, part);
        m_sketch.rectangle(Layer::CutEdge, box, part);
    }

    void drawPanel(Side side) const {
        const Length thickness = m_subject.board.place.panelThickness, face = panelFace(side);
        if (thickness <= Length{})
            return;
        const Span across =
            side == Side::Left ? Span{face - thickness, face} : Span{face, face + thickness};
        drawCut(boxOf(across, m_inside), memberHatching,
                side == Side::Left ? "side panel left" : "side panel right");
    }
    /// The frame's member, broken off away from the opening; frameless the panel is all there is.
    void drawMember(Side side) const {
        const double back = m_subject.board.place.frameThickness.inMillimetres();
        if (back <= 0)
            return;
        const bool isLeft = side == Side::Left;
        const double edge = isLeft ? 0 : m_width.inMillimetres();
        const double end = edge + (isLeft ? -1 : 1) * m_sketch.forPaper(seenOfMember);
        const Part part = m_subject.part(isLeft ? "member left" : "member right");
        const std::vector<PointMm> outline{{end, 0}, {edge, 0}, {edge, back}, {end, back}};
        drawHatch(m_sketch, outline, memberHatching, {}, part);
        m_sketch.path(Layer::CutEdge, outline, PathMark::End::Open, part);
    }
    void drawFurring(Side side) const {
        if (isFurred(side))
            drawCut(boxOf(furring(side), m_inside), furringHatching,
                    side == Side::Left ? "furring left" : "furring right");
    }
    void drawBack() const {
        const double y = m_inside.high.inMillimetres();
        m_sketch.line(Layer::CutEdge, {panelFace(Side::Left).inMillimetres(), y},
                      {panelFace(Side::Right).inMillimetres(), y}, m_subject.part("back"));
    }
    void drawBoardItself() const {
        const BoardPlan& sizes = m_subject.sizes();
        drawCut(boxOf(board(), {{}, sizes.depth}), boardHatching, "board");
        const Length out = m_subject.board.fitted.wanted;
        if (out <= Length{})
            return;
        // Only what leaves the closed board's outline: the rest would lie line on line.
        const BoxMm moved = boxOf(board(), {-out, sizes.depth - out});
        const Part part = m_subject.part("board, pulled out");
        m_sketch.path(Layer::Moved,
                      {{moved.min().x(), 0},
                       moved.min(),
                       {moved.max().x(), moved.min().y()},
                       {moved.max().x(), 0}},
                      PathMark::End::Open, part);
        if (const double end = moved.max().y(); end > 0)
            m_sketch.line(Layer::Moved, {moved.min().x(), end}, {moved.max().x(), end}, part);
    }

    Sketch& m_sketch;
    const BoardSubject& m_subject;
    Length m_width; ///< of the opening
    Span m_inside;  ///< depths between frame and back
};

void layWidths(DimensionRows& rows, const BoardSubject& subject, const BoardFromAbove& drawn) {
    const Length width = subject.board.place.opening.width();
    const Span board = drawn.board();
    rows.keepClear(0);
    rows.keepClear(width.inMillimetres());
    rows.addChain({boardMeasure(subject, {}, board.low, text("side play %1")),
                   boardMeasure(subject, board.low, board.high, text("board %1")),
                   boardMeasure(subject, board.high, width, text("side play %1"))});
    rows.addOverall(boardMeasure(subject, {}, width, text("opening %1")));
}

/// Inside the case: what stands beside the board.
void layGuides(DimensionRows& rows, const BoardSubject& subject, const BoardFromAbove& drawn) {
    std::vector<Measured> chain;
    for (const Side side : {Side::Left, Side::Right})
        if (drawn.isFurred(side)) {
            const Span furring = drawn.furring(side);
            chain.push_back(boardMeasure(subject, furring.low, furring.high, text("furring %1")));
        }
    rows.addChain(std::move(chain));
}

void drawDimensions(Sketch& sketch, const BoardSubject& subject, const BoardFromAbove& parts) {
    const double scale = sketch.paperScale();
    const BoxMm drawn = extentOf({sketch.marks(), {}, scale});
    DimensionRows below(Side::Bottom, drawn.min().y(), scale),
        above(Side::Top, drawn.max().y(), scale);
    layWidths(below, subject, parts);
    layGuides(above, subject, parts);
    std::vector<Mark> widths = below.marks();
    for (Mark& mark : above.marks())
        widths.push_back(std::move(mark));
    const double edge = drawn.min().x();
    const std::vector<Mark> depths =
        laidClear({Side::Left, edge, scale, reachPast({&below, &above}, edge * scale, -1)}, widths,
                  [&](DimensionRows& rows) { layBoardDepths(rows, subject); });
    for (const auto& marks : {depths, widths})
        for (const Mark& mark : marks)
            sketch.add(mark);
}

} // namespace

Drawing boardLevelSection(const Plan& plan, std::uint32_t board,
                          const BoardSectionOptions& options) {
    const BoardSubject subject{plan, plan.boards[board], options};
    Sketch sketch(options.paperScale);
    const BoardFromAbove parts(sketch, subject);
    parts.draw();
    drawDimensions(sketch, subject, parts);
    if (options.notes == SectionNotes::Below)
        drawNote(sketch,
                 {phrase("Board %1, level section, seen from above",
                         label(plan.spaces[subject.board.space])),
                  {boardStrength(subject)}},
                 subject.style(), options.language);
    return std::move(sketch).finished(margin);
}

} // namespace frontwright
