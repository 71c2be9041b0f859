#include "core/project/presets.h"

namespace frontwright {
namespace {

template<class Spec>
PresetOrigin originAmong(const PresetList<Spec>& list, const Spec& value, std::string_view name) {
    if (name.empty())
        return {Origin::Own, {}};
    const Preset<Spec>* preset = findPreset(list, name);
    return {preset != nullptr && preset->value == value ? Origin::Preset : Origin::Departs,
            std::string(name)};
}

} // namespace

std::vector<std::string> presetNames(const Presets& presets, PresetKind kind) {
    return withPlaces(kind, [&](auto places) {
        std::vector<std::string> names;
        for (const auto& preset : presets.*places.list)
            names.push_back(preset.name);
        return names;
    });
}

bool hasPreset(const Presets& presets, PresetKind kind, std::string_view name) {
    return withPlaces(
        kind, [&](auto places) { return findPreset(presets.*places.list, name) != nullptr; });
}

PresetOrigin originOf(const Presets& presets, const FrontDefaults& fronts, PresetKind kind) {
    return withPlaces(kind, [&](auto places) {
        return originAmong(presets.*places.list, fronts.*places.ofCase, fronts.presets[kind]);
    });
}

PresetOrigin originOf(const Presets& presets, const FrontChoices& choices, PresetKind kind) {
    return withPlaces(kind, [&](auto places) -> PresetOrigin {
        const auto& own = choices.*places.ofOpening;
        if (!own)
            return {Origin::TheCase, {}};
        return originAmong(presets.*places.list, *own, presetName(choices, kind));
    });
}

void setPresetName(FrontChoices& choices, PresetKind kind, std::string name) {
    if (!choices.presets && name.empty())
        return;
    PresetNames& names = choices.presets ? *choices.presets : choices.presets.emplace();
    names[kind] = std::move(name);
    if (names.isEmpty())
        choices.presets.reset();
}

std::string_view presetName(const FrontChoices& choices, PresetKind kind) {
    return choices.presets ? std::string_view((*choices.presets)[kind]) : std::string_view();
}

} // namespace frontwright
