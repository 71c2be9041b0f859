#include "ui/panels/section_panel.h"

#include "ui/paper/surface.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>

namespace frontwright {

namespace {
constexpr double margin = 8;
constexpr double leastScale = 0.2; // px per mm
constexpr double greatestScale = 20;
constexpr double readableScale = 1.0;
} // namespace

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
    const double own = QFontMetricsF(font()).capHeight() / 2.5;
    // Where the wood would become too small to read, the figures give way first.
    Fitted best = fittedAt(front, own);
    for (const double smaller : {0.85, 0.7})
        if (best.pixelsPerMm < readableScale)
            best = fittedAt(front, own * smaller);
    return best;
}

SectionPanel::Fitted SectionPanel::fittedAt(std::uint32_t front, double pixelsPerPaperMm) const {
    SectionOptions options;
    options.style = m_session.style();
    options.notes = SectionNotes::LeftOut;
    options.mountingHole = m_session.selection().mountingHole.value_or(0);
    const auto drawnAt = [&](double pixelsPerMm) {
        options.paperScale = pixelsPerMm / pixelsPerPaperMm;
        return frontSection(m_session.project(), m_session.plan(), front, options);
    };
    // Wood grows with the scale, figures do not: pixels = wood × scale + figures. Two drawings
    // tell wood and figures apart.
    const PointMm room(width() - 2 * margin, height() - 2 * margin);
    double small = 0.5;
    double large = 2.0;
    for (int round = 0; round < 3; ++round) {
        const PointMm atSmall = drawnAt(small).extent.sizes() * small;
        const PointMm atLarge = drawnAt(large).extent.sizes() * large;
        const PointMm wood = (atLarge - atSmall) / (large - small);
        const PointMm figures = atSmall - wood * small;
        const PointMm scale = (room - figures).cwiseQuotient(wood.cwiseMax(1e-3));
        large = std::clamp(scale.minCoeff(), leastScale, greatestScale);
        small = large * 0.8;
    }
    return {drawnAt(large), large};
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
    // Rows of figures come and go with the scale; what still reaches out is shrunk as a whole.
    const PointMm size = shown.drawing.extent.sizes() * shown.pixelsPerMm;
    const double pixelsPerMm = shown.pixelsPerMm * std::min({1.0, (width() - 2 * margin) / size.x(),
                                                             (height() - 2 * margin) / size.y()});
    painter.translate(width() / 2.0, height() / 2.0);
    painter.scale(pixelsPerMm, -pixelsPerMm);
    painter.translate(-centre.x(), -centre.y());
    paint(painter, shown.drawing, theme);
}

} // namespace frontwright
