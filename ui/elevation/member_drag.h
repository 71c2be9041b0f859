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

    void typed(Length distance) override;
    [[nodiscard]] bool isTyped() const override { return m_typed; }
    [[nodiscard]] QString asks() const override;
    [[nodiscard]] QString heldBecause() const override { return m_heldBecause; }
    [[nodiscard]] QString hint() const override;
    [[nodiscard]] bool isOvertaken() const override { return m_begun && !m_session.isPreviewing(); }
    /// Left–right or up–down; what the cursor shows.
    [[nodiscard]] DragAxis axis() const { return m_axis; }
    [[nodiscard]] Length moved() const { return m_moved; }

private:
    void moveTo(const Snapped&);
    void describe(const Snapped&, const Phrase& heldBecause);
    void tagSizes();
    [[nodiscard]] QString name() const;

    Session& m_session;
    MemberId m_member;
    Emphasis& m_emphasis;
    DragAxis m_axis = DragAxis::UpDown;
    QPointF m_start;
    Length m_moved;
    Length m_wanted;
    QString m_heldBecause;
    bool m_suspended = false; ///< snapping, by Alt
    bool m_typed = false;
    bool m_begun = false;    ///< something was previewed
    bool m_snapping = false; ///< hysteresis: once snapped it takes a little more to get away
};

} // namespace frontwright
