#include "ui/elevation/front_item.h"
#include "ui/elevation/scene_rect.h"

#include "ui/paper/surface.h"

#include <QPainter>

namespace frontwright {

namespace {

bool sameOptions(const ElevationOptions& a, const ElevationOptions& b) {
    return a.style == b.style && a.paperScale == b.paperScale && a.holes == b.holes &&
           a.boxes == b.boxes && a.allowedRegion == b.allowedRegion && a.emphasised == b.emphasised;
}

} // namespace

FrontItem::FrontItem() {
    setFlag(ItemUsesExtendedStyleOption, false);
}

bool FrontItem::looksTheSame(const Seen& other) const {
    if (!m_seen)
        return false;
    const FrontPlan& a = m_seen->plan;
    const FrontPlan& b = other.plan;
    return a.openingRect == b.openingRect && a.rect == b.rect && a.thickness == b.thickness &&
           m_seen->profile == other.profile && a.box == b.box && a.mounting == b.mounting &&
           a.hardware == b.hardware && m_seen->label == other.label &&
           sameOptions(m_seen->options, other.options);
}

void FrontItem::sync(const Project& project, const Plan& plan, std::uint32_t index,
                     const ElevationOptions& options, Theme theme) {
    const FrontPlan& front = plan.fronts[index];
    Seen seen{front, *front.profile, label(project, front), options};
    // Only whether it is this one makes its label give way to its dimensions.
    if (seen.options.emphasised != front.opening)
        seen.options.emphasised.reset();
    if (theme != m_theme) {
        m_theme = theme;
        update();
    }
    if (looksTheSame(seen))
        return;
    m_seen = std::move(seen);
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
