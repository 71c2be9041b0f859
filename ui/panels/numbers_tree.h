#pragma once

#include "core/plan/quantity.h"

#include <QTreeWidget>

#include <optional>
#include <set>
#include <variant>
#include <vector>

namespace frontwright {

/// Numbers as rows under their subjects. A row that is searched for shows while its name, or its
/// subject's, holds all the words.
class NumbersTree : public QTreeWidget {
    Q_OBJECT
public:
    /// A number of the plan, or by its place one of those that are told of a pull-out board.
    using Number = std::variant<Quantity, std::size_t>;
    struct Row {
        Subject subject = Subject::Case;
        QString name;
        QString value;
        Number number;
    };

    [[nodiscard]] static bool isFound(const Row&, const QString& words);

    explicit NumbersTree(QWidget* parent = nullptr);

    /// Replaces all rows. The same number stays chosen, of whatever part.
    void show(const std::vector<Row>&);
    /// Empty: all rows, folded as the maker left them.
    void search(const QString& words);
    /// Whether a row is to be seen.
    [[nodiscard]] bool isAnyShown() const { return firstShown() != nullptr; }

    [[nodiscard]] std::optional<Number> chosen() const;
    void choose(const Number&); ///< where there is such a row

private:
    [[nodiscard]] QTreeWidgetItem* groupOf(Subject);
    [[nodiscard]] QTreeWidgetItem* firstShown() const;
    void setFolded(const QTreeWidgetItem& group, bool isFolded);

    std::vector<std::pair<Number, QTreeWidgetItem*>> m_rows;
    QString m_words;
    std::set<Subject> m_folded; ///< by the maker
};

} // namespace frontwright
