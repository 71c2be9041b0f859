#include "core/sheets/check_dimensions.h"
#include "core/sheets/part_templates.h"

#include "core/lengths/format.h"
#include "core/sheets/template_draft.h"

namespace frontwright {

namespace {

std::string number(std::size_t index) {
    return std::to_string(index + 1);
}

/// Places on the wall as they are seen from inside the box.
class InsideView {
public:
    explicit InsideView(const BoxPlan& box) : m_box(box) {}
    [[nodiscard]] PointMm operator()(WallPoint p) const { return toMm(mirroredAcross(m_box, p)); }
    [[nodiscard]] PointMm operator()(FrontPoint p) const { return (*this)(toWall(m_box, p)); }

private:
    const BoxPlan& m_box;
};

void addMountingHoles(TemplateDraft& draft, const TemplateSource& source, const FrontPlan& front) {
    const MountingPlan& mounting = front.mounting;
    const InsideView inside(front.box);
    const double radius = mounting.clearanceHole.inMillimetres() / 2;
    for (std::size_t i = 0; i < mounting.holes.size(); ++i) {
        std::vector<std::string> text{
            number(i) + ": drill " + drill(source, mounting.clearanceHole), "through, from inside"};
        if (mounting.recess > Length{})
            text.push_back("head sunk " + shown(mounting.recess, source.style));
        draft.hole(Layer::Hole, {inside(mounting.holes[i].at), radius},
                   "mounting hole " + number(i), std::move(text));
    }
}

void addBoltHole(TemplateDraft& draft, const TemplateSource& source, const HardwarePlan& hardware,
                 const PointMm& at, const std::string& which) {
    std::vector<std::string> text{"bolt " + which + ": drill " +
                                      drill(source, hardware.holeDiameter),
                                  "through, with the front"};
    if (hardware.chosenWay().counterbore > Length{}) {
        text.push_back("counterbore " + drill(source, hardware.counterboreDiameter));
        text.push_back(shown(hardware.chosenWay().counterbore, source.style) +
                       " deep, from inside");
        draft.circle(Layer::Counterbore, {at, hardware.counterboreDiameter.inMillimetres() / 2},
                     "counterbore " + which);
    }
    draft.hole(Layer::Hole, {at, hardware.holeDiameter.inMillimetres() / 2}, "bolt hole " + which,
               std::move(text));
}

void addHardwareHoles(TemplateDraft& draft, const TemplateSource& source, const FrontPlan& front) {
    const HardwarePlan& hardware = *front.hardware;
    const InsideView inside(front.box);
    for (std::size_t i = 0; i < hardware.holes.size(); ++i) {
        const PointMm at = inside(hardware.holes[i]);
        switch (hardware.chosen) {
        case MountingWay::ThroughWall:
            addBoltHole(draft, source, hardware, at, number(i));
            break;
        case MountingWay::FrontCounterbore:
            break; // nothing of it reaches the wall
        case MountingWay::FrontAccessHole:
            draft.hole(Layer::AccessHole, {at, hardware.accessDiameter.inMillimetres() / 2},
                       "access hole " + number(i),
                       {"access " + number(i) + ": drill " + drill(source, hardware.accessDiameter),
                        "through the wall, from inside"});
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
                    {"bottom panel's top " + shown(box.bottomTop, source.style)},
                    TemplateLabel::Prefer::Low);
    draft.namedLine(Layer::AllowedRegion, level(front.mounting.leastHeight),
                    "least height of a screw",
                    {"no screw below " + shown(front.mounting.leastHeight, source.style)});
    draft.namedLine(Layer::BoxEdge, {{side, 0}, {side, height}}, "inner face, left on the sheet",
                    TemplateDraft::besideUpright("inner face of the side", height),
                    TemplateLabel::Prefer::High, 90);
    draft.line(Layer::BoxEdge, {width - side, 0}, {width - side, height},
               "inner face, right on the sheet");
}

void addChecksOf(TemplateDraft& draft, const TemplateSource& source, const FrontPlan& front) {
    std::vector<WallPoint> holes;
    for (const MountingHole& hole : front.mounting.holes)
        holes.push_back(mirroredAcross(front.box, hole.at));
    PointMm throughHole = draft.partBox().center();
    if (!holes.empty())
        throughHole = toMm(holes.front());
    addChecks(draft, source.style, front.box.width, front.box.height,
              firstToLast(holes, [](const WallPoint& p) { return p.x; }),
              firstToLast(holes, [](const WallPoint& p) { return p.y; }), throughHole);
}

std::string screwText(const TemplateSource& source, const FrontPlan& front) {
    const MountingPlan& mounting = front.mounting;
    std::string text = "Mounting screws: " + mounting.screw->name;
    if (mounting.length)
        text += ", " + shown(*mounting.length, source.style) + " long";
    return text + "; pilot holes in the front's back " + drill(source, mounting.pilotHole) + ".";
}

/// What of the hardware shows in the wall: places relative to it, ways and drills.
bool haveSameHardwareInWall(const FrontPlan& a, const FrontPlan& b) {
    if (a.hardware.has_value() != b.hardware.has_value())
        return false;
    return !a.hardware || (*a.hardware == *b.hardware && a.box.wallOnFront == b.box.wallOnFront);
}

} // namespace

Template wallTemplate(const TemplateSource& source, const Alike& alike) {
    const FrontPlan& front = source.plan.fronts[alike.front()];
    TemplateDraft draft(TemplateKind::BoxWall, "Box wall " + label(source.project, front),
                        toMm(front.box.wall), front.opening);
    draft.outline(Layer::CutEdge);
    addLimits(draft, source, front);
    draft.line(Layer::Centre, {draft.partBox().center().x(), -3},
               {draft.partBox().center().x(), draft.partBox().max().y() + 3},
               "upright centre line");
    addMountingHoles(draft, source, front);
    if (front.hardware)
        addHardwareHoles(draft, source, front);
    addChecksOf(draft, source, front);
    draft.parameter(servesWhat(source, alike) + ": wall " + shown(front.box.width, source.style) +
                    " wide, " + shown(front.box.height, source.style) + " high, " +
                    shown(front.box.wallThickness, source.style) + " thick.");
    draft.parameter(screwText(source, front));
    draft.parameter("In an assembled box, cut along the sides' inner faces and the bottom "
                    "panel's top.");
    return draft.finished("Read from inside the box: left and right are exchanged",
                          "the wall's upper edge is up", openingsOf(source.plan, alike));
}

bool haveSameWall(const FrontPlan& a, const FrontPlan& b) {
    const auto sizes = [](const FrontPlan& front) {
        const BoxPlan& box = front.box;
        return std::array{box.wall.right,    box.wall.top,  box.wallThickness,
                          box.sideThickness, box.bottomTop, box.bottomUnderside};
    };
    return sizes(a) == sizes(b) && a.mounting == b.mounting && haveSameHardwareInWall(a, b);
}

} // namespace frontwright
