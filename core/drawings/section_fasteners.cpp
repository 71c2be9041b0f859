#include "core/drawings/section_parts.h"

#include "core/drawings/handle_shapes.h"

#include <algorithm>
#include <cmath>

namespace frontwright {

namespace {

using Points = std::vector<PointMm>;

constexpr double centreOverrun = 3; // of paper, past a fastener (ISO 128: 2 to 5 mm)

Points rectangleRound(double axis, double fromX, double toX, double diameter) {
    const double half = diameter / 2;
    return cornersOf(
        {PointMm(std::min(fromX, toX), axis - half), PointMm(std::max(fromX, toX), axis + half)});
}

/// Given by its upper half, from the head to the tip; the lower half mirrors it.
FastenerBody bodyOf(double axis, const Points& upperHalf) {
    Points outline;
    for (const PointMm& p : upperHalf)
        outline.emplace_back(p.x(), axis + p.y());
    for (auto p = upperHalf.rbegin(); p != upperHalf.rend(); ++p)
        if (p->y() != 0)
            outline.emplace_back(p->x(), axis - p->y());
    return {std::move(outline), axis};
}

/// Countersunk head, shank, conical tip.
FastenerBody screwBody(double axis, const ScrewReach& reach, const WoodScrew& screw) {
    const double shank = screw.shankDiameter.inMillimetres() / 2;
    const double head = screw.headDiameter.inMillimetres() / 2;
    const double length = reach.head - reach.tip;
    const double neck = reach.head - std::min(screw.headHeight.inMillimetres(), length / 2);
    const double taper = std::min(reach.tip + 3 * shank, neck);
    return bodyOf(axis, {{reach.head, head}, {neck, shank}, {taper, shank}, {reach.tip, 0}});
}

/// Pan head, shank with its end broken.
FastenerBody boltBody(double axis, const BoltReach& reach, const Bolt& bolt) {
    const double shank = bolt.majorDiameter.inMillimetres() / 2;
    const double head = bolt.headDiameter.inMillimetres() / 2;
    const double headHeight = bolt.headHeight.inMillimetres();
    const double under = reach.underHead;
    const double bevel = std::min(shank * 0.4, (under - reach.end) / 2);
    return bodyOf(axis, {{under + headHeight, head * 0.6},
                         {under + headHeight * 0.6, head},
                         {under, head},
                         {under, shank},
                         {reach.end + bevel, shank},
                         {reach.end, shank - bevel}});
}

/// Holes that lie in this section: the selected one and those above and below it.
std::vector<std::uint32_t> holesInSection(const SectionSubject& subject) {
    std::vector<std::uint32_t> indices;
    const MountingHole* selected = subject.hole();
    const auto& holes = subject.front.mounting.holes;
    for (std::uint32_t i = 0; i < holes.size(); ++i)
        if (selected != nullptr &&
            (subject.isLevel() ? holes[i].at.y == selected->at.y : holes[i].at.x == selected->at.x))
            indices.push_back(i);
    return indices;
}

double heightOf(const SectionSubject& subject, const MountingHole& hole) {
    return subject.along(toFront(subject.front.box, hole.at)).inMillimetres();
}

/// What is bored for one screw: clearance hole as far as its head and, where the head is sunk
/// deeper, the recess before it.
struct ScrewVoids {
    Points clearance;
    Points recess; ///< empty where there is none
};
ScrewVoids screwVoids(const SectionSubject& subject, double axis) {
    const MountingPlan& mounting = subject.front.mounting;
    const double head = subject.wall() - mounting.recess.inMillimetres();
    const double neck = std::max(0.0, head - mounting.screw->headHeight.inMillimetres());
    ScrewVoids voids;
    voids.clearance = rectangleRound(axis, 0, neck, mounting.clearanceHole.inMillimetres());
    if (head < subject.wall())
        voids.recess = rectangleRound(axis, head, subject.wall(),
                                      mounting.screw->headDiameter.inMillimetres());
    return voids;
}

/// Lines nearer to a fastener's own than this on paper are left out: they would run into one.
constexpr double nearestToFastener = 0.3;
bool isApart(const Sketch& sketch, Length diameter, Length other) {
    return (diameter - other).inMillimetres() / 2 * sketch.paperScale() >= nearestToFastener;
}

struct BoltVoids {
    Points hole;
    Points counterbore; ///< empty where there is none
    Points access;      ///< empty where there is none
};
BoltVoids boltVoids(const SectionSubject& subject, const HardwarePlan& hardware, double axis) {
    const BoltReach reach = boltReach(subject, hardware);
    BoltVoids voids;
    voids.hole = rectangleRound(axis, -subject.thickness(), reach.underHead,
                                hardware.holeDiameter.inMillimetres());
    if (reach.bored > reach.underHead)
        voids.counterbore = rectangleRound(axis, reach.underHead, reach.bored,
                                           hardware.counterboreDiameter.inMillimetres());
    if (hardware.chosen == MountingWay::FrontAccessHole)
        voids.access =
            rectangleRound(axis, 0, subject.wall(), hardware.accessDiameter.inMillimetres());
    return voids;
}

/// Slanted strokes over the threaded two thirds of a wood screw.
void drawWoodThread(Sketch& sketch, double axis, const ScrewReach& reach, const WoodScrew& screw,
                    const Part& part) {
    const double radius = screw.shankDiameter.inMillimetres() / 2;
    const double pitch = std::max(radius, sketch.forPaper(0.7));
    const double start = reach.tip + (reach.head - reach.tip) * 2 / 3;
    for (double x = reach.tip + 3 * radius; x + pitch / 2 < start; x += pitch)
        sketch.line(Layer::Fastener, {x, axis - radius}, {x + pitch / 2, axis + radius}, part);
}

void drawCentreLine(Sketch& sketch, double axis, double fromX, double toX, const Part& part) {
    const double beyond = sketch.forPaper(centreOverrun);
    sketch.line(Layer::Centre, {fromX - beyond, axis}, {toX + beyond, axis}, part);
}

void drawScrew(Sketch& sketch, const SectionSubject& subject, std::uint32_t index) {
    const MountingHole& hole = subject.front.mounting.holes[index];
    const WoodScrew& screw = *subject.front.mounting.screw;
    const double axis = heightOf(subject, hole);
    const std::string name = "screw " + std::to_string(index + 1);
    const Part part{subject.front.opening, std::nullopt, name};
    const auto reach = screwReach(subject, hole);
    const ScrewVoids voids = screwVoids(subject, axis);
    if (!reach || isApart(sketch, subject.front.mounting.clearanceHole, screw.shankDiameter))
        sketch.path(Layer::Hole, voids.clearance, PathMark::End::Closed, part);
    if (!voids.recess.empty())
        sketch.path(Layer::Hole, voids.recess, PathMark::End::Closed, part);
    if (!reach)
        return drawCentreLine(sketch, axis, -subject.thickness(), subject.wall(), part);
    sketch.path(Layer::Fastener, screwBody(axis, *reach, screw).outline, PathMark::End::Closed,
                part);
    drawWoodThread(sketch, axis, *reach, screw, part);
    drawCentreLine(sketch, axis, std::min(reach->tip, -subject.thickness()), subject.wall(), part);
    if (reach->tip <= -hole.thickness.inMillimetres())
        sketch.circle(Layer::Fastener, {reach->tip, axis}, sketch.forPaper(4),
                      {subject.front.opening, std::nullopt, name + " through the face"});
}

/// Lines at the thread's root, as machine screws are drawn (ISO 6410, from memory).
void drawMachineThread(Sketch& sketch, double axis, const BoltReach& reach, const Bolt& bolt,
                       const Part& part) {
    const double root = bolt.majorDiameter.inMillimetres() / 2 * 0.8;
    if (root * 0.25 * sketch.paperScale() < nearestToFastener)
        return;
    for (const double y : {axis - root, axis + root})
        sketch.line(Layer::Fastener, {reach.end, y}, {reach.underHead, y}, part);
}

/// The room that a driver as thick as the bolt's head takes up, from the head into the box.
void drawDriver(Sketch& sketch, const SectionSubject& subject, const HardwarePlan& hardware,
                double axis) {
    const double half = hardware.bolt->headDiameter.inMillimetres() / 2;
    const double from = boltReach(subject, hardware).headTop;
    for (const double y : {axis - half, axis + half})
        sketch.line(Layer::BoxEdge, {from, y}, {subject.boxEnd(), y},
                    {subject.front.opening, std::nullopt, "driver"});
}

void drawBolt(Sketch& sketch, const SectionSubject& subject, const HardwarePlan& hardware,
              double axis) {
    const Part part{subject.front.opening, std::nullopt, "bolt"};
    const BoltVoids voids = boltVoids(subject, hardware, axis);
    const auto outline = [&](Layer layer, const Points& points, std::string name) {
        if (!points.empty())
            sketch.path(layer, points, PathMark::End::Closed,
                        {subject.front.opening, std::nullopt, std::move(name)});
    };
    if (isApart(sketch, hardware.holeDiameter, hardware.bolt->majorDiameter))
        outline(Layer::Hole, voids.hole, "bolt hole");
    outline(Layer::Counterbore, voids.counterbore, "counterbore");
    outline(Layer::AccessHole, voids.access, "access hole");
    const double face = -subject.thickness();
    outline(Layer::Hole,
            rectangleRound(axis, face - hardware.form->threadDepth.inMillimetres(), face,
                           hardware.bolt->majorDiameter.inMillimetres()),
            "handle's thread");
    const BoltReach reach = boltReach(subject, hardware);
    sketch.path(Layer::Fastener, boltBody(axis, reach, *hardware.bolt).outline,
                PathMark::End::Closed, part);
    drawMachineThread(sketch, axis, reach, *hardware.bolt, part);
    drawCentreLine(sketch, axis, face - subject.handleProjection(),
                   std::max(subject.wall(), reach.underHead), part);
    if (hardware.chosen == MountingWay::FrontAccessHole)
        drawDriver(sketch, subject, hardware, axis);
}

} // namespace

std::optional<ScrewReach> screwReach(const SectionSubject& subject, const MountingHole& hole) {
    const auto& length = subject.front.mounting.length;
    if (!length)
        return std::nullopt;
    const double tip = -hole.penetration.inMillimetres();
    return ScrewReach{tip + length->inMillimetres(), tip};
}

BoltReach boltReach(const SectionSubject& subject, const HardwarePlan& hardware) {
    const WayPlan& way = hardware.chosenWay();
    BoltReach reach;
    reach.bored = way.way == MountingWay::ThroughWall ? subject.wall() : 0;
    reach.underHead = reach.bored - way.counterbore.inMillimetres();
    reach.headTop = reach.underHead + hardware.bolt->headHeight.inMillimetres();
    reach.end = reach.underHead - way.length.value_or(way.leastLength).inMillimetres();
    return reach;
}

/// A lying pull's two holes are one behind the other in the upright section. In the level one bolts
/// give way to the screws of the row through which it is laid.
std::vector<double> boltAxes(const SectionSubject& subject, const HardwarePlan& hardware) {
    std::vector<double> axes;
    const double screw = subject.front.mounting.screw->headDiameter.inMillimetres() / 2;
    const double bolt =
        greatest(hardware.counterboreDiameter, hardware.accessDiameter).inMillimetres() / 2;
    for (const FrontPoint& hole : hardware.holes) {
        const double axis = subject.along(hole).inMillimetres();
        bool isFree = true;
        if (subject.isLevel())
            for (const std::uint32_t i : holesInSection(subject))
                isFree = isFree && std::abs(heightOf(subject, subject.front.mounting.holes[i]) -
                                            axis) > screw + bolt;
        if (isFree)
            axes.push_back(axis);
    }
    std::sort(axes.begin(), axes.end());
    axes.erase(std::unique(axes.begin(), axes.end()), axes.end());
    return axes;
}

FastenerShapes fastenerShapes(const SectionSubject& subject) {
    FastenerShapes shapes;
    for (const std::uint32_t i : holesInSection(subject)) {
        const MountingHole& hole = subject.front.mounting.holes[i];
        const double axis = heightOf(subject, hole);
        const ScrewVoids voids = screwVoids(subject, axis);
        shapes.voids.push_back(voids.clearance);
        if (!voids.recess.empty())
            shapes.voids.push_back(voids.recess);
        if (const auto reach = screwReach(subject, hole))
            shapes.bodies.push_back(screwBody(axis, *reach, *subject.front.mounting.screw));
    }
    for (Points& outline : fittingVoids(subject))
        shapes.voids.push_back(std::move(outline));
    if (!subject.front.hardware)
        return shapes;
    const HardwarePlan& hardware = *subject.front.hardware;
    for (const double axis : boltAxes(subject, hardware)) {
        BoltVoids voids = boltVoids(subject, hardware, axis);
        for (Points* outline : {&voids.hole, &voids.counterbore, &voids.access})
            if (!outline->empty())
                shapes.voids.push_back(std::move(*outline));
        shapes.bodies.push_back(boltBody(axis, boltReach(subject, hardware), *hardware.bolt));
    }
    return shapes;
}

void drawFasteners(Sketch& sketch, const SectionSubject& subject) {
    for (const std::uint32_t i : holesInSection(subject))
        drawScrew(sketch, subject, i);
    drawFittingsInSection(sketch, subject);
    if (!subject.front.hardware)
        return;
    const HardwarePlan& hardware = *subject.front.hardware;
    const Part part{subject.front.opening, std::nullopt, "handle"};
    std::vector<double> centres;
    for (const HandlePlan& handle : hardware.handles)
        centres.push_back(subject.along(handle.centre).inMillimetres());
    std::sort(centres.begin(), centres.end());
    centres.erase(std::unique(centres.begin(), centres.end()), centres.end());
    for (const double centre : centres)
        if (subject.isLevel())
            drawHandleFromAbove(sketch, *hardware.form, -subject.thickness(), centre, part);
        else
            drawHandleFromSide(sketch, *hardware.form, -subject.thickness(), centre, part);
    for (const double axis : boltAxes(subject, hardware))
        drawBolt(sketch, subject, hardware, axis);
}

} // namespace frontwright
