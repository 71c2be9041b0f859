#pragma once

#include "ui/session/session.h"

#include <QWidget>

#include <array>

class QCheckBox;
class QComboBox;
class QLabel;

namespace frontwright {

class AirStateRow;

/// The air that the fronts live in: whether it is told, an ordinary kind of room, and the three
/// times of the year. Each change is one undo step.
class AirForm : public QWidget {
    Q_OBJECT
public:
    explicit AirForm(Session&, QWidget* parent = nullptr);

    /// Whether the air is told at all; where it is, the room's.
    [[nodiscard]] QWidget* firstField() const;

private:
    void refresh();
    void tell(bool isTold);
    void choose(int range);
    void change();

    Session& m_session;
    QCheckBox* m_told;
    QComboBox* m_range;
    std::array<AirStateRow*, 3> m_rows; ///< when cut, driest, wettest
    QWidget* m_fields;
    QLabel* m_source;
    QLabel* m_problem;
};

} // namespace frontwright
