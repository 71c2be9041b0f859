#pragma once

#include <QStringList>
#include <QStyledItemDelegate>

namespace frontwright {

/// Cells whose text is one of few: a list to choose from instead of a line to type in.
class ChoiceDelegate : public QStyledItemDelegate {
    Q_OBJECT
public:
    ChoiceDelegate(QStringList choices, QObject* parent);

    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem&,
                          const QModelIndex&) const override;

private:
    QStringList m_choices;
};

} // namespace frontwright
