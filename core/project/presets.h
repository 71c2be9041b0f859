#pragma once

#include "core/case/choices.h"

#include <algorithm>
#include <string>
#include <string_view>
#include <vector>

namespace frontwright {

/// A value that the maker keeps under a name: "Deep drawers".
template<class Spec>
struct Preset {
    std::string name; ///< never empty; once in its list
    Spec value;
    Unknowns unknowns;
    friend bool operator==(const Preset&, const Preset&) = default;
};
/// In the order in which the maker made them.
template<class Spec>
using PresetList = std::vector<Preset<Spec>>;

/// All presets of a document. Whoever is named after one of them (PresetNames) either has its value
/// or departs from it; edits keep that so.
struct Presets {
    PresetList<HardwareSpec> hardware;
    PresetList<Profile> profile;
    PresetList<BoxSpec> box;
    PresetList<MountingSpec> mounting;
    Unknowns unknowns;
    friend bool operator==(const Presets&, const Presets&) = default;
};

/// Where values of a kind stand: `kind`, in the presets, of the case and of an opening.
template<class Spec>
struct PresetPlaces {};
template<>
struct PresetPlaces<HardwareSpec> {
    static constexpr PresetKind kind = PresetKind::Hardware;
    static constexpr auto list = &Presets::hardware;
    static constexpr auto ofCase = &FrontDefaults::hardware;
    static constexpr auto ofOpening = &FrontChoices::hardware;
};
template<>
struct PresetPlaces<Profile> {
    static constexpr PresetKind kind = PresetKind::Profile;
    static constexpr auto list = &Presets::profile;
    static constexpr auto ofCase = &FrontDefaults::profile;
    static constexpr auto ofOpening = &FrontChoices::profile;
};
template<>
struct PresetPlaces<BoxSpec> {
    static constexpr PresetKind kind = PresetKind::Box;
    static constexpr auto list = &Presets::box;
    static constexpr auto ofCase = &FrontDefaults::box;
    static constexpr auto ofOpening = &FrontChoices::box;
};
template<>
struct PresetPlaces<MountingSpec> {
    static constexpr PresetKind kind = PresetKind::Mounting;
    static constexpr auto list = &Presets::mounting;
    static constexpr auto ofCase = &FrontDefaults::mounting;
    static constexpr auto ofOpening = &FrontChoices::mounting;
};

/// Calls `call` with the PresetPlaces of the kind.
template<class Call>
decltype(auto) withPlaces(PresetKind kind, Call call) {
    switch (kind) {
    case PresetKind::Hardware:
        return call(PresetPlaces<HardwareSpec>{});
    case PresetKind::Profile:
        return call(PresetPlaces<Profile>{});
    case PresetKind::Box:
        return call(PresetPlaces<BoxSpec>{});
    case PresetKind::Mounting:
        break;
    }
    return call(PresetPlaces<MountingSpec>{});
}

/// nullptr where there is none of that name.
template<class Spec>
const Preset<Spec>* findPreset(const PresetList<Spec>& list, std::string_view name) {
    const auto found = std::ranges::find(list, name, &Preset<Spec>::name);
    return found == list.end() ? nullptr : &*found;
}

/// The names of a kind's presets, in their order.
std::vector<std::string> presetNames(const Presets&, PresetKind);
bool hasPreset(const Presets&, PresetKind, std::string_view name);

/// Where a decision of a kind comes from.
enum class Origin : std::uint8_t {
    TheCase, ///< an opening that decides nothing for itself
    Preset,  ///< has a preset's value, and follows it
    Departs, ///< a value of its own, taken from a preset and changed
    Own      ///< a value of its own, from no preset
};
struct PresetOrigin {
    Origin origin = Origin::Own;
    std::string preset; ///< followed or departed from; else empty
    friend bool operator==(const PresetOrigin&, const PresetOrigin&) = default;
};
PresetOrigin originOf(const Presets&, const FrontDefaults&, PresetKind);
PresetOrigin originOf(const Presets&, const FrontChoices&, PresetKind);

/// Names the preset that an opening's own value comes from; empty: from none.
void setPresetName(FrontChoices&, PresetKind, std::string name);
/// Empty: from none.
std::string_view presetName(const FrontChoices&, PresetKind);

} // namespace frontwright
