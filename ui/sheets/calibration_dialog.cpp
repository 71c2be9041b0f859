#include "ui/sheets/calibration_dialog.h"

#include "core/lengths/format.h"
#include "core/sheets/correction.h"
#include "ui/fields/length_field.h"
#include "ui/help/topics.h"
#include "ui/help/tell_tale_words.h"
#include "ui/language/told.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QScrollArea>

namespace frontwright {

namespace {

QLabel* wrappedLabel(const QString& text = {}) {
    auto* label = new QLabel(text);
    label->setWordWrap(true);
    return label;
}

} // namespace

CalibrationDialog::CalibrationDialog(QSettings& settings, const QString& printer,
                                     const Paper& paper, Length margin, LengthStyle style,
                                     Orientation first, PrintPage printPage, QWidget* parent)
    : QDialog(parent),
      m_checks(settings),
      m_printer(printer),
      m_paper(paper),
      m_margin(margin),
      m_style(style),
      m_printPage(std::move(printPage)),
      m_today(QDate::currentDate()),
      m_orientation(new QComboBox),
      m_state(wrappedLabel()),
      m_print(new QPushButton),
      m_fieldA(new LengthField(tr("Measured length of bar A"))),
      m_fieldB(new LengthField(tr("Measured length of bar B"))),
      m_compare(new QPushButton(tr("&Compare"))),
      m_startAgain(new QPushButton(tr("Start a&gain without correction"))),
      m_outcome(wrappedLabel()),
      m_table(wrappedLabel()),
      m_tableArea(new QScrollArea) {
    setWindowTitle(tr("Test page for %1").arg(printer));
    setHelpTopic(*this, QStringLiteral("printing#check"));
    m_orientation->addItems({tr("Upright"), tr("Landscape")});
    m_orientation->setCurrentIndex(first == Orientation::Portrait ? 0 : 1);
    m_orientation->setAccessibleName(tr("Orientation"));
    m_outcome->setAccessibleName(tr("Outcome"));
    m_table->setTextFormat(Qt::RichText);
    m_table->setAccessibleName(tr("Tell-tale sizes"));
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    addRows(*buttons);
    connect(m_orientation, &QComboBox::currentIndexChanged, this, &CalibrationDialog::begin);
    connect(m_print, &QPushButton::clicked, this, &CalibrationDialog::print);
    connect(m_compare, &QPushButton::clicked, this, &CalibrationDialog::compare);
    connect(m_startAgain, &QPushButton::clicked, this, [this] {
        m_checks.forget(setup());
        begin();
    });
    connect(m_fieldA, &LengthField::decided, this,
            [this](const WrittenLength& length) { m_lengthA = length; });
    connect(m_fieldB, &LengthField::decided, this,
            [this](const WrittenLength& length) { m_lengthB = length; });
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    buttons->button(QDialogButtonBox::Close)->setAutoDefault(false);
    m_tableArea->hide();
    begin();
}

void CalibrationDialog::addRows(QWidget& buttons) {
    for (LengthField* field : {m_fieldA, m_fieldB})
        field->keepRoomForEcho();
    // Enter in a field decides its length; it must not press a button as well.
    for (QPushButton* button : {m_print, m_compare, m_startAgain})
        button->setAutoDefault(false);
    constexpr int letters = 72; // of a line of text
    constexpr int linesOfTable = 10;
    setMinimumWidth(letters * fontMetrics().averageCharWidth());
    auto* form = new QFormLayout(this);
    form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    form->addRow(tr("Printer"), wrappedLabel(m_printer));
    form->addRow(tr("Paper"), wrappedLabel(told(nameOf(m_paper))));
    form->addRow(tr("&Orientation"), m_orientation);
    form->addRow(m_state);
    form->addRow(m_print);
    form->addRow(tr("Bar &A, across the page"), m_fieldA);
    form->addRow(tr("Bar &B, up the page"), m_fieldB);
    form->addRow(m_compare);
    form->addRow(m_outcome);
    m_tableArea->setWidget(m_table);
    m_tableArea->setWidgetResizable(true);
    m_tableArea->setFrameShape(QFrame::NoFrame);
    m_tableArea->setAccessibleName(m_table->accessibleName());
    m_tableArea->setMinimumHeight(linesOfTable * fontMetrics().height());
    form->addRow(m_tableArea);
    form->addRow(m_startAgain);
    form->addRow(&buttons);
}

Orientation CalibrationDialog::orientation() const {
    return m_orientation->currentIndex() == 0 ? Orientation::Portrait : Orientation::Landscape;
}

PrinterSetup CalibrationDialog::setup() const {
    return {m_printer, QString::fromStdString(m_paper.name), orientation()};
}

QString CalibrationDialog::factorsText() const {
    return tr("× %1 across, × %2 up")
        .arg(QString::fromStdString(factorText(m_toProve.across, m_style.mark)),
             QString::fromStdString(factorText(m_toProve.up, m_style.mark)));
}

/// What is stored decides whether the next page measures or proves.
void CalibrationDialog::begin() {
    const auto check = m_checks.of(setup());
    m_toProve = check ? check->factors : ScaleFactors{};
    const auto sheet = calibrationSheet({m_paper, orientation(), m_margin, m_style.unit, m_toProve,
                                         m_printer.toStdString(), spokenLanguage()});
    m_print->setEnabled(sheet.ok());
    m_compare->setEnabled(sheet.ok());
    if (sheet.ok())
        m_sheet = sheet.value();
    else
        say(told(sheet.error().sentence()));
    m_startAgain->setVisible(check.has_value());
    m_print->setText(m_toProve.areNone() ? tr("&Print the test page")
                                         : tr("&Print the page that proves it"));
    const QString nominal = tr("Bar A should be %1, bar B %2.")
                                .arg(QString::fromStdString(shown(m_sheet.nominal.across, m_style)),
                                     QString::fromStdString(shown(m_sheet.nominal.up, m_style)));
    if (!check)
        m_state->setText(tr("This printer and paper were never checked. Print the test page; "
                            "nothing on it is corrected. %1")
                             .arg(nominal));
    else if (check->proved.isValid())
        m_state->setText(
            tr("Last checked %1. Print the page again to prove that it still holds. %2")
                .arg(QLocale().toString(check->proved, QLocale::ShortFormat), nominal));
    else
        m_state->setText(
            tr("Corrected %1. Print once more to prove it. %2").arg(factorsText(), nominal));
    clearLengths();
}

void CalibrationDialog::clearLengths() {
    m_lengthA.reset();
    m_lengthB.reset();
    for (LengthField* field : {m_fieldA, m_fieldB}) {
        field->setValue(std::nullopt, m_style);
        field->setPlaceholder(tr("as measured"));
    }
}

void CalibrationDialog::print() {
    say(m_printPage(m_sheet.page)
            ? tr("Printed. Measure both bars from outer tick to outer tick, with a steel rule, and "
                 "type the lengths.")
            : tr("Nothing was printed."));
}

void CalibrationDialog::compare() {
    if (!m_lengthA || !m_lengthB || *m_lengthA <= Length{} || *m_lengthB <= Length{}) {
        say(tr("Type both measured lengths first; each is above zero."));
        return;
    }
    const LengthsOnPage measured{*m_lengthA, *m_lengthB};
    if (m_toProve.areNone())
        compareFirst(measured);
    else
        compareProof(measured);
}

void CalibrationDialog::compareFirst(const LengthsOnPage& measured) {
    const ScaleFactors factors = factorsFor(m_sheet.nominal, measured);
    if (!areAcceptable(factors)) {
        const auto cause = likeliestCause(m_sheet.nominal, measured);
        say(cause ? tr("That is no printer's mechanics, so nothing was stored. Likeliest: %1. %2")
                        .arg(causeWords(*cause), causeRemedy(*cause))
                  : tr("That is more than a printer's mechanics err, so nothing was stored. No "
                       "size in the table fits: measure once more."),
            tellTaleTable(cause));
        return;
    }
    m_checks.keep(setup(), {factors, m_today, factors.areNone() ? m_today : QDate()});
    begin();
    say(factors.areNone()
            ? tr("Both bars are right: this printer and paper need no correction.")
            : tr("The correction %1 is kept. Print once more to prove it.").arg(factorsText()));
}

void CalibrationDialog::compareProof(const LengthsOnPage& measured) {
    const auto check = m_checks.of(setup());
    if (check && isProved(m_sheet.nominal, measured)) {
        m_checks.keep(setup(), {check->factors, check->measured, m_today});
        begin();
        say(tr("Proved: both bars are right with the correction %1.").arg(factorsText()));
        return;
    }
    const auto cause = likeliestCause(m_sheet.nominal, measured);
    m_checks.forget(setup());
    begin();
    say(tr("With the correction the bars are still off by more than %1: something changed between "
           "the two prints. The correction was taken back; begin again with the test page.")
            .arg(QString::fromStdString(shown(provedWithin, m_style))),
        tellTaleTable(cause));
}

void CalibrationDialog::say(const QString& text, const QString& table) {
    m_outcome->setText(text);
    m_table->setText(table);
    m_tableArea->setVisible(!table.isEmpty());
}

} // namespace frontwright
