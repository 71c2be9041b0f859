#pragma once

#include <QString>
#include <QStringList>
#include <QWidget>

#include <vector>

namespace frontwright::testing {

struct SeenText {
    QString text;
    QString where; ///< "QLabel in AirForm in …"
};

/// All that a maker reads, or hears from a screen reader, in a window or dialog: labels, buttons,
/// menus, tips, titles, lists, headings, names. Not what is typed into fields.
std::vector<SeenText> seenTexts(const QWidget& top);

/// What is left of a text when all that stands in brackets is taken away.
QString withoutBrackets(const QString& text);

/// Signs, figures, units, keys and these names only.
bool isFigureOrName(QString text, const QStringList& names);

} // namespace frontwright::testing
