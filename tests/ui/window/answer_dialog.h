#pragma once

#include <QAbstractButton>
#include <QApplication>
#include <QDialog>
#include <QLabel>
#include <QTimer>

#include <gtest/gtest.h>

namespace frontwright::testing {

/// Presses a button of the next dialogs, one after the other, by their texts without mnemonics;
/// "" closes one. Remembers what the last one said.
class Answers : public QObject {
public:
    explicit Answers(QStringList answers) : m_answers(std::move(answers)) {
        m_timer.callOnTimeout(this, [this] { answer(); });
        m_timer.start(5);
    }
    ~Answers() override { EXPECT_EQ(m_answers, QStringList()) << "dialogs that never came"; }
    [[nodiscard]] QString said() const { return m_said; }

private:
    void answer() {
        auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget());
        if (!dialog)
            return;
        for (const QLabel* label : dialog->findChildren<QLabel*>())
            m_said += label->text();
        const QString wanted = m_answers.isEmpty() ? QString() : m_answers.takeFirst();
        for (QAbstractButton* button : dialog->findChildren<QAbstractButton*>())
            if (!wanted.isEmpty() && button->text().remove(u'&') == wanted) {
                button->click();
                return;
            }
        EXPECT_TRUE(wanted.isEmpty())
            << "no button " << wanted.toStdString() << ": " << m_said.toStdString();
        dialog->reject();
    }

    QTimer m_timer;
    QStringList m_answers;
    QString m_said;
};

} // namespace frontwright::testing
