#pragma once

#include "ui/files/recovery_folder.h"

#include <QDialog>

class QTreeWidget;

namespace frontwright {

/// Lists what was not saved when the program was torn away, with name, time and size, and asks
/// what to do with one of them.
class RecoveryDialog : public QDialog {
    Q_OBJECT
public:
    enum class Answer : std::uint8_t { Later, Open, ThrowAway };

    RecoveryDialog(QList<RecoveryCopy> copies, QWidget* parent);

    /// Later where the dialog was left in any other way.
    [[nodiscard]] Answer answer() const { return m_answer; }
    /// The one that the answer is about.
    [[nodiscard]] const RecoveryCopy& chosen() const;

private:
    QPushButton* addAnswer(const QString& text, Answer answer);

    QList<RecoveryCopy> m_copies;
    QTreeWidget* m_list;
    Answer m_answer = Answer::Later;
};

} // namespace frontwright
