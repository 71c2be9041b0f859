#include "core/drawings/section.h"

#include "core/catalogue/drills.h"
#include "core/drawings/drawing_note.h"
#include "core/drawings/section_parts.h"
#include "core/hardware/way_words.h"
#include "core/lengths/format.h"
#include "core/plan/member_words.h"

#include <algorithm>

namespace frontwright {

namespace {

constexpr double margin = 5; // of paper, round the whole drawing

Phrase screwLine(const SectionSubject& subject) {
    const MountingPlan& mounting = subject.front.mounting;
    const LengthStyle style = subject.options.style;
    const Phrase screw = nameFromData(mounting.screw->name);
    const std::string clearance = shownDrill(mounting.clearanceHole, style);
    const std::string pilot = shownDrill(mounting.pilotHole, style);
    if (!mounting.length)
        return phrase("%1: no stocked length fits; clearance hole %2, pilot hole %3", screw,
                      clearance, pilot);
    return phrase("%1 × %2; clearance hole %3, pilot hole %4", screw,
                  shown(*mounting.length, style), clearance, pilot);
}

Phrase boltLine(const SectionSubject& subject, const HardwarePlan& hardware) {
    const WayPlan& way = hardware.chosenWay();
    const LengthStyle style = subject.options.style;
    const Phrase bolt = nameFromData(hardware.bolt->name);
    if (!way.length)
        return phrase("%1: no stocked length fits, drawn %2 long, %3", bolt,
                      shown(way.leastLength, style, Rounding::Up), howHeld(way));
    return phrase("%1 × %2, %3", bolt, shown(*way.length, style), howHeld(way));
}

Phrase runnerLine(const SectionSubject& subject, const RunnerPlan& runner) {
    const LengthStyle style = subject.options.style;
    const Phrase kind = nameFromData(runner.kind->name);
    const std::string setback = shown(runner.reach.setback, style);
    if (!runner.reach.length)
        return phrase("%1: no stocked length fits", kind);
    return phrase("%1, %2 long, %3 %4", kind, shown(*runner.reach.length, style), setback,
                  behindFace(subject.plan.construction));
}

Phrase titleOf(const SectionSubject& subject) {
    const std::string front = label(subject.project, subject.front);
    if (subject.hole() == nullptr)
        return subject.isLevel() ? phrase("%1, level section", front)
                                 : phrase("%1, section", front);
    const std::string screw = std::to_string(subject.options.mountingHole + 1);
    return subject.isLevel() ? phrase("%1, level section through screw %2", front, screw)
                             : phrase("%1, section through screw %2", front, screw);
}

Phrase fittingLine(const SectionSubject& subject, const FittingPlan& fitting) {
    const Phrase name = nameFromData(fitting.form->name);
    if (fitting.screw == nullptr)
        return name;
    if (!fitting.screwLength)
        return phrase("%1: no stocked length of its screws fits", name);
    return phrase("%1: %2 × %3", name, nameFromData(fitting.screw->name),
                  shown(*fitting.screwLength, subject.options.style));
}

/// Each kind of fitting once.
void addFittingLines(DrawingNote& note, const SectionSubject& subject) {
    std::vector<Phrase> lines;
    for (const FittingPlan& fitting : *subject.front.fittings)
        if (Phrase line = fittingLine(subject, fitting); std::ranges::count(lines, line) == 0)
            lines.push_back(std::move(line));
    note.lines.insert(note.lines.end(), lines.begin(), lines.end());
}

DrawingNote noteOf(const SectionSubject& subject) {
    DrawingNote note{titleOf(subject), {}};
    if (subject.hole() != nullptr)
        note.lines.push_back(screwLine(subject));
    if (subject.front.hardware)
        note.lines.push_back(boltLine(subject, *subject.front.hardware));
    if (subject.front.runner)
        note.lines.push_back(runnerLine(subject, *subject.front.runner));
    if (subject.front.fittings)
        addFittingLines(note, subject);
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
    Length most = front.hardware ? front.hardware->form->projection : Length{};
    if (front.fittings)
        for (const FittingPlan& fitting : *front.fittings)
            if (fitting.form->bearsOn != FrontFace::Back)
                most = greatest(most, fitting.form->projection);
    return most.inMillimetres();
}

Drawing frontSection(const Project& project, const Plan& plan, std::uint32_t front,
                     const SectionOptions& options) {
    const SectionSubject subject{project, plan, plan.fronts[front], front, options};
    Sketch sketch(options.paperScale);
    drawWood(sketch, subject, fastenerShapes(subject));
    drawFasteners(sketch, subject);
    drawSectionDimensions(sketch, subject);
    if (options.notes == SectionNotes::Below)
        drawNote(sketch, noteOf(subject), options.style, options.language);
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
        drawNote(sketch, noteOf(subject), options.style, options.language);
    return sketch.finished(margin);
}

} // namespace frontwright
