// What leaves the templates' window: files and prints.

#include "ui/sheets/template_dialog.h"

#include "core/lengths/format.h"
#include "ui/files/save_file.h"
#include "ui/language/told.h"
#include "ui/paper/pdf.h"
#include "ui/sheets/calibration_dialog.h"
#include "ui/sheets/printer_panel.h"
#include "ui/sheets/sheet_choice.h"
#include "ui/sheets/sheet_setup.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QLabel>
#include <QMessageBox>
#include <QPushButton>

#include <algorithm>

namespace frontwright {

namespace {

bool isCorrected(const SheetOptions& options) {
    return !std::all_of(options.calibration.begin(), options.calibration.end(),
                        [](const ScaleFactors& factors) { return factors.areNone(); });
}

/// Enough room for a blank edge: in the case's unit, rounded up.
QString roomFor(double mm, LengthStyle style) {
    style.denominator = 64;
    return QString::fromStdString(shown(Length::nearestToMillimetres(mm), style, Rounding::Up));
}

} // namespace

/// A file may go to any printer: uncorrected, unless this one's correction is wanted.
std::vector<Page> TemplateDialog::pagesForFile(bool& isCancelled) {
    SheetOptions plain = options(m_paper);
    if (!isCorrected(plain))
        return m_shown;
    QMessageBox box(QMessageBox::Question, windowTitle(),
                    tr("These pages are corrected for %1. On another printer they would come out "
                       "wrong.")
                        .arg(m_printer->printer()),
                    QMessageBox::Cancel, this);
    auto* uncorrected = box.addButton(tr("Save &without correction"), QMessageBox::AcceptRole);
    auto* corrected = box.addButton(tr("Save &for this printer"), QMessageBox::AcceptRole);
    box.setDefaultButton(uncorrected);
    box.exec();
    if (box.clickedButton() == corrected)
        return m_shown;
    isCancelled = box.clickedButton() != uncorrected;
    plain.calibration = {};
    plain.printer.clear();
    auto laid = pages(m_session.project(), m_session.plan(), m_wanted, plain);
    if (isCancelled || !laid.ok())
        return {};
    // A factor above 1 takes room; without it tiles may be fewer, and ticks of tiles mean nothing.
    if (laid.value().size() != m_laid.size())
        return std::move(laid).value();
    std::vector<Page> wanted;
    for (std::size_t index : m_laidIndex)
        wanted.push_back(laid.value()[index]);
    return wanted;
}

void TemplateDialog::savePdf() {
    bool isCancelled = false;
    const std::vector<Page> wanted = pagesForFile(isCancelled);
    if (isCancelled)
        return;
    QFileDialog dialog(this, tr("Save the templates"), {}, tr("PDF files (*.pdf)"));
    dialog.setAcceptMode(QFileDialog::AcceptSave);
    dialog.setDefaultSuffix(QStringLiteral("pdf"));
    dialog.selectFile(QFileInfo(m_documentName).completeBaseName() + tr("-templates.pdf"));
    if (dialog.exec() != QDialog::Accepted || dialog.selectedFiles().isEmpty())
        return;
    const auto pdf = pdfOf(wanted, m_documentName.toStdString());
    if (!pdf.ok())
        report(told(pdf.error().sentence()));
    else if (const auto failed = writeFileWhole(dialog.selectedFiles().constFirst(), pdf.value()))
        report(told(failed->sentence()));
    else
        m_problem->setText(tr("Saved: %1").arg(dialog.selectedFiles().constFirst()));
}

void TemplateDialog::print() {
    const auto suits = [this](const QString& printer) {
        return m_printer->factors(printer, m_paper) ==
               m_printer->factors(m_printer->printer(), m_paper);
    };
    heed(runPrint(
        {m_shown, m_documentName, m_printer->printer(), m_setup->margin().inMillimetres(), suits},
        m_ask, this));
}

/// Where the printer differs from what the pages were laid for they are laid anew and shown;
/// they are printed when the maker, having seen them, asks again.
void TemplateDialog::heed(const PrintOutcome& outcome) {
    using Kind = PrintOutcome::Kind;
    switch (outcome.kind) {
    case Kind::Cancelled:
        return;
    case Kind::Printed:
        m_problem->setText(tr("Sent to the printer. Measure the check bars before drilling."));
        return;
    case Kind::Failed:
        report(told(outcome.error.sentence()));
        return;
    case Kind::BlankEdgeWider:
        report(tr("Nothing was printed: this printer leaves %1 blank at the edge, and marks would "
                  "be lost. Set the margin to %1 or more.")
                   .arg(roomFor(outcome.blank, m_session.style())));
        return;
    case Kind::OtherPrinter:
        m_printer->choosePrinter(outcome.printer);
        report(tr("Nothing was printed yet: %1 needs another correction, and the pages were laid "
                  "anew for it. Look at them, then print.")
                   .arg(outcome.printer.isEmpty() ? tr("a file") : outcome.printer));
        return;
    case Kind::OtherPaper:
        break;
    }
    const auto paper = sheetOf(Length::nearestToMillimetres(outcome.paper.width()),
                               Length::nearestToMillimetres(outcome.paper.height()));
    if (!paper.ok()) {
        report(told(paper.error().sentence()));
        return;
    }
    m_setup->choosePaper(paper.value());
    report(
        tr("Nothing was printed yet: the printer is set to %1, so that the pages would have been "
           "scaled or cut. They were laid anew for that paper. Look at them, then print.")
            .arg(told(nameOf(paper.value()))));
}

void TemplateDialog::openTestPage() {
    const QString printer = m_printer->printer().isEmpty() ? tr("PDF file") : m_printer->printer();
    const auto current = static_cast<std::size_t>(currentPage());
    const Orientation first =
        current < m_shown.size() && m_shown[current].width > m_shown[current].height
            ? Orientation::Landscape
            : Orientation::Portrait;
    CalibrationDialog dialog(
        m_settings, printer, m_paper, m_setup->margin(), m_session.style(), first,
        [this](const Page& page) { return printTestPage(page, m_printer->printer()); }, this);
    dialog.exec();
    layPages();
}

bool TemplateDialog::printTestPage(const Page& page, const QString& printer) {
    const std::vector<Page> one{page};
    const PrintOutcome outcome =
        runPrint({one, tr("Test page"), printer, m_setup->margin().inMillimetres(),
                  [&](const QString& asked) { return asked == printer; }},
                 m_ask, this);
    using Kind = PrintOutcome::Kind;
    if (outcome.kind == Kind::OtherPrinter)
        report(tr("Nothing was printed: this test page is for %1. Choose the printer in the "
                  "templates' window first.")
                   .arg(printer));
    else if (outcome.kind == Kind::OtherPaper)
        report(tr("Nothing was printed: the printer is set to another paper than %1. Choose the "
                  "same paper in both places.")
                   .arg(told(nameOf(m_paper))));
    else if (outcome.kind != Kind::Printed && outcome.kind != Kind::Cancelled)
        heed(outcome);
    return outcome.kind == Kind::Printed;
}

void TemplateDialog::report(const QString& text) {
    QMessageBox::warning(this, windowTitle(), text);
}

} // namespace frontwright
