#pragma once

#include "core/project/project.h"
#include "core/results/result.h"

#include <string_view>

namespace frontwright {

// The maker's own catalogue entries. An own entry of a program's id takes that one's place.

// Adds the entry, or puts it in the place of the own one of its id. Error: no id or name, a size
// that cannot be, lengths that do not ascend.
Result<Project> keepOwn(const Project&, const WoodScrew&);
Result<Project> keepOwn(const Project&, const Bolt&);
Result<Project> keepOwn(const Project&, const HardwareForm&);
Result<Project> keepOwn(const Project&, const RunnerKind&);
Result<Project> keepOwn(const Project&, const Species&);
Result<Project> keepOwn(const Project&, const FittingForm&);

enum class EntryKind : std::uint8_t { WoodScrew, Bolt, Hardware, Runner, Species, Fitting };

/// Error: there is no own entry of that id. Whether something still names it is seen when the case
/// is planned.
Result<Project> removeOwn(const Project&, EntryKind, std::string_view id);

} // namespace frontwright
