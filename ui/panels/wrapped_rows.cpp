#include "ui/panels/wrapped_rows.h"

#include "ui/panels/wrapping_delegate.h"

#include <QEvent>
#include <QHeaderView>
#include <QTimer>
#include <QTreeWidget>

#include <algorithm>

namespace frontwright {

WrappedRows::WrappedRows(QTreeWidget& list, std::vector<double> shares)
    : QObject(&list),
      m_list(list),
      m_shares(std::move(shares)) {
    list.setWordWrap(true);
    list.setUniformRowHeights(false);
    list.setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    list.setItemDelegate(new WrappingDelegate(&list));
    list.header()->setStretchLastSection(true);
    list.viewport()->installEventFilter(this);
    connect(list.header(), &QHeaderView::sectionResized, &list, [&list] { list.doItemsLayout(); });
}

bool WrappedRows::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::Resize)
        fit();
    return QObject::eventFilter(watched, event);
}

WrappedRows::Widths WrappedRows::widthsOf(int column) const {
    const QFontMetrics letters = m_list.fontMetrics();
    const auto advance = [&](const QString& text) { return letters.horizontalAdvance(text); };
    const int heading = m_list.header()->sectionSizeHint(column);
    Widths widths{heading, heading};
    for (int row = 0; row < m_list.topLevelItemCount(); ++row) {
        const QTreeWidgetItem& item = *m_list.topLevelItem(row);
        const int beside = (item.icon(column).isNull() ? 0 : letters.height() * 3 / 2) +
                           2 * letters.averageCharWidth();
        widths.whole = std::max(widths.whole, advance(item.text(column)) + beside);
        for (const QString& word : item.text(column).split(QLatin1Char(' ')))
            widths.least = std::max(widths.least, advance(word) + beside);
    }
    return widths;
}

void WrappedRows::fit() {
    const int room = m_list.viewport()->width();
    int left = room;
    for (std::size_t i = 0; i < m_shares.size(); ++i) {
        const int column = static_cast<int>(i);
        const Widths widths = widthsOf(column);
        const int share = static_cast<int>(m_shares[i] * room);
        const int wanted = std::min(widths.whole, std::max(share, widths.least));
        if (m_list.columnWidth(column) != wanted)
            m_list.setColumnWidth(column, wanted);
        left -= wanted;
    }
    // Where a scroll bar has just come, the last column does not follow by itself.
    const int last = m_list.columnCount() - 1;
    if (left <= 0 || m_list.columnWidth(last) <= left)
        return;
    m_list.setColumnWidth(last, left);
    QTimer::singleShot(0, &m_list, [&list = m_list] { list.doItemsLayout(); });
}

} // namespace frontwright
