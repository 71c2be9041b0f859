#pragma once

#include "core/case/divisions.h"
#include "core/results/result.h"

#include <QStringList>

#include <span>

namespace frontwright {

struct Project;

/// What an opening is for, as one choice: a door with the side on which it hangs.
struct OpeningKind {
    OpeningUse use = OpeningUse::Drawer;
    HingeSide hinge = HingeSide::Left; ///< of a door
    friend bool operator==(const OpeningKind&, const OpeningKind&) = default;
};
inline constexpr std::array<OpeningKind, 6> allOpeningKinds{{{OpeningUse::Drawer},
                                                             {OpeningUse::FixedFront},
                                                             {OpeningUse::Door, HingeSide::Left},
                                                             {OpeningUse::Door, HingeSide::Right},
                                                             {OpeningUse::OpenSpace},
                                                             {OpeningUse::Board}}};

OpeningKind kindOf(const Opening&);
int indexOf(OpeningKind); ///< in allOpeningKinds
/// What is offered for an opening: "Drawer", "Door, hinges at the left"; in the order of
/// allOpeningKinds, and last "Pair of doors", which divides it.
QStringList openingKindNames();

/// The same for a menu: each with a letter of its own.
QStringList openingKindActions();

/// Gives the openings the use that is offered at that place: setUse and setHinge, or
/// makePairOfDoors, in one step.
Result<Project> setOffered(const Project&, std::span<const OpeningId>, int index);

} // namespace frontwright
