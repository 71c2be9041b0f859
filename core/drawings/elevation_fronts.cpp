#include "core/drawings/elevation_parts.h"

#include "core/drawings/fitting_shapes.h"
#include "core/drawings/handle_shapes.h"
#include "core/plan/own_part.h"

#include <algorithm>

namespace frontwright {

namespace {

/// Of a hole's cross beyond its circle, on paper (ISO 128: 2 to 5 mm), but no more than a part of
/// a small front.
constexpr double crossBeyondCircle = 2.0;
constexpr double crossPartOfFront = 0.1;

/// Kept free between a hole or a handle and a text, on paper.
constexpr double besideObstacle = 0.4;

BoxMm grown(const BoxMm& box, double by) {
    return {box.min() - PointMm(by, by), box.max() + PointMm(by, by)};
}

Part partOf(const FrontPlan& front, std::string name) {
    return {front.opening, std::nullopt, std::move(name)};
}

double crossArm(const FrontPlan& front, double radius, double paperScale) {
    const double smaller = least(front.rect.width(), front.rect.height()).inMillimetres();
    return radius + std::min(crossBeyondCircle / paperScale, crossPartOfFront * smaller);
}

void drawHole(Sketch& sketch, const FrontPlan& front, const PointMm& at, double radius,
              const Part& part) {
    const double arm = crossArm(front, radius, sketch.paperScale());
    sketch.circle(Layer::Hole, at, radius, part);
    sketch.line(Layer::Hole, at - PointMm(arm, 0), at + PointMm(arm, 0), part);
    sketch.line(Layer::Hole, at - PointMm(0, arm), at + PointMm(0, arm), part);
}

void drawHardwareHoles(Sketch& sketch, const FrontPlan& front, const HardwarePlan& hardware) {
    const bool isBored = !hardware.chosenWay().counterbore.isZero();
    for (std::size_t i = 0; i < hardware.holes.size(); ++i) {
        const PointMm at = inCase(front, hardware.holes[i]);
        const std::string name = "handle hole " + std::to_string(i + 1);
        drawHole(sketch, front, at, hardware.holeDiameter.inMillimetres() / 2, partOf(front, name));
        if (isBored)
            sketch.circle(Layer::Counterbore, at, hardware.counterboreDiameter.inMillimetres() / 2,
                          partOf(front, name + " counterbore"));
        if (hardware.chosen == MountingWay::FrontAccessHole)
            sketch.circle(Layer::AccessHole, at, hardware.accessDiameter.inMillimetres() / 2,
                          partOf(front, name + " access hole"));
    }
}

BoxMm inCase(const FrontPlan& front, const FrontRect& rect) {
    const BoxMm box = toMm(rect);
    const PointMm origin = toMm(front.rect.lowerLeft());
    return {box.min() + origin, box.max() + origin};
}
BoxMm wallInCase(const BoxPlan& box, const WallRect& rect) {
    const BoxMm inWall = toMm(rect);
    const PointMm origin = toMm(box.origin);
    return {inWall.min() + origin, inWall.max() + origin};
}

/// The line where the field begins and, where two profiled edges meet, their mitre.
void drawProfile(Sketch& sketch, const FrontPlan& front) {
    const Profile& profile = *front.profile;
    if (profile.family == ProfileFamily::Square || front.field.isEmpty() ||
        profile.width.length.inMillimetres() * sketch.paperScale() < nearestParallel)
        return;
    const BoxMm outer = toMm(front.rect), field = inCase(front, front.field);
    const auto outerCorners = cornersOf(outer), fieldCorners = cornersOf(field);
    const Part part = partOf(front, "profile line");
    // Sides in the order in which the corners run: bottom, right, top, left.
    const std::array sides{profile.sides.bottom, profile.sides.right, profile.sides.top,
                           profile.sides.left};
    for (std::size_t i = 0; i < sides.size(); ++i) {
        if (sides[i])
            sketch.line(Layer::ProfileLine, fieldCorners[i], fieldCorners[(i + 1) % 4], part);
        if (sides[i] && sides[(i + 3) % 4])
            sketch.line(Layer::ProfileLine, outerCorners[i], fieldCorners[i], part);
    }
}

} // namespace

PointMm inCase(const FrontPlan& front, FrontPoint p) {
    return toMm(front.rect.lowerLeft()) + toMm(p);
}

ElevationOptions shownOn(const FrontPlan& front, const ElevationOptions& options) {
    ElevationOptions shown = options;
    if (options.emphasisedPart && options.emphasisedPart->opening == front.opening) {
        shown.boxes = Shown::Yes;
        shown.holes = Shown::Yes;
        if (options.emphasisedPart->kind == PlacedPart::Kind::MountingHole) {
            shown.bottoms = Shown::Yes;
            shown.allowedRegion = Shown::Yes;
        } else {
            shown.fields = Shown::Yes;
        }
    }
    return shown;
}

void drawBoxOutline(Sketch& sketch, const FrontPlan& front) {
    if (front.hasBox() && !front.box.wall.isEmpty())
        sketch.rectangle(Layer::BoxEdge, wallInCase(front.box, front.box.wall),
                         partOf(front, "box edge"));
}

void drawField(Sketch& sketch, const FrontPlan& front) {
    if (!front.field.isEmpty())
        sketch.rectangle(Layer::FieldEdge, inCase(front, front.field), partOf(front, "field"));
}

void drawBottom(Sketch& sketch, const FrontPlan& front) {
    const BoxPlan& box = front.box;
    if (!front.hasBox() || box.wall.isEmpty())
        return;
    for (const Length height : {box.bottomUnderside, box.bottomTop}) {
        const BoxMm line = wallInCase(box, {box.wall.left + box.sideThickness, height,
                                            box.wall.right - box.sideThickness, height});
        sketch.line(Layer::BottomPanel, line.min(), line.max(), partOf(front, "bottom"));
    }
}

void drawAllowedRegion(Sketch& sketch, const FrontPlan& front) {
    const WallRegion& region = front.mounting.allowed;
    if (!front.isScrewedOn() || region.outer.isEmpty())
        return;
    const Part part = partOf(front, "allowed region");
    sketch.rectangle(Layer::AllowedRegion, wallInCase(front.box, region.outer), part);
    for (const WallRect& rect : region.withoutRects)
        if (const WallRect common = rect.common(region.outer); !common.isEmpty())
            sketch.rectangle(Layer::AllowedRegion, wallInCase(front.box, common), part);
    for (const WallDisc& disc : region.withoutDiscs)
        if (region.outer.inset(-disc.radius).contains(disc.centre))
            sketch.circle(Layer::AllowedRegion, toMm(front.box.origin) + toMm(disc.centre),
                          disc.radius.inMillimetres(), part);
}

void drawHoles(Sketch& sketch, const FrontPlan& front) {
    const MountingPlan& mounting = front.mounting;
    for (std::size_t i = 0; i < mounting.holes.size(); ++i)
        drawHole(sketch, front, inCase(front, toFront(front.box, mounting.holes[i].at)),
                 mounting.pilotHole.inMillimetres() / 2,
                 partOf(front, "hole " + std::to_string(i + 1)));
    if (front.hardware)
        drawHardwareHoles(sketch, front, *front.hardware);
    if (front.fittings)
        for (std::size_t i = 0; i < front.fittings->size(); ++i)
            drawFittingCuts(sketch, (*front.fittings)[i], toMm(front.rect.lowerLeft()),
                            partOf(front, "cuts of fitting " + std::to_string(i + 1)));
}

std::vector<BoxMm> handleBoxes(const FrontPlan& front, const ElevationOptions& options) {
    std::vector<BoxMm> boxes;
    const double spare = besideObstacle / options.paperScale;
    if (front.fittings)
        for (const FittingPlan& fitting : *front.fittings)
            if (const BoxMm box = boxOf(fitting, toMm(front.rect.lowerLeft())); !box.isEmpty())
                boxes.push_back(grown(box, spare));
    if (!front.hardware)
        return boxes;
    const HardwarePlan& hardware = *front.hardware;
    for (const HandlePlan& handle : hardware.handles) {
        const BoxMm box = inCase(front, handle.footprint);
        boxes.push_back(grown(box, spare));
    }
    if (options.holes == Shown::No)
        return boxes;
    Length widest = hardware.holeDiameter;
    if (!hardware.chosenWay().counterbore.isZero())
        widest = greatest(widest, hardware.counterboreDiameter);
    if (hardware.chosen == MountingWay::FrontAccessHole)
        widest = greatest(widest, hardware.accessDiameter);
    const double arm =
        std::max(widest.inMillimetres() / 2,
                 crossArm(front, hardware.holeDiameter.inMillimetres() / 2, options.paperScale));
    for (const FrontPoint& hole : hardware.holes)
        boxes.push_back(grown(BoxMm(inCase(front, hole)), arm + spare));
    return boxes;
}

std::vector<BoxMm> screwBoxes(const FrontPlan& front, const ElevationOptions& options) {
    std::vector<BoxMm> boxes;
    if (options.holes == Shown::No)
        return boxes;
    const double arm =
        crossArm(front, front.mounting.pilotHole.inMillimetres() / 2, options.paperScale);
    for (const MountingHole& hole : front.mounting.holes)
        boxes.push_back(grown(BoxMm(inCase(front, toFront(front.box, hole.at))),
                              arm + besideObstacle / options.paperScale));
    return boxes;
}

std::vector<BoxMm> lineBoxes(const FrontPlan& front, const ElevationOptions& options) {
    std::vector<BoxMm> boxes;
    const double spare = besideObstacle / options.paperScale;
    const auto addSides = [&](const BoxMm& box) {
        const auto corners = cornersOf(box);
        for (std::size_t i = 0; i < corners.size(); ++i) {
            BoxMm side(corners[i]);
            boxes.push_back(grown(side.extend(corners[(i + 1) % corners.size()]), spare));
        }
    };
    if (front.rect.contains(front.openingRect))
        addSides(toMm(front.openingRect));
    const BoxPlan& box = front.box;
    if (options.fields == Shown::Yes && !front.field.isEmpty())
        addSides(inCase(front, front.field));
    if (!front.hasBox())
        return boxes;
    if (options.boxes == Shown::Yes && !box.wall.isEmpty())
        addSides(wallInCase(box, box.wall));
    if (options.bottoms == Shown::Yes && !box.wall.isEmpty())
        addSides(wallInCase(box, {box.wall.left, box.bottomUnderside, box.wall.right,
                                  greatest(box.bottomUnderside, box.bottomTop)}));
    const WallRect& region = front.mounting.allowed.outer;
    if (options.allowedRegion == Shown::Yes && !region.isEmpty())
        addSides(wallInCase(box, region));
    return boxes;
}

std::vector<BoxMm> obstaclesOn(const FrontPlan& front, const ElevationOptions& options) {
    std::vector<BoxMm> all = handleBoxes(front, options);
    for (const auto& boxes :
         {screwBoxes(front, options), lineBoxes(front, options), swingBoxes(front)})
        all.insert(all.end(), boxes.begin(), boxes.end());
    const bool isOfPart =
        options.emphasisedPart && options.emphasisedPart->opening == front.opening;
    if (options.keepFree && !isOfPart)
        all.push_back(toMm(*options.keepFree));
    return all;
}

Drawing frontElevation(const Project& project, const Plan& plan, std::uint32_t index,
                       const ElevationOptions& wanted) {
    const FrontPlan& front = plan.fronts[index];
    const ElevationOptions options = shownOn(front, wanted);
    Sketch sketch(options.paperScale);
    drawOpening(sketch, plan, front);
    sketch.rectangle(Layer::FrontEdge, toMm(front.rect), partOf(front, "front edge"));
    drawProfile(sketch, front);
    if (front.use == OpeningUse::Door)
        drawSwing(sketch, front);
    const bool isPlacing =
        options.emphasisedPart && options.emphasisedPart->opening == front.opening;
    const bool tellsBox = isFirstOnBox(front) || isPlacing;
    if (options.boxes == Shown::Yes && tellsBox)
        drawBoxOutline(sketch, front);
    if (options.bottoms == Shown::Yes && tellsBox)
        drawBottom(sketch, front);
    if (options.fields == Shown::Yes)
        drawField(sketch, front);
    if (options.allowedRegion == Shown::Yes)
        drawAllowedRegion(sketch, front);
    if (options.holes == Shown::Yes)
        drawHoles(sketch, front);
    if (front.hardware)
        for (std::size_t i = 0; i < front.hardware->handles.size(); ++i)
            drawHandle(sketch, *front.hardware->form,
                       inCase(front, front.hardware->handles[i].centre),
                       partOf(front, "handle " + std::to_string(i + 1)));
    if (front.fittings)
        for (std::size_t i = 0; i < front.fittings->size(); ++i)
            drawFitting(sketch, (*front.fittings)[i], toMm(front.rect.lowerLeft()),
                        partOf(front, "fitting " + std::to_string(i + 1)));
    drawLabel(sketch, {project, plan, options}, front);
    return std::move(sketch).unmeasured();
}

} // namespace frontwright
