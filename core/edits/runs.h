#pragma once

#include "core/case/divisions.h"

#include <vector>

namespace frontwright {

// The children of a split by the rules of their sizes.

/// A place of the split's graduated run.
bool isPlace(const Child&);
/// Those that no fixed size holds, ascending.
std::vector<std::size_t> unlockedChildren(const Split&);
/// Ends the run; its places become shares of equal weight.
void turnRunIntoShares(Split&);

} // namespace frontwright
