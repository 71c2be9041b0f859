#pragma once

#include "core/project/project.h"
#include "core/results/result.h"

#include <QDialog>

class QComboBox;
class QLabel;
class QPushButton;
class QSpinBox;

namespace frontwright {

class LengthField;

/// A case from a few numbers: unit, outer size, frame, banks and drawers, how the fronts fit. Says
/// at once how large the openings become, or why there is no room.
class NewCaseDialog : public QDialog {
    Q_OBJECT
public:
    explicit NewCaseDialog(QWidget* parent = nullptr);

    /// The case as the fields stand. Error: why it can't be made.
    [[nodiscard]] Result<Project> project() const;

private:
    void addRows();
    void listen();
    void make();
    void unitChanged();
    void summarise();
    [[nodiscard]] Result<Project> divided(Project) const;

    QComboBox* m_unit;
    LengthField* m_width;
    LengthField* m_height;
    LengthField* m_depth;
    LengthField* m_frame;
    LengthField* m_member;
    QSpinBox* m_banks;
    QSpinBox* m_drawers;
    QComboBox* m_fit;
    LengthField* m_fitAmount;
    QLabel* m_summary;
    QPushButton* m_make = nullptr;
    Project m_base; ///< the unit's defaults with what the fields decided
    WrittenLength m_memberWidth;
    WrittenLength m_amount;
};

} // namespace frontwright
