#include "ui/look/roomy_style.h"

#include <QPainter>
#include <QStyleOption>

#include <algorithm>
#include <iterator>

namespace frontwright {

namespace {

constexpr int leastTarget = 24;
constexpr float fieldFrame = 0.6F; ///< opacity: a field's frame steps back

bool isClicked(QStyle::ContentsType type) {
    constexpr QStyle::ContentsType clicked[] = {
        QStyle::CT_PushButton,  QStyle::CT_ToolButton,    QStyle::CT_ComboBox,
        QStyle::CT_LineEdit,    QStyle::CT_SpinBox,       QStyle::CT_CheckBox,
        QStyle::CT_RadioButton, QStyle::CT_MenuBarItem,   QStyle::CT_ItemViewItem,
        QStyle::CT_TabBarTab,   QStyle::CT_HeaderSection, QStyle::CT_Slider};
    return std::find(std::begin(clicked), std::end(clicked), type) != std::end(clicked);
}

} // namespace

QSize RoomyStyle::sizeFromContents(ContentsType type, const QStyleOption* option,
                                   const QSize& contents, const QWidget* widget) const {
    const QSize size = QProxyStyle::sizeFromContents(type, option, contents, widget);
    const bool isSeparator =
        type == CT_MenuItem && option && size.height() < option->fontMetrics.height();
    if (isSeparator || !(isClicked(type) || type == CT_MenuItem))
        return size;
    return size.expandedTo({0, leastTarget});
}

void RoomyStyle::drawPrimitive(PrimitiveElement element, const QStyleOption* option,
                               QPainter* painter, const QWidget* widget) const {
    QProxyStyle::drawPrimitive(element, option, painter, widget);
    if (element == PE_FrameLineEdit) {
        QColor frame = option->palette.color(QPalette::PlaceholderText);
        frame.setAlphaF(fieldFrame);
        painter->save();
        painter->setPen(frame);
        painter->setBrush(Qt::NoBrush);
        if (!(option->state & State_HasFocus))
            painter->drawRoundedRect(QRectF(option->rect).adjusted(0.5, 0.5, -0.5, -0.5), 2, 2);
        painter->restore();
        return;
    }
    const bool isRound = element == PE_IndicatorRadioButton;
    if (!isRound && element != PE_IndicatorCheckBox && element != PE_IndicatorItemViewItemCheck)
        return;
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    const bool isSelected = element == PE_IndicatorItemViewItemCheck &&
                            (option->state & State_Selected) && (option->state & State_Active);
    painter->setPen(
        option->palette.color(isSelected ? QPalette::HighlightedText : QPalette::PlaceholderText));
    painter->setBrush(Qt::NoBrush);
    const QRectF frame = QRectF(option->rect).adjusted(0.5, 0.5, -0.5, -0.5);
    isRound ? painter->drawEllipse(frame) : painter->drawRect(frame);
    painter->restore();
}

int RoomyStyle::pixelMetric(PixelMetric metric, const QStyleOption* option,
                            const QWidget* widget) const {
    const int pixels = QProxyStyle::pixelMetric(metric, option, widget);
    return metric == PM_TabBarScrollButtonWidth ? std::max(pixels, leastTarget) : pixels;
}

} // namespace frontwright
