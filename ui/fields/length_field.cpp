#include "ui/fields/length_field.h"

#include "core/lengths/format.h"
#include "ui/fields/field_note.h"
#include "ui/language/told.h"

#include <QDialog>
#include <QKeyEvent>
#include <QLineEdit>
#include <QVBoxLayout>

namespace frontwright {

namespace {

Length fieldGrid(LengthStyle style, Qt::KeyboardModifiers modifiers) {
    const bool fine = modifiers.testFlag(Qt::ControlModifier);
    const bool coarse = modifiers.testFlag(Qt::ShiftModifier);
    if (style.unit == Unit::Inch)
        return Length::fromSixtyFourths(fine ? 1 : 64 / style.denominator * (coarse ? 10 : 1));
    return Length::fromMicrometres(fine ? 100 : coarse ? 10'000 : 1'000);
}

} // namespace

LengthField::LengthField(const QString& accessibleName, QWidget* parent)
    : QWidget(parent),
      m_edit(new QLineEdit),
      m_note(new FieldNote) {
    m_edit->setAccessibleName(accessibleName);
    m_edit->setMaxLength(64);
    m_edit->installEventFilter(this);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(1);
    column->addWidget(m_edit);
    column->addWidget(m_note);
    setFocusProxy(m_edit);
    setFocusPolicy(Qt::StrongFocus); // for a label's letter leads to nothing that takes no focus
    connect(m_edit, &QLineEdit::textEdited, this, [this] { reread(); });
}

void LengthField::setValue(std::optional<Length> value, LengthStyle style) {
    m_value = value;
    m_style = style;
    // What is being typed is not taken away because something else changed.
    if (!m_edit->isModified())
        restore();
}

void LengthField::restore() {
    m_typed.reset();
    m_note->clear();
    m_edit->setText(m_value ? QString::fromStdString(shown(*m_value, m_style)) : QString());
    m_edit->setModified(false);
    m_edit->setToolTip(
        m_value && isApproximate(*m_value, m_style)
            ? tr("Exactly %1").arg(QString::fromStdString(exact(*m_value, m_style.unit)))
            : QString());
}

void LengthField::setPlaceholder(const QString& text) {
    m_edit->setPlaceholderText(text);
}

void LengthField::setReadOnly(const QString& why) {
    m_edit->setReadOnly(!why.isEmpty());
    if (!why.isEmpty())
        m_edit->setToolTip(why);
}

void LengthField::keepRoomForEcho() {
    m_note->keepRoom();
}

bool LengthField::isUnderstood() const {
    return m_note->problem().isEmpty();
}

void LengthField::refuse(const QString& reason) {
    showProblem(reason);
    m_edit->setModified(true);
}

void LengthField::discard() {
    if (m_edit->isModified())
        restore();
}

void LengthField::startTyping(const QString& typed) {
    m_edit->setFocus(Qt::OtherFocusReason);
    if (typed.isEmpty()) {
        m_edit->selectAll();
        return;
    }
    m_edit->setText(typed);
    m_edit->setModified(true);
    reread();
}

void LengthField::reread() {
    const QByteArray text = m_edit->text().trimmed().toUtf8();
    m_typed.reset();
    if (text.isEmpty()) {
        m_note->clear();
        if (m_empty == Empty::IsAMistake)
            showProblem(tr("A length is wanted, such as 12 5/8 or 321 mm"));
        return;
    }
    const auto read = parseLengthChange({text.constData(), static_cast<std::size_t>(text.size())},
                                        m_style.unit, m_value.value_or(Length()));
    if (!read.ok()) {
        showProblem(told(read.error().sentence()));
        return;
    }
    m_typed = read.value().length;
    showEcho(told(read.value().echo));
    Q_EMIT understood(*m_typed);
}

void LengthField::showEcho(const QString& text) {
    m_note->showEcho(text);
    Q_EMIT saidMore();
}

void LengthField::showProblem(const QString& text) {
    m_note->showProblem(text);
    Q_EMIT saidMore();
}

void LengthField::decide() {
    if (!m_edit->isModified() || !isUnderstood())
        return;
    if (m_edit->text().trimmed().isEmpty()) {
        m_edit->setModified(false);
        Q_EMIT cleared();
        return;
    }
    if (!m_typed)
        return;
    const WrittenLength decision = *m_typed;
    m_edit->setModified(false);
    // What comes back through setValue is what the edit really gave.
    if (m_value && decision.length == *m_value) {
        restore();
        return;
    }
    m_value = decision.length;
    restore();
    Q_EMIT decided(decision);
}

void LengthField::step(int direction, Qt::KeyboardModifiers modifiers) {
    if (m_edit->isReadOnly())
        return;
    const Length from = m_typed ? m_typed->length : m_value.value_or(Length());
    const Length to = from + fieldGrid(m_style, modifiers) * direction;
    m_edit->setText(QString::fromStdString(exact(to, m_style.unit)));
    m_edit->setModified(true);
    reread();
}

bool LengthField::eventFilter(QObject* watched, QEvent* event) {
    if (watched != m_edit)
        return QWidget::eventFilter(watched, event);
    if (event->type() == QEvent::FocusOut) {
        decide();
    } else if (event->type() == QEvent::KeyPress) {
        const auto* key = static_cast<QKeyEvent*>(event);
        switch (key->key()) {
        case Qt::Key_Up:
            step(1, key->modifiers());
            return true;
        case Qt::Key_Down:
            step(-1, key->modifiers());
            return true;
        case Qt::Key_Return:
        case Qt::Key_Enter:
            if (m_edit->isModified()) {
                decide();
                return true;
            }
            Q_EMIT kept();
            // In a dialog, Enter then means its default button.
            return !qobject_cast<QDialog*>(window());
        case Qt::Key_Escape:
            m_edit->setModified(false);
            restore();
            Q_EMIT abandoned();
            return true;
        default:
            break;
        }
    }
    return QWidget::eventFilter(watched, event);
}

} // namespace frontwright
