#include "ui/fields/decimal_box.h"

namespace frontwright {

QString DecimalBox::marked(QString text) const {
    const QString mark = locale().decimalPoint();
    for (const QChar typed : {u'.', u','})
        text.replace(typed, mark);
    return text;
}

QValidator::State DecimalBox::validate(QString& text, int& at) const {
    text = marked(text);
    if (text.count(locale().decimalPoint()) > 1)
        return QValidator::Invalid;
    return QDoubleSpinBox::validate(text, at);
}

double DecimalBox::valueFromText(const QString& text) const {
    return QDoubleSpinBox::valueFromText(marked(text));
}

} // namespace frontwright
