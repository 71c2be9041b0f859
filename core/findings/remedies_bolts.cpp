#include "core/findings/remedying.h"

#include "core/lengths/length.h"

#include <algorithm>

namespace frontwright::remedying {

namespace {

constexpr Length nothing{};

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

Label boltWithoutCounterbore(const Search& search, Length length) {
    const std::string bolts = search.say(length);
    return {
        phrase("Bolt the handle of %1 without a counterbore, with %2 bolts", search.name(), bolts),
        phrase("Bolt the handle of the whole case without a counterbore, with %1 bolts", bolts)};
}

Label counterbored(const Search& search, Length depth, Length length) {
    const std::string deep = search.say(depth), bolts = search.say(length);
    return {phrase("Counterbore %1 %2 deep for %3 bolts", search.name(), deep, bolts),
            phrase("Counterbore the whole case %1 deep for %2 bolts", deep, bolts)};
}

void proposeCounterbore(const Search& search, HardwareSpec spec, Length length) {
    const auto depth = counterboreFor(search, length);
    if (!depth)
        return;
    spec.counterbore = *depth;
    search.propose(depth->isZero() ? boltWithoutCounterbore(search, length)
                                   : counterbored(search, *depth, length),
                   spec);
}

void proposeStock(const Search& search, HardwareSpec spec) {
    if (const auto& length = search.front.hardware->chosenWay().curingStock) {
        spec.boltLength = *length;
        search.propose(useBolts(search, *length), spec);
    }
}

void proposeOtherWays(const Search& search, const HardwareSpec& spec) {
    const HardwarePlan& hardware = *search.front.hardware;
    for (const WayPlan& way : hardware.ways)
        if (way.way != hardware.chosen && way.verdict == BoltVerdict::Fits) {
            HardwareSpec changed = spec;
            changed.way = way.way;
            search.propose(boltHandle(search, way.way), changed);
        }
}

/// Bolt and counterbore left to the program, as if the maker had neither decided.
void proposeFree(const Search& search, HardwareSpec spec) {
    spec.boltLength.reset();
    search.propose({phrase("Choose the bolts of %1 from stock", search.name()),
                    text("Choose the bolts of the whole case from stock")},
                   spec);
    spec.counterbore.reset();
    search.propose({phrase("Choose bolts and counterbore of %1 from stock", search.name()),
                    text("Choose bolts and counterbore of the whole case from stock")},
                   spec);
}

} // namespace

Label useBolts(const Search& search, Length length) {
    const std::string bolts = search.say(length);
    return {phrase("Use %1 bolts in %2", bolts, search.name()),
            phrase("Use %1 bolts in the whole case", bolts)};
}

Label boltHandle(const Search& search, MountingWay way) {
    switch (way) {
    case MountingWay::ThroughWall:
        return {phrase("Bolt the handle of %1 through wall and front", search.name()),
                text("Bolt the handle of the whole case through wall and front")};
    case MountingWay::FrontCounterbore:
        return {phrase("Bolt the handle of %1 to the front alone, the head in a counterbore",
                       search.name()),
                text("Bolt the handle of the whole case to the front alone, the head in a "
                     "counterbore")};
    case MountingWay::FrontAccessHole:
        break;
    }
    return {phrase("Bolt the handle of %1 to the front alone, with an access hole in the wall",
                   search.name()),
            text("Bolt the handle of the whole case to the front alone, with an access hole in the "
                 "wall")};
}

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
