#include "ui/paper/printing.h"

#include "ui/paper/pdf.h"

#include <QPageLayout>
#include <QPainter>
#include <QPrintEngine>
#include <QPrinter>

#include <algorithm>
#include <cmath>

namespace frontwright {

namespace {

/// Qt hands these options of the print system through under a key that it keeps to itself.
constexpr int printSystemOptions = 0xfe00;

QPageSize pageSize(const Page& page) {
    return QPageSize(QSizeF(page.width, page.height), QPageSize::Millimeter, {},
                     QPageSize::ExactMatch);
}

/// Drivers hand back another paper than the one that was set.
bool paperDiffers(const QPrinter& printer, const Page& page) {
    const QSizeF size = printer.pageLayout().fullRect(QPageLayout::Millimeter).size();
    constexpr double tolerance = 0.6; // whole points
    return std::abs(size.width() - page.width) > tolerance ||
           std::abs(size.height() - page.height) > tolerance;
}

} // namespace

void preparePrinter(QPrinter& printer, const Page& first, const QString& jobName) {
    printer.setDocName(jobName);
    printer.setFullPage(true);
    printer.setPageLayout(QPageLayout(pageSize(first), QPageLayout::Portrait, QMarginsF()));
    printer.setDuplex(QPrinter::DuplexNone);
    if (printer.outputFormat() == QPrinter::NativeFormat)
        printer.printEngine()->setProperty(
            QPrintEngine::PrintEnginePropertyKey(printSystemOptions),
            QStringList{QStringLiteral("print-scaling"), QStringLiteral("none"),
                        QStringLiteral("sides"), QStringLiteral("one-sided")});
}

std::optional<Error> printPages(QPrinter& printer, std::span<const Page> pages) {
    if (pages.empty())
        return Error{"Printing", "there is no page to print", "choose at least one sheet"};
    if (paperDiffers(printer, pages.front()))
        return Error{"Printing", "the printer is set to another paper than the templates",
                     "choose the same paper in both places, so that nothing is scaled"};
    // One tile that slipped can be printed again by itself.
    if (printer.fromPage() > 0) {
        const auto first = std::min(static_cast<std::size_t>(printer.fromPage() - 1), pages.size());
        const auto last = std::min(static_cast<std::size_t>(printer.toPage()), pages.size());
        pages = pages.subspan(first, last > first ? last - first : 0);
        if (pages.empty())
            return Error{"Printing", "there is no such page", "choose pages that are shown"};
    }
    QPainter painter;
    if (!painter.begin(&printer))
        return Error{"Printing", "the printer could not be started", "check it and try again"};
    for (std::size_t i = 0; i < pages.size(); ++i) {
        if (i > 0) {
            printer.setPageSize(pageSize(pages[i]));
            printer.newPage();
        }
        painter.save();
        paintPage(painter, pages[i], printer.logicalDpiX() / 25.4, printer.logicalDpiY() / 25.4);
        painter.restore();
    }
    painter.end();
    return std::nullopt;
}

} // namespace frontwright
