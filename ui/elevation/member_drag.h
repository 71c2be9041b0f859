#pragma once

#include "core/edits/divisions.h"
#include "core/edits/snap.h"
#include "ui/elevation/emphasis_item.h"
#include "ui/elevation/tool.h"
#include "ui/session/session.h"

#include <QCoreApplication>

namespace frontwright {

/// Drags a member: previews the edit's own result, shows both neighbours' sizes, a ghost of the old
/// place, what it snaps to and why it is held. Released = one undo step; cancelled = no trace.
class MemberDrag : public Tool {
    Q_DECLARE_TR_FUNCTIONS(frontwright::MemberDrag)
public:
    MemberDrag(Session&, MemberId, Emphasis& emphasis);

    void begin(const PointerAt&) override;
    void moved(const PointerAt&) override;
    void released(const PointerAt&) override;
    void cancel() override;

    /// Moves by exactly this far, as typed: the sign is the drag's direction, so that "1/2" while
    /// dragging down means half an inch down. From then on the mouse no longer moves it.
    void typed(Length distance);
    [[nodiscard]] bool isTyped() const { return m_typed; }
    /// Left–right or up–down; what the cursor shows.
    [[nodiscard]] DragAxis axis() const { return m_axis; }
    [[nodiscard]] Length moved() const { return m_moved; }

private:
    /// Undo, redo or another edit came in between: nothing more is to be moved.
    [[nodiscard]] bool isOvertaken() const { return m_begun && !m_session.isPreviewing(); }
    void moveTo(const Snapped&);
    void describe(const Snapped&, const std::string& heldBecause);
    void tagSizes();
    [[nodiscard]] QString name() const;

    Session& m_session;
    MemberId m_member;
    Emphasis& m_emphasis;
    DragAxis m_axis = DragAxis::UpDown;
    QPointF m_start;
    Length m_moved;
    Length m_wanted;
    bool m_typed = false;
    bool m_begun = false;    ///< something was previewed
    bool m_snapping = false; ///< hysteresis: once snapped it takes a little more to get away
};

} // namespace frontwright
