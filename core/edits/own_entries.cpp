#include "core/edits/own_entries.h"

#include "core/edits/choices_checks.h"

#include <algorithm>
#include <functional>
#include <initializer_list>
#include <string>
#include <utility>

namespace frontwright {

namespace {

using Sizes = std::initializer_list<std::pair<std::string_view, Length>>;

std::optional<Error> firstNotPositive(Sizes sizes) {
    for (const auto& [what, size] : sizes)
        if (auto error = notPositive(what, size))
            return error;
    return std::nullopt;
}

std::optional<Error> impossibleLengths(const std::vector<Length>& lengths) {
    if (!lengths.empty() && lengths.front() <= Length{})
        return Error{"", "a stocked length must be more than 0", ""};
    if (!std::is_sorted(lengths.begin(), lengths.end(), std::less_equal<>()))
        return Error{"", "stocked lengths must ascend, each of them once",
                     "write the shortest first"};
    return std::nullopt;
}

std::optional<Error> impossibleEntry(const WoodScrew& screw) {
    if (auto error = firstNotPositive(
            {{"the shank's diameter", screw.shankDiameter},
             {"the head's diameter", screw.headDiameter},
             {"the head's height", screw.headHeight},
             {"the clearance hole", screw.clearanceHole},
             {"the pilot hole", screw.pilotHole},
             {"the root's diameter", screw.rootDiameter.value_or(screw.shankDiameter)}}))
        return error;
    if (screw.rootDiameter && *screw.rootDiameter > screw.shankDiameter)
        return Error{"", "the root cannot be thicker than the shank", ""};
    return impossibleLengths(screw.lengths);
}

std::optional<Error> impossibleEntry(const Bolt& bolt) {
    if (auto error = firstNotPositive({{"the thread's diameter", bolt.majorDiameter},
                                       {"the head's diameter", bolt.headDiameter},
                                       {"the head's height", bolt.headHeight},
                                       {"the clearance hole", bolt.clearanceHole}}))
        return error;
    return impossibleLengths(bolt.lengths);
}

std::optional<Error> impossibleEntry(const HardwareForm& form) {
    if (form.holes.empty())
        return Error{"", "a handle has one hole at least", ""};
    if (form.leastEngagement > form.threadDepth)
        return Error{"", "the least engagement cannot be more than the thread is deep", ""};
    return firstNotPositive({{"the base's width", form.footprint.width},
                             {"the base's height", form.footprint.height},
                             {"the thread's depth", form.threadDepth},
                             {"the least engagement", form.leastEngagement}});
}

std::optional<Error> impossibleEntry(const RunnerKind& runner) {
    for (const Length clearance :
         {runner.sideClearance, runner.clearanceBelow, runner.clearanceAbove})
        if (auto error = negative("a clearance", clearance))
            return error;
    if (runner.rating && *runner.rating <= Mass{})
        return Error{"", "a rating must be more than 0", "leave it empty where it is not known"};
    return std::nullopt;
}

std::optional<Error> impossibleEntry(const Species& wood) {
    if (wood.gravity && (wood.gravity->thousandths < 50 || wood.gravity->thousandths > 1500))
        return Error{"", "a wood's specific gravity lies between 0.05 and 1.5", ""};
    return std::nullopt;
}

template<class Entry>
Result<Project> keep(const Project& project, const Entry& entry,
                     std::vector<Entry> Catalogue::*list) {
    for (const auto& [what, text] :
         {std::pair<std::string_view, std::string_view>{"the id", entry.id},
          {"the name", entry.name}}) {
        if (text.empty())
            return Error{"", std::string(what) + " is missing", "give every entry one of its own"};
        if (auto error = impossibleText(what, text))
            return std::move(*error);
    }
    if (auto error = impossibleEntry(entry))
        return std::move(*error);
    Project changed = project;
    std::vector<Entry>& entries = changed.own.*list;
    const auto same = std::find_if(entries.begin(), entries.end(),
                                   [&](const Entry& other) { return other.id == entry.id; });
    if (same == entries.end())
        entries.push_back(entry);
    else
        *same = entry;
    return changed;
}

template<class Entry>
Result<Project> drop(const Project& project, std::string_view id,
                     std::vector<Entry> Catalogue::*list) {
    Project changed = project;
    if (std::erase_if(changed.own.*list, [id](const Entry& entry) { return entry.id == id; }) == 0)
        return Error{"", "there is no entry \"" + std::string(id) + "\" of your own",
                     "entries that come with the program stay"};
    return changed;
}

} // namespace

Result<Project> keepOwn(const Project& project, const WoodScrew& screw) {
    return keep(project, screw, &Catalogue::woodScrews);
}
Result<Project> keepOwn(const Project& project, const Bolt& bolt) {
    return keep(project, bolt, &Catalogue::bolts);
}
Result<Project> keepOwn(const Project& project, const HardwareForm& form) {
    return keep(project, form, &Catalogue::hardware);
}
Result<Project> keepOwn(const Project& project, const RunnerKind& runner) {
    return keep(project, runner, &Catalogue::runners);
}
Result<Project> keepOwn(const Project& project, const Species& wood) {
    return keep(project, wood, &Catalogue::species);
}

Result<Project> removeOwn(const Project& project, EntryKind kind, std::string_view id) {
    switch (kind) {
    case EntryKind::WoodScrew:
        return drop(project, id, &Catalogue::woodScrews);
    case EntryKind::Bolt:
        return drop(project, id, &Catalogue::bolts);
    case EntryKind::Hardware:
        return drop(project, id, &Catalogue::hardware);
    case EntryKind::Runner:
        return drop(project, id, &Catalogue::runners);
    case EntryKind::Species:
        break;
    }
    return drop(project, id, &Catalogue::species);
}

} // namespace frontwright
