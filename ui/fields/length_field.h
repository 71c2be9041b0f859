#pragma once

#include "core/lengths/parse.h"

#include <QWidget>

#include <optional>

class QLineEdit;

namespace frontwright {

class FieldNote;

/// A field for one length. Shows the value; while it is typed in, shows beside it what was
/// understood, or why it can't be read, with a sign and words. Nothing is put back silently: text
/// that can't be read stays. A field left as it was changes nothing, even where the shown value is
/// rounded. Up and Down step by the shown grid (Shift ten times, Ctrl finest); the wheel does
/// nothing.
class LengthField : public QWidget {
    Q_OBJECT
public:
    explicit LengthField(const QString& accessibleName, QWidget* parent = nullptr);

    /// nullopt: no value; `placeholder` says what holds instead ("mixed", "from stock").
    void setValue(std::optional<Length> value, LengthStyle style);
    void setPlaceholder(const QString& text);
    /// Whether emptying the field is a decision too (cleared()), or a mistake.
    enum class Empty : std::uint8_t { IsAMistake, Clears };
    void setEmpty(Empty empty) { m_empty = empty; }
    /// Shows a reason beside the text, as when an edit was refused; gone with the next key.
    void refuse(const QString& reason);
    /// What is being typed or was refused gives way to the value: it was for something else.
    void discard();
    void setReadOnly(const QString& why);
    /// The line below stays free while nothing is said, so that what follows does not move.
    void keepRoomForEcho();

    /// Puts the keyboard there, all selected; `typed` replaces the text first.
    void startTyping(const QString& typed = {});
    [[nodiscard]] bool isUnderstood() const;
    [[nodiscard]] QLineEdit& lineEdit() { return *m_edit; }

Q_SIGNALS:
    /// Enter, or left after a change: a new value was decided.
    void decided(frontwright::WrittenLength value);
    void cleared();
    /// While typing: what it would be.
    void understood(frontwright::WrittenLength value);
    void abandoned(); ///< Esc
    void kept();      ///< Enter, with nothing changed
    void saidMore();  ///< an echo or a reason came, went or changed: it may need other room

protected:
    bool eventFilter(QObject*, QEvent*) override;

private:
    void reread();
    void decide();
    void step(int direction, Qt::KeyboardModifiers);
    void showEcho(const QString& text);
    void showProblem(const QString& text);
    void restore();

    QLineEdit* m_edit;
    FieldNote* m_note;
    std::optional<Length> m_value;
    std::optional<WrittenLength> m_typed;
    LengthStyle m_style;
    Empty m_empty = Empty::IsAMistake;
};

} // namespace frontwright
