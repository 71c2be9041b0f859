#include "core/edits/choices.h"
#include "core/edits/faces.h"
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

} // namespace

void forSharedWall(const Search& search) {
    const OpeningId opening = search.front.opening;
    search.propose(phrase("One front again over the box of %1", search.name()),
                   [opening](const Project& project) { return joinFace(project, opening); });
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
