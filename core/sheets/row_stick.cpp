#include "core/lengths/format.h"
#include "core/plan/member_words.h"
#include "core/plan/panel_holes.h"
#include "core/sheets/part_templates.h"
#include "core/sheets/template_draft.h"
#include "core/sheets/text_lines.h"

namespace frontwright {

namespace {

constexpr double besideRow = 25; ///< mm of the stick behind the row, for the figures

/// The panel's ends along its length.
Span lengthOf(const TemplateSource& source, const PanelHoles& panel) {
    return source.plan.members[panel.member].rect.upright();
}

/// Openings at that face.
std::vector<OpeningId> openingsAt(const TemplateSource& source,
                                  const std::vector<PanelHoles>& alike) {
    std::vector<OpeningId> ids;
    for (const PanelHoles& panel : alike)
        for (const FrontPlan& front : source.plan.fronts)
            if (front.neighbours[opposite(panel.face)].member == panel.member)
                ids.push_back(front.opening);
    return ids;
}

Phrase nameOfFace(const TemplateSource& source, const PanelHoles& panel) {
    const Phrase name = nameOfMember(source.plan, panel.member);
    return panel.face == Side::Left ? phrase("%1, left face", name)
                                    : phrase("%1, right face", name);
}

std::string namesOf(const TemplateSource& source, const std::vector<PanelHoles>& alike) {
    std::vector<std::string> names;
    for (const PanelHoles& panel : alike)
        names.push_back(source.say(nameOfFace(source, panel)));
    return source.say(listed(names, 8));
}

bool areAlike(const TemplateSource& source, const PanelHoles& a, const PanelHoles& b) {
    return a.face == b.face && a.heights == b.heights && lengthOf(source, a) == lengthOf(source, b);
}

/// One row as it is bored. Looking at a right face the panel's front edge is at the left hand.
Template rowStick(const TemplateSource& source, const std::vector<PanelHoles>& alike) {
    const PanelHoles& panel = alike.front();
    const SystemHoles& holes = *source.project.casework.systemHoles;
    const Span length = lengthOf(source, panel);
    const double setback = holes.setback.length.inMillimetres();
    const double breadth = setback + besideRow;
    const bool isFrontLeft = panel.face == Side::Right;
    const std::vector<OpeningId> openings = openingsAt(source, alike);
    TemplateDraft draft(TemplateKind::StoryStick,
                        phrase("System holes, %1", nameOfFace(source, panel)),
                        BoxMm(PointMm(0, 0), PointMm(breadth, length.size().inMillimetres())),
                        openings.empty() ? OpeningId{} : openings.front(), source.language);
    draft.rectangle(Layer::CutEdge, draft.partBox(), "outline");
    const double x = isFrontLeft ? setback : breadth - setback;
    int number = 0;
    for (const Length height : panel.heights)
        draft.hole(
            Layer::Hole,
            {{x, (height - length.low).inMillimetres()}, holes.diameter.length.inMillimetres() / 2},
            "system hole " + std::to_string(++number),
            {shownBare(height - length.low, source.style)});
    draft.parameter(isFrontLeft
                        ? text("Hold the left edge flush with the panel's front edge, the low end "
                               "with the panel's lower end.")
                        : text("Hold the right edge flush with the panel's front edge, the low end "
                               "with the panel's lower end."));
    draft.parameter(phrase("Drill %1 every %2, the row %3 behind the front edge.",
                           drill(source, holes.diameter), shown(holes.pitch, source.style),
                           shown(holes.setback, source.style)));
    if (holes.rear)
        draft.parameter(phrase("A second row stands %1 behind the front edge, at the same heights.",
                               shown(*holes.rear, source.style)));
    draft.parameter(phrase("Serves: %1.", namesOf(source, alike)));
    return draft.finished(text("Read from inside the case"), text("the panel's upper end is up"),
                          openings);
}

} // namespace

std::vector<Template> rowSticks(const TemplateSource& source) {
    std::vector<std::vector<PanelHoles>> groups;
    for (const PanelHoles& panel : source.plan.systemHoles) {
        if (panel.heights.empty())
            continue;
        bool isTaken = false;
        for (auto& group : groups)
            if (!isTaken && areAlike(source, group.front(), panel)) {
                group.push_back(panel);
                isTaken = true;
            }
        if (!isTaken)
            groups.push_back({panel});
    }
    std::vector<Template> sticks;
    for (const auto& group : groups)
        sticks.push_back(rowStick(source, group));
    return sticks;
}

} // namespace frontwright
