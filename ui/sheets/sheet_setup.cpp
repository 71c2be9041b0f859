#include "ui/sheets/sheet_setup.h"

#include "core/lengths/format.h"
#include "core/lengths/parse.h"
#include "ui/fields/length_field.h"

#include <QComboBox>
#include <QFormLayout>
#include <QLocale>
#include <QSettings>

namespace frontwright {

namespace {

const QString paperKey = QStringLiteral("templates/paper");
const QString orientationKey = QStringLiteral("templates/orientation");
const QString rollName = QStringLiteral("roll");
const QString ownSizeName = QStringLiteral("own size");

/// Letter and A4 are equal: the locale's until the maker chose.
QString defaultPaper() {
    return QLocale().measurementSystem() == QLocale::ImperialUSSystem ? QStringLiteral("Letter")
                                                                      : QStringLiteral("A4");
}

/// In the case's unit, finer than its fraction: an edge of paper is less than a front.
LengthStyle ofPaper(LengthStyle style) {
    style.denominator = 64;
    return style;
}

/// A usual measure in the case's unit.
Length usual(LengthStyle style, std::int64_t sixtyFourths, std::int64_t millimetres) {
    return style.unit == Unit::Inch ? Length::fromSixtyFourths(sixtyFourths)
                                    : Length::millimetres(millimetres);
}

/// Stored in millimetres in either unit.
WrittenLength stored(const QSettings& settings, const QString& key, Length otherwise) {
    const auto length = parseWrittenLength(settings.value(key).toString().toStdString());
    return length.ok() && length.value() >= Length{} ? length.value() : WrittenLength(otherwise);
}

QString orientationName(std::optional<Orientation> orientation) {
    if (!orientation)
        return QStringLiteral("fewest");
    return *orientation == Orientation::Portrait ? QStringLiteral("upright")
                                                 : QStringLiteral("landscape");
}

} // namespace

SheetSetup::SheetSetup(QSettings& settings, LengthStyle style, QWidget* parent)
    : QWidget(parent),
      m_settings(settings),
      m_style(ofPaper(style)),
      m_form(new QFormLayout(this)),
      m_paper(new QComboBox),
      m_orientation(new QComboBox),
      m_rollField(new LengthField(tr("Width of the roll"))),
      m_widthField(new LengthField(tr("Width of the sheet"))),
      m_heightField(new LengthField(tr("Height of the sheet"))),
      m_overlapField(new LengthField(tr("Overlap of tiles"))),
      m_marginField(new LengthField(tr("Margin of the sheets"))) {
    m_form->setContentsMargins({});
    m_form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    m_form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    addPapers();
    addFields();
    showOwnSizes();
    connect(m_paper, &QComboBox::currentIndexChanged, this, [this] {
        showOwnSizes();
        decided();
    });
    connect(m_orientation, &QComboBox::currentIndexChanged, this, &SheetSetup::decided);
}

void SheetSetup::addPapers() {
    for (const Paper& paper : knownPapers()) {
        const QString name = QString::fromStdString(paper.name);
        m_paper->addItem(name, name);
    }
    m_paper->addItem(tr("Roll…"), rollName);
    m_paper->addItem(tr("Another size…"), ownSizeName);
    const int last = m_paper->findData(m_settings.value(paperKey));
    m_paper->setCurrentIndex(last >= 0 ? last : m_paper->findData(defaultPaper()));
    m_paper->setAccessibleName(tr("Paper"));
    m_form->addRow(tr("P&aper"), m_paper);
    addLength(tr("Roll &width"), m_rollField, m_rollWidth = usual(m_style, 24 * 64, 610),
              QStringLiteral("templates/rollWidth"));
    addLength(tr("Sheet w&idth"), m_widthField, m_width = usual(m_style, 12 * 64, 300),
              QStringLiteral("templates/sheetWidth"));
    addLength(tr("Sheet &height"), m_heightField, m_height = usual(m_style, 16 * 64, 400),
              QStringLiteral("templates/sheetHeight"));
}

void SheetSetup::addOrientations() {
    for (const auto& [text, orientation] :
         {std::pair{tr("Fewest pages"), std::optional<Orientation>()},
          {tr("All upright"), std::optional(Orientation::Portrait)},
          {tr("All landscape"), std::optional(Orientation::Landscape)}})
        m_orientation->addItem(text, orientationName(orientation));
    m_orientation->setCurrentIndex(
        std::max(0, m_orientation->findData(m_settings.value(orientationKey))));
    m_orientation->setAccessibleName(tr("Orientation"));
    m_form->addRow(tr("&Orientation"), m_orientation);
}

void SheetSetup::addFields() {
    addOrientations();
    addLength(tr("O&verlap"), m_overlapField, m_overlap = usual(m_style, 24, 10),
              QStringLiteral("templates/overlap"));
    addLength(tr("&Margin"), m_marginField, m_margin = usual(m_style, 24, 10),
              QStringLiteral("templates/margin"));
}

void SheetSetup::addLength(const QString& label, LengthField* field, WrittenLength& value,
                           const QString& key) {
    value = stored(m_settings, key, value);
    field->setValue(value, m_style);
    m_form->addRow(label, field);
    connect(field, &LengthField::decided, this, [this, &value, key](const WrittenLength& typed) {
        value = typed;
        m_settings.setValue(key, QString::fromStdString(exact(typed, Unit::Millimetre)));
        decided();
    });
}

bool SheetSetup::isRoll() const {
    return m_paper->currentData() == rollName;
}
bool SheetSetup::isOwnSize() const {
    return m_paper->currentData() == ownSizeName;
}

void SheetSetup::showOwnSizes() {
    m_form->setRowVisible(m_rollField, isRoll());
    m_form->setRowVisible(m_widthField, isOwnSize());
    m_form->setRowVisible(m_heightField, isOwnSize());
}

void SheetSetup::decided() {
    m_settings.setValue(paperKey, m_paper->currentData());
    m_settings.setValue(orientationKey, m_orientation->currentData());
    Q_EMIT changed();
}

Result<Paper> SheetSetup::paper() const {
    if (isRoll())
        return rollOf(m_rollWidth);
    if (isOwnSize())
        return sheetOf(m_width, m_height);
    return knownPapers()[static_cast<std::size_t>(m_paper->currentIndex())];
}

std::optional<Orientation> SheetSetup::orientation() const {
    for (const Orientation each : {Orientation::Portrait, Orientation::Landscape})
        if (m_orientation->currentData() == orientationName(each))
            return each;
    return std::nullopt;
}

void SheetSetup::choosePaper(const Paper& paper) {
    const int known = m_paper->findData(QString::fromStdString(paper.name));
    if (known < 0) {
        m_width = paper.width;
        m_height = paper.height;
        m_widthField->setValue(m_width, m_style);
        m_heightField->setValue(m_height, m_style);
    }
    const int wanted = known >= 0 ? known : m_paper->findData(ownSizeName);
    if (wanted == m_paper->currentIndex())
        decided();
    else
        m_paper->setCurrentIndex(wanted);
}

} // namespace frontwright
