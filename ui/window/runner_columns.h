#pragma once

#include "ui/window/entry_table.h"

namespace frontwright {

/// The columns of what boxes run on. A size is typed as "1 3/8 in × 1/2 in", width first; what is
/// not known, or not there, is empty.
std::vector<EntryColumn<RunnerKind>> runnerColumns();

} // namespace frontwright
