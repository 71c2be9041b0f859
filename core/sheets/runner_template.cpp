#include "core/lengths/format.h"
#include "core/plan/member_words.h"
#include "core/sheets/inside_view.h"
#include "core/sheets/part_templates.h"
#include "core/sheets/template_draft.h"

namespace frontwright {
namespace {

std::string sizeWords(const TemplateSource& source, const WallRect& rect) {
    return shown(rect.width(), source.style) + " × " + shown(rect.height(), source.style);
}

/// The upper edge of a part at the wall's lower edge, to be named.
LineMark upperEdge(const BoxMm& box) {
    return {{box.min().x(), box.max().y()}, box.max()};
}

Phrase runnerWords(const TemplateSource& source, const RunnerPlan& runner) {
    const Phrase kind = nameFromData(runner.kind->name);
    if (!runner.reach.length)
        return phrase("Runners: %1, no stocked length fits.", kind);
    const std::string length = shown(*runner.reach.length, source.style);
    const std::string setback = shown(runner.reach.setback, source.style);
    const Text behind = behindFace(source.plan.construction);
    return isPair(runner.kind->form) ? phrase("Runners: %1, a pair %2 long, front ends %3 %4.",
                                              kind, length, setback, behind)
                                     : phrase("Runner: %1, one %2 long, its front end %3 %4.", kind,
                                              length, setback, behind);
}

} // namespace

void addRunner(TemplateDraft& draft, const TemplateSource& source, const FrontPlan& front) {
    const RunnerPlan& runner = *front.runner;
    const InsideView inside(front.box);
    for (std::size_t i = 0; i < runner.clearZones.size(); ++i) {
        const BoxMm zone = inside(runner.clearZones[i]);
        draft.hatch(Layer::AllowedRegion, zone);
        draft.rectangle(Layer::AllowedRegion, zone, "clear zone " + number(i));
        draft.label({text("runner: no screw here"), sizeWords(source, runner.clearZones[i])},
                    upperEdge(zone), "clear zone " + number(i));
    }
    for (std::size_t i = 0; i < runner.wallNotches.size(); ++i) {
        const BoxMm notch = inside(runner.wallNotches[i]);
        draft.hatch(Layer::Waste, notch);
        draft.rectangle(Layer::CutEdge, notch, "notch " + number(i));
        draft.label({phrase("cut out %1", sizeWords(source, runner.wallNotches[i])),
                     text("for the runner")},
                    upperEdge(notch), "notch " + number(i));
    }
}

void addRunnerWords(TemplateDraft& draft, const TemplateSource& source, const RunnerPlan& runner) {
    draft.parameter(runnerWords(source, runner));
    if (runner.backNotches.empty())
        return;
    const std::string size = sizeWords(source, runner.backNotches.front());
    draft.parameter(isPair(runner.kind->form)
                        ? phrase("Notch the box's back %1 at both lower ends, from the sides' "
                                 "inner faces.",
                                 size)
                        : phrase("Notch the box's back %1 in the middle of its lower edge.", size));
}

} // namespace frontwright
