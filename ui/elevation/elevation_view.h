#pragma once

#include "ui/elevation/elevation_scene.h"
#include "ui/elevation/hit.h"
#include "ui/elevation/tool.h"
#include "ui/session/session.h"

#include <QGraphicsView>

#include <memory>

namespace frontwright {

/// The elevation on screen: shows the session's work, zooms and pans, and turns presses, moves and
/// keys into gestures and selections. Edits are made by the gestures and by whoever listens.
class ElevationView : public QGraphicsView {
    Q_OBJECT
public:
    explicit ElevationView(Session&, QWidget* parent = nullptr);

    [[nodiscard]] ShownLayers layers() const { return m_layers; }
    void setLayers(const ShownLayers&);

    void fit();
    enum class Zoom : std::uint8_t { In, Out };
    void zoom(Zoom);
    /// The drag in progress; nullptr where there is none.
    [[nodiscard]] const Tool* drag() const { return m_drag.get(); }
    /// Puts a small sign at a finding's place and scrolls there; nullopt takes it away.
    void showFinding(const std::optional<Finding>&);

    /// Pixels per millimetre of the case.
    [[nodiscard]] double scale() const;
    [[nodiscard]] ElevationScene& elevation() { return m_scene; }
    [[nodiscard]] Session& session() { return m_session; }
    /// What one may ask for at that place of the viewport: the dimension there, else the hole,
    /// member or front.
    [[nodiscard]] std::vector<Quantity> numbersAt(QPoint viewportPos) const;

Q_SIGNALS:
    /// A number on the drawing was clicked, or Enter pressed on a part: it is to be typed, in a
    /// field at that rectangle of the viewport.
    void entryWanted(frontwright::Quantity quantity, QRect viewportRect);
    /// Digits came while something is dragged; `text` is what was typed so far.
    void dragEntryWanted(const QString& text, QPoint viewportPos);
    void dragEnded();
    /// What the pointer is over, for the status bar.
    void hint(const QString& text);
    void contextMenuWanted(QPoint globalPos, const std::vector<frontwright::Quantity>& numbers);

public Q_SLOTS:
    /// The distance typed during a drag, nothing while it can't be read.
    void dragTyped(frontwright::Length distance);
    void finishDrag();
    void cancelGesture();

protected:
    void mousePressEvent(QMouseEvent*) override;
    void mouseMoveEvent(QMouseEvent*) override;
    void mouseReleaseEvent(QMouseEvent*) override;
    void mouseDoubleClickEvent(QMouseEvent*) override;
    void wheelEvent(QWheelEvent*) override;
    void keyPressEvent(QKeyEvent*) override;
    void keyReleaseEvent(QKeyEvent*) override;
    void contextMenuEvent(QContextMenuEvent*) override;
    void resizeEvent(QResizeEvent*) override;
    void showEvent(QShowEvent*) override;
    void changeEvent(QEvent*) override;
    void leaveEvent(QEvent*) override;
    bool viewportEvent(QEvent*) override;
    bool event(QEvent*) override; ///< draws the frame that shows the keyboard
    bool focusNextPrevChild(bool next) override;

private:
    enum class Pressed : std::uint8_t { Nothing, Front, Grabbed, Band, Pan };
    /// How far the figures gave way to the case when it was fitted last.
    struct FittedFigures {
        double letters = 1; ///< their size, as a part of the window's own letters
        std::size_t rows = DimensionRows::defaultMostRows; ///< up to that scale; beyond it, all
        double scale = 0;
    };

    void refresh(); ///< brings the scene in line with session and zoom
    void refreshEmphasis();
    void emphasiseSelection(Emphasis&) const;
    [[nodiscard]] QRectF hoveredRect() const;
    void keepInView();
    void setFitted(bool fitted);
    /// At which the whole case with its figures has room, screen px per mm; `least` where it has
    /// none at a larger one.
    [[nodiscard]] double scaleFor(const QSizeF& room, double least) const;
    [[nodiscard]] double farthestScale() const; ///< at which zooming out ends
    void zoomBy(double factor, QPointF anchor);
    void hover(QPointF viewportPos);
    void startDrag(const QPoint& from, Qt::KeyboardModifiers modifiers);
    void dragTo(const QMouseEvent&);
    void endGesture();
    void clickAt(const QMouseEvent&);
    void selectBand();
    void nudge(const QKeyEvent&);
    void nudgePart(const QKeyEvent&, const PlacedPart&);
    bool walkParts(bool forward);
    void removeHole();
    [[nodiscard]] std::optional<PlacedPart> selectedPart() const;
    void walk(int key);
    void stepParts(int by); ///< to the next or the last of all parts, round and round
    bool handleDragKey(const QKeyEvent&);
    void wantEntryForSelection(Qt::KeyboardModifiers modifiers = {});
    [[nodiscard]] PointerAt pointer(QPointF viewportPos, Qt::KeyboardModifiers) const;
    [[nodiscard]] Hit hitUnder(QPointF viewportPos) const;
    [[nodiscard]] double reach() const; ///< the grab zone, in mm
    [[nodiscard]] Theme theme() const { return themeOf(palette()); }
    [[nodiscard]] ElevationOptions options(double atScale) const;

    Session& m_session;
    ElevationScene m_scene;
    ShownLayers m_layers;
    Pressed m_pressed = Pressed::Nothing;
    QPoint m_pressedAt;
    QPoint m_lastPos;
    int m_skip = 0; ///< Tab passes over this many things under the pointer
    bool m_spaceHeld = false;
    FittedFigures m_figures;
    bool m_fitted = true; ///< the whole case is kept in view while the window is resized
    std::unique_ptr<Tool> m_drag;
    Emphasis m_dragEmphasis;
    Hit m_hovered;
    std::optional<QRectF> m_band;
    std::optional<Finding> m_finding;
};

} // namespace frontwright
