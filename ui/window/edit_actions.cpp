#include "ui/window/edit_actions.h"

#include "core/edits/choices.h"
#include "core/edits/divisions.h"
#include "core/edits/member_width.h"
#include "ui/panels/opening_kinds.h"
#include "ui/window/bank_actions.h"
#include "ui/window/face_actions.h"
#include "ui/window/graduate_dialog.h"
#include "ui/window/own_entries_dialog.h"
#include "ui/window/preset_actions.h"

#include <QInputDialog>
#include <QMenu>
#include <QToolBar>

namespace frontwright {

EditActions::EditActions(Session& session, QWidget& window)
    : QObject(&window),
      m_session(session),
      m_window(window),
      m_list(session),
      m_splits(session),
      m_undo(session.undoStack().createUndoAction(this, tr("&Undo"))),
      m_redo(session.undoStack().createRedoAction(this, tr("Re&do"))) {
    m_undo->setShortcuts(QKeySequence::keyBindings(QKeySequence::Undo));
    m_redo->setShortcuts(
        {QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_Z), QKeySequence(Qt::CTRL | Qt::Key_Y)});
    // The tool bar keeps its width whatever the step is called.
    m_undo->setIconText(tr("Undo"));
    m_redo->setIconText(tr("Redo"));
    m_undo->setStatusTip(tr("Take back the last step"));
    m_redo->setStatusTip(tr("Do again what was taken back"));
    addDivisions();
    new BankActions(
        session, m_list, [this] { return memberWidth(Direction::Columns); }, window);
    addUses();
    new FaceActions(
        session, m_list, [this](Direction direction) { return memberWidth(direction); }, window);
    m_list.addSeparator();
    addSizes();
    new PresetActions(session, m_list, window);
    m_list.addSeparator();
    addSelection();
    m_list.update();
}

QAction* EditActions::add(const QString& text, const QString& tip, const QKeySequence& key,
                          std::function<bool()> possible, std::function<void()> run) {
    return m_list.add(text, tip, key, std::move(possible), std::move(run));
}

void EditActions::addDivisions() {
    const auto one = [this] { return oneOpening(); };
    m_onBar.push_back(
        add(tr("Split into &rows"),
            tr("Split the opening into two, one above the other; type a number for as many"),
            QKeySequence(Qt::Key_R), one, [this] { split(Direction::Rows); }));
    m_onBar.push_back(add(tr("Split into &columns"),
                          tr("Split the opening into two, side by side; type a number for as many"),
                          QKeySequence(Qt::Key_C), one, [this] { split(Direction::Columns); }));
    add(tr("Split into several r&ows…"), tr("Split the opening into as many rows as you say"),
        QKeySequence(Qt::SHIFT | Qt::Key_R), one, [this] { splitInto(Direction::Rows); });
    add(tr("Split into several co&lumns…"), tr("Split the opening into as many columns as you say"),
        QKeySequence(Qt::SHIFT | Qt::Key_C), one, [this] { splitInto(Direction::Columns); });
    m_onBar.push_back(add(
        tr("&Join openings"), tr("Make one opening of those selected"), QKeySequence(Qt::Key_J),
        [this] { return m_session.selection().openings.size() > 1; },
        [this] {
            m_session.apply(tr("Join openings"),
                            joinOpenings(m_session.project(), m_session.selection().openings));
        }));
    add(
        tr("Remove &member"),
        tr("Take the member away; what was on both sides becomes one opening"),
        QKeySequence(Qt::Key_Delete),
        [this] {
            return m_session.selection().member &&
                   m_session.selection().member->number >= firstFreeId;
        },
        [this] {
            m_session.apply(tr("Remove member"),
                            removeMember(m_session.project(), *m_session.selection().member));
        });
    add(
        tr("Cop&y the bank's divisions here"),
        tr("Divide the last selected opening like the bank of the first"), {},
        [this] { return m_session.selection().openings.size() == 2; }, [this] { copyBank(); });
}

