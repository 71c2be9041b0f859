#include "ui/window/template_dialog.h"

#include "ui/fields/length_field.h"
#include "ui/files/revision.h"
#include "ui/files/save_file.h"
#include "ui/paper/page_view.h"
#include "ui/paper/pdf.h"
#include "ui/paper/printing.h"

#include <QComboBox>
#include <QFileDialog>
#include <QFileInfo>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QMessageBox>
#include <QPrintDialog>
#include <QPrinter>
#include <QPushButton>
#include <QSettings>
#include <QSpinBox>

namespace frontwright {

namespace {

const QString paperKey = QStringLiteral("templates/paper");
const QString orientationKey = QStringLiteral("templates/landscape");

/// Letter and A4 are equal: the locale's until the maker chose.
QString defaultPaper() {
    return QLocale().measurementSystem() == QLocale::ImperialUSSystem ? QStringLiteral("Letter")
                                                                      : QStringLiteral("A4");
}

} // namespace

TemplateDialog::TemplateDialog(const Session& session, QSettings& settings,
                               const QString& documentName, QWidget* parent)
    : QDialog(parent),
      m_session(session),
      m_settings(settings),
      m_documentName(documentName),
      m_templates(templates(session.project(), session.plan(), session.style())),
      m_paper(new QComboBox),
      m_orientation(new QComboBox),
      m_overlapField(new LengthField(tr("Overlap of tiles"))),
      m_overlap(Length::millimetres(10), Notation::Millimetre),
      m_view(new PageView),
      m_pageLabel(new QLabel),
      m_pageBox(new QSpinBox),
      m_problem(new QLabel),
      m_save(new QPushButton(tr("&Save as PDF…"))),
      m_print(new QPushButton(tr("&Print…"))) {
    setWindowTitle(tr("Templates at full size"));
    for (const Paper& paper : knownPapers())
        m_paper->addItem(QString::fromStdString(paper.name));
    m_paper->setCurrentText(m_settings.value(paperKey, defaultPaper()).toString());
    m_paper->setAccessibleName(tr("Paper"));
    m_orientation->addItems({tr("Upright"), tr("Landscape")});
    m_orientation->setCurrentIndex(m_settings.value(orientationKey, false).toBool() ? 1 : 0);
    m_orientation->setAccessibleName(tr("Orientation"));
    // Paper is told in millimetres in either unit.
    m_overlapField->setValue(m_overlap, {Unit::Millimetre, session.style().denominator});
    m_pageBox->setMinimum(1);
    m_pageBox->setAccessibleName(tr("Page"));
    m_pageLabel->setWordWrap(true);
    m_problem->setWordWrap(true);
    auto* scale = new QLabel(tr("Always 100 %, never fitted to the page. Print at “Actual size”, "
                                "then measure the check bars in both directions before drilling. "
                                "This printer has not been checked yet."));
    scale->setWordWrap(true);

    auto* form = new QFormLayout;
    form->addRow(tr("Pa&per"), m_paper);
    form->addRow(tr("&Orientation"), m_orientation);
    form->addRow(tr("O&verlap"), m_overlapField);
    form->addRow(tr("Pa&ge"), m_pageBox);
    auto* side = new QVBoxLayout;
    side->addLayout(form);
    side->addWidget(m_pageLabel);
    side->addWidget(scale);
    side->addWidget(m_problem);
    side->addStretch();
    side->addWidget(m_save);
    side->addWidget(m_print);
    auto* close = new QPushButton(tr("&Close"));
    side->addWidget(close);
    auto* row = new QHBoxLayout(this);
    row->addWidget(m_view, 3);
    row->addLayout(side, 1);

    connect(m_paper, &QComboBox::currentIndexChanged, this, [this] { layPages(); });
    connect(m_orientation, &QComboBox::currentIndexChanged, this, [this] { layPages(); });
    connect(m_overlapField, &LengthField::decided, this, [this](const WrittenLength& value) {
        m_overlap = value;
        layPages();
    });
    connect(m_pageBox, &QSpinBox::valueChanged, this, &TemplateDialog::turnTo);
    connect(m_save, &QPushButton::clicked, this, &TemplateDialog::savePdf);
    connect(m_print, &QPushButton::clicked, this, &TemplateDialog::print);
    connect(close, &QPushButton::clicked, this, &QDialog::reject);
    layPages();
}

SheetOptions TemplateDialog::options() const {
    SheetOptions options;
    options.paper = knownPapers()[static_cast<std::size_t>(m_paper->currentIndex())];
    options.orientation =
        m_orientation->currentIndex() == 1 ? Orientation::Landscape : Orientation::Portrait;
    options.overlap = m_overlap;
    options.documentName = m_documentName.toStdString();
    options.revision = revisionOf(m_session.project());
    return options;
}

void TemplateDialog::layPages() {
    m_settings.setValue(paperKey, m_paper->currentText());
    m_settings.setValue(orientationKey, m_orientation->currentIndex() == 1);
    auto laid = pages(m_session.project(), m_session.plan(), m_templates, options());
    m_problem->setText(laid.ok() ? QString() : QString::fromStdString(laid.error().sentence()));
    m_pages = laid.ok() ? std::move(laid).value() : std::vector<Page>();
    m_save->setEnabled(!m_pages.empty());
    m_print->setEnabled(!m_pages.empty());
    m_pageBox->setMaximum(std::max(1, static_cast<int>(m_pages.size())));
    m_pageBox->setSuffix(tr(" of %1").arg(m_pages.size()));
    m_view->setPages(m_pages);
    turnTo(m_pageBox->value());
}

void TemplateDialog::turnTo(int page) {
    m_view->setPageIndex(page - 1);
    const auto index = static_cast<std::size_t>(m_view->pageIndex());
    m_pageLabel->setText(index < m_pages.size() ? QString::fromStdString(m_pages[index].label)
                                                : QString());
}

void TemplateDialog::savePdf() {
    QFileDialog dialog(this, tr("Save the templates"), {}, tr("PDF files (*.pdf)"));
    dialog.setAcceptMode(QFileDialog::AcceptSave);
    dialog.setDefaultSuffix(QStringLiteral("pdf"));
    dialog.selectFile(QFileInfo(m_documentName).completeBaseName() + tr("-templates.pdf"));
    if (dialog.exec() != QDialog::Accepted || dialog.selectedFiles().isEmpty())
        return;
    const auto pdf = pdfOf(m_pages, m_documentName.toStdString());
    if (!pdf.ok())
        report(pdf.error());
    else if (const auto failed = writeFileWhole(dialog.selectedFiles().constFirst(), pdf.value()))
        report(*failed);
    else
        m_problem->setText(tr("Saved: %1").arg(dialog.selectedFiles().constFirst()));
}

void TemplateDialog::print() {
    QPrinter printer(QPrinter::HighResolution);
    preparePrinter(printer, m_pages.front(), m_documentName);
    QPrintDialog dialog(&printer, this);
    dialog.setOption(QAbstractPrintDialog::PrintPageRange);
    dialog.setMinMax(1, static_cast<int>(m_pages.size()));
    if (dialog.exec() != QDialog::Accepted)
        return;
    if (const auto failed = printPages(printer, m_pages))
        report(*failed);
}

void TemplateDialog::report(const Error& error) {
    QMessageBox::warning(this, windowTitle(), QString::fromStdString(error.sentence()));
}

} // namespace frontwright
