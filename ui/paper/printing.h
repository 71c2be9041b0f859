#pragma once

#include "core/sheets/sheets.h"

#include <QString>

#include "core/results/result.h"
#include <functional>
#include <optional>
#include <span>

class QPrinter;
class QWidget;

namespace frontwright {

/// Prepares a printer for pages at exactly 1:1: full page, no margins, highest resolution, no
/// scaling by the print system, one side.
void preparePrinter(QPrinter&, const Page& first, const QString& jobName);

/// Prints the pages at their true size. Error: the printer's paper is not the pages' size, or it
/// could not be started; then nothing was printed.
std::optional<Error> printPages(QPrinter&, std::span<const Page>);

} // namespace frontwright
