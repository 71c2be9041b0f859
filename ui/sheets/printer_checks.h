#pragma once

#include "core/sheets/calibration.h"
#include "core/sheets/paper.h"

#include <QDate>
#include <QString>

#include <optional>

class QSettings;

namespace frontwright {

/// What a measured correction holds for.
struct PrinterSetup {
    QString printer;
    QString paper;
    Orientation orientation = Orientation::Portrait;
};

/// What was measured on a printer's paper, and when it was last measured to be right.
struct PrinterCheck {
    ScaleFactors factors;
    QDate measured; ///< when the factors were found
    QDate proved;   ///< when a print with them measured right; invalid: not yet
};

/// Corrections by printer, paper and orientation, in the settings and never in a document. What
/// can't be read, or lies outside what is accepted, counts as never measured.
class PrinterChecks {
public:
    explicit PrinterChecks(QSettings& settings) : m_settings(settings) {}

    [[nodiscard]] std::optional<PrinterCheck> of(const PrinterSetup&) const;
    void keep(const PrinterSetup&, const PrinterCheck&);
    void forget(const PrinterSetup&);

private:
    QSettings& m_settings;
};

} // namespace frontwright
