#pragma once

#include "ui/elevation/elevation_view.h"

#include <QList>
#include <QSettings>
#include <QSplitter>

class QAction;
class QActionGroup;
class QMenu;

namespace frontwright {

class LookPanel;

/// The middle of the window: the drawing, the look, or both side by side. The look is made when it
/// is shown for the first time, and costs nothing while it is not shown. What was last chosen is
/// shown again when the program starts.
class CentralArea : public QSplitter {
    Q_OBJECT
public:
    CentralArea(Session&, ElevationView&, QSettings&, QWidget* parent = nullptr);

    enum class Shows : std::uint8_t { Drawing, Look, Both };
    void choose(Shows);
    [[nodiscard]] Shows shows() const { return m_shows; }
    /// Makes it where there is none yet.
    [[nodiscard]] LookPanel& look();

    void fill(QMenu& menu);
    /// Their keys act while the drawing or the look has the keyboard.
    void giveKeys(const QList<QAction*>&);

    // Of the one that has the keyboard, else of the one that is shown.
    void zoom(ElevationView::Zoom);
    void fit();

private:
    void addActions();
    void showKept();
    [[nodiscard]] bool isLookMeant() const;

    Session& m_session;
    ElevationView& m_elevation;
    QSettings& m_settings;
    LookPanel* m_look = nullptr;
    QActionGroup* m_choices;
    QList<QAction*> m_keys;
    QAction* m_reveals;
    Shows m_shows = Shows::Drawing;
};

} // namespace frontwright
