#pragma once

#include "ui/session/session.h"

#include <QWidget>

class QLabel;
class QTreeWidget;
class QVBoxLayout;

namespace frontwright {

class WrappedRows;

/// What to heed, gravest first: sign and words for how grave, where, one sentence. Selecting one
/// shows its place; below it the reason with its figures, the source, and remedies as buttons, each
/// one click and one undo step.
class FindingsPanel : public QWidget {
    Q_OBJECT
public:
    explicit FindingsPanel(Session&, QWidget* parent = nullptr);

    [[nodiscard]] QTreeWidget& list() { return *m_list; }

Q_SIGNALS:
    void findingChosen(const std::optional<frontwright::Finding>& finding);

protected:
    void changeEvent(QEvent*) override;

private:
    void fill();
    void showChosen(); ///< and selects its place
    void showDetails();
    void clearDetails();
    void addAsks(const Finding&);
    [[nodiscard]] std::optional<Finding> chosen() const;

    Session& m_session;
    QLabel* m_summary;
    QTreeWidget* m_list;
    WrappedRows* m_rows;
    QLabel* m_sentence;
    QLabel* m_reason;
    QVBoxLayout* m_remedies;
    QVBoxLayout* m_asks; ///< why, and where to change it by hand
    std::vector<Finding> m_shown;
    LengthStyle m_shownStyle;
};

} // namespace frontwright
