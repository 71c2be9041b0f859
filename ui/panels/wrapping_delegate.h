#pragma once

#include <QStyledItemDelegate>

#include <cstdint>

namespace frontwright {

/// Makes a tree's rows as high as their texts need in the columns' widths. The tree has its word
/// wrap on.
class WrappingDelegate : public QStyledItemDelegate {
    Q_OBJECT
public:
    enum class Wraps : std::uint8_t { AllColumns, FirstColumn };
    explicit WrappingDelegate(QObject* parent, Wraps wraps = Wraps::AllColumns)
        : QStyledItemDelegate(parent),
          m_wraps(wraps) {}
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem&, const QModelIndex&) const override;

protected:
    void initStyleOption(QStyleOptionViewItem*, const QModelIndex&) const override;

private:
    [[nodiscard]] bool wraps(const QModelIndex& index) const {
        return m_wraps == Wraps::AllColumns || index.column() == 0;
    }

    Wraps m_wraps;
};

} // namespace frontwright
