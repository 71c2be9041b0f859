#pragma once

#include "ui/session/session.h"

#include <QAction>
#include <QObject>

#include <functional>
#include <vector>

class QMenu;

namespace frontwright {

/// Actions on the drawing that know when they can be done; enabled and disabled as work and
/// selection change. A drag in progress is put back before any of them runs. Their keys act only
/// in the widgets that have the actions: letters typed into a list are the list's.
class ActionList : public QObject {
    Q_OBJECT
public:
    explicit ActionList(Session&, QObject* parent = nullptr);

    QAction* add(const QString& text, const QString& tip, const QKeySequence& key,
                 std::function<bool()> possible, std::function<void()> run);
    void addSeparator();
    /// What is added from then on stands in a menu of that title within the menu; empty: in the
    /// menu itself.
    void setMenu(const QString& title);

    void fill(QMenu& menu) const;        ///< all
    void fillContext(QMenu& menu) const; ///< what can be done now
    void update();
    [[nodiscard]] QList<QAction*> actions() const;

private:
    struct Item {
        QAction* action;
        std::function<bool()> possible; ///< none for a separator
        QString menu;                   ///< title of its menu within the menu; empty: none
    };
    enum class Which : std::uint8_t { All, Possible };
    void fill(QMenu& menu, Which which) const;

    Session& m_session;
    std::vector<Item> m_items;
    QString m_menu;
};

} // namespace frontwright
