#include "ui/elevation/elevation_scene.h"

#include <algorithm>

namespace frontwright {

namespace {
constexpr double caseDepth = -1;
constexpr double dimensionDepth = 10;
} // namespace

ElevationScene::ElevationScene(QObject* parent)
    : QGraphicsScene(parent),
      m_signs(new EmphasisItem),
      m_emphasis(new EmphasisItem) {
    // While members are dragged nearly everything moves: an index would be rebuilt each time.
    setItemIndexMethod(NoIndex);
    addItem(m_signs);
    addItem(m_emphasis);
}

void ElevationScene::show(const Work& work, const ElevationOptions& options, Theme theme) {
    syncMarks(m_case, caseElevation(work.project, work.plan, options), caseDepth, theme);
    while (m_fronts.size() > work.plan.fronts.size()) {
        delete m_fronts.back();
        m_fronts.pop_back();
    }
    while (m_fronts.size() < work.plan.fronts.size()) {
        m_fronts.push_back(new FrontItem);
        addItem(m_fronts.back());
    }
    for (std::uint32_t i = 0; i < work.plan.fronts.size(); ++i)
        m_fronts[i]->sync(work.project, work.plan, i, options, theme);
    Drawing dimensions;
    dimensions.paperScale = options.paperScale;
    if (options.dimensions == Shown::Yes)
        dimensions = elevationDimensions(work.project, work.plan, options);
    syncMarks(m_dimensions, std::move(dimensions), dimensionDepth, theme);

    QRectF extent(0, 0, work.plan.outline.width().inMillimetres(),
                  work.plan.outline.height().inMillimetres());
    for (const DrawingItem* item : m_dimensions)
        extent |= item->boundingRect();
    if (extent == m_extent)
        return;
    m_extent = extent;
    // Room to move the case about in the window.
    const double spare = std::max(extent.width(), extent.height());
    setSceneRect(extent.adjusted(-spare, -spare, spare, spare));
}

void ElevationScene::syncMarks(std::vector<DrawingItem*>& items, Drawing drawing, double z,
                               Theme theme) {
    while (items.size() > drawing.marks.size()) {
        delete items.back();
        items.pop_back();
    }
    while (items.size() < drawing.marks.size()) {
        items.push_back(new DrawingItem);
        items.back()->setZValue(z);
        items.back()->setFill(DrawingItem::Fill::Members);
        addItem(items.back());
    }
    for (std::size_t i = 0; i < items.size(); ++i)
        items[i]->show(std::move(drawing.marks[i]), drawing.paperScale, theme);
}

void ElevationScene::emphasise(const Emphasis& emphasis, Theme theme, double pixelsPerMm) {
    m_emphasis->show(emphasis, theme, pixelsPerMm);
}

void ElevationScene::showSigns(const std::vector<Emphasis::Place>& places, Theme theme,
                               double pixelsPerMm) {
    Emphasis signs;
    signs.findings = places;
    m_signs->show(signs, theme, pixelsPerMm);
}

std::optional<ElevationScene::DimensionHit> ElevationScene::dimensionAt(QPointF at,
                                                                        double reach) const {
    for (const DrawingItem* item : m_dimensions) {
        const auto quantity = item->quantity();
        const QRectF figures = item->figuresRect();
        if (quantity && figures.adjusted(-reach, -reach, reach, reach).contains(at))
            return DimensionHit{*quantity, figures};
    }
    return std::nullopt;
}

} // namespace frontwright
