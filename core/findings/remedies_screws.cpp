#include "core/findings/remedying.h"

#include "core/edits/choices.h"

#include <algorithm>

namespace frontwright::remedying {

namespace {

constexpr Length nothing{};

/// Stocked lengths in the window, the longest first.
void proposeStockedLengths(const Search& search, const MountingSpec& spec) {
    const MountingPlan& mounting = search.front.mounting;
    const std::vector<Length>& stock = mounting.screw->lengths;
    std::size_t proposed = 0;
    for (auto length = stock.rbegin(); length != stock.rend() && proposed < 2; ++length) {
        if (*length < mounting.leastLength || *length > mounting.greatestLength)
            continue;
        MountingSpec changed = spec;
        changed.length = *length;
        search.propose({phrase("Use %1 screws in %2", search.say(*length), search.name()),
                        phrase("Use %1 screws in the whole case", search.say(*length))},
                       changed);
        ++proposed;
    }
}

/// Recesses with which a screw of that length holds, does not come too near the show face, and has
/// wall enough under its head.
Span recessesFor(const Search& search, Length length) {
    const MountingPlan& mounting = search.front.mounting;
    const Limits& limits = search.project.limits;
    // The plan's window of lengths is that of the present recess.
    const Length low = mounting.recess + mounting.leastLength - length;
    const Length high = mounting.recess + mounting.greatestLength - length;
    const Length most =
        mounting.wall - mounting.screw->headHeight - limits.leastWallUnderHead.length;
    return {greatest(low, nothing), least(high, most)};
}

Label settingOf(const Search& search, Length recess) {
    if (recess.isZero())
        return {phrase("Set the screws of %1 flush", search.name()),
                text("Set the screws of the whole case flush")};
    return {phrase("Set the screws of %1 %2 deep", search.name(), search.say(recess)),
            phrase("Set the screws of the whole case %1 deep", search.say(recess))};
}

/// And their length chosen anew.
Label settingAndLengthOf(const Search& search, Length recess) {
    if (recess.isZero())
        return {phrase("Set the screws of %1 flush, their length from stock", search.name()),
                text("Set the screws of the whole case flush, their length from stock")};
    return {phrase("Set the screws of %1 %2 deep, their length from stock", search.name(),
                   search.say(recess)),
            phrase("Set the screws of the whole case %1 deep, their length from stock",
                   search.say(recess))};
}

void proposeRecess(const Search& search, MountingSpec spec, Length length) {
    const Span recesses = recessesFor(search, length);
    if (recesses.isEmpty())
        return;
    const Length now = search.front.mounting.recess;
    Length recess = now < recesses.low ? search.up(recesses.low) : search.down(recesses.high);
    if (!recesses.contains(recess))
        recess = now < recesses.low ? recesses.low : recesses.high;
    spec.recess = recess;
    search.propose(settingOf(search, recess), spec);
}

void proposeCutting(const Search& search, MountingSpec spec) {
    const MountingPlan& mounting = search.front.mounting;
    const Length length = search.down(mounting.greatestLength);
    if (length < mounting.leastLength || length <= nothing)
        return;
    spec.length = length;
    search.propose({phrase("Cut the screws of %1 to %2", search.name(), search.say(length)),
                    phrase("Cut the screws of the whole case to %1", search.say(length))},
                   spec);
}

/// Where even the window of lengths is empty, no recess helps: it is as wide as the front is
/// thicker than penetration and tip cover.
void proposeThickerFront(const Search& search) {
    const MountingPlan& mounting = search.front.mounting;
    const Length missing = mounting.leastLength - mounting.greatestLength;
    if (missing <= nothing)
        return;
    const Length thickness = search.up(search.front.thickness + missing);
    const auto opening = search.front.opening;
    search.propose(phrase("Make the front of %1 %2 thick", search.name(), search.say(thickness)),
                   [opening, thickness](const Project& project) {
                       return setThickness(project, {opening}, thickness);
                   });
}

} // namespace

void forScrewLength(const Search& search) {
    const MountingSpec spec = chosenMounting(search.project, search.front);
    proposeStockedLengths(search, spec);
    if (spec.length) {
        proposeRecess(search, spec, *spec.length);
    } else {
        const std::vector<Length>& stock = search.front.mounting.screw->lengths;
        std::for_each(stock.rbegin(), stock.rend(),
                      [&](Length length) { proposeRecess(search, spec, length); });
    }
    forScrewHole(search);
    proposeCutting(search, spec);
    if (!spec.length)
        proposeThickerFront(search);
}

void forWallUnderHead(const Search& search) {
    const MountingPlan& mounting = search.front.mounting;
    const Length most = mounting.wall - mounting.screw->headHeight -
                        search.project.limits.leastWallUnderHead.length;
    if (most < nothing)
        return;
    MountingSpec spec = chosenMounting(search.project, search.front);
    const Length recess = search.down(most);
    spec.recess = recess;
    search.propose(settingOf(search, recess), spec);
    if (!spec.length)
        return;
    spec.length.reset();
    search.propose(settingAndLengthOf(search, recess), spec);
}

} // namespace frontwright::remedying
