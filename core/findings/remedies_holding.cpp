#include "core/findings/remedying.h"

#include "core/edits/choices.h"
#include "core/geometry/side_names.h"

#include <algorithm>

namespace frontwright::remedying {

namespace {

constexpr Length nothing{};

void proposePattern(const Search& search, MountingSpec spec, ScrewPattern pattern,
                    std::string_view label) {
    if (spec.pattern == pattern)
        return;
    spec.pattern = pattern;
    search.propose(label, spec);
}

void proposeThickerScrews(const Search& search, const MountingSpec& spec) {
    const Length shank = search.front.mounting.screw->shankDiameter;
    for (const WoodScrew& screw : search.catalogue.woodScrews)
        if (screw.shankDiameter > shank) {
            MountingSpec changed = spec;
            changed.screw = screw.id;
            search.propose("Use " + screw.name + "s in %", changed);
        }
}

/// Where the distances to the front's edges and ends are kept too.
WallRegion farFromEdges(const Search& search) {
    const FrontPlan& front = search.front;
    const ScrewDistances& least = front.holding.least;
    const bool isEndAtSide = isEnd(Side::Left, front.holding.grain);
    const Length beside = isEndAtSide ? least.toEnd : least.toEdge;
    const Length above = isEndAtSide ? least.toEdge : least.toEnd;
    const FrontRect inner{beside, above, front.rect.width() - beside, front.rect.height() - above};
    WallRegion region = front.mounting.allowed;
    region.outer = region.outer.common(toWall(front.box, inner));
    return region;
}

void proposeFartherIn(const Search& search) {
    const FrontPlan& front = search.front;
    const WallRegion region = farFromEdges(search);
    MountingSpec spec = chosenMounting(search.project, front);
    spec.pattern = ScrewPattern::ByHand;
    spec.placed.clear();
    for (const MountingHole& hole : front.mounting.holes) {
        const auto place = region.contains(hole.at)
                               ? std::optional(hole.at)
                               : nearestAllowed(region, hole.at, search.grid());
        if (!place)
            return;
        spec.placed.push_back(*place);
    }
    const auto opening = front.opening;
    search.propose(
        "Move the screws of % away from edges and ends",
        [opening, spec](const Project& project) { return setMounting(project, {opening}, spec); });
}

Edit setAllFits(OpeningId opening, SideFit fit) {
    return [opening, fit](const Project& project) {
        Result<Project> changed(project);
        for (const Side side : allSides)
            if (changed.ok())
                changed = setFrontFit(changed.value(), {opening}, side, fit);
        return changed;
    };
}

} // namespace

void forHolding(const Search& search) {
    const MountingSpec spec = chosenMounting(search.project, search.front);
    forScrewLength(search);
    proposePattern(search, spec, ScrewPattern::Six, "Hold % with six screws");
    proposeThickerScrews(search, spec);
    HardwareSpec hardware = chosenHardware(search.project, search.front);
    hardware.way = MountingWay::ThroughWall;
    search.propose("Bolt the handle of % through wall and front, so that the bolts carry the pull",
                   hardware);
}

void forScrewDistance(const Search& search) {
    const MountingSpec spec = chosenMounting(search.project, search.front);
    if (search.finding.code == FindingCode::ScrewsCrowded)
        proposePattern(search, spec, ScrewPattern::FourCorners, "Hold % with four screws");
    forScrewHole(search);
    proposeFartherIn(search);
    if (spec.pilotHole && spec.pilotHole->length.isZero())
        forDrills(search);
}

void forDrills(const Search& search) {
    MountingSpec spec = chosenMounting(search.project, search.front);
    const MountingPlan& mounting = search.front.mounting;
    if (search.finding.code == FindingCode::ClearanceHoleTight) {
        if (mounting.screw->clearanceHole >= mounting.screw->shankDiameter)
            spec.clearanceHole.reset();
        else
            spec.clearanceHole = search.up(mounting.screw->shankDiameter);
        search.propose("Drill clearance holes in % that let the screws through", spec);
        return;
    }
    if (spec.pilotHole) {
        spec.pilotHole.reset();
        search.propose("Drill the pilot holes of % as its wood asks", spec);
    }
    if (const auto& rule = search.front.holding.pilot) {
        spec.pilotHole = rule->advised;
        search.propose("Drill pilot holes of " + search.say(rule->advised) + " in %", spec);
    }
}

void forEngagement(const Search& search) {
    HardwareSpec spec = chosenHardware(search.project, search.front);
    const HardwarePlan& hardware = *search.front.hardware;
    const WayPlan& way = hardware.chosenWay();
    for (const Length length : hardware.bolt->lengths)
        if (length >= way.grip + hardware.bolt->majorDiameter && length <= way.greatestLength) {
            spec.boltLength = length;
            search.propose("Use " + search.say(length) + " bolts in %", spec);
            return;
        }
}

void forRunnerLoad(const Search& search) {
    const auto load = search.front.load.onRunner();
    for (const RunnerKind& runner : search.catalogue.runners)
        if (load && runner.rating && *runner.rating >= *load) {
            BoxSpec spec = chosenBox(search.project, search.front);
            spec.runner = runner.id;
            search.propose("Run % on: " + runner.name, spec);
        }
}

void forMixedFits(const Search& search) {
    const FrontPlan& front = search.front;
    for (const Fit wanted : {Fit::Overlay, Fit::Inset})
        for (const Side side : allSides) {
            const SideFit& fit = chosenFit(search.project, front, side);
            if (fit.fit != wanted || fit.amount.length <= nothing)
                continue;
            search.propose((wanted == Fit::Inset ? "Set % into its opening on all sides, by "
                                                 : "Let % cover the frame on all sides, by ") +
                               search.say(fit.amount),
                           setAllFits(front.opening, fit));
            break;
        }
}

} // namespace frontwright::remedying
