#pragma once

#include "core/project/project.h"
#include "core/results/result.h"

#include <functional>
#include <optional>
#include <span>

namespace frontwright {

/// The project with openings changed: each is handed to `change` in reading order; nothing given
/// back leaves it as it is. Ids stay; regions without a change are shared. Names and choices only.
using OpeningEdit = std::function<std::optional<Opening>(const Opening&)>;
Project withEveryOpening(const Project&, const OpeningEdit& change);

/// Changes the choices of many openings at once, each once. Error: one of them is not there.
Result<Project> changeChoices(const Project&, std::span<const OpeningId>,
                              const std::function<void(FrontChoices&)>& change);

} // namespace frontwright
