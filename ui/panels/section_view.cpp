#include "ui/panels/section_view.h"

#include "ui/language/told.h"
#include "ui/paper/surface.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>

namespace frontwright {

namespace {
constexpr double margin = 8;
constexpr double leastScale = 0.2; // px per mm
constexpr double greatestScale = 6;
constexpr double readableShrink = 0.72;
} // namespace

SectionView::SectionView(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
    setPlane(Plane::Upright);
    const auto repaint = [this] { update(); };
    connect(&session, &Session::selectionChanged, this, repaint);
    connect(&session, &Session::workChanged, this, repaint);
    connect(&session, &Session::styleChanged, this, repaint);
}

void SectionView::setPlane(Plane plane) {
    m_plane = plane;
    setAccessibleName(plane == Plane::Upright ? tr("Upright section through the selected front")
                                              : tr("Level section through the selected front"));
    update();
}

std::optional<std::uint32_t> SectionView::shownFront() const {
    const auto id = m_session.selection().lastOpening();
    const FrontPlan* front = id ? m_session.plan().frontOf(*id) : nullptr;
    if (!front)
        return std::nullopt;
    return static_cast<std::uint32_t>(front - m_session.plan().fronts.data());
}

std::optional<std::uint32_t> SectionView::shownBoard() const {
    const auto id = m_session.selection().lastOpening();
    const PlannedBoard* board = id ? m_session.plan().boardOf(*id) : nullptr;
    if (!board)
        return std::nullopt;
    return static_cast<std::uint32_t>(board - m_session.plan().boards.data());
}

Drawing SectionView::drawnBoard(std::uint32_t board, double paperScale) const {
    const Plan& plan = m_session.plan();
    // Which side is seen is said nowhere beside it.
    const BoardSectionOptions options{m_session.style(), paperScale,
                                      plan.boards[board].fitted.out.keeper.side,
                                      SectionNotes::Below, spokenLanguage()};
    return m_plane == Plane::Upright ? boardSection(plan, board, options)
                                     : boardLevelSection(plan, board, options);
}

Drawing SectionView::drawnFront(std::uint32_t front, double paperScale) const {
    SectionOptions options;
    options.style = m_session.style();
    options.paperScale = paperScale;
    options.language = spokenLanguage();
    options.notes = SectionNotes::LeftOut;
    options.longStretches = LongStretches::LeftOut;
    const Selection& selection = m_session.selection();
    options.mountingHole = selection.mountingHole.value_or(0);
    if (!selection.mountingHole)
        options.handleHole = selection.handleHole;
    return m_plane == Plane::Upright
               ? frontSection(m_session.project(), m_session.plan(), front, options)
               : levelSection(m_session.project(), m_session.plan(), front, options);
}

SectionView::Fitted
SectionView::fitted(const std::function<Drawing(double paperScale)>& draw) const {
    const double pixelsPerPaperMm = QFontMetricsF(font()).capHeight() / 2.5;
    const PointMm room(width() - 2 * margin, height() - 2 * margin);
    // Rows of figures come and go with the scale, so sizes are tried: the largest wood whose
    // figures need not be shrunk beyond what can be read.
    Fitted best;
    double bestShrink = 0;
    for (double scale = greatestScale; scale >= leastScale; scale *= 0.85) {
        Drawing drawing = draw(scale / pixelsPerPaperMm);
        const PointMm size = drawing.extent.sizes() * scale;
        const double shrink = std::min({1.0, room.x() / size.x(), room.y() / size.y()});
        const bool better = bestShrink < readableShrink
                                ? shrink > bestShrink
                                : shrink >= readableShrink && shrink * scale > best.pixelsPerMm;
        if (!better)
            continue;
        bestShrink = shrink;
        best = {std::move(drawing), scale * shrink};
    }
    return best;
}

void SectionView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Theme theme = themeOf(palette());
    painter.fillRect(rect(), sheetColour(theme));
    const auto front = shownFront();
    const auto board = shownBoard();
    if (!front && !board) {
        painter.setPen(palette().color(QPalette::PlaceholderText));
        painter.drawText(rect().adjusted(12, 12, -12, -12), Qt::AlignCenter | Qt::TextWordWrap,
                         tr("Select a front to see how it is held: wall, front, screw and bolt."));
        return;
    }
    const Fitted shown = fitted([&](double paperScale) {
        return board ? drawnBoard(*board, paperScale) : drawnFront(*front, paperScale);
    });
    const PointMm centre = shown.drawing.extent.center();
    painter.translate(width() / 2.0, height() / 2.0);
    painter.scale(shown.pixelsPerMm, -shown.pixelsPerMm);
    painter.translate(-centre.x(), -centre.y());
    paint(painter, shown.drawing, theme);
}

} // namespace frontwright
