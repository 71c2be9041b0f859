#include "core/edits/own_entries.h"

#include "core/edits/choices_checks.h"

#include <algorithm>
#include <functional>
#include <initializer_list>
#include <string>
#include <utility>

namespace frontwright {

namespace {

using Sizes = std::initializer_list<std::pair<Text, Length>>;

std::optional<Error> firstNotPositive(Sizes sizes) {
    for (const auto& [what, size] : sizes)
        if (auto error = notPositive(what, size))
            return error;
    return std::nullopt;
}

std::optional<Error> impossibleLengths(const std::vector<Length>& lengths) {
    if (!lengths.empty() && lengths.front() <= Length{})
        return Error{{}, text("a stocked length must be more than 0"), {}};
    if (!std::is_sorted(lengths.begin(), lengths.end(), std::less_equal<>()))
        return Error{{},
                     text("stocked lengths must ascend, each of them once"),
                     text("write the shortest first")};
    return std::nullopt;
}

std::optional<Error> impossibleEntry(const WoodScrew& screw) {
    if (auto error = firstNotPositive(
            {{text("the shank's diameter"), screw.shankDiameter},
             {text("the head's diameter"), screw.headDiameter},
             {text("the head's height"), screw.headHeight},
             {text("the clearance hole"), screw.clearanceHole},
             {text("the pilot hole"), screw.pilotHole},
             {text("the root's diameter"), screw.rootDiameter.value_or(screw.shankDiameter)}}))
        return error;
    if (screw.rootDiameter && *screw.rootDiameter > screw.shankDiameter)
        return Error{{}, text("the root cannot be thicker than the shank"), {}};
    return impossibleLengths(screw.lengths);
}

std::optional<Error> impossibleEntry(const Bolt& bolt) {
    if (auto error = firstNotPositive({{text("the thread's diameter"), bolt.majorDiameter},
                                       {text("the head's diameter"), bolt.headDiameter},
                                       {text("the head's height"), bolt.headHeight},
                                       {text("the clearance hole"), bolt.clearanceHole}}))
        return error;
    return impossibleLengths(bolt.lengths);
}

std::optional<Error> impossibleEntry(const HardwareForm& form) {
    if (form.holes.empty())
        return Error{{}, text("a handle has one hole at least"), {}};
    if (form.leastEngagement > form.threadDepth)
        return Error{{}, text("the least engagement cannot be more than the thread is deep"), {}};
    return firstNotPositive({{text("the base's width"), form.footprint.width},
                             {text("the base's height"), form.footprint.height},
                             {text("the thread's depth"), form.threadDepth},
                             {text("the least engagement"), form.leastEngagement}});
}

std::optional<Error> impossibleEntry(const RunnerKind& runner) {
    for (const Length clearance :
         {runner.sideClearance, runner.clearanceBelow, runner.clearanceAbove})
        if (auto error = negative(text("a clearance"), clearance))
            return error;
    if (runner.rating && *runner.rating <= Mass{})
        return Error{
            {}, text("a rating must be more than 0"), text("leave it empty where it is not known")};
    return std::nullopt;
}

std::optional<Error> impossibleEntry(const Species& wood) {
    if (wood.gravity && (wood.gravity->thousandths < 50 || wood.gravity->thousandths > 1500))
        return Error{{}, text("a wood's specific gravity lies between 0.05 and 1.5"), {}};
    return std::nullopt;
}

std::optional<Error> impossibleEntry(const FittingForm& form) {
    if (form.screw.empty() != form.screws.empty())
        return Error{{},
                     text("a fitting's screws need both a kind and places"),
                     text("leave both empty where no screws hold it")};
    for (const FittingBore& bore : form.bores)
        if (auto error = firstNotPositive({{text("the bore's diameter"), bore.diameter}}))
            return error;
    for (const FittingMortise& mortise : form.mortises)
        if (auto error = firstNotPositive({{text("the mortise's width"), mortise.place.width()},
                                           {text("the mortise's height"), mortise.place.height()},
                                           {text("the mortise's depth"), mortise.depth}}))
            return error;
    if (auto error = negative(text("the plate's thickness"), form.plate))
        return error;
    return firstNotPositive({{text("the plate's width"), form.footprint.width},
                             {text("the plate's height"), form.footprint.height}});
}

template<class Entry>
Result<Project> keep(const Project& project, const Entry& entry,
                     std::vector<Entry> Catalogue::*list) {
    for (const auto& [what, typed] : {std::pair<Text, std::string_view>{text("the id"), entry.id},
                                      {text("the name"), entry.name}}) {
        if (typed.empty())
            return Error{
                {}, phrase("%1 is missing", what), text("give every entry one of its own")};
        if (auto error = impossibleText(what, typed))
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
        return Error{{},
                     phrase("there is no entry \"%1\" of your own", std::string(id)),
                     text("entries that come with the program stay")};
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
Result<Project> keepOwn(const Project& project, const FittingForm& form) {
    return keep(project, form, &Catalogue::fittings);
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
    case EntryKind::Fitting:
        return drop(project, id, &Catalogue::fittings);
    case EntryKind::Species:
        break;
    }
    return drop(project, id, &Catalogue::species);
}

} // namespace frontwright
