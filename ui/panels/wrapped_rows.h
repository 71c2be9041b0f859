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
    /// `shares`: what part of the list each column but the last may take; more only where its
    /// longest word or its heading has no room in it.
    WrappedRows(QTreeWidget& list, std::vector<double> shares);

    /// After the texts have changed.
    void fit();

protected:
    bool eventFilter(QObject*, QEvent*) override;

private:
    /// Of a column, pixels.
    struct Widths {
        int whole = 0; ///< its texts unwrapped
        int least = 0; ///< no word cut
    };
    [[nodiscard]] Widths widthsOf(int column) const;

    QTreeWidget& m_list;
    std::vector<double> m_shares;
};

} // namespace frontwright
