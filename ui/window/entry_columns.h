#pragma once

#include "ui/window/entry_table.h"

namespace frontwright {

// Columns of catalogue entries that are more than one text or length.

/// A screw's root; empty where it is not known.
EntryColumn<WoodScrew> rootColumn(const QString& title);
/// The load that a pair of runners carries; empty where it is not known.
EntryColumn<RunnerKind> ratingColumn(const QString& title);

/// Where a handle's holes lie, from its centre: "-48 mm; 48 mm". As many as are typed are made;
/// new ones lie as high as the first.
EntryColumn<HardwareForm> holesAcrossColumn(const QString& title);
/// How far above the centre they lie: one length for all, or as many as there are holes.
EntryColumn<HardwareForm> holesUpColumn(const QString& title);

/// Empty where it is not known.
EntryColumn<Species> gravityColumn(const QString& title);
/// Whose volume the gravity is of: chosen, not typed.
EntryColumn<Species> gravityBasisColumn(const QString& title);
/// Change of size per 1 % of moisture: "0.00248"; empty where it is not known.
EntryColumn<Species> movementColumn(const QString& title, std::int64_t MovementCoefficients::*part);

} // namespace frontwright
