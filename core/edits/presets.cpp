#include "core/edits/presets.h"

#include "core/edits/choices_checks.h"
#include "core/edits/divisions.h"
#include "core/edits/every_opening.h"
#include "core/edits/faces.h"
#include "core/edits/tree_paths.h"

#include <algorithm>
#include <string>
#include <type_traits>
#include <utility>
#include <vector>

namespace frontwright {
namespace {

Error noSuchPreset(std::string_view name) {
    return {{},
            phrase("there is no preset \"%1\"", std::string(name)),
            text("choose a preset that is there")};
}

template<class Places>
using SpecOf = std::remove_cvref_t<decltype(std::declval<FrontDefaults>().*Places::ofCase)>;

std::optional<Error> refusedName(const Project& project, PresetKind kind, std::string_view name) {
    if (auto error = impossibleText(text("the name of the preset"), name))
        return error;
    if (name.find_first_not_of(' ') == std::string_view::npos)
        return Error{
            {}, text("a preset needs a name"), text("write what it is for, such as Deep drawers")};
    if (hasPreset(project.presets, kind, name))
        return Error{{},
                     phrase("there is already a preset \"%1\"", std::string(name)),
                     text("choose another name")};
    return std::nullopt;
}

/// Who decides that for the target: the box of a divided face is its first opening's.
EditTarget decider(const Project& project, EditTarget target, PresetKind kind) {
    if (kind == PresetKind::Box && target.opening)
        target.opening = decidesBox(project, *target.opening);
    return target;
}

std::vector<EditTarget> deciders(const Project& project, std::span<const EditTarget> targets,
                                 PresetKind kind) {
    std::vector<EditTarget> all;
    for (const EditTarget& target : targets)
        all.push_back(decider(project, target, kind));
    return all;
}

std::vector<OpeningId> openingsOf(std::span<const EditTarget> targets) {
    std::vector<OpeningId> openings;
    for (const EditTarget& target : targets)
        if (target.opening)
            openings.push_back(*target.opening);
    return openings;
}

bool includesCase(std::span<const EditTarget> targets) {
    return std::ranges::any_of(targets, [](const EditTarget& t) { return !t.opening; });
}

/// Changes the case's decision where it is among the targets, and those of the openings: `change`
/// takes what holds there and the name of its preset.
template<class Places, class Change>
Result<Project> changeDecisions(const Project& project, std::span<const EditTarget> targets,
                                Places places, Change change) {
    const std::vector<OpeningId> openings = openingsOf(deciders(project, targets, places.kind));
    auto changed = changeChoices(project, openings, [&](FrontChoices& choices) {
        auto& own = choices.*places.ofOpening;
        std::string name(presetName(choices, places.kind));
        SpecOf<Places> value = own ? *own : project.fronts.*places.ofCase;
        change(value, name);
        own = std::move(value);
        setPresetName(choices, places.kind, std::move(name));
    });
    if (!changed.ok() || !includesCase(targets))
        return changed;
    Project result = std::move(changed).value();
    change(result.fronts.*places.ofCase, result.fronts.presets[places.kind]);
    return result;
}

/// Whose decision comes from the preset, following it or departing from it.
std::vector<EditTarget> usersOf(const Project& project, PresetKind kind, std::string_view name) {
    std::vector<EditTarget> users;
    if (project.fronts.presets[kind] == name)
        users.push_back({});
    withEveryOpening(project, [&](const Opening& opening) -> std::optional<Opening> {
        if (presetName(opening.choices, kind) == name)
            users.push_back({opening.id});
        return std::nullopt;
    });
    return users;
}

template<class Spec>
Preset<Spec>* presetIn(PresetList<Spec>& list, std::string_view name) {
    const auto found = std::ranges::find(list, name, &Preset<Spec>::name);
    return found == list.end() ? nullptr : &*found;
}

template<class Spec>
Result<Project> changedPreset(const Project& project, std::string_view name, const Spec& value) {
    constexpr PresetPlaces<Spec> places;
    if (std::optional<Error> error = impossible(value))
        return std::move(*error);
    Project changed = project;
    Preset<Spec>* preset = presetIn(changed.presets.*places.list, name);
    if (preset == nullptr)
        return noSuchPreset(name);
    const Spec before = std::exchange(preset->value, value);
    return changeDecisions(changed, usersOf(project, places.kind, name), places,
                           [&](Spec& held, const std::string&) {
                               if (held == before)
                                   held = value;
                           });
}

/// Precondition: the opening is there.
template<class Places>
const auto& heldBy(const Project& project, EditTarget target, Places places) {
    target = decider(project, target, places.kind);
    const Opening* opening = target.opening ? findOpening(project, *target.opening) : nullptr;
    return opening && opening->choices.*places.ofOpening ? *(opening->choices.*places.ofOpening)
                                                         : project.fronts.*places.ofCase;
}

} // namespace

PresetOrigin originOf(const Project& project, EditTarget target, PresetKind kind) {
    if (!target.opening)
        return originOf(project.presets, project.fronts, kind);
    const Opening* opening = findOpening(project, *decider(project, target, kind).opening);
    return opening ? originOf(project.presets, opening->choices, kind)
                   : PresetOrigin{Origin::TheCase, {}};
}

bool holdTheSame(const Project& project, std::span<const EditTarget> targets, PresetKind kind) {
    return targets.empty() || withPlaces(kind, [&](auto places) {
               const auto& first = heldBy(project, targets.front(), places);
               return std::ranges::all_of(targets, [&](const EditTarget& target) {
                   return heldBy(project, target, places) == first;
               });
           });
}

Result<Project> keepAsPreset(const Project& project, EditTarget target, PresetKind kind,
                             std::string_view name) {
    if (std::optional<Error> error = refusedName(project, kind, name))
        return std::move(*error);
    return withPlaces(kind, [&](auto places) {
        std::optional<SpecOf<decltype(places)>> kept;
        auto changed = changeDecisions(project, std::span(&target, 1), places,
                                       [&](const auto& held, std::string& from) {
                                           kept = held;
                                           from = name;
                                       });
        if (!changed.ok() || !kept)
            return changed;
        Project result = std::move(changed).value();
        (result.presets.*places.list).push_back({std::string(name), std::move(*kept), {}});
        return Result<Project>(std::move(result));
    });
}

Result<Project> usePreset(const Project& project, std::span<const EditTarget> targets,
                          PresetKind kind, std::string_view name) {
    return withPlaces(kind, [&](auto places) -> Result<Project> {
        const auto* preset = findPreset(project.presets.*places.list, name);
        if (preset == nullptr)
            return noSuchPreset(name);
        return changeDecisions(project, targets, places, [&](auto& held, std::string& from) {
            held = preset->value;
            from = preset->name;
        });
    });
}

Result<Project> backToPreset(const Project& project, std::span<const EditTarget> targets,
                             PresetKind kind) {
    return withPlaces(kind, [&](auto places) -> Result<Project> {
        std::vector<EditTarget> departing;
        for (const EditTarget& target : targets)
            if (originOf(project, target, kind).origin == Origin::Departs)
                departing.push_back(target);
        return changeDecisions(project, departing, places, [&](auto& held, std::string& from) {
            if (const auto* preset = findPreset(project.presets.*places.list, from))
                held = preset->value;
        });
    });
}

Result<Project> makeOwn(const Project& project, std::span<const EditTarget> targets,
                        PresetKind kind) {
    return withPlaces(kind, [&](auto places) {
        return changeDecisions(project, targets, places,
                               [](const auto&, std::string& from) { from.clear(); });
    });
}

Result<Project> followCase(const Project& project, std::span<const OpeningId> openings,
                           PresetKind kind) {
    std::vector<EditTarget> targets;
    for (const OpeningId opening : openings)
        targets.push_back({opening});
    return changeChoices(
        project, openingsOf(deciders(project, targets, kind)), [kind](FrontChoices& choices) {
            withPlaces(kind, [&](auto places) { (choices.*places.ofOpening).reset(); });
            setPresetName(choices, kind, {});
        });
}

Result<Project> changePreset(const Project& project, std::string_view name,
                             const HardwareSpec& value) {
    return changedPreset(project, name, value);
}
Result<Project> changePreset(const Project& project, std::string_view name, const Profile& value) {
    return changedPreset(project, name, value);
}
Result<Project> changePreset(const Project& project, std::string_view name, const BoxSpec& value) {
    return changedPreset(project, name, value);
}
Result<Project> changePreset(const Project& project, std::string_view name,
                             const MountingSpec& value) {
    return changedPreset(project, name, value);
}

Result<Project> changePresetTo(const Project& project, EditTarget target, PresetKind kind) {
    const PresetOrigin from = originOf(project, target, kind);
    if (from.origin != Origin::Departs)
        return Error{
            {}, text("it departs from no preset"), text("change it first, then the preset to it")};
    return withPlaces(kind, [&](auto places) {
        return changedPreset(project, from.preset, heldBy(project, target, places));
    });
}

Result<Project> renamePreset(const Project& project, PresetKind kind, std::string_view name,
                             std::string_view newName) {
    if (name == newName && hasPreset(project.presets, kind, name))
        return project;
    if (std::optional<Error> error = refusedName(project, kind, newName))
        return std::move(*error);
    return withPlaces(kind, [&](auto places) -> Result<Project> {
        Project changed = project;
        auto* preset = presetIn(changed.presets.*places.list, name);
        if (preset == nullptr)
            return noSuchPreset(name);
        preset->name = newName;
        return changeDecisions(changed, usersOf(project, kind, name), places,
                               [&](const auto&, std::string& from) { from = newName; });
    });
}

Result<Project> removePreset(const Project& project, PresetKind kind, std::string_view name) {
    if (!hasPreset(project.presets, kind, name))
        return noSuchPreset(name);
    return withPlaces(kind, [&](auto places) {
        Project changed = project;
        std::erase_if(changed.presets.*places.list,
                      [&](const auto& preset) { return preset.name == name; });
        return changeDecisions(changed, usersOf(project, kind, name), places,
                               [&](const auto&, std::string& from) { from.clear(); });
    });
}

} // namespace frontwright
