#pragma once

#include "core/documents/reading.h"
#include "core/documents/writing.h"

#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <vector>

namespace frontwright::documents {

// What a front or the case decides where presets of that kind exist. In a document:
//   {"preset": "Deep drawers"}             follows the preset: its value, no other
//   {"departsFrom": "Deep drawers", …}     a whole value of its own, taken from the preset
//   {…}                                    a whole value of its own

/// A value with the name of the preset that it comes from; empty: from none.
template<class Spec>
struct Decision {
    Spec& value;
    std::conditional_t<std::is_const_v<Spec>, std::string_view, std::string&> preset;
};

/// For Reading::optional: a value that comes to be where it is read.
template<class Spec>
struct OptionalDecision {
    Rare<Spec>& value;
    std::string preset;
    std::optional<Decision<Spec>> decision;
    Decision<Spec>& emplace() { return decision.emplace(Decision<Spec>{value.emplace(), preset}); }
};

/// Goes through a form for its members' names only.
struct MemberNames {
    std::vector<std::string_view> names;

    void required(std::string_view name, const auto&) { names.push_back(name); }
    void optional(std::string_view name, const auto&) { names.push_back(name); }
    template<class T>
    void defaulted(std::string_view name, const T&, const std::type_identity_t<T>&) {
        names.push_back(name);
    }
    void always(std::string_view name, const auto&) { names.push_back(name); }
    void whole(std::string_view name, const auto&, Whole, std::int64_t) { names.push_back(name); }
    void refuse(std::string_view, Text) {}
};

/// That there is no preset of that kind and name.
Phrase presetMissing(PresetKind kind, std::string name);

/// Reads the name of a preset; nullptr, and a failed state, where there is none of it.
template<class Spec>
const Preset<Spec>* readPresetName(const Place& at) {
    std::string name;
    readValue(at, name);
    if (at.state.error)
        return nullptr;
    const Presets* presets = at.state.presets;
    const auto* preset =
        presets != nullptr ? findPreset(presets->*PresetPlaces<Spec>::list, name) : nullptr;
    if (preset == nullptr)
        at.fail(presetMissing(PresetPlaces<Spec>::kind, name),
                text("name one that stands under \"presets\", or write the value itself"));
    return preset;
}

template<class Spec>
void readValue(const Place& at, Decision<Spec>& decision) {
    if (!at.demand(JsonKind::Object))
        return;
    Reading object(at);
    const NodeIndex followed = object.take("preset");
    const NodeIndex left = object.take("departsFrom");
    if (followed != noNode) {
        if (const auto* preset = readPresetName<Spec>(object.placeOf(followed, nullptr))) {
            decision.value = preset->value;
            decision.preset = preset->name;
        }
        MemberNames all{{"departsFrom"}};
        const Spec any{};
        members(all, any);
        for (const std::string_view name : all.names)
            object.refuse(name, text("nothing beside \"preset\" that the preset decides"));
    } else {
        if (left != noNode)
            if (const auto* preset = readPresetName<Spec>(object.placeOf(left, nullptr)))
                decision.preset = preset->name;
        members(object, decision.value);
    }
    object.finish();
}

template<class Spec>
void writeValue(const Target& to, const Decision<const Spec>& decision) {
    Writing object(to);
    const auto* preset =
        decision.preset.empty()
            ? nullptr
            : findPreset(to.state.presets.*PresetPlaces<Spec>::list, decision.preset);
    const bool follows = preset != nullptr && preset->value == decision.value;
    if (preset != nullptr)
        object.required(follows ? "preset" : "departsFrom", decision.preset);
    if (!follows)
        members(object, decision.value);
    object.finish();
}

} // namespace frontwright::documents
