#pragma once

#include "core/plan/quantity.h"
#include "ui/elevation/hit.h"
#include "ui/session/session.h"

#include <QString>

#include <optional>
#include <vector>

namespace frontwright {

// The parts that can be picked out on the drawing, for whoever goes through them without a mouse or
// without seeing them. A part is told by the selection that picks it.

/// The fronts in the plan's order, openings without one, then the members.
std::vector<Selection> outerParts(const Plan&);
/// The holes of the selection's front: screws, then handles; nothing where a hole is picked.
std::vector<Selection> holesOf(const Plan&, const Selection& front);
/// All of them: each front with its holes behind it, then the members.
std::vector<Selection> allParts(const Plan&);
bool isThere(const Plan&, const Selection&);

/// "Front B3", "Rail above A2", "Screw hole 1".
QString nameOf(const Selection&, const Project&, const Plan&);
/// Its size or place, as shown: "13 1/8 in × 6 in".
QString sizeOf(const Selection&, const Plan&, LengthStyle);
/// What is to be heeded there, gravest first: "Would ruin a part: …"; empty where nothing is.
QString heedOf(const Selection&, const Work&, LengthStyle);
/// In the case's millimetres.
CaseRect placeOf(const Selection&, const Plan&);

/// Of an arrow key (Qt::Key), one long; case frame.
PointMm directionOf(int key);
/// Where an arrow key leads: to the nearest opening in that direction, what lies sideways
/// of it counting double; to the first one where none is selected. Empty where there is none.
std::optional<Selection> openingTowards(const Plan&, const Selection& from, int key);

/// The numbers that one asks for at a place, the nearest first: of the hole, of the member or
/// front.
std::vector<Quantity> numbersOf(const Selection&, const Plan&);
/// What a click there picks.
Selection selectionAt(const Hit&);

} // namespace frontwright
