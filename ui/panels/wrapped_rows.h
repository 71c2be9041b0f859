#pragma once

#include <QObject>

#include <vector>

class QTreeWidget;

namespace frontwright {

/// Makes all texts of a list readable in whatever width it has: those columns that are only as wide
/// as their texts give way to the last one, and every cell goes on in further lines.
class WrappedRows : public QObject {
    Q_OBJECT
public:
    /// `shares`: what part of the list each column but the last may take at most.
    WrappedRows(QTreeWidget& list, std::vector<double> shares);

    /// After the texts have changed.
    void fit();

protected:
    bool eventFilter(QObject*, QEvent*) override;

private:
    [[nodiscard]] int widthOf(int column) const; ///< of its texts, unwrapped

    QTreeWidget& m_list;
    std::vector<double> m_shares;
};

} // namespace frontwright
