#include "ui/elevation/announcer.h"

#include "ui/elevation/accessible_elevation.h"
#include "ui/elevation/case_parts.h"

#include <QAccessible>
#include <QLabel>

#include <array>

namespace frontwright {

Announcer::Announcer(Session& session, ElevationView& view, QLabel& place)
    : QObject(&view),
      m_session(session),
      m_view(view),
      m_place(place),
      m_told(session.work().findings) {
    connect(&session, &Session::selectionChanged, this, &Announcer::tellSelection);
    // Once for each step, not while something is dragged.
    connect(&session.undoStack(), &QUndoStack::indexChanged, this, &Announcer::tellFindings);
    connect(&session, &Session::started, this, &Announcer::tellFindings);
}

void Announcer::tellSelection() {
    const Selection& selection = m_session.selection();
    if (selection.isEmpty()) {
        say(tr("Nothing is selected."));
        return;
    }
    if (selection.openings.size() > 1) {
        say(tr("%n fronts selected", nullptr, static_cast<int>(selection.openings.size())));
    } else {
        QStringList words{nameOf(selection, m_session.project(), m_session.plan()),
                          sizeOf(selection, m_session.plan(), m_session.style()),
                          heedOf(selection, m_session.work(), m_session.style())};
        words.removeAll(QString());
        say(words.join(QStringLiteral(", ")));
    }
    if (!QAccessible::isActive())
        return;
    if (QAccessibleInterface* part = accessiblePart(m_view, selection)) {
        for (const auto type : {QAccessible::Selection, QAccessible::Focus}) {
            QAccessibleEvent event(part, type);
            QAccessible::updateAccessibility(&event);
        }
    }
}

void Announcer::tellFindings() {
    if (m_session.work().findings == m_told)
        return;
    m_told = m_session.work().findings;
    say(findingsSummary(m_told));
}

void Announcer::say(const QString& words) {
    m_place.setAccessibleName(words);
    QAccessibleEvent event(&m_place, QAccessible::Alert);
    QAccessible::updateAccessibility(&event);
    Q_EMIT said(words);
}

QString findingsSummary(const std::vector<Finding>& findings) {
    if (findings.empty())
        return Announcer::tr("Nothing to heed.");
    std::array<int, 4> counts{};
    for (const Finding& finding : findings)
        ++counts[static_cast<std::size_t>(finding.severity)];
    const std::array<QString, 4> words{
        Announcer::tr("%1 would ruin a part"), Announcer::tr("%1 will not work"),
        Announcer::tr("%1 outside good practice"), Announcer::tr("%1 to know")};
    QStringList parts;
    for (std::size_t i = 0; i < counts.size(); ++i)
        if (counts[i] > 0)
            parts << words[i].arg(counts[i]);
    return parts.join(QStringLiteral(" · "));
}

} // namespace frontwright
