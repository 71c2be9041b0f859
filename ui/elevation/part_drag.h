#pragma once

#include "core/edits/part_snap.h"
#include "ui/elevation/emphasis_item.h"
#include "ui/elevation/tool.h"
#include "ui/session/session.h"

#include <QCoreApplication>

namespace frontwright {

/// Drags a mounting hole or a whole handle; with Shift those down the bank go along. Previews the
/// edit's own result and says beside the pointer how far it moves, what it snaps to and what its
/// front's findings have become. Its distances are the drawing's own dimensions of the selected
/// part. Released = one undo step; cancelled = no trace.
class PartDrag : public Tool {
    Q_DECLARE_TR_FUNCTIONS(frontwright::PartDrag)
public:
    PartDrag(Session&, const PlacedPart&, Emphasis& emphasis);

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

private:
    enum class Towards : std::uint8_t { Left, Right, Down, Up };
    [[nodiscard]] Towards direction() const;
    void moveTo(const SnappedPart&);
    void describe();
    void showGuides();
    void say();
    void sayFindings(std::vector<Emphasis::Notice::Line>&) const;

    Session& m_session;
    PlacedPart m_part;
    Emphasis& m_emphasis;
    PointerAt m_at;
    QPointF m_start;     ///< where it was pressed
    CasePoint m_from;    ///< the part's centre before the drag
    CasePoint m_pointed; ///< how far the pointer has gone
    SnappedPart m_snapped;
    Together m_together = Together::Alone;
    QString m_heldBecause;
    bool m_suspended = false; ///< snapping, by Alt
    bool m_typed = false;
    bool m_begun = false; ///< something was previewed
};

} // namespace frontwright