void EditActions::addSizes() {
    const auto some = [this] { return someOpenings(); };
    const auto equal = [this](Direction direction) {
        m_session.apply(tr("Make equal"),
                        makeEqual(m_session.project(), m_session.selection().openings, direction));
    };
    m_onBar.push_back(add(tr("Make &heights equal"),
                          tr("Give the selected openings of a bank the same height"),
                          QKeySequence(Qt::Key_E), some, [equal] { equal(Direction::Rows); }));
    add(tr("Make &widths equal"), tr("Give the selected openings of a row the same width"),
        QKeySequence(Qt::SHIFT | Qt::Key_E), some, [equal] { equal(Direction::Columns); });
    const auto fronts = [this](Direction direction) {
        m_session.apply(
            tr("Make fronts equal"),
            makeFrontsEqual(m_session.project(), m_session.selection().openings, direction));
    };
    add(tr("Make fronts e&qually high"),
        tr("Give the fronts, not the openings, the same height: where they lie farther over the "
           "outer panels than over the shelves"),
        QKeySequence(Qt::CTRL | Qt::Key_E), some, [fronts] { fronts(Direction::Rows); });
    add(tr("Make fro&nts equally wide"), tr("Give the fronts, not the openings, the same width"),
        QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_E), some,
        [fronts] { fronts(Direction::Columns); });
    m_onBar.push_back(add(
        tr("&Graduate the bank…"), tr("Make each drawer deeper than the one above it"),
        QKeySequence(Qt::Key_G), [this] { return oneOpening(); }, [this] { graduateBank(); }));
    add(
        tr("&End graduation"), tr("Keep the present sizes, but let each be changed by itself"), {},
        [this] { return oneOpening(); },
        [this] {
            m_session.apply(tr("End graduation"),
                            endGraduation(m_session.project(), *m_session.selection().lastOpening(),
                                          Direction::Rows));
        });
    add(tr("Loc&k or free the height"), tr("A locked opening keeps its height while others change"),
        QKeySequence(Qt::Key_L), some, [this] { holdSize(Direction::Rows); });
    add(tr("Lock or &free the width"), tr("A locked opening keeps its width while others change"),
        QKeySequence(Qt::SHIFT | Qt::Key_L), some, [this] { holdSize(Direction::Columns); });
}

void EditActions::addUses() {
    m_list.setMenu(tr("Use the open&ing for"));
    const QStringList names = openingKindActions();
    for (qsizetype i = 0; i < names.size(); ++i)
        add(
            names[i], tr("Change what the selected openings are for"), {},
            [this] { return !m_session.selection().openings.empty(); },
            [this, i] {
                m_session.apply(tr("Change what an opening is for"),
                                setOffered(m_session.project(), m_session.selection().openings,
                                           static_cast<int>(i)));
            });
    m_list.setMenu({});
}

void EditActions::addSelection() {
    add(
        tr("Select &all fronts"), tr("Select every front of the case"),
        QKeySequence(QKeySequence::SelectAll), [] { return true; },
        [this] {
            Selection all;
            for (const FrontPlan& front : m_session.plan().fronts)
                all.openings.push_back(front.opening);
            m_session.select(std::move(all));
        });
    add(
        tr("Ca&talogue…"), tr("Add, change and remove screws, bolts, handles, runners and woods"),
        {}, [] { return true; },
        [this] {
            OwnEntriesDialog dialog(m_session, &m_window);
            dialog.exec();
        });
}

void EditActions::fill(QMenu& menu) {
    menu.addAction(m_undo);
    menu.addAction(m_redo);
    menu.addSeparator();
    m_list.fill(menu);
}

void EditActions::fillContext(QMenu& menu) {
    m_list.fillContext(menu);
}

void EditActions::fill(QToolBar& bar) {
    bar.addAction(m_undo);
    bar.addAction(m_redo);
    bar.addSeparator();
    for (QAction* action : m_onBar)
        bar.addAction(action);
}

bool EditActions::oneOpening() const {
    return m_session.selection().openings.size() == 1;
}

WrittenLength EditActions::memberWidth(Direction direction) const {
    return usualMemberWidth(m_session.project(), m_session.plan(), direction);
}

void EditActions::split(Direction direction) {
    m_splits.split(direction == Direction::Rows ? tr("Split into rows") : tr("Split into columns"),
                   *m_session.selection().lastOpening(), direction, memberWidth(direction));
}

void EditActions::splitInto(Direction direction) {
    bool chosen = false;
    const int count = QInputDialog::getInt(&m_window, tr("Split the opening"),
                                           direction == Direction::Rows ? tr("How many rows?")
                                                                        : tr("How many columns?"),
                                           3, 2, mostParts, 1, &chosen);
    if (!chosen)
        return;
    m_session.apply(tr("Split opening"),
                    splitOpening(m_session.project(), *m_session.selection().lastOpening(),
                                 direction, count, memberWidth(direction)));
}

void EditActions::copyBank() {
    const auto& openings = m_session.selection().openings;
    m_session.apply(tr("Copy the bank's divisions"),
                    copyDivisions(m_session.project(), openings.front(), openings.back()));
}

void EditActions::graduateBank() {
    GraduateDialog dialog(m_session.project(), *m_session.selection().lastOpening(),
                          m_session.style(), &m_window);
    if (dialog.exec() == QDialog::Accepted)
        m_session.apply(tr("Graduate the bank"), dialog.graduated());
}

void EditActions::holdSize(Direction direction) {
    Project project = m_session.project();
    const auto openings = m_session.selection().openings;
    const bool locked = holdOf(project, openings.back(), direction) == Hold::Locked;
    for (const OpeningId id : openings) {
        auto edited = setHold(project, id, direction, locked ? Hold::Flexible : Hold::Locked);
        if (!edited.ok()) {
            m_session.apply({}, edited);
            return;
        }
        project = std::move(edited).value();
    }
    m_session.apply(locked ? tr("Free the size") : tr("Lock the size"), project);
}

} // namespace frontwright
