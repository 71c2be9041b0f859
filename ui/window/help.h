#pragma once

class QMenu;
class QWidget;

namespace frontwright {

/// The help menu: keys, what printing at another size looks like, cautions, about.
void addHelp(QMenu& menu, QWidget& window);

} // namespace frontwright
