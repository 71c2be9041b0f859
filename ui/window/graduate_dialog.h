#pragma once

#include "core/case/divisions.h"

#include <QDialog>

class QComboBox;
class QDoubleSpinBox;

namespace frontwright {

class LengthField;

/// Asks how a bank is graduated: each drawer deeper by a step, or by a ratio.
class GraduateDialog : public QDialog {
    Q_OBJECT
public:
    explicit GraduateDialog(LengthStyle style, QWidget* parent = nullptr);

    [[nodiscard]] Graduation graduation() const;

private:
    QComboBox* m_kind;
    LengthField* m_step;
    QDoubleSpinBox* m_ratio;
    WrittenLength m_stepValue;
};

} // namespace frontwright
