#pragma once

#include "core/drawings/drawing.h"

#include <QWidget>

#include <functional>
#include <optional>

namespace frontwright {

/// Shows one drawing in the room it has, at the letters' own size. Takes no keyboard: what it shows
/// is told in words beside it.
class DrawingView : public QWidget {
    Q_OBJECT
public:
    /// Makes the drawing for a room of that many paper millimetres; nullopt: there is none.
    using Maker = std::function<std::optional<Drawing>(double widthMm, double heightMm)>;
    DrawingView(const QString& accessibleName, Maker make, QWidget* parent = nullptr);

    /// Said in the drawing's place where there is none.
    void setWhenEmpty(const QString& text) { m_whenEmpty = text; }
    void setHint(QSize hint);

    [[nodiscard]] QSize sizeHint() const override { return m_hint; }
    [[nodiscard]] QSize minimumSizeHint() const override { return m_hint; }

protected:
    void paintEvent(QPaintEvent*) override;

private:
    Maker m_make;
    QString m_whenEmpty;
    QSize m_hint{260, 180};
};

} // namespace frontwright
