#include "ui/elevation/part_words.h"

#include "core/lengths/format.h"
#include "ui/elevation/scene_rect.h"

namespace frontwright {

QString PartWords::name(const PlacedPart& part) const {
    const FrontPlan* front = m_plan.frontOf(part.opening);
    if (!front)
        return {};
    const QString where = QString::fromStdString(label(m_project, *front));
    if (part.kind == PlacedPart::Kind::MountingHole)
        return tr("hole %1 of %2").arg(part.index + 1).arg(where);
    if (front->hardware && front->hardware->handles.size() > 1)
        return tr("handle %1 of %2").arg(part.index + 1).arg(where);
    return tr("handle of %1").arg(where);
}

QString PartWords::moved(CasePoint by) const {
    const auto words = [this](Length length) {
        return QString::fromStdString(shown(length.magnitude(), m_style));
    };
    QString across, upright;
    if (!by.x.isZero())
        across = by.x < Length() ? tr("%1 left").arg(words(by.x)) : tr("%1 right").arg(words(by.x));
    if (!by.y.isZero())
        upright = by.y < Length() ? tr("%1 down").arg(words(by.y)) : tr("%1 up").arg(words(by.y));
    if (across.isEmpty() && upright.isEmpty())
        return tr("Where it was");
    if (across.isEmpty() || upright.isEmpty())
        return tr("Moved %1").arg(across + upright);
    return tr("Moved %1, %2").arg(across, upright);
}

QString PartWords::across(const PartSnap& snap) const {
    const QString to = target(snap, Axis::Across);
    return to.isEmpty() ? QString() : tr("Across: %1").arg(to);
}

QString PartWords::upright(const PartSnap& snap) const {
    const QString to = target(snap, Axis::Upright);
    return to.isEmpty() ? QString() : tr("Height: %1").arg(to);
}

QString PartWords::target(const PartSnap& snap, Axis axis) const {
    const QString like = snap.like ? name(*snap.like) : QString();
    switch (snap.to) {
    case PartSnapTo::Grid:
        return {};
    case PartSnapTo::Start:
        return tr("as it was");
    case PartSnapTo::FrontCentre:
        return tr("centre line of the front");
    case PartSnapTo::WallCentre:
        return tr("centre line of the box wall");
    case PartSnapTo::FieldCentre:
        return tr("centre line of the field");
    case PartSnapTo::AllowedEdge:
        return tr("edge of where a screw may go");
    case PartSnapTo::FieldEdge:
        return tr("base at the field's edge");
    case PartSnapTo::SameLine:
        return axis == Axis::Across ? tr("in line with %1").arg(like)
                                    : tr("level with %1").arg(like);
    case PartSnapTo::SameHeight:
        return tr("same height as %1").arg(like);
    case PartSnapTo::Mirrored:
        break;
    }
    return tr("mirrors %1").arg(like);
}

QRectF partRect(const Plan& plan, const PlacedPart& part) {
    const auto centre = centreOf(plan, part);
    if (!centre)
        return {};
    const FrontPlan& front = *plan.frontOf(part.opening);
    if (part.kind == PlacedPart::Kind::Handle) {
        const FrontRect& base = front.hardware->handles[part.index].footprint;
        const CasePoint corner = front.rect.lowerLeft();
        return inScene(CaseRect{corner.x + base.left, corner.y + base.bottom, corner.x + base.right,
                                corner.y + base.top});
    }
    const Length r =
        greatest(front.mounting.clearanceHole, front.mounting.screw->headDiameter).half();
    return inScene(CaseRect{centre->x - r, centre->y - r, centre->x + r, centre->y + r});
}

QRectF partFrame(const Plan& plan, const PlacedPart& part, double pixelsPerMm) {
    const double room = 4 / pixelsPerMm;
    const QRectF rect = partRect(plan, part);
    return rect.isEmpty() ? rect : rect.adjusted(-room, -room, room, room);
}

std::optional<PlacedPart> selectedPart(const Selection& selection, const Plan& plan) {
    const auto opening = selection.lastOpening();
    const FrontPlan* front = opening ? plan.frontOf(*opening) : nullptr;
    if (!front || selection.openings.size() != 1)
        return std::nullopt;
    std::optional<PlacedPart> part;
    if (selection.mountingHole)
        part = PlacedPart{PlacedPart::Kind::MountingHole, *opening, *selection.mountingHole};
    else if (selection.handleHole && front->hardware)
        part = PlacedPart{PlacedPart::Kind::Handle, *opening,
                          handleOfHole(*front->hardware, *selection.handleHole)};
    return part && centreOf(plan, *part) ? part : std::nullopt;
}

Selection selectionOf(const PlacedPart& part, const Plan& plan) {
    Selection selection = Selection::of(part.opening);
    const FrontPlan* front = plan.frontOf(part.opening);
    if (part.kind == PlacedPart::Kind::MountingHole)
        selection.mountingHole = part.index;
    else if (front && front->hardware)
        selection.handleHole = firstHoleOf(*front->hardware, part.index);
    return selection;
}

} // namespace frontwright
