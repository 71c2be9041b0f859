#pragma once

#include <QString>
#include <QWidget>

#include <vector>

namespace frontwright {

/// One tile of a template as the map shows it.
struct MappedTile {
    int column = 0;
    int row = 0; ///< 0 is the topmost
    QString name;
    int page = 0; ///< that shows it, counted from 0 among those to be printed; -1: not wanted
};

/// Which tiles a template is made of and which of them is looked at. A click, or an arrow key,
/// goes to that tile's page.
class TileMapView : public QWidget {
    Q_OBJECT
public:
    explicit TileMapView(QWidget* parent = nullptr);
    /// `title` names the template. Empty tiles are those that are not listed.
    void setTiles(const QString& title, int columns, int rows, std::vector<MappedTile> tiles,
                  int currentPage);
    [[nodiscard]] QRect cellOf(int column, int row) const;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

Q_SIGNALS:
    void pageActivated(int page);

protected:
    void paintEvent(QPaintEvent*) override;
    void mousePressEvent(QMouseEvent*) override;
    void keyPressEvent(QKeyEvent*) override;
    void focusInEvent(QFocusEvent*) override;
    void focusOutEvent(QFocusEvent*) override;

private:
    [[nodiscard]] const MappedTile* at(int column, int row) const;
    [[nodiscard]] const MappedTile* current() const;
    void paintTile(QPainter&, const MappedTile&) const;
    bool step(int columns, int rows);
    void describe();

    QString m_title;
    int m_columns = 1;
    int m_rows = 1;
    int m_page = 0;
    std::vector<MappedTile> m_tiles;
};

} // namespace frontwright
