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
#include <QScrollBar>
#include <QWheelEvent>

#include <algorithm>
#include <cmath>

namespace frontwright {

namespace {

constexpr double grabPixels = 8;
constexpr double notch = 120;
constexpr double stepPerNotch = 1.2;
constexpr double leastScale = 0.02; // px per mm
constexpr double greatestScale = 40;
/// Zoomed out as far as can be, the case still takes that part of the view.
constexpr double farthestShare = 0.2;
/// Room for the dimensions that a selected front adds.
constexpr int fitMargin = 34;
constexpr int focusFrame = 2;
/// Where a small view would be all figures, these give way, as far as they can be read: until the
/// case has that part of the room.
constexpr double leastLetters = 0.8;
constexpr double leastShare = 0.62;
constexpr double fitStep = 0.95;

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
    const double pixelsPerPaperMm = m_letters * QFontMetricsF(font()).capHeight() / 2.5;
    options.paperScale = atScale / std::max(1.0, pixelsPerPaperMm);
    options.dimensions = m_layers.dimensions;
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

void ElevationView::setFitted(bool fitted) {
    m_fitted = fitted;
    // Where all is in view there is nothing to scroll to, and the drawing has the room.
    const auto bars = fitted ? Qt::ScrollBarAlwaysOff : Qt::ScrollBarAsNeeded;
    setHorizontalScrollBarPolicy(bars);
    setVerticalScrollBarPolicy(bars);
}

/// Rows of dimensions come and go with the divisions.
void ElevationView::keepInView() {
    const QRectF seen = mapToScene(viewport()->rect()).boundingRect();
    if (m_fitted && !m_drag && !seen.contains(m_scene.extent()))
        fit();
}

void ElevationView::fit() {
    setFitted(true);
    const QSizeF room =
        viewport()->size().shrunkBy(QMargins(fitMargin, fitMargin, fitMargin, fitMargin));
    const QSizeF outline = inScene(m_session.plan().outline).size();
    if (room.isEmpty() || outline.isEmpty())
        return;
    double fitted = leastScale;
    for (const double letters : {1.0, 0.9, leastLetters}) {
        m_letters = letters;
        fitted = scaleFor(room);
        if (outline.width() * fitted >= leastShare * room.width() ||
            outline.height() * fitted >= leastShare * room.height())
            break;
    }
    setTransform(QTransform::fromScale(fitted, -fitted));
    refresh();
    centerOn(m_scene.extent().center());
}

double ElevationView::scaleFor(const QSizeF& room) const {
    const QRectF outline = inScene(m_session.plan().outline);
    const double most = std::min(room.width() / outline.width(), room.height() / outline.height());
    // Figures keep their size on screen, and rows of them come and go: the largest case round
    // which they have room.
    for (double s = std::min(most, greatestScale); s > leastScale; s *= fitStep) {
        const ElevationOptions tried = options(s);
        QRectF extent = outline;
        if (tried.dimensions == Shown::Yes) {
            const Drawing figures =
                elevationDimensions(m_session.project(), m_session.plan(), tried);
            if (!figures.extent.isEmpty())
                extent |= inScene(figures.extent);
        }
        if (extent.width() * s <= room.width() && extent.height() * s <= room.height())
            return s;
    }
    return leastScale;
}

double ElevationView::farthestScale() const {
    const QSizeF room = viewport()->size(), outline = inScene(m_session.plan().outline).size();
    if (room.isEmpty() || outline.isEmpty())
        return leastScale;
    const double share = std::min(room.width() / outline.width(), room.height() / outline.height());
    return std::clamp(farthestShare * share, leastScale, greatestScale);
}

void ElevationView::zoom(Zoom direction) {
    zoomBy(direction == Zoom::In ? stepPerNotch : 1 / stepPerNotch, viewport()->rect().center());
}

void ElevationView::zoomBy(double factor, QPointF anchor) {
    setFitted(false);
    const double s = std::clamp(scale() * factor, farthestScale(), greatestScale);
    const QPointF before = mapToScene(anchor.toPoint());
    setTransform(QTransform::fromScale(s, -s));
    refresh();
    const QPoint shift = mapFromScene(before) - anchor.toPoint();
    horizontalScrollBar()->setValue(horizontalScrollBar()->value() + shift.x());
    verticalScrollBar()->setValue(verticalScrollBar()->value() + shift.y());
}

void ElevationView::wheelEvent(QWheelEvent* event) {
    const double turned = event->angleDelta().y() / notch;
    if (turned == 0) {
        QGraphicsView::wheelEvent(event);
        return;
    }
    zoomBy(std::pow(stepPerNotch, std::clamp(turned, -1.5, 1.5)), event->position());
    event->accept();
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
