#include "core/findings/remedying.h"

#include "core/edits/choices.h"
#include "core/plan/screw_rows.h"

#include <algorithm>

namespace frontwright::remedying {

namespace {

constexpr Length nothing{};

void proposePattern(const Search& search, MountingSpec spec, ScrewPattern pattern,
                    const Label& label) {
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
            search.propose({phrase("Use %1s in %2", nameFromData(screw.name), search.name()),
                            phrase("Use %1s in the whole case", nameFromData(screw.name))},
                           changed);
        }
}

/// Where the distances to the front's edges and ends are kept too.
WallRegion farFromEdges(const Search& search) {
    const FrontPlan& front = search.front;
    const ScrewDistances& least = front.holding->least;
    const bool isEndAtSide = isEnd(Side::Left, front.holding->grain);
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
        phrase("Move the screws of %1 away from edges and ends", search.name()),
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
    proposePattern(search, spec, ScrewPattern::Six,
                   {phrase("Hold %1 with six screws", search.name()),
                    text("Hold the whole case with six screws")});
    proposeThickerScrews(search, spec);
    HardwareSpec hardware = chosenHardware(search.project, search.front);
    hardware.way = MountingWay::ThroughWall;
    search.propose(
        {phrase("Bolt the handle of %1 through wall and front, so that the bolts carry the "
                "pull",
                search.name()),
         text("Bolt the handle of the whole case through wall and front, so that the "
              "bolts carry the pull")},
        hardware);
}

void forScrewDistance(const Search& search) {
    const MountingSpec spec = chosenMounting(search.project, search.front);
    if (search.finding.code == FindingCode::ScrewsCrowded)
        proposePattern(search, spec, ScrewPattern::FourCorners,
                       {phrase("Hold %1 with four screws", search.name()),
                        text("Hold the whole case with four screws")});
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
        search.propose(
            {phrase("Drill clearance holes in %1 that let the screws through", search.name()),
             text("Drill clearance holes in the whole case that let the screws "
                  "through")},
            spec);
        return;
    }
    if (spec.pilotHole) {
        spec.pilotHole.reset();
        search.propose({phrase("Drill the pilot holes of %1 as its wood asks", search.name()),
                        text("Drill the pilot holes of the whole case as its wood asks")},
                       spec);
    }
    if (const auto& rule = search.front.holding->pilot) {
        spec.pilotHole = rule->advised;
        search.propose(
            {phrase("Drill pilot holes of %1 in %2", search.say(rule->advised), search.name()),
             phrase("Drill pilot holes of %1 in the whole case", search.say(rule->advised))},
            spec);
    }
}

/// Washers are the maker's affair: a document knows none.
void forScrewHead(const Search& search) {
    MountingSpec spec = chosenMounting(search.project, search.front);
    const Length drill = search.front.mounting.screw->clearanceHole;
    const auto& season = search.front.season;
    const bool needsMore =
        season && !season->rows.empty() && season->rows[rowOfLargestHole(*season)].hole > drill;
    if (spec.clearanceHole && !needsMore) {
        spec.clearanceHole.reset();
        search.propose({phrase("Drill all clearance holes of %1 %2, as its screws ask",
                               search.name(), search.say(drill)),
                        phrase("Drill all clearance holes of the whole case %1, as its screws ask",
                               search.say(drill))},
                       spec);
    }
    proposeThickerScrews(search, chosenMounting(search.project, search.front));
}

void forEngagement(const Search& search) {
    HardwareSpec spec = chosenHardware(search.project, search.front);
    const HardwarePlan& hardware = *search.front.hardware;
    const WayPlan& way = hardware.chosenWay();
    for (const Length length : hardware.bolt->lengths)
        if (length >= way.grip + hardware.bolt->majorDiameter && length <= way.greatestLength) {
            spec.boltLength = length;
            search.propose(useBolts(search, length), spec);
            return;
        }
}

void forRunnerLoad(const Search& search) {
    const auto load = search.front.load.onRunner();
    for (const RunnerKind& runner : search.catalogue.runners)
        if (load && runner.rating && *runner.rating >= *load) {
            BoxSpec spec = chosenBox(search.project, search.front);
            spec.runner = runner.id;
            search.propose({phrase("Run %1 on: %2", search.name(), nameFromData(runner.name)),
                            phrase("Run the whole case on: %1", nameFromData(runner.name))},
                           spec);
        }
}

void forMixedFits(const Search& search) {
    const FrontPlan& front = search.front;
    for (const Fit wanted : {Fit::Overlay, Fit::Inset})
        for (const Side side : allSides) {
            const SideFit& fit = chosenFit(search.project, front, side);
            if (fit.fit != wanted || fit.amount.length <= nothing)
                continue;
            search.propose(wanted == Fit::Inset
                               ? phrase("Set %1 into its opening on all sides, by %2",
                                        search.name(), search.say(fit.amount))
                               : phrase("Let %1 cover the frame on all sides, by %2", search.name(),
                                        search.say(fit.amount)),
                           setAllFits(front.opening, fit));
            break;
        }
}

} // namespace frontwright::remedying
