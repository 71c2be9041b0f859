#include "ui/window/view_actions.h"

#include "ui/window/view_settings.h"

#include <QActionGroup>
#include <QApplication>
#include <QMenu>
#include <QPalette>
#include <QToolBar>

namespace frontwright {

ViewActions::ViewActions(Session& session, ElevationView& view, ViewSettings& kept, QObject* parent)
    : QObject(parent),
      m_session(session),
      m_view(view),
      m_units(new QActionGroup(this)),
      m_denominators(new QActionGroup(this)),
      m_dark(new QAction(tr("Blueprint (dar&k)"), this)) {
    addZoom();
    addLayers();
    addUnits();
    addTheme();
    connect(&session, &Session::styleChanged, this, &ViewActions::showStyle);
    showStyle();
    keepIn(kept);
}

void ViewActions::keepIn(ViewSettings& kept) {
    for (QAction* action : m_layers)
        kept.keepSwitch(*action);
    kept.keepSwitch(*m_dark);
    for (const QActionGroup* group : {m_units, m_denominators})
        for (const QAction* action : group->actions())
            kept.keepStyleOf(*action);
}

void ViewActions::addZoom() {
    const auto add = [this](const QString& text, const QString& tip,
                            const QList<QKeySequence>& keys, auto slot) {
        auto* action = new QAction(text, this);
        action->setStatusTip(tip);
        action->setShortcuts(keys);
        connect(action, &QAction::triggered, this, slot);
        m_zoom << action;
    };
    add(tr("Zoom &in"), tr("See it larger"),
        {QKeySequence(Qt::CTRL | Qt::Key_Plus), QKeySequence(Qt::CTRL | Qt::Key_Equal)},
        [this] { Q_EMIT zoomWanted(ElevationView::Zoom::In); });
    add(tr("Zoom &out"), tr("See more of it"), {QKeySequence(Qt::CTRL | Qt::Key_Minus)},
        [this] { Q_EMIT zoomWanted(ElevationView::Zoom::Out); });
    add(tr("&Fit the case"), tr("Show the whole case"), {QKeySequence(Qt::CTRL | Qt::Key_0)},
        [this] { Q_EMIT fitWanted(); });
}

void ViewActions::addLayers() {
    int number = 0;
    const auto add = [&](const char* name, const QString& text, const QString& tip,
                         Shown ShownLayers::*layer) {
        auto* action = new QAction(text, this);
        action->setObjectName(QLatin1String(name));
        action->setStatusTip(tip);
        action->setShortcut(QKeySequence(Qt::ALT | static_cast<Qt::Key>(Qt::Key_1 + number++)));
        action->setCheckable(true);
        action->setChecked(m_view.layers().*layer == Shown::Yes);
        connect(action, &QAction::toggled, this, [this, layer](bool on) {
            ShownLayers layers = m_view.layers();
            layers.*layer = on ? Shown::Yes : Shown::No;
            m_view.setLayers(layers);
        });
        m_layers << action;
    };
    add("dimensions", tr("&Dimensions"), tr("Show the sizes round the case"),
        &ShownLayers::dimensions);
    add("holes", tr("&Holes"), tr("Show the holes for screws and handles"), &ShownLayers::holes);
    add("fields", tr("Fi&elds"), tr("Outline the flat, full-thickness part of each front"),
        &ShownLayers::fields);
    add("boxes", tr("&Boxes behind the fronts"), tr("Show each drawer box's outline"),
        &ShownLayers::boxes);
    add("bottoms", tr("Botto&ms"), tr("Show the bottom panel of each drawer box"),
        &ShownLayers::bottoms);
    add("allowedRegion", tr("Where a mounting screw ma&y go"),
        tr("Show the region of the box wall that is free"), &ShownLayers::allowedRegion);
    add("findings", tr("&Signs of findings"), tr("Show a sign where something is to be heeded"),
        &ShownLayers::findings);
    add("systemHoles", tr("Sys&tem holes"),
        tr("Show the rows of holes in a frameless case's panels"), &ShownLayers::systemHoles);
}

void ViewActions::addUnits() {
    const auto unit = [this](const QString& text, const QString& tip, Unit value) {
        QAction* action = m_units->addAction(text);
        action->setStatusTip(tip);
        action->setCheckable(true);
        action->setData(static_cast<int>(value));
        connect(action, &QAction::triggered, this, [this, value] {
            LengthStyle style = m_session.style();
            style.unit = value;
            m_session.setStyle(style);
        });
    };
    unit(tr("&Inches"), tr("Show sizes in inches; a bare number means inches"), Unit::Inch);
    unit(tr("&Millimetres"), tr("Show sizes in millimetres; a bare number means millimetres"),
         Unit::Millimetre);
    const std::pair<int, QString> denominators[] = {{8, tr("Nearest 1/&8 in")},
                                                    {16, tr("Nearest 1/&16 in")},
                                                    {32, tr("Nearest 1/&32 in")},
                                                    {64, tr("Nearest 1/&64 in")}};
    for (const auto& [each, text] : denominators) {
        const int denominator = each;
        QAction* action = m_denominators->addAction(text);
        action->setStatusTip(tr("Show sizes to the nearest 1/%1 in").arg(denominator));
        action->setCheckable(true);
        action->setData(denominator);
        connect(action, &QAction::triggered, this, [this, denominator] {
            LengthStyle style = m_session.style();
            style.denominator = denominator;
            m_session.setStyle(style);
        });
    }
}

void ViewActions::addTheme() {
    m_dark->setObjectName(QStringLiteral("dark"));
    m_dark->setCheckable(true);
    m_dark->setStatusTip(tr("Light is ink on paper, dark is a blueprint"));
    m_dark->setChecked(themeOf(QApplication::palette()) == Theme::Blueprint);
    connect(m_dark, &QAction::toggled, this, [](bool dark) {
        QApplication::setPalette(windowPalette(dark ? Theme::Blueprint : Theme::Paper));
    });
}

void ViewActions::showStyle() {
    for (QAction* action : m_units->actions())
        action->setChecked(action->data().toInt() == static_cast<int>(m_session.style().unit));
    for (QAction* action : m_denominators->actions()) {
        action->setChecked(action->data().toInt() == m_session.style().denominator);
        action->setEnabled(m_session.style().unit == Unit::Inch);
    }
}

void ViewActions::fill(QMenu& menu) {
    menu.addActions(m_zoom);
    menu.addSeparator();
    menu.addActions(m_layers);
    menu.addSeparator();
    QMenu* units = menu.addMenu(tr("&Units"));
    units->addActions(m_units->actions());
    units->addSeparator();
    units->addActions(m_denominators->actions());
    menu.addAction(m_dark);
}

void ViewActions::fill(QToolBar& bar) {
    bar.addAction(m_zoom.back());
    bar.addSeparator();
    bar.addActions(m_units->actions());
}

} // namespace frontwright
