#pragma once

#include "core/documents/front_forms.h"
#include "core/project/presets.h"

#include <algorithm>
#include <string_view>
#include <vector>

namespace frontwright::documents {

// The form of a document's presets. `a` is a Reading or a Writing.

template<class S>
concept AnyPreset = Is<S, Preset<HardwareSpec>> || Is<S, Preset<Profile>> ||
    Is<S, Preset<BoxSpec>> || Is<S, Preset<MountingSpec>>;

void members(auto& a, AnyPreset auto& s) {
    a.required("name", s.name);
    if (s.name.empty())
        a.refuse("name", text("a name"));
    members(a, s.value);
}

/// A list of presets; empty is not written. Each name stands for one of them only.
void presetList(auto& a, std::string_view name, auto& list) {
    a.defaulted(name, list, {});
    std::vector<std::string_view> names;
    for (const auto& preset : list)
        names.push_back(preset.name);
    std::sort(names.begin(), names.end());
    if (std::adjacent_find(names.begin(), names.end()) != names.end())
        a.refuse(name, text("presets of different names"));
}

void members(auto& a, Is<Presets> auto& s) {
    presetList(a, "hardware", s.hardware);
    presetList(a, "profile", s.profile);
    presetList(a, "box", s.box);
    presetList(a, "mounting", s.mounting);
}

/// What follows in the document may name them.
inline void remember(Reading& a, const Presets& presets) {
    a.at().state.presets = &presets;
}
inline void remember(Writing&, const Presets&) {}

} // namespace frontwright::documents
