#pragma once

#include "core/results/result.h"
#include "core/sheets/sheets.h"

#include <QString>

#include <optional>
#include <span>
#include <vector>

class QPageLayout;
class QPrinter;

namespace frontwright {

/// Prepares a printer for pages at exactly 1:1: full page, no margins, highest resolution, no
/// scaling by the print system, one side, the pages' own paper.
void preparePrinter(QPrinter&, const Page& first, const QString& jobName);

/// Whether what a printer is set to is the paper that a page was laid for.
enum class PaperMatch : std::uint8_t { Same, Turned, Differs };
PaperMatch paperMatch(const QPageLayout& chosen, const Page&);

/// The width in mm of what a printer leaves blank at the edge where that is widest; 0 where the
/// driver does not say.
double blankEdge(const QPrinter&);

/// A print system takes one paper for each job: which pages go together, in their order.
std::vector<std::vector<std::size_t>> jobsOf(std::span<const Page>);

/// Prints the pages at their true size, each size and orientation as a job of its own; into a file
/// all in one. Error: the printer's paper is not the pages' size, or it could not be started; then
/// nothing of that job was printed.
std::optional<Error> printPages(QPrinter&, std::span<const Page>);

} // namespace frontwright
