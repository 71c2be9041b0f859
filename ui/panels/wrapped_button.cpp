#include "ui/panels/wrapped_button.h"

#include <QStyleOptionButton>
#include <QStylePainter>

#include <algorithm>

namespace frontwright {

namespace {
constexpr int wrapping = Qt::AlignCenter | Qt::TextWordWrap;
constexpr int leastLetters = 8;
} // namespace

WrappedButton::WrappedButton(const QString& text, QWidget* parent) : QPushButton(text, parent) {
    setAutoDefault(false);
    QSizePolicy policy(QSizePolicy::Ignored, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

int WrappedButton::besideText() const {
    return 4 * fontMetrics().averageCharWidth();
}

int WrappedButton::heightForWidth(int width) const {
    const int room =
        std::max(width - besideText(), leastLetters * fontMetrics().averageCharWidth());
    const QRect needed =
        fontMetrics().boundingRect(QRect(0, 0, room, QWIDGETSIZE_MAX), wrapping, text());
    const int roundText = QPushButton::sizeHint().height() - fontMetrics().height();
    return std::max(needed.height(), fontMetrics().height()) + roundText;
}

QSize WrappedButton::sizeHint() const {
    const int width = fontMetrics().horizontalAdvance(text()) + besideText() + 2;
    return {width, heightForWidth(width)};
}

QSize WrappedButton::minimumSizeHint() const {
    return {besideText() + leastLetters * fontMetrics().averageCharWidth(),
            QPushButton::sizeHint().height()};
}

void WrappedButton::paintEvent(QPaintEvent*) {
    QStylePainter painter(this);
    QStyleOptionButton option;
    initStyleOption(&option);
    option.text.clear();
    painter.drawControl(QStyle::CE_PushButton, option);
    painter.drawItemText(rect().adjusted(besideText() / 2, 0, -besideText() / 2, 0), wrapping,
                         palette(), isEnabled(), text(), QPalette::ButtonText);
}

} // namespace frontwright
