#pragma once

#include "core/project/project.h"

#include <string>

namespace frontwright {

/// Names the state of a case on its papers, in the language in use: "revision 3fa2c1", from what
/// its document holds. A date would make two prints of the same case differ, and say less.
std::string revisionOf(const Project&);

} // namespace frontwright
