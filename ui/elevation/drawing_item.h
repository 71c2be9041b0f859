#pragma once

#include "core/drawings/plain_marks.h"
#include "ui/look/theme.h"

#include <QGraphicsItem>

namespace frontwright {

/// Shows one mark of a drawing (a member's edge, a dimension): repaints where it differs from what
/// was last drawn.
class DrawingItem : public QGraphicsItem {
public:
    void show(Mark, double paperScale, Theme);
    /// Where the figures of its first dimension stand, in the item's coordinates; empty = none.
    [[nodiscard]] QRectF figuresRect() const { return m_figures; }
    [[nodiscard]] std::optional<Quantity> quantity() const;

    [[nodiscard]] QRectF boundingRect() const override { return m_bounds; }
    void paint(QPainter*, const QStyleOptionGraphicsItem*, QWidget*) override;

    /// Fills closed strokes of the members' layers with the quiet tone of a part.
    enum class Fill : std::uint8_t { None, Members };
    void setFill(Fill fill) { m_fill = fill; }

private:
    [[nodiscard]] QRectF extentOf(const PlainMarks&) const;

    Mark m_mark;
    PlainMarks m_marks;
    double m_paperScale = 1;
    QRectF m_bounds;
    QRectF m_figures;
    Theme m_theme = Theme::Paper;
    Fill m_fill = Fill::None;
};

} // namespace frontwright
