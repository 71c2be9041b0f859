#pragma once

#include "core/project/project.h"
#include "core/results/result.h"

#include <optional>

namespace frontwright {

// Edits of how a case is built and of what stands round it.

/// With a face frame or without; all sizes stay.
Result<Project> setConstruction(const Project&, Construction);
/// Error: a kind that cannot stand at that side, or a negative length.
Result<Project> setSurround(const Project&, Side, const Surround&);
/// None: no rows are bored. Error: a pitch or a diameter that is not more than 0, a negative
/// distance.
Result<Project> setSystemHoles(const Project&, const std::optional<SystemHoles>&);

} // namespace frontwright
