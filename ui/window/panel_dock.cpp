#include "ui/window/panel_dock.h"

namespace frontwright {

PanelDock::PanelDock(const QString& title, const QString& name, Maker panel, QWidget* parent)
    : QDockWidget(title, parent),
      m_maker(std::move(panel)) {
    setObjectName(name);
    connect(this, &QDockWidget::visibilityChanged, this, [this](bool visible) {
        if (visible)
            this->panel();
    });
}

QWidget* PanelDock::panel() {
    if (!widget())
        setWidget(m_maker());
    return widget();
}

void PanelDock::bringForward() {
    show();
    raise();
    panel();
}

} // namespace frontwright
