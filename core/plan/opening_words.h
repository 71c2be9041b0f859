#pragma once

#include "core/case/opening_use.h"
#include "core/words/phrase.h"

#include <string>

namespace frontwright {

/// What stands in an opening, with its label: "Front A2" of a drawer, "Door A2", "Open space A2".
Phrase nameOf(OpeningUse, const std::string& label);

} // namespace frontwright
