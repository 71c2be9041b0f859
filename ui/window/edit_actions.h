#pragma once

#include "ui/session/session.h"
#include "ui/window/action_list.h"
#include "ui/window/split_count.h"

#include <QAction>
#include <QObject>

#include <functional>
#include <vector>

class QMenu;
class QToolBar;
class QWidget;

namespace frontwright {

/// Edits of the divisions as actions: each knows when it can be done and which edit it makes.
/// Menu, toolbar, context menu and keys all go through these.
class EditActions : public QObject {
    Q_OBJECT
public:
    EditActions(Session&, QWidget& window);

    void fill(QMenu& menu);        ///< all, with undo and redo
    void fillContext(QMenu& menu); ///< what can be done with the selection
    void fill(QToolBar& bar);
    /// Whose keys act where the drawing has the keyboard.
    [[nodiscard]] QList<QAction*> onDrawing() const { return m_list.actions() + m_splits.digits(); }

private:
    QAction* add(const QString& text, const QString& tip, const QKeySequence& key,
                 std::function<bool()> possible, std::function<void()> run);
    void addDivisions();
    void addSizes();
    void addSelection();

    void split(Direction);
    void splitInto(Direction);
    void copyBank();
    void graduateBank();
    void holdSize(Direction);
    [[nodiscard]] WrittenLength memberWidth(Direction) const;
    [[nodiscard]] bool oneOpening() const;
    [[nodiscard]] bool someOpenings() const { return !m_session.selection().openings.empty(); }

    Session& m_session;
    QWidget& m_window;
    ActionList m_list;
    SplitCount m_splits;
    std::vector<QAction*> m_onBar; ///< those that the tool bar shows
    QAction* m_undo;
    QAction* m_redo;
};

} // namespace frontwright
