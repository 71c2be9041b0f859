#pragma once

#include "tests/gallery/grabs.h"

namespace frontwright::gallery {

QPixmap newCase(MainWindow&);
QPixmap catalogue(MainWindow&, Unit, int tab);
QPixmap rules(MainWindow&);
QPixmap help(MainWindow&, const char* topic);
QPixmap recovery();
QPixmap calibration(Unit);
QPixmap screenSize(MainWindow&);
/// `way`: index in the dialog's list of ways.
QPixmap graduate(MainWindow&, Unit, int way);
QPixmap templates(MainWindow&, Unit, const char* sample);

} // namespace frontwright::gallery
