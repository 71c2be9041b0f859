#include "ui/window/action_list.h"

#include <QMenu>

namespace frontwright {

ActionList::ActionList(Session& session, QObject* parent) : QObject(parent) {
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
    connect(action, &QAction::triggered, this, [run = std::move(run)] { run(); });
    m_items.push_back({action, std::move(possible)});
    return action;
}

void ActionList::addSeparator() {
    auto* separator = new QAction(this);
    separator->setSeparator(true);
    m_items.push_back({separator, {}});
}

void ActionList::fill(QMenu& menu) const {
    for (const Item& item : m_items)
        menu.addAction(item.action);
}

void ActionList::fillContext(QMenu& menu) const {
    for (const Item& item : m_items)
        if (!item.possible || item.possible())
            menu.addAction(item.action);
}

void ActionList::update() {
    for (const Item& item : m_items)
        if (item.possible)
            item.action->setEnabled(item.possible());
}

} // namespace frontwright
