#pragma once

#include "core/sheets/sheets.h"

namespace frontwright {

/// A printer's factors for pages of that orientation.
ScaleFactors factorsOf(const SheetOptions&, Orientation);

/// Four decimals, as they are printed: "1.0042".
std::string factorText(double factor, DecimalMark mark = DecimalMark::Point);

/// The paper as it is to be laid out: smaller where a factor enlarges what is drawn, so that
/// marks stay inside their margins. Factors go with the page's width and height.
Paper beforeCorrection(const Paper&, Orientation, const ScaleFactors&);

/// Scales every place about the page's lower left corner and the page to its paper's own size.
/// A drill's circle stays round: 2 % of its radius at most.
void correct(Page&, const ScaleFactors&);

} // namespace frontwright
