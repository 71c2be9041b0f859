#pragma once

#include <QWidget>

class QLineEdit;

namespace frontwright {

class FieldNote;

/// A field for words or amounts that the decision itself reads. Text that is refused stays, with
/// its reason below it.
class TextField : public QWidget {
    Q_OBJECT
public:
    explicit TextField(const QString& accessibleName, QWidget* parent = nullptr);

    /// What is being typed, or was refused, is not taken away because something else changed.
    void setText(const QString&);
    /// The text stays as it is, with the reason; gone with the next key.
    void refuse(const QString& reason);
    /// What is being typed or was refused gives way to the text: it was for something else.
    void discard();
    [[nodiscard]] QLineEdit& lineEdit() { return *m_edit; }

Q_SIGNALS:
    /// Enter, or left after a change; without spaces at the ends.
    void decided(const QString& text);

protected:
    bool eventFilter(QObject*, QEvent*) override;

private:
    void decide();

    QLineEdit* m_edit;
    FieldNote* m_note;
    QString m_text;
};

} // namespace frontwright
