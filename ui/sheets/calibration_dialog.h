#pragma once

#include "core/sheets/calibration_sheet.h"
#include "ui/sheets/printer_checks.h"

#include <QDialog>

#include <functional>

class QComboBox;
class QLabel;
class QPushButton;
class QScrollArea;
class QSettings;

namespace frontwright {

class LengthField;

/// Measures a printer: a test page, two lengths, the correction, and a second page that proves it.
/// What is out of reach of a correction shows what happened instead, and nothing is stored.
class CalibrationDialog : public QDialog {
    Q_OBJECT
public:
    /// Prints one page on that printer; false: nothing came out.
    using PrintPage = std::function<bool(const Page&)>;

    CalibrationDialog(QSettings&, const QString& printer, const Paper&, Length margin, LengthStyle,
                      Orientation first, PrintPage, QWidget* parent = nullptr);

    /// What "today" is; the system's, or a test's.
    void setToday(QDate today) { m_today = today; }
    [[nodiscard]] const CalibrationSheet& sheet() const { return m_sheet; }

private:
    void addRows(QWidget& buttons);
    void begin();
    void print();
    void compare();
    void compareFirst(const LengthsOnPage& measured);
    void compareProof(const LengthsOnPage& measured);
    void clearLengths();
    void say(const QString& text, const QString& table = {});
    [[nodiscard]] PrinterSetup setup() const;
    [[nodiscard]] Orientation orientation() const;
    [[nodiscard]] QString factorsText() const;

    PrinterChecks m_checks;
    QString m_printer;
    Paper m_paper;
    Length m_margin;
    LengthStyle m_style;
    PrintPage m_printPage;
    QDate m_today;
    CalibrationSheet m_sheet;
    ScaleFactors m_toProve; ///< none: the next page is the first
    std::optional<Length> m_lengthA;
    std::optional<Length> m_lengthB;
    QComboBox* m_orientation;
    QLabel* m_state;
    QPushButton* m_print;
    LengthField* m_fieldA;
    LengthField* m_fieldB;
    QPushButton* m_compare;
    QPushButton* m_startAgain;
    QLabel* m_outcome;
    QLabel* m_table;
    QScrollArea* m_tableArea; ///< the table may be taller than the screen
};

} // namespace frontwright
