#pragma once

#include "core/results/result.h"

#include <QDialog>

#include <functional>
#include <optional>
#include <string>

class QLabel;
class QLineEdit;
class QPushButton;

namespace frontwright {

/// Asks for a preset's name; a name that cannot be says why, and cannot be taken.
class PresetNameDialog : public QDialog {
    Q_OBJECT
public:
    /// The error of a name; none where it will do.
    using Check = std::function<std::optional<Error>(const std::string& name)>;
    PresetNameDialog(const QString& title, const QString& proposed, Check check,
                     QWidget* parent = nullptr);

    [[nodiscard]] std::string name() const;

private:
    void judge();

    Check m_check;
    QLineEdit* m_name;
    QLabel* m_reason;
    QPushButton* m_keep = nullptr;
};

} // namespace frontwright
