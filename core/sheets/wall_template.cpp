#include "core/sheets/check_dimensions.h"
#include "core/sheets/inside_view.h"
#include "core/sheets/part_templates.h"

#include "core/lengths/format.h"
#include "core/plan/fillers.h"
#include "core/sheets/template_draft.h"
#include "core/sheets/text_lines.h"

#include <algorithm>

namespace frontwright {

namespace {

/// "A2, " before what is told of one of several fronts' holes, and of the front's name in parts.
struct Of {
    std::string words;
    std::string part;
};
Of ofFront(const TemplateSource& source, const FrontPlan& front) {
    if (!front.face || !front.hasBox())
        return {};
    const std::string name = label(source.project, front);
    return {name + ", ", name + " "};
}

void addMountingHoles(TemplateDraft& draft, const TemplateSource& source, const FrontPlan& front) {
    const Of of = ofFront(source, front);
    const MountingPlan& mounting = front.mounting;
    const InsideView inside(front.box);
    const double radius = mounting.clearanceHole.inMillimetres() / 2;
    for (std::size_t i = 0; i < mounting.holes.size(); ++i) {
        std::vector<Phrase> lines{
            phrase("%1: drill %2", of.words + number(i), drill(source, mounting.clearanceHole)),
            text("through, from inside")};
        if (mounting.recess > Length{})
            lines.push_back(phrase("head sunk %1", shown(mounting.recess, source.style)));
        draft.hole(Layer::Hole, {inside(mounting.holes[i].at), radius},
                   of.part + "mounting hole " + number(i), lines);
    }
}

void addBoltHole(TemplateDraft& draft, const TemplateSource& source, const HardwarePlan& hardware,
                 const PointMm& at, const Of& of, const std::string& which) {
    std::vector<Phrase> lines{
        phrase("bolt %1: drill %2", of.words + which, drill(source, hardware.holeDiameter)),
        text("through, with the front")};
    if (hardware.chosenWay().counterbore > Length{}) {
        lines.push_back(phrase("counterbore %1", drill(source, hardware.counterboreDiameter)));
        lines.push_back(
            phrase("%1 deep, from inside", shown(hardware.chosenWay().counterbore, source.style)));
        draft.circle(Layer::Counterbore, {at, hardware.counterboreDiameter.inMillimetres() / 2},
                     of.part + "counterbore " + which);
    }
    draft.hole(Layer::Hole, {at, hardware.holeDiameter.inMillimetres() / 2},
               of.part + "bolt hole " + which, lines);
}

void addHardwareHoles(TemplateDraft& draft, const TemplateSource& source, const FrontPlan& front) {
    const HardwarePlan& hardware = *front.hardware;
    const Of of = ofFront(source, front);
    const InsideView inside(front.box);
    for (std::size_t i = 0; i < hardware.holes.size(); ++i) {
        const PointMm at = inside(hardware.holes[i]);
        switch (hardware.chosen) {
        case MountingWay::ThroughWall:
            addBoltHole(draft, source, hardware, at, of, number(i));
            break;
        case MountingWay::FrontCounterbore:
            break; // nothing of it reaches the wall
        case MountingWay::FrontAccessHole:
            draft.hole(Layer::AccessHole, {at, hardware.accessDiameter.inMillimetres() / 2},
                       of.part + "access hole " + number(i),
                       {phrase("access %1: drill %2", of.words + number(i),
                               drill(source, hardware.accessDiameter)),
                        text("through the wall, from inside")});
            break;
        }
    }
}

/// Bottom panel, least height of a screw, and the box's sides: what a hole has to clear.
void addLimits(TemplateDraft& draft, const TemplateSource& source, const FrontPlan& front) {
    const BoxPlan& box = front.box;
    const double side = box.sideThickness.inMillimetres();
    const double width = box.width.inMillimetres(), height = box.height.inMillimetres();
    const auto level = [&](Length y) {
        return LineMark{{0, y.inMillimetres()}, {width, y.inMillimetres()}};
    };
    const LineMark underside = level(box.bottomUnderside), top = level(box.bottomTop);
    draft.line(Layer::BottomPanel, underside.from, underside.to, "bottom panel's underside");
    draft.namedLine(Layer::BottomPanel, top, "bottom panel's top",
                    {phrase("bottom panel's top %1", shown(box.bottomTop, source.style))},
                    TemplateLabel::Prefer::Low);
    draft.namedLine(Layer::AllowedRegion, level(front.mounting.leastHeight),
                    "least height of a screw",
                    {phrase("no screw below %1",
                            shown(front.mounting.leastHeight, source.style, Rounding::Up))});
    draft.namedLine(Layer::BoxEdge, {{side, 0}, {side, height}}, "inner face, left on the sheet",
                    draft.besideUpright(text("inner face of the side"), height),
                    TemplateLabel::Prefer::High, 90);
    draft.line(Layer::BoxEdge, {width - side, 0}, {width - side, height},
               "inner face, right on the sheet");
}

/// The fronts that hold on this wall; one where it has it alone.
std::vector<const FrontPlan*> frontsOn(const TemplateSource& source, const FrontPlan& first) {
    if (!first.face || !first.hasBox())
        return {&first};
    const DividedFace& face = source.plan.faces[*first.face];
    std::vector<const FrontPlan*> fronts;
    for (std::uint32_t i = 0; i < face.count; ++i)
        fronts.push_back(&source.plan.fronts[face.first + i]);
    return fronts;
}

/// Where each of several fronts begins and ends on the wall.
void addFrontEdges(TemplateDraft& draft, const TemplateSource& source, const FrontPlan& front) {
    const FrontRect whole = FrontRect::atOrigin(front.rect.width(), front.rect.height());
    const WallRect own = front.box.wall.common(toWall(front.box, whole));
    if (own.isEmpty())
        return;
    const BoxMm edges = InsideView(front.box)(own);
    const std::string name = label(source.project, front);
    draft.rectangle(Layer::FrontEdge, edges, name + " edges");
    draft.label({phrase("front %1", name)},
                LineMark{{edges.min().x(), edges.max().y()}, edges.max()}, name + " upper edge",
                TemplateLabel::Prefer::Low);
}

/// The strip in the gap between two fronts on this wall.
void addFiller(TemplateDraft& draft, const TemplateSource& source, const Filler& filler) {
    const FrontPlan& front = source.plan.fronts[filler.lower];
    const CaseRect place = placeOf(source.plan, filler);
    const FrontRect inFront{place.left - front.rect.left, place.bottom - front.rect.bottom,
                            place.right - front.rect.left, place.top - front.rect.bottom};
    const WallRect own = front.box.wall.common(toWall(front.box, inFront));
    if (own.isEmpty())
        return;
    const BoxMm edges = InsideView(front.box)(own);
    const std::string name = "filler strip above " + label(source.project, front);
    draft.rectangle(Layer::MemberEdge, edges, name);
    const bool isUprightStrip = isUpright(source.plan.members[filler.member].kind);
    const LineMark edge = isUprightStrip
                              ? LineMark{edges.min(), {edges.min().x(), edges.max().y()}}
                              : LineMark{{edges.min().x(), edges.max().y()}, edges.max()};
    draft.label({phrase("filler strip %1 × %2, %3 thick", shown(filler.along.size(), source.style),
                        shown(filler.width, source.style),
                        shown(filler.thickness, source.style, Rounding::Down))},
                edge, name + " edge", TemplateLabel::Prefer::Low, isUprightStrip ? 90 : 0);
}

void addFillers(TemplateDraft& draft, const TemplateSource& source,
                const std::vector<const FrontPlan*>& fronts) {
    for (const Filler& filler : source.plan.fillers)
        if (std::ranges::count(fronts, &source.plan.fronts[filler.lower]) > 0 &&
            filler.thickness > Length{})
            addFiller(draft, source, filler);
}

/// Of a fixed front: the opening's edges, outside of which the frame begins.
void addOpening(TemplateDraft& draft, const FrontPlan& front) {
    const FrontRect opening{front.overlay.left, front.overlay.bottom,
                            front.rect.width() - front.overlay.right,
                            front.rect.height() - front.overlay.top};
    const BoxMm edges = InsideView(front.box)(toWall(front.box, opening));
    draft.rectangle(Layer::OpeningEdge, edges, "opening");
    draft.label({text("opening's edge")}, LineMark{{edges.min().x(), edges.max().y()}, edges.max()},
                "opening's upper edge", TemplateLabel::Prefer::Low);
}

void addChecksOf(TemplateDraft& draft, const TemplateSource& source, const FrontPlan& front) {
    std::vector<WallPoint> holes;
    for (const FrontPlan* one : frontsOn(source, front))
        for (const MountingHole& hole : one->mounting.holes)
            holes.push_back(mirroredAcross(front.box, hole.at));
    PointMm throughHole = draft.partBox().center();
    if (!holes.empty())
        throughHole = toMm(holes.front());
    addChecks(draft, source.style, front.box.width, front.box.height,
              firstToLast(holes, [](const WallPoint& p) { return p.x; }),
              firstToLast(holes, [](const WallPoint& p) { return p.y; }), throughHole);
}

Phrase screwWords(const TemplateSource& source, const FrontPlan& front) {
    const MountingPlan& mounting = front.mounting;
    const Phrase screw = nameFromData(mounting.screw->name);
    const std::string pilot = drill(source, mounting.pilotHole);
    if (!mounting.length)
        return phrase("Mounting screws: %1; pilot holes in the front's back %2.", screw, pilot);
    return phrase("Mounting screws: %1, %2 long; pilot holes in the front's back %3.", screw,
                  shown(*mounting.length, source.style), pilot);
}

/// What of the hardware shows in the wall: places relative to it, ways and drills.
bool haveSameHardwareInWall(const FrontPlan& a, const FrontPlan& b) {
    if (a.hardware.has_value() != b.hardware.has_value())
        return false;
    return !a.hardware || (*a.hardware == *b.hardware && a.box.wallOnFront == b.box.wallOnFront);
}

} // namespace

namespace {

/// Holes through the face frame behind a fixed front.
Template frameTemplate(const TemplateSource& source, const Alike& alike) {
    const FrontPlan& front = source.plan.fronts[alike.front()];
    TemplateDraft draft(TemplateKind::BoxWall,
                        phrase("Frame behind %1", label(source.project, front)),
                        toMm(front.box.wall), front.opening, source.language);
    draft.outline(Layer::FrontEdge);
    addOpening(draft, front);
    draft.centreLines();
    addMountingHoles(draft, source, front);
    addChecksOf(draft, source, front);
    draft.parameter(phrase("%1: front %2 wide, %3 high; frame %4 thick.", servesWhat(source, alike),
                           shown(front.rect.width(), source.style),
                           shown(front.rect.height(), source.style),
                           shown(front.box.wallThickness, source.style)));
    draft.parameter(screwWords(source, front));
    draft.parameter(text("Lay the opening's edges on the frame's own, from inside the case."));
    return draft.finished(text("Read from inside the case: left and right are exchanged"),
                          text("the front's top edge is up"), openingsOf(source.plan, alike));
}

Phrase titleOf(const TemplateSource& source, const std::vector<const FrontPlan*>& fronts) {
    std::vector<std::string> names;
    for (const FrontPlan* front : fronts)
        names.push_back(label(source.project, *front));
    return phrase("Box wall %1", listed(names, 4));
}

/// The fronts of a shared wall, or the fronts whose walls are alike.
Alike servedBy(const TemplateSource& source, const Alike& alike) {
    const FrontPlan& first = source.plan.fronts[alike.front()];
    const auto fronts = frontsOn(source, first);
    if (fronts.size() == 1)
        return alike;
    Alike all;
    for (const FrontPlan* front : fronts)
        all.push_back(static_cast<std::uint32_t>(front - source.plan.fronts.data()));
    return all;
}

} // namespace

Template wallTemplate(const TemplateSource& source, const Alike& alike) {
    const FrontPlan& front = source.plan.fronts[alike.front()];
    if (!front.hasBox())
        return frameTemplate(source, alike);
    const std::vector<const FrontPlan*> fronts = frontsOn(source, front);
    const Alike served = servedBy(source, alike);
    TemplateDraft draft(TemplateKind::BoxWall, titleOf(source, fronts), toMm(front.box.wall),
                        front.opening, source.language);
    draft.outline(Layer::CutEdge);
    addLimits(draft, source, front);
    draft.line(Layer::Centre, {draft.partBox().center().x(), -3},
               {draft.partBox().center().x(), draft.partBox().max().y() + 3},
               "upright centre line");
    if (front.runner)
        addRunner(draft, source, front);
    for (const FrontPlan* one : fronts) {
        if (fronts.size() > 1)
            addFrontEdges(draft, source, *one);
        addMountingHoles(draft, source, *one);
        if (one->hardware)
            addHardwareHoles(draft, source, *one);
    }
    addFillers(draft, source, fronts);
    addChecksOf(draft, source, front);
    draft.parameter(phrase("%1: wall %2 wide, %3 high, %4 thick.", servesWhat(source, served),
                           shown(front.box.width, source.style),
                           shown(front.box.height, source.style),
                           shown(front.box.wallThickness, source.style)));
    draft.parameter(screwWords(source, front));
    if (front.runner)
        addRunnerWords(draft, source, *front.runner);
    draft.parameter(text("In an assembled box, cut along the sides' inner faces and the bottom "
                         "panel's top."));
    return draft.finished(text("Read from inside the box: left and right are exchanged"),
                          text("the wall's upper edge is up"), openingsOf(source.plan, served));
}

bool haveSameWall(const FrontPlan& a, const FrontPlan& b) {
    const auto sizes = [](const FrontPlan& front) {
        const BoxPlan& box = front.box;
        return std::array{box.wall.right,    box.wall.top,  box.wallThickness,
                          box.sideThickness, box.bottomTop, box.bottomUnderside};
    };
    return a.use == b.use && (a.hasBox() || a.overlay == b.overlay) && !a.face && !b.face &&
           sizes(a) == sizes(b) && a.mounting == b.mounting && a.runner == b.runner &&
           haveSameHardwareInWall(a, b);
}

} // namespace frontwright
