#include "ui/session/edit_command.h"

namespace frontwright {

namespace {
constexpr qint64 quickMs = 500;
}

EditCommand::EditCommand(Session& session, const QString& name, std::shared_ptr<const Work> before,
                         std::shared_ptr<const Work> after, Merge merge)
    : QUndoCommand(name),
      m_session(session),
      m_before(std::move(before)),
      m_after(std::move(after)),
      m_merge(merge) {
    m_made.start();
}

void EditCommand::undo() {
    m_session.jumpTo(m_before);
}

void EditCommand::redo() {
    m_session.jumpTo(m_after);
}

int EditCommand::id() const {
    return m_merge == Merge::Quick ? 1 : -1;
}

bool EditCommand::mergeWith(const QUndoCommand* next) {
    const auto* other = static_cast<const EditCommand*>(next);
    if (other->text() != text() || other->m_before != m_after || m_made.elapsed() > quickMs)
        return false;
    m_after = other->m_after;
    m_made.restart();
    setObsolete(m_after->project == m_before->project);
    return true;
}

} // namespace frontwright
