#pragma once

#include "core/boards/board_numbers.h"
#include "ui/session/session.h"

#include <QWidget>

class QLabel;
class QVBoxLayout;

namespace frontwright {

/// How one number came about: its rule with the figures, the rule's source, and a button for each
/// decision that it follows from, which leads to that field.
class NumberAnswer : public QWidget {
    Q_OBJECT
public:
    explicit NumberAnswer(Session&, QWidget* parent = nullptr);

    void tell(std::optional<Quantity> quantity);
    void tell(const BoardNumber&);

private:
    void clearInputs();
    void addInput(InputPlace, std::optional<Quantity> about);

    Session& m_session;
    QLabel* m_words;
    QLabel* m_leads;
    QVBoxLayout* m_inputs;
};

} // namespace frontwright
