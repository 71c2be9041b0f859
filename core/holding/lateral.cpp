#include "core/holding/lateral.h"

#include <algorithm>
#include <array>

namespace frontwright {
namespace {

struct Group {
    double below; ///< gravity, which the handbook gives in hundredths
    double coefficient;
};
constexpr std::array<Group, 3> hardwoods{{{0.475, 23.17}, {0.565, 31.99}, {100, 44.13}}};
constexpr std::array<Group, 3> softwoods{{{0.425, 23.17}, {0.475, 29.79}, {100, 36.40}}};
constexpr double lightestHardwood = 0.325;
constexpr double lightestSoftwood = 0.285;
constexpr double wholeFrom = 7; // shank diameters
constexpr double noneUnder = 4;

} // namespace

std::optional<Force> designLateral(double gravityAt12, WoodKind kind, Length shank,
                                   Length penetration) {
    const bool isHard = kind == WoodKind::Hardwood;
    if (gravityAt12 < (isHard ? lightestHardwood : lightestSoftwood))
        return std::nullopt;
    const auto& groups = isHard ? hardwoods : softwoods;
    const auto group = std::find_if(groups.begin(), groups.end() - 1,
                                    [=](const Group& g) { return gravityAt12 < g.below; });
    const double d = shank.inMillimetres();
    const double diameters = d > 0 ? penetration.inMillimetres() / d : 0;
    if (diameters < noneUnder)
        return Force();
    return Force::nearestToNewtons(group->coefficient * d * d *
                                   std::min(1.0, diameters / wholeFrom));
}

} // namespace frontwright
