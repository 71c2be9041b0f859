#pragma once

#include "ui/window/main_window.h"

#include <QPixmap>

#include <functional>
#include <vector>

namespace frontwright::gallery {

/// One main state of the window (or a dialog over it) and how to bring it about.
struct State {
    const char* name;
    std::function<QPixmap(MainWindow&, Unit)> grab;
};

const std::vector<State>& states();

} // namespace frontwright::gallery
