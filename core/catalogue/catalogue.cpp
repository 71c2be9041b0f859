#include "core/catalogue/catalogue.h"

#include <algorithm>

namespace frontwright {
namespace {

template<class Entry>
const Entry* find(const std::vector<Entry>& entries, std::string_view id) {
    const auto found = std::find_if(entries.begin(), entries.end(),
                                    [id](const Entry& entry) { return entry.id == id; });
    return found == entries.end() ? nullptr : &*found;
}

/// An own entry takes the place of the base entry of its id, so that lists keep their order.
template<class Entry>
void mergeInto(std::vector<Entry>& entries, const std::vector<Entry>& own) {
    for (const Entry& entry : own) {
        const auto same = std::find_if(entries.begin(), entries.end(),
                                       [&](const Entry& other) { return other.id == entry.id; });
        if (same == entries.end())
            entries.push_back(entry);
        else
            *same = entry;
    }
}

} // namespace

const WoodScrew* Catalogue::woodScrew(std::string_view id) const {
    return find(woodScrews, id);
}

const Bolt* Catalogue::bolt(std::string_view id) const {
    return find(bolts, id);
}

const HardwareForm* Catalogue::hardwareForm(std::string_view id) const {
    return find(hardware, id);
}

const RunnerKind* Catalogue::runner(std::string_view id) const {
    return find(runners, id);
}

const Species* Catalogue::speciesOf(std::string_view id) const {
    return find(species, id);
}

const AirRange* Catalogue::airRange(std::string_view id) const {
    return find(airs, id);
}

const FittingForm* Catalogue::fittingForm(std::string_view id) const {
    return find(fittings, id);
}

Catalogue merged(const Catalogue& base, const Catalogue& own) {
    Catalogue all = base;
    mergeInto(all.woodScrews, own.woodScrews);
    mergeInto(all.bolts, own.bolts);
    mergeInto(all.hardware, own.hardware);
    mergeInto(all.runners, own.runners);
    mergeInto(all.species, own.species);
    mergeInto(all.airs, own.airs);
    mergeInto(all.fittings, own.fittings);
    return all;
}

} // namespace frontwright
