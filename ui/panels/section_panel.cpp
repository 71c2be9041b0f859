#include "ui/panels/section_panel.h"

#include "ui/paper/surface.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>

namespace frontwright {

namespace {
constexpr double margin = 8;
}

SectionPanel::SectionPanel(Session& session, QWidget* parent)
    : QWidget(parent),
      m_session(session) {
    setAccessibleName(tr("Section through the selected front"));
    const auto repaint = [this] { update(); };
    connect(&session, &Session::selectionChanged, this, repaint);
    connect(&session, &Session::workChanged, this, repaint);
    connect(&session, &Session::styleChanged, this, repaint);
}

std::optional<std::uint32_t> SectionPanel::shownFront() const {
    const auto id = m_session.selection().lastOpening();
    const FrontPlan* front = id ? m_session.plan().frontOf(*id) : nullptr;
    if (!front)
        return std::nullopt;
    return static_cast<std::uint32_t>(front - m_session.plan().fronts.data());
}

SectionPanel::Fitted SectionPanel::fitted(std::uint32_t front) const {
    SectionOptions options;
    options.style = m_session.style();
    options.mountingHole = m_session.selection().mountingHole.value_or(0);
    const double pixelsPerPaperMm = QFontMetricsF(font()).capHeight() / 2.5;
    double pixelsPerMm = 1.5;
    Drawing drawing;
    // Figures keep their size, so the extent changes with the scale: a few rounds settle it.
    for (int round = 0; round < 4; ++round) {
        options.paperScale = pixelsPerMm / pixelsPerPaperMm;
        drawing = frontSection(m_session.project(), m_session.plan(), front, options);
        const PointMm size = drawing.extent.sizes();
        const double fits =
            std::min((width() - 2 * margin) / size.x(), (height() - 2 * margin) / size.y());
        if (round < 3)
            pixelsPerMm = std::clamp(fits, 0.05, 20.0);
    }
    return {std::move(drawing), pixelsPerMm};
}

void SectionPanel::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Theme theme = themeOf(palette());
    painter.fillRect(rect(), sheetColour(theme));
    const auto front = shownFront();
    if (!front) {
        painter.setPen(palette().color(QPalette::PlaceholderText));
        painter.drawText(rect().adjusted(12, 12, -12, -12), Qt::AlignCenter | Qt::TextWordWrap,
                         tr("Select a front to see how it is held: wall, front, screw and bolt."));
        return;
    }
    const Fitted shown = fitted(*front);
    const PointMm centre = shown.drawing.extent.center();
    painter.translate(width() / 2.0, height() / 2.0);
    painter.scale(shown.pixelsPerMm, -shown.pixelsPerMm);
    painter.translate(-centre.x(), -centre.y());
    paint(painter, shown.drawing, theme);
}

} // namespace frontwright
