#include "core/edits/choices.h"
#include "core/edits/faces.h"
#include "core/edits/uses.h"
#include "core/findings/remedying.h"
#include "core/plan/fillers.h"

namespace frontwright::remedying {

namespace {

constexpr Length nothing{};

void proposeOverlays(const Search& search, const Phrase& label, std::vector<Side> sides,
                     Length overlay) {
    const OpeningId opening = search.front.opening;
    search.propose(label, [opening, sides = std::move(sides), overlay](const Project& project) {
        Result<Project> changed = project;
        for (const Side side : sides)
            if (changed.ok())
                changed = setFrontFit(changed.value(), {opening}, side, {Fit::Overlay, overlay});
        return changed;
    });
}

void proposeShadow(const Search& search, Length shadow) {
    if (shadow < nothing || shadow >= search.project.limits.fillerShadow.length)
        return;
    search.propose(phrase("Let filler strips lie only %1 back", search.say(shadow)),
                   [shadow](const Project& project) {
                       Limits limits = project.limits;
                       limits.fillerShadow = shadow;
                       return setLimits(project, limits);
                   });
}

/// The first front over a box decides it.
void proposeHigherBox(const Search& search) {
    BoxSpec spec = chosenBox(search.project, search.front);
    if (!spec.height)
        return;
    const OpeningId decides = decidesBox(search.project, search.front.opening);
    const FrontPlan* first = search.plan.frontOf(decides);
    const bool isOwn = first != nullptr && first->choices != nullptr && first->choices->box;
    spec.height.reset();
    search.propose(
        phrase("Make the box of %1 as tall as its opening allows", search.name()),
        [decides, spec](const Project& project) { return setBox(project, {decides}, spec); });
    if (!isOwn)
        search.forCase.push_back(
            {text("Make the box of the whole case as tall as its opening allows"),
             [spec](const Project& project) { return setBox(project, {}, spec); }});
}

void proposeUse(const Search& search, Phrase label, OpeningUse use) {
    search.propose(std::move(label), [opening = search.front.opening, use](const Project& project) {
        return setUse(project, std::vector{opening}, use);
    });
}

} // namespace

void forSharedWall(const Search& search) {
    const OpeningId opening = search.front.opening;
    search.propose(phrase("One front again over the box of %1", search.name()),
                   [opening](const Project& project) { return joinFace(project, opening); });
    proposeHigherBox(search);
}

void forFixedFront(const Search& search) {
    const Length overlay = search.up(search.finding.figures[1]);
    const std::string size = search.say(overlay);
    proposeOverlays(search,
                    phrase("Make the overlays of %1 at left and right %2", search.name(), size),
                    {Side::Left, Side::Right}, overlay);
    proposeOverlays(search,
                    phrase("Make the overlays of %1 at bottom and top %2", search.name(), size),
                    {Side::Bottom, Side::Top}, overlay);
}

void forFixedWithoutFrame(const Search& search) {
    proposeUse(search, phrase("Make a drawer of %1", search.name()), OpeningUse::Drawer);
    proposeUse(search, phrase("Make a door of %1", search.name()), OpeningUse::Door);
    proposeUse(search, phrase("Leave the opening of %1 open", search.name()),
               OpeningUse::OpenSpace);
}

void forFiller(const Search& search) {
    const Filler* filler =
        fillerOf(search.plan, *search.finding.where.opening, *search.finding.where.member);
    if (!filler)
        return;
    if (filler->leastThickness)
        proposeShadow(search, search.down(filler->edge - *filler->leastThickness));
    if (filler->thickness <= nothing)
        proposeShadow(search, search.down(filler->edge.half()));
}

} // namespace frontwright::remedying
