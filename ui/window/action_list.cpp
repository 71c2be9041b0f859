#include "ui/window/action_list.h"

#include <QMenu>

namespace frontwright {

ActionList::ActionList(Session& session, QObject* parent) : QObject(parent), m_session(session) {
    connect(&session, &Session::selectionChanged, this, &ActionList::update);
    connect(&session, &Session::workChanged, this, &ActionList::update);
}

QAction* ActionList::add(const QString& text, const QString& tip, const QKeySequence& key,
                         std::function<bool()> possible, std::function<void()> run) {
    auto* action = new QAction(text, this);
    action->setStatusTip(tip);
    action->setToolTip(tip + (key.isEmpty() ? QString()
                                            : QStringLiteral(" (%1)").arg(
                                                  key.toString(QKeySequence::NativeText))));
    action->setShortcut(key);
    action->setShortcutContext(Qt::WidgetWithChildrenShortcut);
    connect(action, &QAction::triggered, this, [this, run = std::move(run)] {
        m_session.cancelPreview(); // an edit starts from what is decided, not from half a drag
        run();
    });
    m_items.push_back({action, std::move(possible), m_menu});
    return action;
}

void ActionList::addSeparator() {
    auto* separator = new QAction(this);
    separator->setSeparator(true);
    m_items.push_back({separator, {}, m_menu});
}

void ActionList::setMenu(const QString& title) {
    m_menu = title;
}

void ActionList::fill(QMenu& menu) const {
    fill(menu, Which::All);
}

void ActionList::fillContext(QMenu& menu) const {
    fill(menu, Which::Possible);
}

void ActionList::fill(QMenu& menu, Which which) const {
    QMenu* inner = nullptr;
    for (const Item& item : m_items) {
        if (which == Which::Possible && item.possible && !item.possible())
            continue;
        if (item.menu.isEmpty()) {
            inner = nullptr;
            menu.addAction(item.action);
            continue;
        }
        if (!inner || inner->title() != item.menu)
            inner = menu.addMenu(item.menu);
        inner->addAction(item.action);
    }
}

QList<QAction*> ActionList::actions() const {
    QList<QAction*> all;
    for (const Item& item : m_items)
        if (!item.action->isSeparator())
            all << item.action;
    return all;
}

void ActionList::update() {
    for (const Item& item : m_items)
        if (item.possible)
            item.action->setEnabled(item.possible());
}

} // namespace frontwright
