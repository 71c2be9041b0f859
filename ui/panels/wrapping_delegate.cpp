#include "ui/panels/wrapping_delegate.h"

#include <QTreeView>

namespace frontwright {

QSize WrappingDelegate::sizeHint(const QStyleOptionViewItem& option,
                                 const QModelIndex& index) const {
    QStyleOptionViewItem wrapped = option;
    if (!wraps(index))
        return QStyledItemDelegate::sizeHint(option, index);
    if (const auto* list = qobject_cast<const QTreeView*>(option.widget)) {
        int before = 0; // the first column begins after the branches
        for (QModelIndex at = index.parent(); index.column() == 0 && at.isValid(); at = at.parent())
            before += list->indentation();
        if (index.column() == 0 && list->rootIsDecorated())
            before += list->indentation();
        wrapped.rect = QRect(0, 0, list->columnWidth(index.column()) - before, QWIDGETSIZE_MAX);
    }
    wrapped.features |= QStyleOptionViewItem::WrapText;
    return QStyledItemDelegate::sizeHint(wrapped, index);
}

void WrappingDelegate::initStyleOption(QStyleOptionViewItem* option,
                                       const QModelIndex& index) const {
    QStyledItemDelegate::initStyleOption(option, index);
    if (!wraps(index))
        option->features &= ~QStyleOptionViewItem::ViewItemFeatures(QStyleOptionViewItem::WrapText);
}

} // namespace frontwright
