#pragma once

#include "ui/rendering/rendered_item.h"

#include <QGraphicsView>
#include <QTimer>

#include <vector>

namespace frontwright {

/// The fronts as they will look: zoomed and moved as the elevation is, a click selects. Follows the
/// session only while it is seen, and then a moment behind it, so that a drag beside it stays
/// quick.
class LookView : public QGraphicsView {
    Q_OBJECT
public:
    explicit LookView(Session&, QWidget* parent = nullptr);

    enum class Reveals : std::uint8_t { AsPlanned, Exaggerated };
    void setReveals(Reveals);
    [[nodiscard]] Reveals reveals() const { return m_reveals; }

    /// The whole case, also when the view is resized.
    void fit();
    enum class Zoom : std::uint8_t { In, Out };
    static constexpr double zoomStep = 1.2; ///< for each notch of the wheel
    void zoom(Zoom);
    /// That many pixels (of the widget) for a millimetre of the case, its middle in the middle.
    void showAt(double pixelsPerMm);
    /// Pixels of the widget per millimetre of the case.
    [[nodiscard]] double scale() const { return transform().m11(); }
    [[nodiscard]] bool isFitted() const { return m_fitted; }
    /// Of what is shown; nullptr before it was shown for the first time.
    [[nodiscard]] const RenderedWork* rendered() const { return m_rendered.get(); }

Q_SIGNALS:
    /// The maker zoomed by hand: it is neither fitted nor at a given scale any more.
    void zoomedByHand();
    void fitted();
    void refreshed(); ///< other work is shown

protected:
    void mousePressEvent(QMouseEvent*) override;
    void mouseMoveEvent(QMouseEvent*) override;
    void mouseReleaseEvent(QMouseEvent*) override;
    void wheelEvent(QWheelEvent*) override;
    void keyPressEvent(QKeyEvent*) override;
    void resizeEvent(QResizeEvent*) override;
    void showEvent(QShowEvent*) override;
    void changeEvent(QEvent*) override;
    bool viewportEvent(QEvent*) override;
    void drawForeground(QPainter*, const QRectF&) override;

private:
    void wantRefresh();
    void refresh();
    void applyScale(double scale);
    void setFitted(bool fitted);
    void zoomBy(double factor, QPointF anchor);
    void clickAt(QPointF viewportPos, Qt::KeyboardModifiers);
    void walk(int key);
    void drawSelection(QPainter&) const;
    /// Of a front or a space as rendered; nullopt where there is no such opening.
    [[nodiscard]] std::optional<QRectF> placeOf(OpeningId) const;
    /// Where reveals are exaggerated and uneven: the smallest and the largest of each kind.
    void drawRevealTags(QPainter&) const;
    void drawTag(QPainter&, QPointF scenePos, const QString& text) const;
    [[nodiscard]] std::optional<OpeningId> openingAt(QPointF viewportPos) const;
    [[nodiscard]] double paperScale() const;
    [[nodiscard]] Theme theme() const { return themeOf(palette()); }

    Session& m_session;
    QGraphicsScene m_scene;
    RenderedItem* m_case;
    std::vector<RenderedItem*> m_fronts;
    std::shared_ptr<const RenderedWork> m_rendered;
    Theme m_shownTheme = Theme::Paper;
    Reveals m_reveals = Reveals::AsPlanned;
    QTimer m_soon;
    bool m_fitted = true;
    bool m_isStale = true;
    bool m_isPanning = false;
    QPoint m_pressedAt;
    QPoint m_lastPos;
};

} // namespace frontwright
