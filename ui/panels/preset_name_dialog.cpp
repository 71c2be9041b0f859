#include "ui/panels/preset_name_dialog.h"

#include "ui/help/topics.h"
#include "ui/language/told.h"

#include <QDialogButtonBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace frontwright {

PresetNameDialog::PresetNameDialog(const QString& title, const QString& proposed, Check check,
                                   QWidget* parent)
    : QDialog(parent),
      m_check(std::move(check)),
      m_name(new QLineEdit(proposed)),
      m_reason(new QLabel) {
    setWindowTitle(title);
    setHelpTopic(*this, QStringLiteral("decisions#presets"));
    auto* label = new QLabel(tr("&Name, such as Deep drawers"));
    label->setBuddy(m_name);
    m_name->setAccessibleName(tr("Name of the preset"));
    m_name->selectAll();
    m_reason->setWordWrap(true);
    m_reason->setMinimumWidth(fontMetrics().averageCharWidth() * 40);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel);
    m_keep = buttons->button(QDialogButtonBox::Ok);
    auto* column = new QVBoxLayout(this);
    column->addWidget(label);
    column->addWidget(m_name);
    column->addWidget(m_reason);
    column->addStretch();
    column->addWidget(buttons);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(m_name, &QLineEdit::textChanged, this, &PresetNameDialog::judge);
    judge();
}

std::string PresetNameDialog::name() const {
    return m_name->text().trimmed().toStdString();
}

void PresetNameDialog::judge() {
    const std::optional<Error> error = m_check(name());
    m_keep->setEnabled(!error);
    m_reason->setText(error && !name().empty() ? told(error->sentence()) : QString());
}

} // namespace frontwright
