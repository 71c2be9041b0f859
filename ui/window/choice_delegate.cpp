#include "ui/window/choice_delegate.h"

#include <QComboBox>

namespace frontwright {

ChoiceDelegate::ChoiceDelegate(QStringList choices, QObject* parent)
    : QStyledItemDelegate(parent),
      m_choices(std::move(choices)) {}

QWidget* ChoiceDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem&,
                                      const QModelIndex& cell) const {
    auto* box = new QComboBox(parent);
    box->addItems(m_choices);
    box->setAccessibleName(cell.model()->headerData(cell.column(), Qt::Horizontal).toString());
    return box;
}

} // namespace frontwright
