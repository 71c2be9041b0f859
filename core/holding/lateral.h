#pragma once

#include "core/amounts/amounts.h"
#include "core/catalogue/catalogue.h"

#include <optional>

namespace frontwright {

/// What a wood screw in side grain bears across its shank, to design with (a proportional limit,
/// lessened): p = c D² with D the shank's diameter. Wood Handbook, chapter 8, older editions, from
/// memory, in N and mm, by gravity on volume at 12 % moisture:
///   hardwoods  0.33 to 0.47 23.17,  to 0.56 31.99,  to 0.74 44.13
///   softwoods  0.29 to 0.42 23.17,  to 0.47 29.79,  to 0.52 36.40
/// It holds from 7 D of penetration on, in proportion below, and not under 4 D: 0. Heavier woods
/// are taken as the heaviest group; nullopt for lighter ones.
std::optional<Force> designLateral(double gravityAt12, WoodKind, Length shank, Length penetration);

} // namespace frontwright
