#pragma once

#include <QStyledItemDelegate>

namespace frontwright {

/// Makes a tree's rows as high as their texts need in the columns' widths.
class WrappingDelegate : public QStyledItemDelegate {
    Q_OBJECT
public:
    using QStyledItemDelegate::QStyledItemDelegate;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem&, const QModelIndex&) const override;
};

} // namespace frontwright
