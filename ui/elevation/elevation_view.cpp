#include "ui/elevation/elevation_view.h"
#include "ui/elevation/accessible_elevation.h"
#include "ui/elevation/scene_rect.h"

#include "ui/elevation/finding_place.h"
#include "ui/elevation/part_words.h"
#include "ui/language/told.h"
#include "ui/paper/surface.h"

#include <QEvent>
#include <QFontMetricsF>
#include <QGestureEvent>
#include <QPainter>
#include <QPinchGesture>
#include <QResizeEvent>

#include <algorithm>

namespace frontwright {

namespace {

constexpr double grabPixels = 8;
constexpr int focusFrame = 2;

} // namespace

ElevationView::ElevationView(Session& session, QWidget* parent)
    : QGraphicsView(parent),
      m_session(session) {
    makeElevationAccessible();
    setScene(&m_scene);
    setAccessibleName(tr("Elevation of the case"));
    setAccessibleDescription(tr("Arrow keys walk from front to front, Tab cycles through what lies "
                                "under the pointer, Enter types a size."));
    setRenderHint(QPainter::Antialiasing);
    setTransformationAnchor(NoAnchor);
    setViewportUpdateMode(MinimalViewportUpdate);
    setMouseTracking(true);
    setFocusPolicy(Qt::StrongFocus);
    setFrameShape(Box);
    setLineWidth(focusFrame);
    viewport()->grabGesture(Qt::PinchGesture);
    setTransform(QTransform::fromScale(0.5, -0.5));
    connect(&session, &Session::workChanged, this, [this] {
        if (m_drag && m_drag->isOvertaken())
            endGesture();
        refresh();
        keepInView();
    });
    // Figures in another unit take other room.
    connect(&session, &Session::styleChanged, this, [this] { m_fitted ? fit() : refresh(); });
    connect(&session, &Session::selectionChanged, this, [this] { refresh(); });
    connect(&session, &Session::started, this, &ElevationView::fit);
    refresh();
}

void ElevationView::setLayers(const ShownLayers& layers) {
    m_layers = layers;
    refresh();
}

double ElevationView::scale() const {
    return transform().m11();
}

double ElevationView::reach() const {
    return grabPixels / scale();
}

ElevationOptions ElevationView::options(double atScale) const {
    ElevationOptions options;
    options.style = m_session.style();
    options.language = spokenLanguage();
    // Capitals of 2.5 paper mm come out as high as the capitals of the window's own font.
    const double pixelsPerPaperMm = m_figures.letters * QFontMetricsF(font()).capHeight() / 2.5;
    options.paperScale = atScale / std::max(1.0, pixelsPerPaperMm);
    options.dimensions = m_layers.dimensions;
    if (atScale <= m_figures.scale)
        options.dimensionRows = m_figures.rows;
    options.holes = m_layers.holes;
    options.boxes = m_layers.boxes;
    options.bottoms = m_layers.bottoms;
    options.fields = m_layers.fields;
    options.allowedRegion = m_layers.allowedRegion;
    options.systemHoles = m_layers.systemHoles;
    options.emphasised = m_session.selection().lastOpening();
    options.emphasisedPart = selectedPart();
    options.keepFree = partReach(m_session.plan(), options);
    return options;
}

void ElevationView::refresh() {
    // Setting it repaints everything, even with the same colour.
    if (backgroundBrush().color() != sheetColour(theme()))
        setBackgroundBrush(sheetColour(theme()));
    m_scene.show(m_session.work(), options(scale()), theme());
    std::vector<Emphasis::Place> signs;
    if (m_layers.findings == Shown::Yes)
        for (const Finding& finding : m_session.work().findings)
            if (finding.severity == Severity::Ruins || finding.severity == Severity::WontWork)
                if (const auto place = placeOf(finding, m_session.plan()))
                    signs.push_back({*place, finding.severity});
    m_scene.showSigns(signs, theme(), scale());
    refreshEmphasis();
}

void ElevationView::refreshEmphasis() {
    Emphasis emphasis = m_drag ? m_dragEmphasis : Emphasis();
    const Plan& plan = m_session.plan();
    if (!m_drag) {
        emphasiseSelection(emphasis);
        if (const QRectF hovered = hoveredRect(); !hovered.isEmpty())
            emphasis.hovered = hovered;
        emphasis.band = m_band;
    }
    if (m_finding)
        if (const auto place = placeOf(*m_finding, plan)) {
            emphasis.findings.push_back({*place, m_finding->severity});
            const double r = 14 / scale();
            emphasis.selected.push_back({place->x() - r, place->y() - r, 2 * r, 2 * r});
        }
    m_scene.emphasise(emphasis, theme(), scale());
}

void ElevationView::emphasiseSelection(Emphasis& emphasis) const {
    const Plan& plan = m_session.plan();
    if (const auto part = selectedPart()) {
        emphasis.selected.push_back(partFrame(plan, *part, scale()));
        return;
    }
    for (const OpeningId id : m_session.selection().openings)
        if (const FrontPlan* front = plan.frontOf(id))
            emphasis.selected.push_back(inScene(front->rect));
        else if (const SpacePlan* space = plan.spaceOf(id))
            emphasis.selected.push_back(inScene(space->rect));
    if (m_session.selection().member)
        if (const MemberPlan* member = plan.memberOf(*m_session.selection().member))
            emphasis.selected.push_back(inScene(member->rect));
}

/// What a press would grab; a hole's zone is shown as large as it is.
QRectF ElevationView::hoveredRect() const {
    const Plan& plan = m_session.plan();
    if (m_hovered.member)
        if (const MemberPlan* member = plan.memberOf(*m_hovered.member))
            return inScene(member->rect);
    if (!m_hovered.part)
        return {};
    const QRectF rect = partRect(plan, *m_hovered.part);
    if (rect.isEmpty() || m_hovered.part->kind == PlacedPart::Kind::Handle)
        return rect;
    const QPointF zone(reach(), reach());
    return rect | QRectF(rect.center() - zone, rect.center() + zone);
}

std::optional<PlacedPart> ElevationView::selectedPart() const {
    return frontwright::selectedPart(m_session.selection(), m_session.plan());
}

void ElevationView::showFinding(const std::optional<Finding>& finding) {
    m_finding = finding;
    if (finding)
        if (const auto place = placeOf(*finding, m_session.plan()))
            ensureVisible(QRectF(*place, QSizeF(1, 1)), 60, 60);
    refreshEmphasis();
}

bool ElevationView::event(QEvent* event) {
    if (event->type() == QEvent::Paint) {
        QPainter painter(this);
        painter.setPen(QPen(hasFocus() ? accentColour(theme()) : sheetColour(theme()), focusFrame,
                            Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
        painter.drawRect(rect().adjusted(1, 1, -1, -1));
        return true;
    }
    if (event->type() == QEvent::FocusIn || event->type() == QEvent::FocusOut)
        update();
    return QGraphicsView::event(event);
}

bool ElevationView::viewportEvent(QEvent* event) {
    if (event->type() == QEvent::Gesture) {
        auto* gestures = static_cast<QGestureEvent*>(event);
        if (auto* pinch = static_cast<QPinchGesture*>(gestures->gesture(Qt::PinchGesture))) {
            zoomBy(pinch->scaleFactor(), viewport()->mapFromGlobal(pinch->centerPoint()));
            return true;
        }
    }
    return QGraphicsView::viewportEvent(event);
}

void ElevationView::resizeEvent(QResizeEvent* event) {
    QGraphicsView::resizeEvent(event);
    if (m_fitted)
        fit();
}

void ElevationView::showEvent(QShowEvent* event) {
    QGraphicsView::showEvent(event);
    if (m_fitted)
        fit();
}

void ElevationView::changeEvent(QEvent* event) {
    QGraphicsView::changeEvent(event);
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange)
        refresh();
    if (event->type() == QEvent::ActivationChange && !isActiveWindow())
        cancelGesture();
}

} // namespace frontwright
