#include "ui/help/help_browser.h"

#include "ui/help/pages.h"
#include "ui/paper/surface.h"

#include <QEvent>
#include <QFontMetricsF>
#include <QPainter>

#include <cmath>

namespace frontwright {

namespace {

std::optional<Term> termOf(const QString& key) {
    for (int i = 0; i < termCount; ++i) {
        const auto term = static_cast<Term>(i);
        const std::string_view name = frontwright::key(term);
        if (key == QLatin1String(name.data(), static_cast<qsizetype>(name.size())))
            return term;
    }
    return std::nullopt;
}

} // namespace

QImage glossaryImage(Term term, Theme theme, double pixelsPerPaperMm, double devicePixelRatio) {
    const Drawing drawing = drawingOf(term);
    const double pixelsPerMm = pixelsPerPaperMm * drawing.paperScale;
    const double spare = 6; // pixels
    const PointMm size = drawing.extent.sizes() * pixelsPerMm + PointMm(2 * spare, 2 * spare);
    QImage image(static_cast<int>(std::ceil(size.x() * devicePixelRatio)),
                 static_cast<int>(std::ceil(size.y() * devicePixelRatio)),
                 QImage::Format_ARGB32_Premultiplied);
    image.setDevicePixelRatio(devicePixelRatio);
    image.fill(sheetColour(theme));
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(spare, size.y() - spare);
    painter.scale(pixelsPerMm, -pixelsPerMm);
    painter.translate(-drawing.extent.min().x(), -drawing.extent.min().y());
    paint(painter, drawing, theme);
    return image;
}

HelpBrowser::HelpBrowser(std::function<QString()> actions, QWidget* parent)
    : QTextBrowser(parent),
      m_actions(std::move(actions)) {
    setAccessibleName(tr("Help page"));
    setOpenExternalLinks(false);
    setTextInteractionFlags(Qt::TextBrowserInteraction);
}

QVariant HelpBrowser::loadResource(int type, const QUrl& name) {
    if (name.scheme() == QLatin1String("drawing")) {
        const auto term = termOf(name.path());
        if (!term)
            return {};
        const double pixelsPerPaperMm = QFontMetricsF(font()).capHeight() / 2.5;
        return glossaryImage(*term, themeOf(palette()), pixelsPerPaperMm, devicePixelRatioF());
    }
    if (type != QTextDocument::HtmlResource)
        return QTextBrowser::loadResource(type, name);
    QString html = helpHtml(topicAt(name.adjusted(QUrl::RemoveFragment)));
    html.replace(QStringLiteral("<!--actions-->"), m_actions());
    return html;
}

void HelpBrowser::doSetSource(const QUrl& name, QTextDocument::ResourceType type) {
    QTextBrowser::doSetSource(
        name, type == QTextDocument::UnknownResource ? QTextDocument::HtmlResource : type);
}

void HelpBrowser::changeEvent(QEvent* event) {
    QTextBrowser::changeEvent(event);
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange)
        reload();
}

} // namespace frontwright
