#pragma once

#include "ui/window/main_window.h"

#include <QDialog>
#include <QPixmap>

namespace frontwright::gallery {

/// Lets the window do all that waits to be done.
void settle();

/// Opens the sample of that name in the unit.
void open(MainWindow&, const char* sample, Unit);

QPixmap grabbed(QWidget&);
QPixmap dialogOver(QDialog&);

} // namespace frontwright::gallery
