#include "ui/window/graduate_dialog.h"

#include "core/edits/divisions.h"
#include "core/edits/tree_paths.h"
#include "core/lengths/format.h"
#include "ui/fields/decimal_box.h"
#include "ui/fields/length_field.h"
#include "ui/help/topics.h"
#include "ui/language/told.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QDoubleSpinBox>
#include <QFormLayout>
#include <QLabel>

#include <cmath>

namespace frontwright {

GraduateDialog::GraduateDialog(const Project& project, OpeningId opening, LengthStyle style,
                               QWidget* parent)
    : QDialog(parent),
      m_project(project),
      m_opening(opening),
      m_style(style),
      m_kind(new QComboBox),
      m_step(new LengthField(tr("Step"))),
      m_ratio(new DecimalBox),
      m_first(new LengthField(tr("Topmost height"))),
      m_last(new LengthField(tr("Lowest height"))),
      m_room(new QComboBox),
      m_told(new QLabel),
      m_stepValue(style.unit == Unit::Inch ? Length::inches(1) : Length::millimetres(20)) {
    setWindowTitle(tr("Graduate the bank"));
    setHelpTopic(*this, QStringLiteral("window#graduate"));
    m_kind->addItem(tr("By a step: each is deeper by the same length"));
    m_kind->addItem(tr("By a ratio: each is deeper by the same part"));
    m_kind->addItem(tr("Between a topmost and a lowest height, by the ratio that follows"));
    m_kind->setAccessibleName(tr("Kind of graduation"));
    m_step->setValue(m_stepValue, style);
    m_ratio->setRange(1.0, 2.0);
    m_ratio->setDecimals(3);
    m_ratio->setSingleStep(0.05);
    m_ratio->setValue(1.25);
    m_ratio->setAccessibleName(tr("Ratio"));
    m_room->addItem(tr("Those between share what is left"));
    m_room->addItem(tr("The case’s height follows"));
    m_room->setAccessibleName(tr("What makes room"));
    m_told->setWordWrap(true);
    m_told->setMinimumWidth(fontMetrics().averageCharWidth() * 60);
    m_told->setAccessibleName(tr("What follows"));
    startWithPresentEnds();
    auto* form = new QFormLayout(this);
    form->addRow(m_kind);
    form->addRow(tr("&Step"), m_step);
    form->addRow(tr("&Ratio"), m_ratio);
    form->addRow(tr("&Topmost height"), m_first);
    form->addRow(tr("&Lowest height"), m_last);
    form->addRow(tr("R&oom"), m_room);
    form->addRow(m_told);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel);
    form->addRow(buttons);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(m_step, &LengthField::decided, this,
            [this](const WrittenLength& value) { m_stepValue = value; });
    connect(m_first, &LengthField::decided, this, [this](const WrittenLength& value) {
        m_firstValue = value;
        tellSeries();
    });
    connect(m_last, &LengthField::decided, this, [this](const WrittenLength& value) {
        m_lastValue = value;
        tellSeries();
    });
    connect(m_kind, &QComboBox::currentIndexChanged, this, &GraduateDialog::enable);
    connect(m_room, &QComboBox::currentIndexChanged, this, &GraduateDialog::tellSeries);
    enable();
}

GraduateDialog::Kind GraduateDialog::kind() const {
    return static_cast<Kind>(m_kind->currentIndex());
}

SeriesRoom GraduateDialog::room() const {
    return m_room->currentIndex() == 0 ? SeriesRoom::Kept : SeriesRoom::CaseFollows;
}

void GraduateDialog::startWithPresentEnds() {
    const auto place = sizedPlace(m_project.casework, m_opening, Direction::Rows);
    if (!place.ok())
        return;
    m_firstValue = place.value().sizes.front();
    m_lastValue = place.value().sizes.back();
    m_first->setValue(m_firstValue.length, m_style);
    m_last->setValue(m_lastValue.length, m_style);
}

void GraduateDialog::enable() {
    m_step->setEnabled(kind() == Kind::Step);
    m_ratio->setEnabled(kind() == Kind::Ratio);
    for (QWidget* field : {static_cast<QWidget*>(m_first), static_cast<QWidget*>(m_last),
                           static_cast<QWidget*>(m_room)})
        field->setEnabled(kind() == Kind::Series);
    tellSeries();
}

void GraduateDialog::tellSeries() {
    if (kind() != Kind::Series)
        return m_told->setText(
            tr("The top drawer is the shallowest, the bottom drawer the deepest."));
    const auto series =
        seriesBetween(m_project, m_opening, Direction::Rows, m_firstValue, m_lastValue);
    if (!series.ok())
        return m_told->setText(told(series.error().sentence()));
    const Series& found = series.value();
    const auto& sizes = room() == SeriesRoom::Kept ? found.sizes : found.ideal;
    QStringList heights;
    for (const Length size : sizes)
        heights << QString::fromStdString(shown(size, m_style));
    const QString ratio = QString::fromStdString(
        withMark(decimal(static_cast<double>(found.ratioMillionths) / 1e6, 3), m_style.mark));
    if (heights.isEmpty())
        return m_told->setText(tr("Ratio %1. There is no room for it: %2 is needed, %3 is there.")
                                   .arg(ratio, QString::fromStdString(shown(found.needed, m_style)),
                                        QString::fromStdString(shown(found.room, m_style))));
    m_told->setText(tr("Ratio %1: %2. In that ratio throughout %3 is needed, %4 is there.")
                        .arg(ratio, heights.join(QStringLiteral(" · ")),
                             QString::fromStdString(shown(found.needed, m_style)),
                             QString::fromStdString(shown(found.room, m_style))));
}

Result<Project> GraduateDialog::graduated() const {
    switch (kind()) {
    case Kind::Step:
        return graduate(m_project, m_opening, Direction::Rows, ArithmeticRun{m_stepValue});
    case Kind::Ratio:
        return graduate(m_project, m_opening, Direction::Rows,
                        GeometricRun{std::llround(m_ratio->value() * 1'000'000)});
    case Kind::Series:
        break;
    }
    return fitSeries(m_project, m_opening, Direction::Rows, m_firstValue, m_lastValue, room());
}

} // namespace frontwright
