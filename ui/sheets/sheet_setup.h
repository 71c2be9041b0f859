#pragma once

#include "core/sheets/sheets.h"

#include <QWidget>

class QComboBox;
class QFormLayout;
class QSettings;

namespace frontwright {

class LengthField;

/// What a job is laid with: paper, a roll's or another sheet's size, orientation, overlap, margin.
/// Remembered from job to job.
class SheetSetup : public QWidget {
    Q_OBJECT
public:
    SheetSetup(QSettings&, LengthStyle, QWidget* parent = nullptr);

    /// Error: a size that no paper can have.
    [[nodiscard]] Result<Paper> paper() const;
    [[nodiscard]] std::optional<Orientation> orientation() const;
    [[nodiscard]] Length overlap() const { return m_overlap; }
    [[nodiscard]] Length margin() const { return m_margin; }
    /// As when a printer turned out to be set to it.
    void choosePaper(const Paper&);

Q_SIGNALS:
    void changed();

private:
    void addPapers();
    void addOrientations();
    void addFields();
    void addLength(const QString& label, LengthField*, WrittenLength& value, const QString& key);
    void showOwnSizes();
    void decided();
    [[nodiscard]] bool isRoll() const;
    [[nodiscard]] bool isOwnSize() const;

    QSettings& m_settings;
    LengthStyle m_style;
    QFormLayout* m_form;
    QComboBox* m_paper;
    QComboBox* m_orientation;
    LengthField* m_rollField;
    LengthField* m_widthField;
    LengthField* m_heightField;
    LengthField* m_overlapField;
    LengthField* m_marginField;
    WrittenLength m_rollWidth;
    WrittenLength m_width;
    WrittenLength m_height;
    WrittenLength m_overlap;
    WrittenLength m_margin;
};

} // namespace frontwright
