#include "core/edits/choices.h"
#include "core/findings/judging.h"
#include "core/findings/moving_fronts.h"
#include "core/findings/remedying_holes.h"

#include <algorithm>

namespace frontwright::remedying {

namespace {

constexpr Length nothing{};

Length bearingRound(const FrontPlan& front, Length drill) {
    return (front.mounting.screw->headDiameter - drill).half();
}

Phrase washersWhere(bool isNeeded, Phrase label) {
    return isNeeded ? phrase("%1, with washers under the heads", std::move(label))
                    : std::move(label);
}

/// As many as a label names.
constexpr std::size_t mostNamed = 6;

Phrase namesOf(const Search& search, const std::vector<MovingFront>& moving) {
    std::vector<Phrase> names;
    for (const MovingFront& each : moving)
        if (names.size() < mostNamed)
            names.emplace_back(label(search.project, *each.front));
    return moving.size() > mostNamed ? phrase("%1 and %2 other fronts", listed(names),
                                              std::to_string(moving.size() - mostNamed))
                                     : listed(names);
}

/// Each front keeps what else it decides of its screws, or takes it from the case.
Edit drillAll(std::vector<OpeningId> openings, std::vector<MountingSpec> specs) {
    return [openings = std::move(openings), specs = std::move(specs)](const Project& project) {
        Result<Project> changed = project;
        for (std::size_t i = 0; i < openings.size(); ++i)
            if (changed.ok())
                changed = setMounting(changed.value(), {openings[i]}, specs[i]);
        return changed;
    };
}

void proposeForAll(const Search& search) {
    const std::vector<MovingFront> moving = movingFronts(search.project, search.plan);
    if (moving.size() < 2)
        return;
    const Length drill = std::ranges::max(moving, {}, &MovingFront::drill).drill;
    bool needsWashers = false;
    std::vector<OpeningId> openings;
    std::vector<MountingSpec> specs;
    for (const MovingFront& each : moving) {
        const Length bearing = bearingRound(*each.front, drill);
        if (bearing <= nothing)
            return;
        needsWashers = needsWashers || bearing < search.project.limits.leastHeadBearing;
        openings.push_back(each.front->opening);
        specs.push_back(chosenMounting(search.project, *each.front));
        specs.back().clearanceHole = WrittenLength(drill);
    }
    search.forCase.push_back(
        {washersWhere(needsWashers, phrase("Drill all clearance holes of %1 %2",
                                           namesOf(search, moving), search.say(drill))),
         drillAll(std::move(openings), std::move(specs))});
}

/// The rows stand as far apart as the wall allows.
void proposeFreeRows(const Search& search) {
    MountingSpec spec = chosenMounting(search.project, search.front);
    spec.fromBottom.reset();
    spec.fromTop.reset();
    if (spec.pattern == ScrewPattern::ByHand)
        spec.pattern = ScrewPattern::FourCorners;
    spec.placed.clear();
    search.propose(
        {phrase("Let the screw rows of %1 stand as far apart as they can", search.name()),
         text("Let the screw rows of the whole case stand as far apart as they can")},
        spec);
}

} // namespace

void proposeHoles(const Search& search, Length drill, Label label) {
    MountingSpec mounting = chosenMounting(search.project, search.front);
    mounting.clearanceHole = WrittenLength(drill);
    const Length bearing = bearingRound(search.front, drill);
    if (bearing <= nothing)
        return;
    const bool needsWashers = bearing < search.project.limits.leastHeadBearing;
    search.propose({washersWhere(needsWashers, std::move(label.ofFront)),
                    washersWhere(needsWashers, std::move(label.wholeCase))},
                   mounting);
    proposeForAll(search);
}

void forMovement(const Search& search) {
    const std::vector<MovingFront> moving = movingFronts(search.project, search.plan);
    const auto mine = std::ranges::find(moving, &search.front, &MovingFront::front);
    if (mine == moving.end())
        return;
    const std::string drill = search.say(mine->drill);
    proposeHoles(search, mine->drill,
                 {phrase("Drill all clearance holes of %1 %2", search.name(), drill),
                  phrase("Drill all clearance holes of the whole case %1", drill)});
}

void forScrewRows(const Search& search) {
    proposeFreeRows(search);
    if (search.front.hasBox())
        proposeBoxHeight(search);
}

} // namespace frontwright::remedying
