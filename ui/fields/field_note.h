#pragma once

#include <QWidget>

class QLabel;

namespace frontwright {

/// Below a field: what was understood, or with a sign why it can't be taken.
class FieldNote : public QWidget {
    Q_OBJECT
public:
    explicit FieldNote(QWidget* parent = nullptr);

    void showEcho(const QString& text);
    void showProblem(const QString& text);
    void clear();
    /// Its line stays free while nothing is said, so that what follows does not move.
    void keepRoom();
    /// The reason; empty where there is none.
    [[nodiscard]] const QString& problem() const { return m_problem; }

private:
    void say(const QString& text);

    QLabel* m_sign;
    QLabel* m_words;
    QString m_problem;
};

} // namespace frontwright
