#pragma once

#include "ui/look/theme.h"

#include <QGraphicsItem>
#include <QString>

#include <optional>
#include <vector>

namespace frontwright {

/// What the elevation puts over the drawing for the moment: selected and hovered parts, the ghost
/// of a dragged member's old place, the snap marker, live sizes, findings' places.
struct Emphasis {
    std::vector<QRectF> selected;   ///< case mm
    std::optional<QRectF> hovered;  ///< what a press would grab
    std::optional<QRectF> ghost;    ///< where the dragged member was
    std::optional<QLineF> snapLine; ///< what it snaps to
    QString snapText;               ///< said beside the snap marker
    struct Tag {
        QPointF at; ///< its middle
        QString text;
        enum class Kind : std::uint8_t { Plain, Warning } kind = Kind::Plain;
    };
    std::vector<Tag> tags; ///< live sizes, difference, why it is held
    struct Place {
        QPointF at;
        Severity severity = Severity::ToKnow;
    };
    std::vector<Place> findings; ///< a small sign at each
    std::optional<QRectF> band;  ///< the selection band that is being drawn

    friend bool operator==(const Emphasis&, const Emphasis&);
};

/// Draws an Emphasis above everything else, sizes in pixels.
class EmphasisItem : public QGraphicsItem {
public:
    EmphasisItem();
    void show(const Emphasis&, Theme, double pixelsPerMm);

    [[nodiscard]] QRectF boundingRect() const override { return m_bounds; }
    void paint(QPainter*, const QStyleOptionGraphicsItem*, QWidget*) override;

private:
    void paintTags(QPainter&) const;

    Emphasis m_emphasis;
    Theme m_theme = Theme::Paper;
    double m_pixelsPerMm = 1;
    QRectF m_bounds;
};

} // namespace frontwright
