#pragma once

#include "ui/window/entry_table.h"

namespace frontwright {

// Columns of fittings. Parts are written one after the other with ";" between, their values with
// "|": places are from the fitting's centre, right and up.

EntryColumn<FittingForm> fittingKindColumn(const QString& title);
/// The face that it bears on.
EntryColumn<FittingForm> bearsOnColumn(const QString& title);
/// "-30 mm | 0 mm; 30 mm | 0 mm"
EntryColumn<FittingForm> screwPlacesColumn(const QString& title);
/// "show face | 0 mm | 0 mm | 8 mm" and, where it does not go through, its depth.
EntryColumn<FittingForm> boresColumn(const QString& title);
/// "back | -25 mm | -20 mm | 25 mm | 20 mm | 2 mm": lower left and upper right corner, depth.
EntryColumn<FittingForm> mortisesColumn(const QString& title);
/// Empty where the maker places it.
EntryColumn<FittingForm> belowTopColumn(const QString& title);

} // namespace frontwright
