#pragma once

#include "core/lengths/length.h"

#include <QDialog>

class QLabel;
class QSlider;

namespace frontwright {

/// The outline of a card, as wide as the maker makes it.
class CardOutline : public QWidget {
    Q_OBJECT
public:
    explicit CardOutline(QWidget* parent = nullptr);
    void setCardWidth(int pixels);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

protected:
    void paintEvent(QPaintEvent*) override;

private:
    int m_width = 324;
};

/// Asks the maker to hold a card against the screen until its outline fits, and how far away the
/// screen is looked at.
class CardDialog : public QDialog {
    Q_OBJECT
public:
    CardDialog(double pixelsPerMm, Length eyeDistance, LengthStyle, QWidget* parent = nullptr);

    [[nodiscard]] double pixelsPerMm() const;
    [[nodiscard]] Length eyeDistance() const { return m_eyeDistance; }

private:
    void showWidth(int pixels);

    CardOutline* m_card;
    QSlider* m_slider;
    QLabel* m_said;
    Length m_eyeDistance;
};

} // namespace frontwright
