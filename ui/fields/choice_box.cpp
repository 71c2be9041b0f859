#include "ui/fields/choice_box.h"

#include <QAbstractItemView>
#include <QScrollBar>
#include <QWheelEvent>

namespace frontwright {

namespace {
constexpr int leastLetters = 14;
}

ChoiceBox::ChoiceBox(const QString& accessibleName, QWidget* parent) : QComboBox(parent) {
    setAccessibleName(accessibleName);
    setFocusPolicy(Qt::StrongFocus);
    setSizeAdjustPolicy(AdjustToMinimumContentsLengthWithIcon);
    setMinimumContentsLength(leastLetters);
    connect(this, &QComboBox::currentTextChanged, this, &QWidget::setToolTip);
}

void ChoiceBox::showPopup() {
    view()->setMinimumWidth(view()->sizeHintForColumn(0) +
                            view()->verticalScrollBar()->sizeHint().width());
    QComboBox::showPopup();
}

void ChoiceBox::wheelEvent(QWheelEvent* event) {
    event->ignore();
}

} // namespace frontwright
