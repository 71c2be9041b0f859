#include "ui/fields/length_field.h"

#include "core/lengths/format.h"
#include "ui/language/told.h"
#include "ui/look/theme.h"

#include <QDialog>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPainter>
#include <QPixmap>

namespace frontwright {

namespace {

Length fieldGrid(LengthStyle style, Qt::KeyboardModifiers modifiers) {
    const bool fine = modifiers.testFlag(Qt::ControlModifier);
    const bool coarse = modifiers.testFlag(Qt::ShiftModifier);
    if (style.unit == Unit::Inch)
        return Length::fromSixtyFourths(fine ? 1 : 64 / style.denominator * (coarse ? 10 : 1));
    return Length::fromMicrometres(fine ? 100 : coarse ? 10'000 : 1'000);
}

QPixmap signPixmap(const QWidget& widget, Severity severity) {
    const qreal ratio = widget.devicePixelRatioF();
    const int side = widget.fontMetrics().height();
    QPixmap pixmap(QSize(side, side) * ratio);
    pixmap.setDevicePixelRatio(ratio);
    pixmap.fill(Qt::transparent);
    QPainter painter(&pixmap);
    drawSeverity(painter, QRectF(0, 0, side, side), severity, themeOf(widget.palette()));
    return pixmap;
}

} // namespace

LengthField::LengthField(const QString& accessibleName, QWidget* parent)
    : QWidget(parent),
      m_edit(new QLineEdit),
      m_sign(new QLabel),
      m_echo(new QLabel) {
    m_edit->setAccessibleName(accessibleName);
    m_edit->setMaxLength(64);
    m_edit->installEventFilter(this);
    m_echo->setWordWrap(true);
    m_echo->setVisible(false);
    m_sign->setVisible(false);
    QFont small = font();
    small.setPointSizeF(small.pointSizeF() * 0.9);
    m_echo->setFont(small);
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setVerticalSpacing(1);
    grid->setHorizontalSpacing(4);
    grid->addWidget(m_edit, 0, 0, 1, 2);
    grid->addWidget(m_sign, 1, 0, Qt::AlignTop);
    grid->addWidget(m_echo, 1, 1);
    grid->setColumnStretch(1, 1);
    setFocusProxy(m_edit);
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
    m_problem.clear();
    m_sign->hide();
    m_echo->hide();
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
    QSizePolicy policy = m_echo->sizePolicy();
    policy.setRetainSizeWhenHidden(true);
    m_echo->setSizePolicy(policy);
}

void LengthField::refuse(const QString& reason) {
    showProblem(reason);
    m_edit->setModified(true);
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
        m_echo->hide();
        m_sign->hide();
        m_problem.clear();
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
    m_problem.clear();
    showEcho(told(read.value().echo));
    Q_EMIT understood(*m_typed);
}

void LengthField::showEcho(const QString& text) {
    m_sign->hide();
    m_echo->setText(text);
    m_echo->show();
    Q_EMIT saidMore();
}

void LengthField::showProblem(const QString& text) {
    m_problem = text;
    m_sign->setPixmap(signPixmap(*this, Severity::WontWork));
    m_sign->show();
    m_echo->setText(text);
    m_echo->show();
    Q_EMIT saidMore();
}

void LengthField::decide() {
    if (!m_edit->isModified() || !m_problem.isEmpty())
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
