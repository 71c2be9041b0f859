#include "core/lengths/format.h"
#include "core/plan/boards.h"
#include "core/plan/member_words.h"
#include "core/sheets/part_templates.h"
#include "core/sheets/template_draft.h"
#include "core/sheets/text_lines.h"

namespace frontwright {
namespace {

constexpr double crossArm = 3; // mm of each screw's cross

/// What is cut is told to 1/64 in: a furring of 23/32 in is not 3/4 in.
LengthStyle fineStyle(const TemplateSource& source) {
    return {source.style.unit, 64, source.style.mark};
}

/// Depths as they lie on the strip, from the frame's back.
struct OnStrip {
    Span strip;
    double height;
    [[nodiscard]] double operator()(Length depth) const {
        return (depth - strip.low).inMillimetres();
    }
    [[nodiscard]] BoxMm box(Span depth) const {
        return {PointMm((*this)(depth.low), 0), PointMm((*this)(depth.high), height)};
    }
};

/// How high a strip is as it lies on the sheet: its upright face, or its upper one.
Length heightOf(const PlannedBoard& board, Side side) {
    const KeeperSpec& keeper = board.spec->keeper;
    if (keeper.fastening == KeeperFastening::Sideways)
        return keeper.height;
    return keeper.width + greatest({}, board.fitted.board.furring[side]);
}

/// The piece is named at its first screw, where its drill is told too.
class Piece {
public:
    Piece(TemplateDraft& draft, const TemplateSource& source, const PlannedBoard& board)
        : m_draft(draft),
          m_source(source),
          m_board(board) {}

    void add(const OnStrip& on, const KeeperPiece& piece, std::size_t index) {
        const std::string name = "piece " + number(index);
        m_draft.rectangle(Layer::CutEdge, on.box(piece.along), name);
        std::vector<Phrase> lines{
            phrase("piece %1: %2", number(index), shown(piece.along.size(), fineStyle(m_source)))};
        addDrill(lines);
        for (std::size_t i = 0; i < piece.screws.size(); ++i) {
            const PointMm at(on(piece.screws[i]), on.height / 2);
            addScrew(at, name + ", screw " + number(i), lines);
            lines.clear();
        }
    }

private:
    void addDrill(std::vector<Phrase>& lines) const {
        if (!m_board.keeperScrew)
            return;
        lines.push_back(
            phrase("drill %1, through", drill(m_source, m_board.keeperScrew->clearanceHole)));
        if (const Length sunk = m_board.spec->keeper.screwRecess; sunk > Length{})
            lines.push_back(phrase("head sunk %1", shown(sunk, fineStyle(m_source))));
    }
    void addScrew(const PointMm& at, const std::string& which, const std::vector<Phrase>& lines) {
        if (m_board.keeperScrew) {
            const double radius = m_board.keeperScrew->clearanceHole.inMillimetres() / 2;
            return m_draft.hole(Layer::Hole, {at, radius}, which, lines);
        }
        m_draft.line(Layer::Centre, at - PointMm(crossArm, 0), at + PointMm(crossArm, 0),
                     which + ", along");
        m_draft.line(Layer::Centre, at - PointMm(0, crossArm), at + PointMm(0, crossArm), which);
        if (!lines.empty())
            m_draft.label(lines, CircleMark{at, crossArm}, which);
    }

    TemplateDraft& m_draft;
    const TemplateSource& m_source;
    const PlannedBoard& m_board;
};

/// "Keeper piece 1: 5 1/2 in long, begins 3/4 in behind the frame's face; screws 1 in and 4 1/2 in
/// from its front end."
Phrase pieceWords(const KeeperPiece& piece, std::size_t index, Construction construction,
                  LengthStyle style) {
    std::vector<std::string> places;
    for (const Length screw : piece.screws)
        places.push_back(shown(screw - piece.along.low, style));
    return phrase("Keeper piece %1: %2 long, begins %3 %4; screws %5 from its front end.",
                  number(index), shown(piece.along.size(), style), shown(piece.along.low, style),
                  behindFace(construction), listed(places, 24));
}

void addParameters(TemplateDraft& draft, const TemplateSource& source, const PlannedBoard& board,
                   Side side) {
    const auto& pieces = board.fitted.strips[side].pieces;
    for (std::size_t i = 0; i < pieces.size(); ++i)
        draft.parameter(pieceWords(pieces[i], i, source.plan.construction, fineStyle(source)));
    const std::string length = shown(board.fitted.board.strip.size(), fineStyle(source));
    draft.parameter(phrase("Runner: %1 long, %2 high.", length,
                           shown(board.spec->runnerHeight, fineStyle(source))));
    if (board.fitted.board.furring[side] > Length{})
        draft.parameter(phrase("Furring: %1 long, %2 thick.", length,
                               shown(board.fitted.board.furring[side], fineStyle(source))));
    draft.parameter(phrase("Setup blocks: %1 under the runner's top, %2 between runner and keeper.",
                           shown(board.fitted.board.runnerBlock, fineStyle(source)),
                           shown(board.fitted.board.keeperBlock, fineStyle(source))));
    draft.parameter(phrase("Board: %1 wide, %2 deep, %3 thick.",
                           shown(board.fitted.board.width, fineStyle(source)),
                           shown(board.fitted.board.depth, fineStyle(source)),
                           shown(board.fitted.board.thickness, fineStyle(source))));
}

Phrase titleOf(const std::string& name, Side side, bool servesBoth) {
    if (servesBoth)
        return phrase("Keeper strips of board %1", name);
    return side == Side::Left ? phrase("Keeper strip of board %1, left", name)
                              : phrase("Keeper strip of board %1, right", name);
}

Template keeperTemplate(const TemplateSource& source, const PlannedBoard& board, Side side,
                        bool servesBoth) {
    const OnStrip on{board.fitted.board.strip, heightOf(board, side).inMillimetres()};
    TemplateDraft draft(TemplateKind::KeeperStrip,
                        titleOf(label(source.plan.spaces[board.space]), side, servesBoth),
                        on.box(on.strip), board.opening, source.language);
    const KeeperStrip& strip = board.fitted.strips[side];
    Piece piece(draft, source, board);
    for (std::size_t i = 0; i < strip.pieces.size(); ++i)
        piece.add(on, strip.pieces[i], i);
    for (const auto* free : {&strip.interruptions, &strip.leftOut})
        for (const Span& span : *free)
            draft.hatch(Layer::Waste, on.box(span));
    addParameters(draft, source, board, side);
    return draft.finished(text("Read from inside the case; on the right side from behind"),
                          text("the strip's front end is at the left"), {board.opening});
}

bool haveSameStrips(const PlannedBoard& board) {
    return board.fitted.strips.left == board.fitted.strips.right &&
           heightOf(board, Side::Left) == heightOf(board, Side::Right) &&
           board.fitted.board.furring.left == board.fitted.board.furring.right;
}

} // namespace

void addKeeperTemplates(const TemplateSource& source, std::vector<Template>& to) {
    for (const PlannedBoard& board : source.plan.boards) {
        const bool servesBoth = haveSameStrips(board);
        for (const Side side : {Side::Left, Side::Right})
            if (!board.fitted.strips[side].pieces.empty() && (side == Side::Left || !servesBoth))
                to.push_back(keeperTemplate(source, board, side, servesBoth));
    }
}

} // namespace frontwright
