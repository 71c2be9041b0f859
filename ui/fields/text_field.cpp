#include "ui/fields/text_field.h"

#include "ui/fields/field_note.h"

#include <QKeyEvent>
#include <QLineEdit>
#include <QVBoxLayout>

namespace frontwright {

TextField::TextField(const QString& accessibleName, QWidget* parent)
    : QWidget(parent),
      m_edit(new QLineEdit),
      m_note(new FieldNote) {
    m_edit->setAccessibleName(accessibleName);
    m_edit->installEventFilter(this);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(1);
    column->addWidget(m_edit);
    column->addWidget(m_note);
    setFocusProxy(m_edit);
    setFocusPolicy(Qt::StrongFocus); // for a label's letter leads to nothing that takes no focus
    connect(m_edit, &QLineEdit::editingFinished, this, &TextField::decide);
    connect(m_edit, &QLineEdit::textEdited, m_note, &FieldNote::clear);
}

void TextField::setText(const QString& text) {
    m_text = text;
    if (m_edit->isModified())
        return;
    m_note->clear();
    m_edit->setText(text);
}

void TextField::refuse(const QString& reason) {
    m_edit->setModified(true);
    m_note->showProblem(reason);
}

void TextField::discard() {
    m_edit->setModified(false);
    setText(m_text);
}

void TextField::decide() {
    if (!m_edit->isModified() || !m_note->problem().isEmpty())
        return;
    m_edit->setModified(false);
    Q_EMIT decided(m_edit->text().trimmed());
}

bool TextField::eventFilter(QObject* watched, QEvent* event) {
    const bool isEscape = event->type() == QEvent::KeyPress &&
                          static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape;
    if (watched == m_edit && isEscape && m_edit->isModified()) {
        discard();
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

} // namespace frontwright
