#include "ui/paper/printing.h"

#include "ui/paper/pdf.h"

#include <QPageLayout>
#include <QPainter>
#include <QPrintEngine>
#include <QPrinter>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace frontwright {

namespace {

/// Qt hands these options of the print system through under a key that it keeps to itself.
constexpr int printSystemOptions = 0xfe00;
constexpr double samePaper = 0.6; ///< mm; papers are told in whole points

bool isSame(const QSizeF& size, double width, double height) {
    return std::abs(size.width() - width) <= samePaper &&
           std::abs(size.height() - height) <= samePaper;
}

/// Papers are known upright; a page that lies is its paper turned. Exact: the default match would
/// turn near sizes into a named paper.
QPageLayout layoutOf(const Page& page) {
    const QSizeF upright(std::min(page.width, page.height), std::max(page.width, page.height));
    return {QPageSize(upright, QPageSize::Millimeter, {}, QPageSize::ExactMatch),
            page.width > page.height ? QPageLayout::Landscape : QPageLayout::Portrait, QMarginsF(),
            QPageLayout::Millimeter};
}

Error otherPaper() {
    return {text("Printing"), text("the printer is set to another paper than the templates"),
            text("choose the same paper in both places, so that nothing is scaled")};
}

/// Whole sheet, no scaling, one side. Another printer picked in a dialog is another engine that
/// knows nothing of what the first was told.
void tellEngine(QPrinter& printer) {
    printer.setFullPage(true);
    printer.setDuplex(QPrinter::DuplexNone);
    if (printer.outputFormat() == QPrinter::NativeFormat)
        printer.printEngine()->setProperty(
            QPrintEngine::PrintEnginePropertyKey(printSystemOptions),
            QStringList{QStringLiteral("print-scaling"), QStringLiteral("none")});
}

std::optional<Error> printJob(QPrinter& printer, std::span<const Page> pages,
                              const std::vector<std::size_t>& which) {
    tellEngine(printer);
    printer.setPageLayout(layoutOf(pages[which.front()]));
    if (paperMatch(printer.pageLayout(), pages[which.front()]) != PaperMatch::Same)
        return otherPaper();
    QPainter painter;
    if (!painter.begin(&printer))
        return Error{text("Printing"), text("the printer could not be started"),
                     text("check it and try again")};
    for (std::size_t i = 0; i < which.size(); ++i) {
        const Page& page = pages[which[i]];
        if (i > 0) {
            printer.setPageLayout(layoutOf(page));
            printer.newPage();
        }
        painter.save();
        paintPage(painter, page, printer.logicalDpiX() / 25.4, printer.logicalDpiY() / 25.4);
        painter.restore();
    }
    painter.end();
    return std::nullopt;
}

} // namespace

void preparePrinter(QPrinter& printer, const Page& first, const QString& jobName) {
    printer.setDocName(jobName);
    tellEngine(printer);
    printer.setPageLayout(layoutOf(first));
}

PaperMatch paperMatch(const QPageLayout& chosen, const Page& page) {
    const QSizeF size = chosen.fullRect(QPageLayout::Millimeter).size();
    if (isSame(size, page.width, page.height))
        return PaperMatch::Same;
    return isSame(size, page.height, page.width) ? PaperMatch::Turned : PaperMatch::Differs;
}

double blankEdge(const QPrinter& printer) {
    const QMarginsF points = printer.pageLayout().minimumMargins();
    const double widest = std::max({points.left(), points.top(), points.right(), points.bottom()});
    return printer.pageLayout().units() == QPageLayout::Millimeter ? widest : widest * 25.4 / 72;
}

std::vector<std::vector<std::size_t>> jobsOf(std::span<const Page> pages) {
    std::vector<std::vector<std::size_t>> jobs;
    for (std::size_t i = 0; i < pages.size(); ++i) {
        const auto job = std::find_if(jobs.begin(), jobs.end(), [&](const auto& known) {
            const Page& first = pages[known.front()];
            return isSame({first.width, first.height}, pages[i].width, pages[i].height);
        });
        if (job == jobs.end())
            jobs.push_back({i});
        else
            job->push_back(i);
    }
    return jobs;
}

std::optional<Error> printPages(QPrinter& printer, std::span<const Page> pages) {
    if (pages.empty())
        return Error{text("Printing"), text("there is no page to print"),
                     text("choose at least one sheet")};
    if (paperMatch(printer.pageLayout(), pages.front()) == PaperMatch::Differs)
        return otherPaper();
    if (printer.outputFormat() == QPrinter::PdfFormat) {
        std::vector<std::size_t> all(pages.size());
        std::iota(all.begin(), all.end(), std::size_t{0});
        return printJob(printer, pages, all);
    }
    for (const std::vector<std::size_t>& job : jobsOf(pages))
        if (auto failed = printJob(printer, pages, job))
            return failed;
    return std::nullopt;
}

} // namespace frontwright
