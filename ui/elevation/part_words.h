#pragma once

#include "core/edits/part_snap.h"
#include "ui/session/session.h"

#include <QCoreApplication>
#include <QRectF>

namespace frontwright {

/// What is said of a hole or handle that is placed by hand, and where it is on the drawing.
class PartWords {
    Q_DECLARE_TR_FUNCTIONS(frontwright::PartWords)
public:
    PartWords(const Project& project, const Plan& plan, LengthStyle style)
        : m_project(project),
          m_plan(plan),
          m_style(style) {}

    /// "Hole 2 of A1", "Handle of A1".
    [[nodiscard]] QString name(const PlacedPart&) const;
    /// "Moved 1/2 in left, 3/8 in up".
    [[nodiscard]] QString moved(CasePoint by) const;
    /// What a coordinate has snapped to; empty where it lies on the grid only.
    [[nodiscard]] QString across(const PartSnap&) const;
    [[nodiscard]] QString upright(const PartSnap&) const;

private:
    enum class Axis : std::uint8_t { Across, Upright };
    [[nodiscard]] QString target(const PartSnap&, Axis) const;
    const Project& m_project;
    const Plan& m_plan;
    LengthStyle m_style;
};

/// What a press grabs of it, in the case's mm: a handle's base, the square round a hole.
QRectF partRect(const Plan&, const PlacedPart&);

/// The same with a little room round it, so that a frame hides nothing of the part.
QRectF partFrame(const Plan&, const PlacedPart&, double pixelsPerMm);

/// The part that a selection names, if any.
std::optional<PlacedPart> selectedPart(const Selection&, const Plan&);
Selection selectionOf(const PlacedPart&, const Plan&);

} // namespace frontwright
