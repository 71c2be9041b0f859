#pragma once

#include "core/drawings/sketch.h"
#include "core/words/language.h"

namespace frontwright {

/// Words under a drawing: what it is, the unit of its figures, its scale.
struct DrawingNote {
    Phrase title;              ///< may be empty
    std::vector<Phrase> lines; ///< before the line about unit and scale
};

/// Writes the note below everything drawn so far, from its left edge. The unit is stated once for
/// all figures; "≈" is explained where a figure has it; the scale is given where it is one of
/// ISO 5455's.
void drawNote(Sketch&, const DrawingNote&, LengthStyle, const Language& = {});

/// "1:10", "1:1", "2:1"; empty where the scale is none of ISO 5455's.
std::string scaleName(double paperScale);

} // namespace frontwright
