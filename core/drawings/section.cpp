#include "core/drawings/section.h"

#include "core/drawings/drawing_note.h"
#include "core/drawings/section_parts.h"
#include "core/lengths/format.h"

namespace frontwright {

namespace {

constexpr double margin = 5; // of paper, round the whole drawing

std::string wayWords(MountingWay way) {
    switch (way) {
    case MountingWay::ThroughWall:
        return "through wall and front";
    case MountingWay::FrontCounterbore:
        return "in the front only, head in a counterbore";
    case MountingWay::FrontAccessHole:
        break;
    }
    return "in the front only, reached through an access hole";
}

std::string screwLine(const SectionSubject& subject) {
    const MountingPlan& mounting = subject.front.mounting;
    const LengthStyle style = subject.options.style;
    std::string line = mounting.screw->name;
    if (mounting.length)
        line += " × " + shown(*mounting.length, style);
    else
        line += ": no stocked length fits";
    return line + "; clearance hole " + shown(mounting.clearanceHole, style) + ", pilot hole " +
           shown(mounting.pilotHole, style);
}

std::string boltLine(const SectionSubject& subject, const HardwarePlan& hardware) {
    const WayPlan& way = hardware.chosenWay();
    const LengthStyle style = subject.options.style;
    std::string line = hardware.bolt->name;
    if (way.length)
        line += " × " + shown(*way.length, style);
    else
        line += ": no stocked length fits, drawn " + shown(way.leastLength, style) + " long";
    return line + ", " + wayWords(way.way);
}

DrawingNote noteOf(const SectionSubject& subject) {
    DrawingNote note;
    note.title = label(subject.project, subject.front) +
                 (subject.isLevel() ? ", level section" : ", section");
    if (subject.hole() != nullptr) {
        note.title += " through screw " + std::to_string(subject.options.mountingHole + 1);
        note.lines.push_back(screwLine(subject));
    }
    if (subject.front.hardware)
        note.lines.push_back(boltLine(subject, *subject.front.hardware));
    return note;
}

PointMm turned(const PointMm& p) {
    return {p.y(), p.x()};
}
std::vector<PointMm> turned(std::vector<PointMm> points) {
    for (PointMm& p : points)
        p = turned(p);
    return points;
}

/// Exchanges x and y of what is drawn before there are dimensions and texts.
struct Turner {
    void operator()(LineMark& line) const { line = {turned(line.from), turned(line.to)}; }
    void operator()(PathMark& path) const { path.points = turned(std::move(path.points)); }
    void operator()(CircleMark& circle) const { circle.centre = turned(circle.centre); }
    void operator()(HatchMark& hatch) const {
        hatch.outline = turned(std::move(hatch.outline));
        hatch.angle = 90 - hatch.angle;
        for (auto& outline : hatch.without)
            outline = turned(std::move(outline));
    }
    void operator()(TextMark& text) const { text.at = turned(text.at); }
    void operator()(DimensionMark&) const {}
    void operator()(ToneMark& tone) const { tone.points = turned(std::move(tone.points)); }
};

} // namespace

const MountingHole* SectionSubject::hole() const {
    const auto& holes = front.mounting.holes;
    if (isLevel() && options.handleHole)
        return nullptr;
    return options.mountingHole < holes.size() ? &holes[options.mountingHole] : nullptr;
}

Length SectionSubject::cutAt() const {
    const MountingHole* selected = hole();
    if (!isLevel())
        return selected != nullptr ? toFront(front.box, selected->at).x : front.rect.width().half();
    if (selected != nullptr)
        return toFront(front.box, selected->at).y;
    if (front.hardware && options.handleHole && *options.handleHole < front.hardware->holes.size())
        return front.hardware->holes[*options.handleHole].y;
    return front.rect.height().half();
}

double SectionSubject::handleProjection() const {
    return front.hardware ? front.hardware->form->projection.inMillimetres() : 0;
}

Drawing frontSection(const Project& project, const Plan& plan, std::uint32_t front,
                     const SectionOptions& options) {
    const SectionSubject subject{project, plan, plan.fronts[front], front, options};
    Sketch sketch(options.paperScale);
    drawWood(sketch, subject, fastenerShapes(subject));
    drawFasteners(sketch, subject);
    drawSectionDimensions(sketch, subject);
    if (options.notes == SectionNotes::Below)
        drawNote(sketch, noteOf(subject), options.style);
    return std::move(sketch).finished(margin);
}

Drawing levelSection(const Project& project, const Plan& plan, std::uint32_t front,
                     const SectionOptions& options) {
    const SectionSubject subject{project, plan,    plan.fronts[front],
                                 front,   options, SectionPlane::Level};
    Sketch upright(options.paperScale);
    drawWood(upright, subject, fastenerShapes(subject));
    drawFasteners(upright, subject);
    std::vector<Mark> marks = upright.marks();
    for (Mark& mark : marks)
        std::visit(Turner(), mark.shape);
    const LongBreak breaks = options.longStretches == LongStretches::Drawn
                                 ? LongBreak()
                                 : LongBreak(marks, options.paperScale);
    Sketch sketch(options.paperScale);
    for (Mark& mark : breaks.applied(marks))
        sketch.add(std::move(mark));
    drawLevelDimensions(sketch, subject, breaks);
    if (options.notes == SectionNotes::Below)
        drawNote(sketch, noteOf(subject), options.style);
    return sketch.finished(margin);
}

} // namespace frontwright
