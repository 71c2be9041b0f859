#pragma once

#include <QPushButton>

namespace frontwright {

/// A button as wide as its room, whose text goes on in further lines where that is too small for
/// it.
class WrappedButton : public QPushButton {
    Q_OBJECT
public:
    explicit WrappedButton(const QString& text, QWidget* parent = nullptr);

    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent*) override;

private:
    [[nodiscard]] int besideText() const; ///< left and right of it, together
};

} // namespace frontwright
