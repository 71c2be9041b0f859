#pragma once

#include "core/results/result.h"
#include "core/sheets/sheets.h"

#include <QSizeF>
#include <QString>

#include <functional>
#include <optional>
#include <span>

class QPrinter;
class QWidget;

namespace frontwright {

/// What a print is wanted with.
struct PrintRequest {
    std::span<const Page> pages;
    QString jobName;
    QString printer;   ///< chosen beforehand; empty: the system's own
    double margin = 0; ///< mm that the pages keep free
    /// Whether pages corrected as these are may go to that printer; empty: into a file.
    std::function<bool(const QString& printer)> suits;
};

/// Where a print ended. Only where it is Printed did paper move.
struct PrintOutcome {
    enum class Kind : std::uint8_t {
        Printed,
        Cancelled,
        OtherPaper,     ///< the printer is set to `paper`
        OtherPrinter,   ///< `printer` needs another correction
        BlankEdgeWider, ///< the printer leaves `blank` mm free, more than the pages do
        Failed
    } kind = Kind::Cancelled;
    QString printer;
    QSizeF paper; ///< mm
    double blank = 0;
    Error error;
};

/// Asks how to print; false: not at all. The native dialog, or a test's stand-in.
using AskHowToPrint = std::function<bool(QPrinter&, QWidget* parent)>;
bool askByDialog(QPrinter&, QWidget* parent);

/// Asks, looks again at what the driver handed back, and prints nothing that would come out
/// scaled, cut off or wrongly corrected.
PrintOutcome runPrint(const PrintRequest&, const AskHowToPrint&, QWidget* parent);

} // namespace frontwright
