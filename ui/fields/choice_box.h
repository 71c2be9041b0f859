#pragma once

#include <QComboBox>

namespace frontwright {

/// A choice in a form that may be narrow: what is cut off of the chosen one stands in the tool tip,
/// and the list is as wide as its texts. The wheel scrolls what it stands in; it does not change a
/// choice that nobody clicked.
class ChoiceBox : public QComboBox {
    Q_OBJECT
public:
    explicit ChoiceBox(const QString& accessibleName, QWidget* parent = nullptr);

    void showPopup() override;

protected:
    void wheelEvent(QWheelEvent*) override;
};

} // namespace frontwright
