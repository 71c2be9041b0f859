#pragma once

#include <QScrollArea>

namespace frontwright {

/// Scrolls up and down only: it is never narrower than what it holds, and as high as it where there
/// is room.
class UprightScroll : public QScrollArea {
    Q_OBJECT
public:
    explicit UprightScroll(QWidget* held, QWidget* parent = nullptr);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;
};

} // namespace frontwright
