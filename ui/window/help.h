#pragma once

class QMenu;
class QWidget;

namespace frontwright {

class HelpDesk;

/// The help menu: what is selected, the contents, keys, words, what printing at another size looks
/// like, cautions.
void addHelp(QMenu& menu, HelpDesk& desk, QWidget& window);

} // namespace frontwright
