#pragma once

#include "core/project/project.h"
#include "core/results/result.h"

#include <optional>
#include <string_view>

namespace frontwright {

// Edits of everything but the divisions: Project in, Project out. Impossible values are refused
// with the reason; a value that is merely unwise is taken and judged by the findings.

/// Whose decision is meant: one opening's own, or where none is named the case's default.
struct EditTarget {
    std::optional<OpeningId> opening;
    friend bool operator==(const EditTarget&, const EditTarget&) = default;
};

Result<Project> setFrontFit(const Project&, EditTarget, Side, SideFit);
Result<Project> setThickness(const Project&, EditTarget, WrittenLength);
Result<Project> setProfile(const Project&, EditTarget, const Profile&);
Result<Project> setBox(const Project&, EditTarget, const BoxSpec&);
Result<Project> setMounting(const Project&, EditTarget, const MountingSpec&);
Result<Project> setHardware(const Project&, EditTarget, const HardwareSpec&);

/// What an opening can decide for itself as a whole; fits are cleared side by side.
enum class Choice : std::uint8_t { Thickness, Stock, Profile, Box, Mounting, Hardware };
/// The opening follows the case again.
Result<Project> clearChoice(const Project&, OpeningId, Choice);
Result<Project> clearFrontFit(const Project&, OpeningId, Side);

/// Precondition of use: id of a Species in the catalogue, or none; not checked here.
Result<Project> setStock(const Project&, EditTarget, const Stock&);
/// The species of the case's stock; see there.
Result<Project> setSpecies(const Project&, std::string_view species);

/// The air that the fronts live in; none: nothing is told of the seasons. Error: a humidity, a
/// temperature or a moisture outside its range, or a driest that is wetter than the wettest.
Result<Project> setAir(const Project&, const std::optional<Air>&);

Result<Project> setLimits(const Project&, const Limits&);
/// Denominators are 8, 16, 32 or 64.
Result<Project> setStyle(const Project&, LengthStyle);
Result<Project> setTitle(const Project&, std::string_view title);
Result<Project> setNote(const Project&, std::string_view note);
Result<Project> renameOpening(const Project&, OpeningId, std::string_view name);

/// Measures of a case beside its outer size.
struct CaseMeasures {
    PerSide<WrittenLength> frame; ///< widths of the outer stiles and rails
    WrittenLength frameThickness;
    WrittenLength depth; ///< inside, from the frame's back to the case's back
    WrittenLength grid;  ///< computed sizes are whole multiples of it
};
CaseMeasures measuresOf(const Case&);
/// Error also where the divisions have no room in it.
Result<Project> setCase(const Project&, const CaseMeasures&);

/// Divides the opening `to` like the bank in which `from` stands: the innermost rows, with their
/// rules, names and choices. Ids are new. Error also where they have no room in `to`.
Result<Project> copyDivisions(const Project&, OpeningId from, OpeningId to);

} // namespace frontwright
