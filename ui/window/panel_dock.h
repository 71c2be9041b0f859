#pragma once

#include <QDockWidget>

#include <functional>

namespace frontwright {

/// A dock whose panel is made when it is first seen, so that panels behind others cost nothing at
/// the start.
class PanelDock : public QDockWidget {
    Q_OBJECT
public:
    using Maker = std::function<QWidget*()>;
    /// `name` is stable, for settings; `panel` is called at most once.
    PanelDock(const QString& title, const QString& name, Maker panel, QWidget* parent);

    /// The panel, made where it was not yet.
    QWidget* panel();
    /// Shows the dock in front of those that share its place.
    void bringForward();

private:
    Maker m_maker;
};

} // namespace frontwright
