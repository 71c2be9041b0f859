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
    std::vector<QRectF> selected;  ///< case mm
    std::optional<QRectF> hovered; ///< what a press would grab
    std::optional<QRectF> ghost;   ///< where the dragged member was
    std::vector<QLineF> guides;    ///< what it snaps to
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
    /// Lines of words beside the pointer: what happens, and the findings that it brings.
    struct Notice {
        struct Line {
            QString text;
            std::optional<Severity> severity; ///< with its sign before it
        };
        QPointF at;      ///< the pointer
        QPointF towards; ///< preferred direction from there; y up
        QRectF visible;  ///< where it has to stay
        std::vector<Line> lines;
    };
    std::optional<Notice> notice;

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
    void paintNotice(QPainter&) const;

    Emphasis m_emphasis;
    std::vector<QRectF> m_tags; ///< see tagBoxes
    Theme m_theme = Theme::Paper;
    double m_pixelsPerMm = 1;
    QRectF m_bounds;
};

} // namespace frontwright
