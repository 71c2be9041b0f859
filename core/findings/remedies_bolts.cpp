#include "core/findings/remedying.h"

#include "core/lengths/length.h"

#include <algorithm>

namespace frontwright::remedying {

namespace {

constexpr Length nothing{};

std::string_view howTo(MountingWay way) {
    switch (way) {
    case MountingWay::ThroughWall:
        return "Bolt the handle of % through wall and front";
    case MountingWay::FrontCounterbore:
        return "Bolt the handle of % to the front alone, the head in a counterbore";
    case MountingWay::FrontAccessHole:
        break;
    }
    return "Bolt the handle of % to the front alone, with an access hole in the wall";
}

/// The shallowest whole counterbore with which a bolt of that length reaches and does not bottom
/// out; nullopt where none leaves wood enough.
std::optional<Length> counterboreFor(const Search& search, Length length) {
    const HardwarePlan& hardware = *search.front.hardware;
    const WayPlan& way = hardware.chosenWay();
    const Length wood = way.throughWood;
    // Between front and wall there is no room for a head.
    const Length sunk =
        way.way == MountingWay::FrontCounterbore ? hardware.bolt->headHeight : nothing;
    const Span depths{greatest(sunk, wood + hardware.form->leastEngagement - length),
                      least(wood + hardware.form->threadDepth - length,
                            wood - search.project.limits.leastWoodUnderHead)};
    if (depths.isEmpty())
        return std::nullopt;
    const Length whole = search.up(depths.low);
    return depths.contains(whole) ? whole : depths.low;
}

void proposeCounterbore(const Search& search, HardwareSpec spec, Length length) {
    const auto depth = counterboreFor(search, length);
    if (!depth)
        return;
    spec.counterbore = *depth;
    const std::string bolts = search.say(length) + " bolts";
    search.propose(depth->isZero() ? "Bolt the handle of % without a counterbore, with " + bolts
                                   : "Counterbore % " + search.say(*depth) + " deep for " + bolts,
                   spec);
}

void proposeStock(const Search& search, HardwareSpec spec) {
    if (const auto& length = search.front.hardware->chosenWay().curingStock) {
        spec.boltLength = *length;
        search.propose("Use " + search.say(*length) + " bolts in %", spec);
    }
}

void proposeOtherWays(const Search& search, const HardwareSpec& spec) {
    const HardwarePlan& hardware = *search.front.hardware;
    for (const WayPlan& way : hardware.ways)
        if (way.way != hardware.chosen && way.verdict == BoltVerdict::Fits) {
            HardwareSpec changed = spec;
            changed.way = way.way;
            search.propose(howTo(way.way), changed);
        }
}

/// Bolt and counterbore left to the program, as if the maker had neither decided.
void proposeFree(const Search& search, HardwareSpec spec) {
    spec.boltLength.reset();
    search.propose("Choose the bolts of % from stock", spec);
    spec.counterbore.reset();
    search.propose("Choose bolts and counterbore of % from stock", spec);
}

} // namespace

void forBolt(const Search& search) {
    const HardwareSpec spec = chosenHardware(search.project, search.front);
    const std::vector<Length>& stock = search.front.hardware->bolt->lengths;
    if (search.finding.code == FindingCode::BoltTooShort && spec.boltLength)
        proposeCounterbore(search, spec, *spec.boltLength);
    proposeStock(search, spec);
    if (search.finding.code == FindingCode::BoltBottomsOut && spec.boltLength)
        proposeCounterbore(search, spec, *spec.boltLength);
    proposeOtherWays(search, spec);
    if (spec.boltLength || spec.counterbore)
        proposeFree(search, spec);
    if (!spec.boltLength)
        std::for_each(stock.rbegin(), stock.rend(),
                      [&](Length length) { proposeCounterbore(search, spec, length); });
}

} // namespace frontwright::remedying
