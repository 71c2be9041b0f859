#include "ui/fields/field_note.h"

#include "ui/look/theme.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QPixmap>

namespace frontwright {

namespace {

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

FieldNote::FieldNote(QWidget* parent) : QWidget(parent), m_sign(new QLabel), m_words(new QLabel) {
    m_words->setWordWrap(true);
    QFont small = font();
    small.setPointSizeF(small.pointSizeF() * 0.9);
    m_words->setFont(small);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(4);
    row->addWidget(m_sign, 0, Qt::AlignTop);
    row->addWidget(m_words, 1);
    clear();
}

void FieldNote::keepRoom() {
    QSizePolicy policy = sizePolicy();
    policy.setRetainSizeWhenHidden(true);
    setSizePolicy(policy);
}

void FieldNote::clear() {
    m_problem.clear();
    m_sign->hide();
    hide();
}

void FieldNote::showEcho(const QString& text) {
    m_problem.clear();
    m_sign->hide();
    say(text);
}

void FieldNote::showProblem(const QString& text) {
    m_problem = text;
    m_sign->setPixmap(signPixmap(*this, Severity::WontWork));
    m_sign->show();
    say(text);
}

void FieldNote::say(const QString& text) {
    m_words->setText(text);
    show();
}

} // namespace frontwright
