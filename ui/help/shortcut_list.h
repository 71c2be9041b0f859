#pragma once

#include <QString>

class QMenuBar;

namespace frontwright {

/// The actions of all menus with their keys and what they do, as a table in HTML: taken from the
/// actions themselves, so that it is never out of date.
QString shortcutTable(const QMenuBar&);

/// An action's or a menu's text without its mnemonic: "Split into &rows" → "Split into rows".
QString withoutMnemonic(const QString& text);

} // namespace frontwright
