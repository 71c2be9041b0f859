#include "ui/elevation/value_entry.h"

#include "core/edits/typed.h"
#include "ui/elevation/elevation_view.h"
#include "ui/language/told.h"

#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

#include <algorithm>

namespace frontwright {

ValueEntry::ValueEntry(Session& session, ElevationView& view)
    : QFrame(view.viewport()),
      m_session(session),
      m_view(view),
      m_field(new LengthField(tr("Typed size"))),
      m_title(new QLabel) {
    setFrameShape(StyledPanel);
    setAutoFillBackground(true);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(8, 6, 8, 6);
    column->setSpacing(3);
    column->addWidget(m_title);
    column->addWidget(m_field);
    hide();
    connect(&view, &ElevationView::entryWanted, this, &ValueEntry::open);
    connect(&view, &ElevationView::dragEntryWanted, this, &ValueEntry::openForDrag);
    connect(&view, &ElevationView::dragEnded, this, [this] {
        if (m_for == For::Drag)
            finish();
    });
    connect(m_field, &LengthField::understood, this, [this](const WrittenLength& value) {
        if (m_for == For::Drag)
            m_view.dragTyped(value.length);
    });
    connect(m_field, &LengthField::decided, this, [this](const WrittenLength& value) {
        if (m_for == For::Drag)
            decideDrag(value.length);
        else if (m_for == For::Number)
            decideNumber(value);
    });
    connect(m_field, &LengthField::abandoned, this, [this] {
        if (m_for == For::Drag)
            m_view.cancelGesture();
        finish();
    });
    connect(m_field, &LengthField::kept, this, [this] {
        if (m_for == For::Drag)
            m_view.finishDrag();
        finish();
    });
    connect(m_field, &LengthField::saidMore, this, [this] {
        if (m_for != For::Nothing)
            place(pos());
    });
    connect(&m_field->lineEdit(), &QLineEdit::editingFinished, this, [this] {
        if (m_for == For::Number && !m_field->lineEdit().hasFocus() && m_field->isUnderstood())
            finish();
    });
}

void ValueEntry::open(Quantity quantity, QRect viewportRect) {
    const auto derivation =
        derive(m_session.project(), m_session.plan(), quantity, m_session.style());
    if (!derivation || !derivation->value.isLength())
        return;
    m_for = For::Number;
    m_quantity = quantity;
    m_title->setText(told(derivation->name));
    m_field->lineEdit().setModified(false);
    m_field->setValue(derivation->value.length(), m_session.style());
    m_field->setReadOnly({});
    if (typedEditName(quantity.kind).english.empty()) {
        const auto refused = setQuantity(m_session.project(), m_session.plan(), quantity,
                                         WrittenLength(derivation->value.length()));
        m_field->setReadOnly(refused.ok() ? QString() : told(refused.error().what));
        m_field->refuse(m_field->lineEdit().toolTip());
    }
    place(viewportRect.topLeft());
    m_field->startTyping();
}

void ValueEntry::openForDrag(const QString& typed, QPoint viewportPos) {
    m_for = For::Drag;
    m_title->setText(m_view.drag() ? m_view.drag()->asks() : QString());
    m_field->setReadOnly({});
    m_field->lineEdit().setModified(false);
    m_field->setValue(std::nullopt, m_session.style());
    place(viewportPos + QPoint(16, 16));
    m_field->startTyping(typed);
}

void ValueEntry::place(QPoint topLeft) {
    show();
    // As tall as its wrapped words need at this width.
    const int wide = fontMetrics().averageCharWidth() * 44;
    layout()->activate();
    resize(wide,
           layout()->hasHeightForWidth() ? layout()->heightForWidth(wide) : sizeHint().height());
    raise();
    const QSize room = parentWidget()->size() - size();
    move(std::clamp(topLeft.x(), 0, std::max(0, room.width())),
         std::clamp(topLeft.y(), 0, std::max(0, room.height())));
}

/// A distance that is held short is said first; Enter once more leaves it there.
void ValueEntry::decideDrag(Length distance) {
    m_view.dragTyped(distance);
    const QString held = m_view.drag() ? m_view.drag()->heldBecause() : QString();
    if (!held.isEmpty()) {
        m_field->refuse(tr("It does not go that far: %1. Enter again leaves it where it is, Esc "
                           "puts it back.")
                            .arg(held));
        m_field->lineEdit().setModified(false);
        return;
    }
    m_view.finishDrag();
    finish();
}

void ValueEntry::decideNumber(const WrittenLength& value) {
    const auto edited = setQuantity(m_session.project(), m_session.plan(), m_quantity, value);
    if (!edited.ok()) {
        m_field->refuse(told(edited.error().sentence()));
        return;
    }
    m_session.apply(told(typedEditName(m_quantity.kind)), edited);
    finish();
}

void ValueEntry::finish() {
    m_for = For::Nothing;
    m_view.setFocus(Qt::OtherFocusReason);
    hide();
}

} // namespace frontwright
