#include "ui/rendering/look_view.h"

#include "ui/elevation/scene_rect.h"

#include <QEvent>
#include <QFontMetricsF>
#include <QScrollBar>

#include <algorithm>
#include <cmath>

namespace frontwright {

namespace {

constexpr double leastScale = 0.02; // px per mm
constexpr double greatestScale = 20;
constexpr int fitMargin = 34;
/// How long a change may wait: many steps of a drag become one rendering.
constexpr int soonMilliseconds = 40;
/// While something is dragged: until the hand rests.
constexpr int restMilliseconds = 150;

} // namespace

LookView::LookView(Session& session, QWidget* parent)
    : QGraphicsView(parent),
      m_session(session),
      m_case(new RenderedItem) {
    setScene(&m_scene);
    m_scene.setItemIndexMethod(QGraphicsScene::NoIndex);
    m_case->setZValue(-1);
    m_case->setCacheMode(QGraphicsItem::DeviceCoordinateCache);
    m_scene.addItem(m_case);
    setAccessibleName(tr("The fronts as they will look"));
    setAccessibleDescription(
        tr("Arrow keys walk from front to front; plus and minus zoom, 0 fits the case."));
    setRenderHint(QPainter::Antialiasing);
    setTransformationAnchor(NoAnchor);
    setViewportUpdateMode(FullViewportUpdate);
    setFocusPolicy(Qt::StrongFocus);
    setFrameShape(NoFrame);
    viewport()->grabGesture(Qt::PinchGesture);
    setTransform(QTransform::fromScale(0.5, -0.5));
    m_soon.setSingleShot(true);
    connect(&m_soon, &QTimer::timeout, this, &LookView::refresh);
    connect(&session, &Session::workChanged, this, &LookView::wantRefresh);
    connect(&session, &Session::selectionChanged, viewport(), [this] { viewport()->update(); });
    connect(&session, &Session::started, this, [this] {
        if (m_fitted)
            fit();
    });
}

void LookView::setReveals(Reveals reveals) {
    m_reveals = reveals;
    m_isStale = true;
    if (!isVisible())
        return;
    refresh();
    if (m_fitted)
        fit();
}

void LookView::wantRefresh() {
    m_isStale = true;
    if (!isVisible())
        return;
    if (m_session.isPreviewing())
        m_soon.start(restMilliseconds);
    else if (!m_soon.isActive() || m_soon.interval() != soonMilliseconds)
        m_soon.start(soonMilliseconds);
}

double LookView::paperScale() const {
    // As in the elevation: capitals of 2.5 paper mm are as high as those of the window's font. In
    // steps, so that a little zooming changes no detail.
    const double pixelsPerPaperMm = std::max(1.0, QFontMetricsF(font()).capHeight() / 2.5);
    return std::exp2(std::round(2 * std::log2(scale() / pixelsPerPaperMm)) / 2);
}

void LookView::refresh() {
    if (!isVisible())
        return;
    m_isStale = false;
    auto rendered = std::make_shared<RenderedWork>();
    rendered->work = m_session.sharedWork();
    const Work& work = *rendered->work;
    rendered->places = m_reveals == Reveals::AsPlanned
                           ? placesAsPlanned(work.plan)
                           : placesExaggerated(work.project, work.plan, exaggeratedReveals);
    rendered->paperScale = paperScale();
    m_rendered = std::move(rendered);
    m_shownTheme = theme();
    setBackgroundBrush(sheetColour(theme()));
    while (m_fronts.size() > work.plan.fronts.size()) {
        delete m_fronts.back();
        m_fronts.pop_back();
    }
    while (m_fronts.size() < work.plan.fronts.size()) {
        m_fronts.push_back(new RenderedItem);
        m_fronts.back()->setCacheMode(QGraphicsItem::DeviceCoordinateCache);
        m_scene.addItem(m_fronts.back());
    }
    m_case->show(m_rendered, std::nullopt, theme());
    for (std::uint32_t i = 0; i < m_fronts.size(); ++i)
        m_fronts[i]->show(m_rendered, i, theme());
    const QRectF outline = inScene(m_rendered->places.outline);
    const double spare = std::max(outline.width(), outline.height());
    setSceneRect(outline.adjusted(-spare, -spare, spare, spare));
    Q_EMIT refreshed();
}

void LookView::applyScale(double scale) {
    setTransform(QTransform::fromScale(scale, -scale));
    if (!m_rendered || m_rendered->paperScale != paperScale())
        refresh();
}

void LookView::setFitted(bool fitted) {
    m_fitted = fitted;
    // Where all is in view there is nothing to scroll to.
    const auto bars = fitted ? Qt::ScrollBarAlwaysOff : Qt::ScrollBarAsNeeded;
    setHorizontalScrollBarPolicy(bars);
    setVerticalScrollBarPolicy(bars);
}

void LookView::fit() {
    setFitted(true);
    Q_EMIT fitted();
    if (!isVisible())
        return;
    if (m_isStale || !m_rendered)
        refresh();
    const QRectF outline = inScene(m_rendered->places.outline);
    const QSizeF room =
        viewport()->size().shrunkBy(QMargins(fitMargin, fitMargin, fitMargin, fitMargin));
    if (outline.isEmpty() || room.isEmpty())
        return;
    applyScale(
        std::clamp(std::min(room.width() / outline.width(), room.height() / outline.height()),
                   leastScale, greatestScale));
    centerOn(outline.center());
}

void LookView::showAt(double pixelsPerMm) {
    setFitted(false);
    applyScale(std::clamp(pixelsPerMm, leastScale, greatestScale));
    if (m_rendered)
        centerOn(inScene(m_rendered->places.outline).center());
}

void LookView::zoom(Zoom direction) {
    zoomBy(direction == Zoom::In ? zoomStep : 1 / zoomStep, viewport()->rect().center());
}

void LookView::zoomBy(double factor, QPointF anchor) {
    setFitted(false);
    const QPointF before = mapToScene(anchor.toPoint());
    applyScale(std::clamp(scale() * factor, leastScale, greatestScale));
    const QPoint shift = mapFromScene(before) - anchor.toPoint();
    horizontalScrollBar()->setValue(horizontalScrollBar()->value() + shift.x());
    verticalScrollBar()->setValue(verticalScrollBar()->value() + shift.y());
    Q_EMIT zoomedByHand();
}

void LookView::resizeEvent(QResizeEvent* event) {
    QGraphicsView::resizeEvent(event);
    if (m_fitted)
        fit();
}

void LookView::showEvent(QShowEvent* event) {
    QGraphicsView::showEvent(event);
    if (m_isStale)
        refresh();
    if (m_fitted)
        fit();
}

void LookView::changeEvent(QEvent* event) {
    QGraphicsView::changeEvent(event);
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange)
        wantRefresh();
}

} // namespace frontwright
