#pragma once

#include "tests/gallery/grabs.h"
#include "ui/window/central_area.h"

#include <string_view>

namespace frontwright::gallery {

/// With the opening of that name selected and its section cut.
QPixmap selected(MainWindow&, Unit, const char* sample, std::string_view opening);

QPixmap dragging(MainWindow&, Unit);
QPixmap typing(MainWindow&, Unit);
QPixmap finding(MainWindow&, Unit);
QPixmap front(MainWindow&, Unit, const char* panel);
/// A frameless case along a wall with its rows of holes.
QPixmap frameless(MainWindow&, Unit);
QPixmap everyLayer(MainWindow&, Unit);
QPixmap several(MainWindow&, Unit);
/// With one front that covers more than the others, so that the reveals differ.
QPixmap look(MainWindow&, Unit, CentralArea::Shows, bool exaggerated);
QPixmap wood(MainWindow&, Unit);
QPixmap levelSection(MainWindow&, Unit);
QPixmap selectedLevel(MainWindow&, Unit, const char* sample, std::string_view opening);
QPixmap holeDragged(MainWindow&, Unit);

} // namespace frontwright::gallery
