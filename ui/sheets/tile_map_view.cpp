#include "ui/sheets/tile_map_view.h"

#include "ui/look/theme.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QStyle>
#include <QStyleOptionFocusRect>

#include <algorithm>

namespace frontwright {

namespace {

constexpr int frame = 4;        ///< pixels round the map
constexpr int leastCell = 24;   ///< pixels, to be hit (WCAG 2.5.8)
constexpr int cellsByWidth = 3; ///< of the letters' height
constexpr int linesShown = 5;   ///< of text height, for the map's own

} // namespace

TileMapView::TileMapView(QWidget* parent) : QWidget(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Tile map"));
    setToolTip(tr("The tiles of this template; click one to see its page"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void TileMapView::setTiles(const QString& title, int columns, int rows,
                           std::vector<MappedTile> tiles, int currentPage) {
    m_title = title;
    m_columns = std::max(1, columns);
    m_rows = std::max(1, rows);
    m_tiles = std::move(tiles);
    m_page = currentPage;
    describe();
    updateGeometry();
    update();
}

void TileMapView::describe() {
    const MappedTile* tile = current();
    setAccessibleDescription(
        tile ? tr("%1: tile %2 of %3").arg(m_title, tile->name).arg(m_tiles.size()) : m_title);
}

QSize TileMapView::sizeHint() const {
    const int line = fontMetrics().height();
    const int cell = std::max(leastCell, line + line / 2);
    return {8 * line, std::max(m_rows * cell, linesShown * line) + 2 * frame};
}

QRect TileMapView::cellOf(int column, int row) const {
    const int line = fontMetrics().height();
    const int w = std::min((width() - 2 * frame) / m_columns, cellsByWidth * line);
    const int h = std::min((height() - 2 * frame) / m_rows, 2 * line);
    return {frame + column * w, frame + row * h, w, h};
}

const MappedTile* TileMapView::at(int column, int row) const {
    const auto found = std::find_if(m_tiles.begin(), m_tiles.end(), [&](const MappedTile& tile) {
        return tile.column == column && tile.row == row;
    });
    return found == m_tiles.end() ? nullptr : &*found;
}

const MappedTile* TileMapView::current() const {
    const auto found = std::find_if(m_tiles.begin(), m_tiles.end(),
                                    [&](const MappedTile& tile) { return tile.page == m_page; });
    return found == m_tiles.end() ? nullptr : &*found;
}

void TileMapView::paintTile(QPainter& painter, const MappedTile& tile) const {
    const Theme theme = themeOf(palette());
    const QRect cell = cellOf(tile.column, tile.row);
    const bool isCurrent = tile.page == m_page;
    painter.setPen(QPen(inkColour(theme), 1));
    painter.setBrush(tile.page < 0 ? Qt::NoBrush : QBrush(sheetColour(theme)));
    painter.drawRect(cell);
    if (tile.page < 0)
        painter.drawLine(cell.bottomLeft(), cell.topRight());
    if (isCurrent) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(accentColour(theme), 3));
        painter.drawRect(cell.adjusted(2, 2, -2, -2));
    }
    painter.setPen(inkColour(theme));
    if (fontMetrics().horizontalAdvance(tile.name) + 4 <= cell.width())
        painter.drawText(cell, Qt::AlignCenter, tile.name);
}

void TileMapView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    for (const MappedTile& tile : m_tiles)
        paintTile(painter, tile);
    if (!hasFocus())
        return;
    QStyleOptionFocusRect option;
    option.initFrom(this);
    style()->drawPrimitive(QStyle::PE_FrameFocusRect, &option, &painter, this);
}

void TileMapView::mousePressEvent(QMouseEvent* event) {
    for (const MappedTile& tile : m_tiles)
        if (tile.page >= 0 && cellOf(tile.column, tile.row).contains(event->pos())) {
            Q_EMIT pageActivated(tile.page);
            return;
        }
    QWidget::mousePressEvent(event);
}

/// To the next tile that way that is to be printed, past empty ones.
bool TileMapView::step(int columns, int rows) {
    const MappedTile* from = current();
    if (!from)
        return false;
    int column = from->column + columns, row = from->row + rows;
    while (column >= 0 && row >= 0 && column < m_columns && row < m_rows) {
        if (const MappedTile* tile = at(column, row); tile && tile->page >= 0) {
            Q_EMIT pageActivated(tile->page);
            return true;
        }
        column += columns;
        row += rows;
    }
    return false;
}

void TileMapView::keyPressEvent(QKeyEvent* event) {
    const int key = event->key();
    const int columns = key == Qt::Key_Right ? 1 : key == Qt::Key_Left ? -1 : 0;
    const int rows = key == Qt::Key_Down ? 1 : key == Qt::Key_Up ? -1 : 0;
    if ((columns == 0 && rows == 0) || !step(columns, rows))
        QWidget::keyPressEvent(event);
}

void TileMapView::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    update();
}
void TileMapView::focusOutEvent(QFocusEvent* event) {
    QWidget::focusOutEvent(event);
    update();
}

} // namespace frontwright
