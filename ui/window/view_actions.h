#pragma once

#include "ui/elevation/elevation_view.h"

#include <QObject>

class QMenu;
class QToolBar;
class QActionGroup;

namespace frontwright {

class ViewSettings;

/// How the case is looked at: zoom, layers, unit and denominator, light or dark. None of it is an
/// undo step or an unsaved change.
class ViewActions : public QObject {
    Q_OBJECT
public:
    /// `kept` restores what was chosen before.
    ViewActions(Session&, ElevationView&, ViewSettings& kept, QObject* parent);

    void fill(QMenu& menu);
    void fill(QToolBar& bar);
    /// Light or dark: of the whole window, with a case or without.
    [[nodiscard]] QAction& theme() { return *m_dark; }

Q_SIGNALS:
    void zoomWanted(frontwright::ElevationView::Zoom direction);
    void fitWanted();

private:
    void addZoom();
    void addLayers();
    void addUnits();
    void addTheme();
    void keepIn(ViewSettings& kept);
    void showStyle();

    Session& m_session;
    ElevationView& m_view;
    QList<QAction*> m_zoom;
    QList<QAction*> m_layers;
    QActionGroup* m_units;
    QActionGroup* m_denominators;
    QAction* m_dark;
};

} // namespace frontwright
