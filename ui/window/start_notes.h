#pragma once

#include <QString>
#include <QStringList>

class QWidget;

namespace frontwright {

class Recovery;

/// What the maker is told when the program starts, each once: work that was not saved, settings
/// that could not be read, a crash.

/// Offers abandoned recovery copies until none is left or the answer is "later". True where one
/// was opened.
bool offerRecovery(Recovery&, QWidget& window);
void tellOfBadSettings(const QString& keptAside, QWidget& window);
void tellOfCrashes(const QStringList& reports, QWidget& window);

} // namespace frontwright
