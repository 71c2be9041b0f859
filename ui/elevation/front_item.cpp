#include "ui/elevation/front_item.h"
#include "ui/elevation/scene_rect.h"

#include "ui/paper/surface.h"

#include <QPainter>

namespace frontwright {

FrontItem::FrontItem() {
    setFlag(ItemUsesExtendedStyleOption, false);
}

bool FrontItem::shows(const FrontPlan& front, const ElevationOptions& options) const {
    if (!m_seen)
        return false;
    const FrontPlan& seen = m_seen->plan;
    return seen.openingRect == front.openingRect && seen.rect == front.rect &&
           seen.thickness == front.thickness && m_seen->profile == *front.profile &&
           seen.box == front.box && seen.mounting == front.mounting &&
           seen.hardware == front.hardware && seen.fittings == front.fittings &&
           seen.use == front.use && seen.hinge == front.hinge && m_seen->name == *front.name &&
           seen.bank == front.bank && seen.place == front.place && m_seen->options == options;
}

void FrontItem::sync(const Project& project, const Plan& plan, std::uint32_t index,
                     const ElevationOptions& wanted, Theme theme) {
    const FrontPlan& front = plan.fronts[index];
    ElevationOptions options = wanted;
    // Only whether it is this one makes its label give way to its dimensions.
    if (options.emphasised != front.opening)
        options.emphasised.reset();
    if (options.emphasisedPart && options.emphasisedPart->opening != front.opening)
        options.emphasisedPart.reset();
    if (options.keepFree && !inScene(*options.keepFree).intersects(inScene(front.rect)))
        options.keepFree.reset();
    if (theme != m_theme) {
        m_theme = theme;
        update();
    }
    if (shows(front, options))
        return;
    m_seen = Seen{front, *front.profile, *front.name, options};
    m_marks = plain(frontElevation(project, plan, index, options));
    // Room for the widest line and for holes that stand off the front.
    const double spare = 1.0 / options.paperScale;
    const QRectF bounds =
        (inScene(front.rect) | inScene(front.openingRect)).adjusted(-spare, -spare, spare, spare);
    if (bounds != m_bounds) {
        prepareGeometryChange();
        m_bounds = bounds;
    }
    update();
}

QRectF FrontItem::boundingRect() const {
    return m_bounds;
}

void FrontItem::paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*) {
    if (!m_seen)
        return;
    painter->fillRect(inScene(m_seen->plan.rect), partColour(m_theme));
    frontwright::paint(*painter, m_marks, m_seen->options.paperScale, m_theme);
}

} // namespace frontwright
