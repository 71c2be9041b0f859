#include "ui/panels/fold.h"

#include <QEvent>
#include <QToolButton>
#include <QVBoxLayout>

namespace frontwright {

Fold::Fold(const QString& name, const QString& title, Maker maker, QWidget* parent)
    : QWidget(parent),
      m_name(name),
      m_title(title),
      m_maker(std::move(maker)),
      m_heading(new QToolButton) {
    m_heading->setAutoRaise(true);
    m_heading->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
    m_heading->setFocusPolicy(Qt::StrongFocus);
    m_heading->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    m_heading->setMinimumHeight(24);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
    column->addWidget(m_heading);
    connect(m_heading, &QToolButton::clicked, this, [this] {
        m_open ? close() : open();
        make();
        Q_EMIT toggled();
    });
    showState();
}

void Fold::open() {
    m_open = true;
    if (m_content)
        m_content->show();
    showState();
}

void Fold::make() {
    if (!m_open || m_content)
        return;
    m_content = m_maker();
    layout()->addWidget(m_content);
    m_content->show();
    Q_EMIT made();
}

void Fold::close() {
    m_open = false;
    if (m_content)
        m_content->hide();
    showState();
}

void Fold::setSummary(const QString& text) {
    m_summary = text;
    showState();
}

void Fold::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange)
        showState();
}

void Fold::showState() {
    m_heading->setArrowType(m_open ? Qt::DownArrow : Qt::RightArrow);
    QFont font = this->font();
    font.setBold(m_open);
    m_heading->setFont(font);
    m_heading->setText(m_open || m_summary.isEmpty() ? m_title
                                                     : tr("%1: %2").arg(m_title, m_summary));
    m_heading->setAccessibleName(m_title);
    m_heading->setAccessibleDescription(m_open ? tr("open") : tr("closed"));
}

} // namespace frontwright
