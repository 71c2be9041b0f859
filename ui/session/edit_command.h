#pragma once

#include "ui/session/session.h"

#include <QElapsedTimer>
#include <QUndoCommand>

namespace frontwright {

/// The one undo command: the work before and after. Keeping both is cheap, since Projects share
/// their divisions, and undo brings back the very same values.
class EditCommand : public QUndoCommand {
public:
    EditCommand(Session& session, const QString& name, std::shared_ptr<const Work> before,
                std::shared_ptr<const Work> after, Merge merge);

    void undo() override;
    void redo() override;
    [[nodiscard]] int id() const override;
    /// Quick edits of the same name within 500 ms are one step (a held arrow key).
    bool mergeWith(const QUndoCommand* next) override;

private:
    Session& m_session;
    std::shared_ptr<const Work> m_before;
    std::shared_ptr<const Work> m_after;
    Merge m_merge;
    QElapsedTimer m_made;
};

} // namespace frontwright
