#pragma once

#include "ui/session/session.h"

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

private:
    struct Edit {
        QAction* action;
        std::function<bool()> possible;
    };
    QAction* add(const QString& text, const QString& tip, const QKeySequence& key,
                 std::function<bool()> possible, std::function<void()> run);
    void addDivisions();
    void addSizes();
    void addSelection();
    void update();

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
    std::vector<Edit> m_edits;
    QAction* m_undo;
    QAction* m_redo;
};

} // namespace frontwright
