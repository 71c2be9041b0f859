#pragma once

#include "core/plan/plan.h"

namespace frontwright {

/// The system holes of a frameless case, by member, then face; empty where there are none.
///   height = datum + first + n · pitch, wherever an opening lies at the face; left out where a
///   shelf, the bottom or the top meets the panel and the hole would not stay clear of it
std::vector<PanelHoles> panelHoles(const Case&, const Layout&);

/// The lowest place of the rows in the case's frame: the datum and the first hole's height.
Length lowestHole(const Case&, const SystemHoles&);

} // namespace frontwright
