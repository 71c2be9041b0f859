#include "ui/rendering/rendered_item.h"

#include "ui/elevation/scene_rect.h"
#include "ui/paper/surface.h"

#include <QPainter>

namespace frontwright {

namespace {

/// Shadows and handles reach beyond a front, the label below the case; in mm.
constexpr double beyondFront = 40;

} // namespace

void RenderedItem::show(std::shared_ptr<const RenderedWork> rendered,
                        std::optional<std::uint32_t> front, Theme theme) {
    m_rendered = std::move(rendered);
    m_front = front;
    m_theme = theme;
    m_marks.reset();
    const FrontPlaces& places = m_rendered->places;
    const double beyond = m_front ? beyondFront : 12 / m_rendered->paperScale;
    const QRectF bounds = inScene(m_front ? places.fronts[*m_front] : places.outline)
                              .adjusted(-beyond, -beyond, beyond, beyond);
    if (bounds != m_bounds) {
        prepareGeometryChange();
        m_bounds = bounds;
    }
    update();
}

void RenderedItem::paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*) {
    if (!m_rendered)
        return;
    if (!m_marks)
        m_marks = plain(m_front ? frontRendering(m_rendered->subject(), *m_front)
                                : caseRendering(m_rendered->subject()));
    frontwright::paint(*painter, *m_marks, m_rendered->paperScale, m_theme);
}

} // namespace frontwright
