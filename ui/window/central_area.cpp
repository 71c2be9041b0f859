#include "ui/window/central_area.h"

#include "ui/rendering/look_panel.h"

#include <QActionGroup>
#include <QCheckBox>
#include <QMenu>

namespace frontwright {

namespace {

/// Of the room side by side, in per cent: its dimensions stand round the drawing.
constexpr int drawingShare = 60;

const QString shownKey = QStringLiteral("view/shows");

QString nameOf(CentralArea::Shows shows) {
    switch (shows) {
    case CentralArea::Shows::Drawing:
        break;
    case CentralArea::Shows::Look:
        return QStringLiteral("look");
    case CentralArea::Shows::Both:
        return QStringLiteral("both");
    }
    return QStringLiteral("drawing");
}

} // namespace

CentralArea::CentralArea(Session& session, ElevationView& elevation, QSettings& settings,
                         QWidget* parent)
    : QSplitter(Qt::Horizontal, parent),
      m_session(session),
      m_elevation(elevation),
      m_settings(settings),
      m_choices(new QActionGroup(this)),
      m_reveals(new QAction(tr("Reveals ×1&0"), this)) {
    setChildrenCollapsible(false);
    addWidget(&elevation);
    setFocusProxy(&elevation);
    addActions();
    showKept();
}

void CentralArea::showKept() {
    const QString kept = m_settings.value(shownKey).toString();
    for (const Shows shows : {Shows::Look, Shows::Both})
        if (kept == nameOf(shows))
            choose(shows);
}

void CentralArea::addActions() {
    const auto add = [this](const QString& text, const QString& tip, const QKeySequence& key,
                            Shows shows) {
        QAction* action = m_choices->addAction(text);
        action->setCheckable(true);
        action->setChecked(shows == m_shows);
        action->setShortcut(key);
        action->setStatusTip(tip);
        action->setData(static_cast<int>(shows));
        connect(action, &QAction::triggered, this, [this, shows] { choose(shows); });
    };
    add(tr("Dra&wing"), tr("Show the drawing with its dimensions"),
        QKeySequence(Qt::CTRL | Qt::Key_1), Shows::Drawing);
    add(tr("&Look"), tr("Show the fronts as they will look"), QKeySequence(Qt::CTRL | Qt::Key_2),
        Shows::Look);
    add(tr("Drawin&g and look"), tr("Show both side by side"), QKeySequence(Qt::CTRL | Qt::Key_3),
        Shows::Both);
    m_reveals->setCheckable(true);
    m_reveals->setShortcut(QKeySequence(Qt::CTRL | Qt::Key_4));
    m_reveals->setStatusTip(tr("Show the look with every reveal ten times as wide"));
    connect(m_reveals, &QAction::triggered, this, [this](bool on) {
        if (m_shows == Shows::Drawing)
            choose(Shows::Look);
        look().revealsBox().setChecked(on);
    });
}

LookPanel& CentralArea::look() {
    if (!m_look) {
        m_look = new LookPanel(m_session, m_settings);
        m_look->hide();
        addWidget(m_look);
        m_look->view().addActions(m_keys);
        connect(&m_look->revealsBox(), &QCheckBox::toggled, m_reveals, &QAction::setChecked);
    }
    return *m_look;
}

void CentralArea::giveKeys(const QList<QAction*>& actions) {
    m_keys = actions;
    m_elevation.addActions(actions);
    if (m_look)
        m_look->view().addActions(actions);
}

void CentralArea::choose(Shows shows) {
    m_shows = shows;
    m_settings.setValue(shownKey, nameOf(shows));
    for (QAction* action : m_choices->actions())
        action->setChecked(action->data().toInt() == static_cast<int>(shows));
    const bool hadKeyboard = isAncestorOf(window()->focusWidget());
    m_elevation.setVisible(shows != Shows::Look);
    if (shows != Shows::Drawing || m_look)
        look().setVisible(shows != Shows::Drawing);
    if (shows == Shows::Both)
        setSizes({drawingShare * width() / 100, (100 - drawingShare) * width() / 100});
    if (shows == Shows::Look)
        setFocusProxy(&look().view());
    else
        setFocusProxy(&m_elevation);
    if (hadKeyboard)
        setFocus();
}

void CentralArea::fill(QMenu& menu) {
    menu.addActions(m_choices->actions());
    menu.addAction(m_reveals);
}

bool CentralArea::isLookMeant() const {
    return m_shows == Shows::Look ||
           (m_shows == Shows::Both && m_look && m_look->isAncestorOf(window()->focusWidget()));
}

void CentralArea::zoom(ElevationView::Zoom direction) {
    if (isLookMeant())
        look().view().zoom(direction == ElevationView::Zoom::In ? LookView::Zoom::In
                                                                : LookView::Zoom::Out);
    else
        m_elevation.zoom(direction);
}

void CentralArea::fit() {
    if (!isLookMeant()) {
        m_elevation.fit();
        return;
    }
    look().view().fit();
}

} // namespace frontwright
