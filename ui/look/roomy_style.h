#pragma once

#include <QProxyStyle>

namespace frontwright {

/// The platform's own style, but nothing that is clicked is lower than 24 pixels (WCAG 2.5.8).
class RoomyStyle : public QProxyStyle {
    Q_OBJECT
public:
    [[nodiscard]] QSize sizeFromContents(ContentsType, const QStyleOption*, const QSize& contents,
                                         const QWidget*) const override;
    /// Fields, and boxes to tick and to choose, are framed so that they are seen on any ground
    /// (WCAG 1.4.11).
    void drawPrimitive(PrimitiveElement, const QStyleOption*, QPainter*,
                       const QWidget*) const override;
    [[nodiscard]] int pixelMetric(PixelMetric, const QStyleOption*, const QWidget*) const override;
};

} // namespace frontwright
