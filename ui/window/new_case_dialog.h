#pragma once

#include "core/project/project.h"
#include "core/results/result.h"

#include <QDialog>

#include <optional>

class QComboBox;
class QFormLayout;
class QLabel;
class QPushButton;
class QSpinBox;

namespace frontwright {

class LengthField;

/// A case from a few numbers: unit, construction, outer size, frame or panels, banks and drawers,
/// how the fronts fit. Says at once how large the openings become, or why there is no room.
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
    /// Begins anew with what a maker would expect of that unit and construction; outer sizes that
    /// were typed stay.
    void basisChanged();
    void nameMembers();
    [[nodiscard]] Construction construction() const;
    void summarise();
    [[nodiscard]] Result<Project> divided(Project) const;

    QFormLayout* m_form = nullptr;
    QComboBox* m_unit;
    QComboBox* m_construction;
    LengthField* m_width;
    LengthField* m_height;
    LengthField* m_depth;
    LengthField* m_frame;
    LengthField* m_member;
    LengthField* m_shelf; ///< frameless: between drawers
    QSpinBox* m_banks;
    QSpinBox* m_drawers;
    QComboBox* m_fit;
    LengthField* m_fitAmount;
    QLabel* m_summary;
    QPushButton* m_make = nullptr;
    Project m_base; ///< the unit's defaults with what the fields decided
    struct {
        std::optional<WrittenLength> width, height, depth;
    } m_own; ///< sizes that were typed
    WrittenLength m_memberWidth;
    WrittenLength m_shelfThickness;
    WrittenLength m_amount;
};

} // namespace frontwright
