#include "ui/sheets/printer_panel.h"

#include "core/sheets/correction.h"
#include "ui/language/told.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QSettings>

#include <algorithm>

namespace frontwright {

namespace {

const QString printerKey = QStringLiteral("templates/printer");

bool isLandscape(const Page& page) {
    return page.width > page.height;
}

} // namespace

PrinterPanel::PrinterPanel(QSettings& settings, const QStringList& printers, QWidget* parent)
    : QWidget(parent),
      m_settings(settings),
      m_checks(settings),
      m_printer(new QComboBox),
      m_state(new QLabel),
      m_test(new QPushButton(tr("&Test page and correction…"))) {
    m_printer->addItem(tr("PDF file, not corrected"), QString());
    for (const QString& name : printers)
        m_printer->addItem(name, name);
    m_printer->setCurrentIndex(
        std::max(0, m_printer->findData(m_settings.value(printerKey, QString()))));
    m_printer->setAccessibleName(tr("Printer"));
    // As wide as the first line: printers' names may be long.
    m_printer->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    const QFontMetrics letters = m_printer->fontMetrics();
    m_printer->setMinimumContentsLength(
        letters.horizontalAdvance(m_printer->itemText(0)) / letters.horizontalAdvance(u'X') + 1);
    m_state->setWordWrap(true);
    m_state->setAccessibleName(tr("State of this printer and paper"));
    auto* row = new QHBoxLayout;
    auto* label = new QLabel(tr("P&rinter"));
    label->setBuddy(m_printer);
    row->addWidget(label);
    row->addWidget(m_printer, 1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins({});
    column->addLayout(row);
    column->addWidget(m_state);
    column->addWidget(m_test);
    connect(m_printer, &QComboBox::currentIndexChanged, this, [this] {
        m_settings.setValue(printerKey, printer());
        Q_EMIT changed();
    });
    connect(m_test, &QPushButton::clicked, this, &PrinterPanel::testPageWanted);
}

QString PrinterPanel::printer() const {
    return m_printer->currentData().toString();
}

void PrinterPanel::choosePrinter(const QString& name) {
    if (m_printer->findData(name) < 0)
        m_printer->addItem(name, name);
    m_printer->setCurrentIndex(m_printer->findData(name));
}

std::array<ScaleFactors, 2> PrinterPanel::factors(const QString& printer,
                                                  const Paper& paper) const {
    std::array<ScaleFactors, 2> factors;
    if (printer.isEmpty())
        return factors;
    for (const Orientation each : {Orientation::Portrait, Orientation::Landscape})
        if (const auto check = m_checks.of({printer, QString::fromStdString(paper.name), each}))
            factors.at(static_cast<std::size_t>(each)) = check->factors;
    return factors;
}

QString PrinterPanel::lineFor(const Paper& paper, Orientation orientation) const {
    const QString what = orientation == Orientation::Portrait
                             ? tr("%1 upright").arg(told(nameOf(paper)))
                             : tr("%1 landscape").arg(told(nameOf(paper)));
    const auto check = m_checks.of({printer(), QString::fromStdString(paper.name), orientation});
    if (!check)
        return tr("%1: never checked.").arg(what);
    const DecimalMark mark = spokenLanguage().decimalMark();
    const QString factors =
        check->factors.areNone()
            ? tr("needs no correction")
            : tr("corrected × %1 across, × %2 up")
                  .arg(QString::fromStdString(factorText(check->factors.across, mark)),
                       QString::fromStdString(factorText(check->factors.up, mark)));
    const QLocale locale;
    if (!check->proved.isValid())
        return tr("%1: %2; measured %3, not proved by a second print yet.")
            .arg(what, factors, locale.toString(check->measured, QLocale::ShortFormat));
    return tr("%1: %2; last checked %3.")
        .arg(what, factors, locale.toString(check->proved, QLocale::ShortFormat));
}

void PrinterPanel::tell(const Paper& paper, const std::vector<Page>& pages) {
    m_test->setEnabled(!pages.empty() && !printer().isEmpty());
    if (printer().isEmpty()) {
        m_state->setText(
            tr("100 %, not corrected for any printer. Choose a printer for its test page and its "
               "correction."));
        return;
    }
    QStringList lines{tr("100 %, never fitted to the page.")};
    if (std::any_of(pages.begin(), pages.end(), [](const Page& p) { return !isLandscape(p); }))
        lines << lineFor(paper, Orientation::Portrait);
    if (std::any_of(pages.begin(), pages.end(), isLandscape))
        lines << lineFor(paper, Orientation::Landscape);
    m_state->setText(lines.join(QLatin1Char('\n')));
}

} // namespace frontwright
