#include "ui/paper/page_view.h"

#include "ui/paper/pdf.h"

#include <QPainter>

#include <algorithm>

namespace frontwright {

namespace {
constexpr double margin = 10;
}

PageView::PageView(QWidget* parent) : QWidget(parent) {
    setAccessibleName(tr("Page preview"));
}

void PageView::setPages(std::vector<Page> pages) {
    m_pages = std::move(pages);
    setPageIndex(m_index);
    update();
}

void PageView::setPageIndex(int index) {
    m_index = std::clamp(index, 0, std::max(0, static_cast<int>(m_pages.size()) - 1));
    update();
}

void PageView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), palette().color(QPalette::Mid));
    if (m_pages.empty())
        return;
    const Page& page = m_pages[static_cast<std::size_t>(m_index)];
    const double scale =
        std::min((width() - 2 * margin) / page.width, (height() - 2 * margin) / page.height);
    const QSizeF size(page.width * scale, page.height * scale);
    painter.translate((width() - size.width()) / 2, (height() - size.height()) / 2);
    painter.fillRect(QRectF(QPointF(), size), Qt::white);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setClipRect(QRectF(QPointF(), size));
    paintPage(painter, page, scale, scale);
}

} // namespace frontwright
