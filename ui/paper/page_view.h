#pragma once

#include "core/sheets/sheets.h"

#include <QWidget>

namespace frontwright {

/// Shows pages one below the other as they come out of the printer: black on white in any theme.
class PageView : public QWidget {
    Q_OBJECT
public:
    explicit PageView(QWidget* parent = nullptr);
    void setPages(std::vector<Page> pages);
    void setPageIndex(int index);
    [[nodiscard]] int pageIndex() const { return m_index; }
    [[nodiscard]] QSize sizeHint() const override { return {560, 680}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {280, 320}; }

protected:
    void paintEvent(QPaintEvent*) override;

private:
    std::vector<Page> m_pages;
    int m_index = 0;
};

} // namespace frontwright
