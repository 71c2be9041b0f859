#pragma once

#include "core/drawings/plain_marks.h"
#include "core/drawings/rendering.h"
#include "ui/language/told.h"
#include "ui/look/theme.h"
#include "ui/session/session.h"

#include <QGraphicsItem>

#include <memory>
#include <optional>

namespace frontwright {

/// What every item of a rendering is drawn from; replaced as a whole, never changed.
struct RenderedWork {
    std::shared_ptr<const Work> work;
    FrontPlaces places;
    double paperScale = 0.1;

    [[nodiscard]] RenderingSubject subject() const {
        return {work->project, *work->catalogue, work->plan, places, paperScale, spokenLanguage()};
    }
};

/// One front of the rendering, or the case behind the fronts. Its marks are made when it is painted
/// for the first time, so that what is out of sight costs nothing.
class RenderedItem : public QGraphicsItem {
public:
    /// nullopt: the case.
    void show(std::shared_ptr<const RenderedWork>, std::optional<std::uint32_t> front, Theme);

    [[nodiscard]] QRectF boundingRect() const override { return m_bounds; }
    void paint(QPainter*, const QStyleOptionGraphicsItem*, QWidget*) override;

private:
    std::shared_ptr<const RenderedWork> m_rendered;
    std::optional<std::uint32_t> m_front;
    std::optional<PlainMarks> m_marks;
    Theme m_theme = Theme::Paper;
    QRectF m_bounds;
};

} // namespace frontwright
