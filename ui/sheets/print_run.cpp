#include "ui/sheets/print_run.h"

#include "ui/paper/printing.h"

#include <QPageLayout>
#include <QPrintDialog>
#include <QPrinter>

namespace frontwright {

namespace {

constexpr double sameEdge = 0.1; ///< mm; drivers round to points

PrintOutcome outcome(PrintOutcome::Kind kind, const QString& printer) {
    PrintOutcome result;
    result.kind = kind;
    result.printer = printer;
    return result;
}

/// Into a file there is no printer.
QString nameOf(const QPrinter& printer) {
    return printer.outputFormat() == QPrinter::PdfFormat ? QString() : printer.printerName();
}

} // namespace

bool askByDialog(QPrinter& printer, QWidget* parent) {
    QPrintDialog dialog(&printer, parent);
    // Which pages is chosen where they are seen.
    dialog.setOptions(QAbstractPrintDialog::PrintToFile | QAbstractPrintDialog::PrintShowPageSize);
    return dialog.exec() == QDialog::Accepted;
}

PrintOutcome runPrint(const PrintRequest& request, const AskHowToPrint& ask, QWidget* parent) {
    using Kind = PrintOutcome::Kind;
    if (request.pages.empty()) {
        PrintOutcome none = outcome(Kind::Failed, {});
        none.error = {text("Printing"), text("there is no page to print"),
                      text("tick at least one sheet")};
        return none;
    }
    QPrinter printer(QPrinter::HighResolution);
    if (!request.printer.isEmpty())
        printer.setPrinterName(request.printer);
    preparePrinter(printer, request.pages.front(), request.jobName);
    if (!ask(printer, parent))
        return outcome(Kind::Cancelled, {});
    PrintOutcome result = outcome(Kind::Printed, nameOf(printer));
    if (paperMatch(printer.pageLayout(), request.pages.front()) == PaperMatch::Differs) {
        result.kind = Kind::OtherPaper;
        result.paper = printer.pageLayout().pageSize().size(QPageSize::Millimeter);
    } else if (!request.suits(result.printer)) {
        result.kind = Kind::OtherPrinter;
    } else if (result.blank = blankEdge(printer); result.blank > request.margin + sameEdge) {
        result.kind = Kind::BlankEdgeWider;
    } else if (const auto failed = printPages(printer, request.pages)) {
        result.kind = Kind::Failed;
        result.error = *failed;
    }
    return result;
}

} // namespace frontwright
