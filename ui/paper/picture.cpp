#include "ui/paper/picture.h"

#include "ui/paper/surface.h"

#include <QBuffer>
#include <QImage>
#include <QPainter>

#include <cmath>

namespace frontwright {

namespace {
constexpr double pixelsPerPaperMm = 150 / 25.4;
constexpr double marginMm = 5; // on paper
constexpr int greatestSide = 20'000;
} // namespace

Result<QByteArray> pngOf(const Drawing& drawing) {
    const double pixelsPerMm = pixelsPerPaperMm * drawing.paperScale;
    const double margin = marginMm / drawing.paperScale;
    const PointMm size = drawing.extent.sizes() + PointMm(2 * margin, 2 * margin);
    const int width = static_cast<int>(std::ceil(size.x() * pixelsPerMm));
    const int height = static_cast<int>(std::ceil(size.y() * pixelsPerMm));
    if (width > greatestSide || height > greatestSide)
        return Error{text("picture"), text("would be larger than 20 000 pixels"),
                     text("write an SVG instead")};
    QImage image(width, height, QImage::Format_RGB32);
    image.fill(Qt::white);
    image.setDotsPerMeterX(static_cast<int>(std::lround(pixelsPerPaperMm * 1000)));
    image.setDotsPerMeterY(static_cast<int>(std::lround(pixelsPerPaperMm * 1000)));
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    paperFrame(painter, pixelsPerMm, pixelsPerMm, size.y());
    painter.translate(margin - drawing.extent.min().x(), margin - drawing.extent.min().y());
    paint(painter, drawing, std::nullopt);
    painter.end();
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    if (!image.save(&buffer, "PNG"))
        return Error{text("picture"), text("could not be written as PNG"),
                     text("write an SVG instead")};
    return bytes;
}

} // namespace frontwright
