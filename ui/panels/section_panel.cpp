#include "ui/panels/section_panel.h"

#include <QHBoxLayout>
#include <QRadioButton>

namespace frontwright {

SectionPanel::SectionPanel(Session& session, QWidget* parent)
    : QWidget(parent),
      m_view(new SectionView(session)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(4);
    auto* row = new QHBoxLayout;
    row->setContentsMargins(8, 4, 8, 0);
    auto* upright = choice(tr("&Upright"), tr("Cut from top to bottom, seen from the left"),
                           SectionView::Plane::Upright);
    upright->setChecked(true);
    row->addWidget(upright);
    row->addWidget(choice(tr("Leve&l"),
                          tr("Cut across the width at the height of the selected hole, seen from "
                             "above"),
                          SectionView::Plane::Level));
    row->addStretch();
    column->addLayout(row);
    column->addWidget(m_view, 1);
}

QRadioButton* SectionPanel::choice(const QString& text, const QString& tip,
                                   SectionView::Plane plane) {
    auto* button = new QRadioButton(text);
    button->setToolTip(tip);
    button->setStatusTip(tip);
    button->setAccessibleName(QString(text).remove(QLatin1Char('&')));
    button->setAccessibleDescription(tip);
    connect(button, &QRadioButton::toggled, this, [this, plane](bool on) {
        if (on)
            m_view->setPlane(plane);
    });
    return button;
}

} // namespace frontwright
