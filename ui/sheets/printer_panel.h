#pragma once

#include "core/sheets/sheets.h"
#include "ui/sheets/printer_checks.h"

#include <QWidget>

class QComboBox;
class QLabel;
class QPushButton;
class QSettings;

namespace frontwright {

/// For which printer the pages are corrected, what the correction is, and when this printer and
/// paper were last checked.
class PrinterPanel : public QWidget {
    Q_OBJECT
public:
    /// `printers` by name, as the system knows them.
    PrinterPanel(QSettings&, const QStringList& printers, QWidget* parent = nullptr);

    [[nodiscard]] QString printer() const; ///< empty: a file, not corrected
    /// One that was not known is added.
    void choosePrinter(const QString& name);
    /// By Orientation; none for a file.
    [[nodiscard]] std::array<ScaleFactors, 2> factors(const QString& printer, const Paper&) const;
    /// Tells what holds for these pages' paper.
    void tell(const Paper&, const std::vector<Page>& pages);

Q_SIGNALS:
    void changed();
    void testPageWanted();

private:
    [[nodiscard]] QString lineFor(const Paper&, Orientation) const;

    QSettings& m_settings;
    PrinterChecks m_checks;
    QComboBox* m_printer;
    QLabel* m_state;
    QPushButton* m_test;
};

} // namespace frontwright
