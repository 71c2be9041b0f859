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
    note.title = label(subject.project, subject.front) + ", section";
    if (subject.hole() != nullptr) {
        note.title += " through screw " + std::to_string(subject.options.mountingHole + 1);
        note.lines.push_back(screwLine(subject));
    }
    if (subject.front.hardware)
        note.lines.push_back(boltLine(subject, *subject.front.hardware));
    return note;
}

} // namespace

const MountingHole* SectionSubject::hole() const {
    const auto& holes = front.mounting.holes;
    return options.mountingHole < holes.size() ? &holes[options.mountingHole] : nullptr;
}

Length SectionSubject::cutAt() const {
    const MountingHole* selected = hole();
    return selected != nullptr ? toFront(front.box, selected->at).x : front.rect.width().half();
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

} // namespace frontwright
