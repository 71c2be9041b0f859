#pragma once

#include "ui/panels/section_view.h"

class QRadioButton;

namespace frontwright {

/// The sections of what is selected: upright, seen from the left, or level, seen from above.
class SectionPanel : public QWidget {
    Q_OBJECT
public:
    explicit SectionPanel(Session&, QWidget* parent = nullptr);

    [[nodiscard]] SectionView& view() { return *m_view; }

private:
    QRadioButton* choice(const QString& text, const QString& tip, SectionView::Plane);

    SectionView* m_view;
};

} // namespace frontwright
