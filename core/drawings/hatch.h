#pragma once

#include "core/drawings/drawing.h"

namespace frontwright {

/// The hatch's lines, cut at its outline and at what is left free; even-odd where an outline
/// crosses itself. Empty where the outline is, or where lines would lie closer than 0.01 mm.
std::vector<LineMark> hatchLines(const HatchMark&, double paperScale);

} // namespace frontwright
