#pragma once

#include "core/drawings/elevation.h"
#include "ui/elevation/drawing_item.h"
#include "ui/elevation/emphasis_item.h"
#include "ui/elevation/front_item.h"
#include "ui/session/session.h"

#include <QGraphicsScene>

#include <memory>
#include <vector>

namespace frontwright {

/// What of the elevation is to be seen; a view setting.
struct ShownLayers {
    Shown dimensions = Shown::Yes;
    Shown holes = Shown::Yes;
    Shown boxes = Shown::No;
    Shown bottoms = Shown::No;
    Shown fields = Shown::No;
    Shown allowedRegion = Shown::No;
    Shown systemHoles = Shown::No;
    Shown findings = Shown::Yes;
    friend bool operator==(const ShownLayers&, const ShownLayers&) = default;
};

/// The elevation as items: the case, one item per front, one per dimension, the emphasis. Shows
/// the session's work; knows no gestures. Scene units are the case's millimetres, y up.
class ElevationScene : public QGraphicsScene {
    Q_OBJECT
public:
    explicit ElevationScene(QObject* parent = nullptr);

    /// Brings the items in line with the work. `pixelsPerMm` decides how large text is.
    void show(const Work&, const ElevationOptions&, Theme);
    void emphasise(const Emphasis&, Theme, double pixelsPerMm);
    /// Signs where something is to be heeded; apart from the emphasis, which changes with every
    /// move of the pointer.
    void showSigns(const std::vector<Emphasis::Place>&, Theme, double pixelsPerMm);

    /// The dimension whose figures are at that place, with the place of its figures.
    struct DimensionHit {
        Quantity quantity;
        QRectF figures;
    };
    [[nodiscard]] std::optional<DimensionHit> dimensionAt(QPointF at, double reach) const;
    /// Of everything that is drawn, dimensions included.
    [[nodiscard]] QRectF extent() const { return m_extent; }

private:
    /// One item per mark, so that only what differs is painted again.
    void syncMarks(std::vector<DrawingItem*>& items, Drawing drawing, double z, Theme);

    std::vector<DrawingItem*> m_case;
    std::vector<FrontItem*> m_fronts;
    std::vector<DrawingItem*> m_dimensions;
    EmphasisItem* m_signs;
    EmphasisItem* m_emphasis;
    QRectF m_extent;
};

} // namespace frontwright
