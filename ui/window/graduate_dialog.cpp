#include "ui/window/graduate_dialog.h"

#include "ui/fields/decimal_box.h"
#include "ui/fields/length_field.h"
#include "ui/help/topics.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QDoubleSpinBox>
#include <QFormLayout>
#include <QLabel>

#include <cmath>

namespace frontwright {

GraduateDialog::GraduateDialog(LengthStyle style, QWidget* parent)
    : QDialog(parent),
      m_kind(new QComboBox),
      m_step(new LengthField(tr("Step"))),
      m_ratio(new DecimalBox),
      m_stepValue(style.unit == Unit::Inch ? Length::inches(1) : Length::millimetres(20)) {
    setWindowTitle(tr("Graduate the bank"));
    setHelpTopic(*this, QStringLiteral("window#graduate"));
    m_kind->addItem(tr("By a step: each is deeper by the same length"));
    m_kind->addItem(tr("By a ratio: each is deeper by the same part"));
    m_kind->setAccessibleName(tr("Kind of graduation"));
    m_step->setValue(m_stepValue, style);
    m_ratio->setRange(1.0, 2.0);
    m_ratio->setDecimals(3);
    m_ratio->setSingleStep(0.05);
    m_ratio->setValue(1.25);
    m_ratio->setAccessibleName(tr("Ratio"));
    auto* form = new QFormLayout(this);
    form->addRow(m_kind);
    form->addRow(tr("&Step"), m_step);
    form->addRow(tr("&Ratio"), m_ratio);
    form->addRow(
        new QLabel(tr("The top drawer is the shallowest, the bottom drawer the deepest.")));
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel);
    form->addRow(buttons);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(m_step, &LengthField::decided, this,
            [this](const WrittenLength& value) { m_stepValue = value; });
    const auto enable = [this] {
        m_step->setEnabled(m_kind->currentIndex() == 0);
        m_ratio->setEnabled(m_kind->currentIndex() == 1);
    };
    connect(m_kind, &QComboBox::currentIndexChanged, this, enable);
    enable();
}

Graduation GraduateDialog::graduation() const {
    if (m_kind->currentIndex() == 0)
        return ArithmeticRun{m_stepValue};
    return GeometricRun{std::llround(m_ratio->value() * 1'000'000)};
}

} // namespace frontwright
