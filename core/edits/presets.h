#pragma once

#include "core/edits/choices.h"

#include <span>
#include <string_view>

namespace frontwright {

// Edits of presets, and of who follows them. Setting a value (setHardware, setBox, …) on one who
// follows a preset makes it depart from it: the preset's name stays with it.

/// Where what holds for the target comes from. An opening that is not there follows the case.
PresetOrigin originOf(const Project&, EditTarget, PresetKind);

/// Does one and the same value of the kind hold for all the targets?
bool holdTheSame(const Project&, std::span<const EditTarget>, PresetKind);

/// Keeps what holds for the target under a name; the target follows it from then on. Error: the
/// name is empty or taken, the opening is not there.
Result<Project> keepAsPreset(const Project&, EditTarget, PresetKind, std::string_view name);

/// All the targets follow the preset: one edit for any number of fronts.
Result<Project> usePreset(const Project&, std::span<const EditTarget>, PresetKind,
                          std::string_view name);

/// Those of the targets that depart from a preset have its value again.
Result<Project> backToPreset(const Project&, std::span<const EditTarget>, PresetKind);

/// The targets keep what holds for them now as their own, and come from no preset any more.
Result<Project> makeOwn(const Project&, std::span<const EditTarget>, PresetKind);

/// The openings decide nothing of that kind for themselves.
Result<Project> followCase(const Project&, std::span<const OpeningId>, PresetKind);

/// Changes a preset, and all that follow it. Those that depart from it keep their values.
/// Error: there is none of that name, or the value is impossible.
Result<Project> changePreset(const Project&, std::string_view name, const HardwareSpec&);
Result<Project> changePreset(const Project&, std::string_view name, const Profile&);
Result<Project> changePreset(const Project&, std::string_view name, const BoxSpec&);
Result<Project> changePreset(const Project&, std::string_view name, const MountingSpec&);
/// Changes the preset that the target departs from to the target's value, and with it all that
/// follow. Error: it departs from none.
Result<Project> changePresetTo(const Project&, EditTarget, PresetKind);

/// Users keep to it under the new name. Error: the new name is empty or taken.
Result<Project> renamePreset(const Project&, PresetKind, std::string_view name,
                             std::string_view newName);

/// Its users keep their values as their own.
Result<Project> removePreset(const Project&, PresetKind, std::string_view name);

} // namespace frontwright
