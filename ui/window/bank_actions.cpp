#include "ui/window/bank_actions.h"

#include "core/edits/banks.h"
#include "ui/window/action_list.h"
#include "ui/window/split_count.h"

#include <QInputDialog>

#include <algorithm>
#include <set>

namespace frontwright {

BankActions::BankActions(Session& session, ActionList& list, StileWidth stileWidth, QWidget& window)
    : QObject(&window),
      m_session(session),
      m_stileWidth(std::move(stileWidth)),
      m_window(window) {
    connect(&session, &Session::started, this, [this, &list] {
        m_copied.reset();
        list.update();
    });
    list.addSeparator();
    list.setMenu(tr("&Bank"));
    addCopies(list);
    addMirrors(list);
    addLikeOtherSide(list);
    list.setMenu({});
}

void BankActions::addCopies(ActionList& list) {
    const auto some = [this] { return someOpenings(); };
    list.add(tr("Copy the bank's &divisions"),
             tr("Copy how the bank of the selected opening is divided, to paste it elsewhere"),
             QKeySequence(QKeySequence::Copy), some, [this, &list] {
                 copy();
                 list.update();
             });
    list.add(
        tr("&Paste divisions"),
        tr("Divide each selected opening like the copied bank; a bank that is selected whole is "
           "replaced"),
        QKeySequence(QKeySequence::Paste), [this] { return someOpenings() && m_copied; },
        [this] {
            m_session.apply(tr("Paste divisions"), pasteDivisions(m_session.project(), m_copied,
                                                                  m_session.selection().openings));
        });
    list.add(tr("Repeat the ba&nk…"), tr("Draw the bank several times, side by side in its place"),
             QKeySequence(Qt::Key_N), some, [this] { repeat(); });
    list.add(tr("Select the whole &bank"), tr("Select every front of the selected fronts' banks"),
             QKeySequence(Qt::Key_B), some, [this] { selectBank(); });
}

void BankActions::addMirrors(ActionList& list) {
    list.add(
        tr("M&irror the case"), tr("Exchange left and right in the whole case"),
        QKeySequence(Qt::SHIFT | Qt::Key_M), [] { return true; },
        [this] {
            m_session.apply(tr("Mirror the case"),
                            mirrorCase(m_session.project(), m_session.plan()));
        });
    list.add(
        tr("Mirror this par&t"),
        tr("Exchange left and right in the smallest part with columns that holds the selection"),
        QKeySequence(Qt::Key_M), [this] { return someOpenings(); },
        [this] {
            m_session.apply(tr("Mirror a part"), mirrorRegion(m_session.project(), m_session.plan(),
                                                              m_session.selection().openings));
        });
}

void BankActions::addLikeOtherSide(ActionList& list) {
    list.add(
        tr("Make the other side &like this"),
        tr("Mirror the columns on the selection's side onto the other side of their part"),
        QKeySequence(Qt::CTRL | Qt::Key_M), [this] { return someOpenings(); },
        [this] {
            m_session.apply(
                tr("Make the other side like this"),
                mirrorOnto(m_session.project(), m_session.plan(), m_session.selection().openings));
        });
}

void BankActions::copy() {
    auto copied = bankDivisions(m_session.project(), *m_session.selection().lastOpening());
    if (copied.ok())
        m_copied = std::move(copied).value();
    else
        Q_EMIT m_session.refused(copied.error());
}

void BankActions::repeat() {
    bool chosen = false;
    const int count = QInputDialog::getInt(&m_window, tr("Repeat the bank"),
                                           tr("How many banks, with the present one?"), 2, 2,
                                           mostParts, 1, &chosen);
    if (chosen)
        m_session.apply(tr("Repeat the bank"),
                        repeatBank(m_session.project(), *m_session.selection().lastOpening(), count,
                                   m_stileWidth()));
}

void BankActions::selectBank() {
    const Plan& plan = m_session.plan();
    std::set<std::uint32_t> banks;
    for (const OpeningId id : m_session.selection().openings)
        if (const FrontPlan* front = plan.frontOf(id))
            banks.insert(front->bank);
        else if (const SpacePlan* space = plan.spaceOf(id))
            banks.insert(space->bank);
    Selection whole;
    const auto addOf = [&](const auto& openings) {
        for (const auto& each : openings)
            if (banks.contains(each.bank))
                whole.openings.push_back(each.opening);
    };
    addOf(plan.fronts);
    addOf(plan.spaces);
    m_session.select(std::move(whole));
}

} // namespace frontwright
