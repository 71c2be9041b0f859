#include "ui/look/roomy_style.h"

#include <QStyleOption>

#include <algorithm>
#include <iterator>

namespace frontwright {

namespace {

constexpr int leastTarget = 24;

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

} // namespace frontwright
