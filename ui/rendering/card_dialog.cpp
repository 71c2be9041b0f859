#include "ui/rendering/card_dialog.h"

#include "core/drawings/seen_size.h"
#include "ui/fields/length_field.h"
#include "ui/help/topics.h"
#include "ui/look/theme.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLocale>
#include <QPainter>
#include <QPushButton>
#include <QSlider>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace frontwright {

namespace {
constexpr int leastWidth = 120;
constexpr int greatestWidth = 900;
constexpr int room = 16;

int heightOf(int width) {
    return static_cast<int>(
        std::lround(width * cardHeight.inMillimetres() / cardWidth.inMillimetres()));
}
} // namespace

CardOutline::CardOutline(QWidget* parent) : QWidget(parent) {
    setAccessibleName(tr("Outline of a card"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
}

void CardOutline::setCardWidth(int pixels) {
    m_width = pixels;
    updateGeometry();
    update();
}

QSize CardOutline::sizeHint() const {
    return {m_width + 2 * room, heightOf(m_width) + 2 * room};
}

void CardOutline::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Theme theme = themeOf(palette());
    painter.fillRect(rect(), sheetColour(theme));
    // The lower left corner stays, so that a card can lie against two edges. The line's outer edge
    // is the card's.
    const int height = heightOf(m_width);
    const QRectF card(room, this->height() - room - height, m_width, height);
    const double radius = 3.18 / cardWidth.inMillimetres() * m_width; // ISO/IEC 7810, from memory
    painter.setPen(QPen(accentColour(theme), 2));
    painter.setBrush(partColour(theme));
    painter.drawRoundedRect(card.adjusted(1, 1, -1, -1), radius, radius);
    painter.setPen(inkColour(theme));
    painter.drawText(card, Qt::AlignCenter, tr("85.60 mm × 53.98 mm"));
}

CardDialog::CardDialog(double pixelsPerMm, Length eyeDistance, LengthStyle style, QWidget* parent)
    : QDialog(parent),
      m_card(new CardOutline),
      m_slider(new QSlider(Qt::Horizontal)),
      m_said(new QLabel),
      m_eyeDistance(eyeDistance) {
    setWindowTitle(tr("Size of this screen"));
    setHelpTopic(*this, QStringLiteral("window#screen-size"));
    auto* what = new QLabel(
        tr("Hold a bank card, or any card of that size, against the screen and make the outline "
           "fit it. Arrow keys change its width by one pixel."));
    what->setWordWrap(true);
    m_slider->setRange(leastWidth, greatestWidth);
    m_slider->setPageStep(10);
    m_slider->setAccessibleName(tr("Width of the card on the screen"));
    auto* eye = new LengthField(tr("From your eye to the screen"));
    eye->setValue(eyeDistance, style);
    connect(eye, &LengthField::decided, this, [this, eye](const WrittenLength& value) {
        if (value.length < Length::millimetres(100) || value.length > Length::millimetres(10'000))
            eye->refuse(tr("write a distance from 100 mm to 10 m"));
        else
            m_eyeDistance = value;
    });
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(m_slider, &QSlider::valueChanged, this, &CardDialog::showWidth);
    auto* form = new QFormLayout;
    form->addRow(tr("&Width of the card"), m_slider);
    form->addRow(QString(), m_said);
    form->addRow(tr("From your &eye to the screen"), eye);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(what);
    layout->addWidget(m_card, 1);
    layout->addLayout(form);
    layout->addWidget(buttons);
    const int width = std::clamp(static_cast<int>(std::lround(cardWidthInPixels(pixelsPerMm))),
                                 leastWidth, greatestWidth);
    m_slider->setValue(width);
    showWidth(width);
    m_slider->setFocus();
}

double CardDialog::pixelsPerMm() const {
    return pixelsPerMillimetre(m_slider->value());
}

void CardDialog::showWidth(int pixels) {
    m_card->setCardWidth(pixels);
    m_said->setText(tr("%1 pixels wide, %2 for each millimetre")
                        .arg(pixels)
                        .arg(QLocale().toString(pixelsPerMm(), 'f', 2)));
}

} // namespace frontwright
