#pragma once

#include "core/words/phrase.h"

#include <string_view>

namespace frontwright {

/// Figures that were written with points, told with the language's own decimal mark:
/// "= 1/2 in = 12.7 mm". For what is written without a LengthStyle, which knows the mark.
Phrase figure(std::string_view withPoints);

} // namespace frontwright
