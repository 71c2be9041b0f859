#pragma once

#include <QDoubleSpinBox>

namespace frontwright {

/// A number that may be typed with point or comma in every language. Qt's own box drops the mark
/// of the other language silently: "12.5" becomes 125 in German.
class DecimalBox : public QDoubleSpinBox {
    Q_OBJECT
public:
    using QDoubleSpinBox::QDoubleSpinBox;

    QValidator::State validate(QString& text, int& at) const override;
    [[nodiscard]] double valueFromText(const QString& text) const override;

private:
    /// The typed text with the mark of the box's language.
    [[nodiscard]] QString marked(QString text) const;
};

} // namespace frontwright
