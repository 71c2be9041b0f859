#pragma once

#include "core/edits/series.h"
#include "core/project/project.h"

#include <QDialog>

class QComboBox;
class QDoubleSpinBox;
class QLabel;

namespace frontwright {

class LengthField;

/// Asks how a bank is graduated: each drawer deeper by a step, by a ratio, or as a series between a
/// first and a last height, whose ratio and heights it tells.
class GraduateDialog : public QDialog {
    Q_OBJECT
public:
    /// The project must outlive the dialog.
    GraduateDialog(const Project&, OpeningId, LengthStyle style, QWidget* parent = nullptr);

    /// The project with the bank graduated as it was chosen.
    [[nodiscard]] Result<Project> graduated() const;

private:
    enum class Kind : std::uint8_t { Step, Ratio, Series };
    [[nodiscard]] Kind kind() const;
    void startWithPresentEnds();
    void enable();
    void tellSeries();
    [[nodiscard]] SeriesRoom room() const;

    const Project& m_project;
    OpeningId m_opening;
    LengthStyle m_style;
    QComboBox* m_kind;
    LengthField* m_step;
    QDoubleSpinBox* m_ratio;
    LengthField* m_first;
    LengthField* m_last;
    QComboBox* m_room;
    QLabel* m_told;
    WrittenLength m_stepValue;
    WrittenLength m_firstValue;
    WrittenLength m_lastValue;
};

} // namespace frontwright
