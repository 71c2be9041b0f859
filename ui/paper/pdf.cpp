#include "ui/paper/pdf.h"

#include "ui/paper/surface.h"

#include <QBuffer>
#include <QPageLayout>
#include <QPainter>
#include <QPdfWriter>

#include <qpdf/QPDF.hh>
#include <qpdf/QPDFPageDocumentHelper.hh>
#include <qpdf/QPDFWriter.hh>

#include <cmath>

namespace frontwright {

namespace {

constexpr int dotsPerInch = 1200;
constexpr double unitsPerMm = dotsPerInch / 25.4;
constexpr double pointsPerMm = 72.0 / 25.4;

QPageLayout layoutOf(const Page& page) {
    // Exact: the default match would turn near sizes into a named paper. Orientation is in the
    // size.
    const QPageSize size(QSizeF(page.width, page.height), QPageSize::Millimeter, {},
                         QPageSize::ExactMatch);
    return {size, QPageLayout::Portrait, QMarginsF()};
}

Result<QByteArray> drawn(std::span<const Page> pages, std::string_view title) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setResolution(dotsPerInch);
    writer.setTitle(QString::fromUtf8(title.data(), static_cast<qsizetype>(title.size())));
    writer.setCreator(QStringLiteral("Frontwright"));
    writer.setPageLayout(layoutOf(pages.front()));
    QPainter painter;
    if (!painter.begin(&writer))
        return Error{text("PDF"), text("could not be started"), text("try again")};
    for (std::size_t i = 0; i < pages.size(); ++i) {
        if (i > 0) {
            writer.setPageLayout(layoutOf(pages[i]));
            writer.newPage();
        }
        painter.save();
        paintPage(painter, pages[i], unitsPerMm, unitsPerMm);
        painter.restore();
    }
    painter.end();
    return bytes;
}

/// Whole points are all that Qt writes: put the true size in, with the content's top kept.
void setExactBox(QPDFPageObjectHelper& helper, const Page& page) {
    QPDFObjectHandle object = helper.getObjectHandle();
    const double written = object.getKey("/MediaBox").getArrayItem(3).getNumericValue();
    const auto number = [](double value) { return QPDFObjectHandle::newReal(value, 6); };
    QPDFObjectHandle box = QPDFObjectHandle::newArray();
    box.appendItem(number(0));
    box.appendItem(number(written - page.height * pointsPerMm));
    box.appendItem(number(page.width * pointsPerMm));
    box.appendItem(number(written));
    object.replaceKey("/MediaBox", box);
}

QByteArray finished(const QByteArray& bytes, std::span<const Page> pages) {
    QPDF pdf;
    pdf.processMemoryFile("templates", bytes.constData(), static_cast<std::size_t>(bytes.size()));
    auto helpers = QPDFPageDocumentHelper(pdf).getAllPages();
    for (std::size_t i = 0; i < helpers.size() && i < pages.size(); ++i)
        setExactBox(helpers[i], pages[i]);
    pdf.getRoot().replaceKey(
        "/ViewerPreferences",
        QPDFObjectHandle::parse(
            "<</PrintScaling /None /Duplex /Simplex /PickTrayByPDFSize true>>"));
    // A date would make two files of the same pages differ.
    pdf.getTrailer().getKey("/Info").removeKey("/CreationDate");
    QPDFWriter writer(pdf);
    writer.setOutputMemory();
    writer.setStreamDataMode(qpdf_s_preserve); // compressed well enough already
    writer.setDeterministicID(true);
    writer.setMinimumPDFVersion("1.7");
    writer.write();
    const auto buffer = writer.getBufferSharedPointer();
    return {reinterpret_cast<const char*>(buffer->getBuffer()),
            static_cast<qsizetype>(buffer->getSize())};
}

} // namespace

void paintPage(QPainter& painter, const Page& page, double unitsPerMmX, double unitsPerMmY) {
    paperFrame(painter, unitsPerMmX, unitsPerMmY, page.height);
    paint(painter, page.drawing, std::nullopt);
}

Result<QByteArray> pdfOf(std::span<const Page> pages, std::string_view title) {
    if (pages.empty())
        return Error{text("PDF"), text("there is no page to write"),
                     text("choose at least one sheet")};
    auto bytes = drawn(pages, title);
    if (!bytes.ok())
        return bytes;
    try {
        return finished(bytes.value(), pages);
    } catch (const std::exception& failure) {
        return Error{text("PDF"), std::string(failure.what()),
                     text("report this with the case file")};
    }
}

} // namespace frontwright
