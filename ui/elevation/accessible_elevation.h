#pragma once

#include "ui/session/selection.h"

class QAccessibleInterface;

namespace frontwright {

class ElevationView;

/// From then on readers of the screen find the drawing as a list: each front and member with its
/// name, its size and what is to be heeded there, each front's holes below it; pressing selects.
void makeElevationAccessible();

/// The part's own interface; nullptr where the view shows no such part.
QAccessibleInterface* accessiblePart(ElevationView&, const Selection&);

} // namespace frontwright
