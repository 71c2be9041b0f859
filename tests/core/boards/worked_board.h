#pragma once

#include "core/boards/keeper_hold.h"
#include "core/boards/pull_out.h"
#include "tests/core/shorthand.h"

#include <cstdint>
#include <random>

// A board that its tests share: 3/4 in thick and 16 in deep, in an opening 18 in wide and 1 in high
// between stiles of 1 1/2 in; side panels 3/4 in thick at the stiles' outer edges.
namespace frontwright::testing {

inline double numberOf(Ratio ratio) {
    return static_cast<double>(ratio.thousandths()) / 1000;
}

inline BoardSpec workedSpec() {
    BoardSpec spec;
    spec.depth = in(16);
    spec.bradLength = in(1);
    spec.keeper.screwLength = in(2);
    return spec;
}
inline BoardPlace workedPlace() {
    return {{in(1, 32), in(30), in(19, 32), in(31)},
            in(0, 48),
            in(20, 16),
            in(0, 48),
            in(0, 48),
            in(18)};
}
inline BoardPlan workedBoard() {
    return planBoard(workedSpec(), workedPlace());
}

/// No. 8: 0.164 in.
inline WoodScrew numberEight() {
    WoodScrew screw;
    screw.shankDiameter = Length::fromNanometres(164 * 25'400);
    return screw;
}
/// Northern red oak: 0.63 at 12 %.
inline Species oak() {
    Species species;
    species.gravity = SpecificGravity{630, GravityBasis::At12Percent};
    species.figures.coefficients = MovementCoefficients{1580, 3690, {}};
    return species;
}

/// Any board that a maker could think of, and some that nobody would.
class RandomBoards {
public:
    explicit RandomBoards(std::uint32_t seed) : m_random(seed) {}

    Length upTo(std::int64_t over64) { return Length::fromSixtyFourths(between(0, over64)); }
    std::int64_t between(std::int64_t low, std::int64_t high) {
        return low +
               static_cast<std::int64_t>(m_random() % static_cast<std::uint64_t>(high - low + 1));
    }
    BoardSpec spec() {
        BoardSpec spec = workedSpec();
        spec.depth = in(6) + upTo(64 * 18);
        spec.sidePlay = upTo(12);
        spec.playInHeight = upTo(8);
        spec.workingAllowance = upTo(6);
        spec.keeper.width = in(0, 24) + upTo(64);
        spec.keeper.height = in(0, 24) + upTo(64);
        for (std::int64_t i = between(0, 5); i > 0; --i)
            spec.keeper.fasteners.push_back(
                {between(0, 1) == 0 ? Side::Left : Side::Right, upTo(64 * 24), upTo(96)});
        return spec;
    }
    BoardPlace place() {
        BoardPlace place = workedPlace();
        place.opening.right = place.opening.left + in(4) + upTo(64 * 26);
        place.rightPanel = place.opening.right + upTo(96);
        place.leftPanel = place.opening.left - upTo(96);
        place.caseDepth = in(12) + upTo(64 * 14);
        return place;
    }

private:
    std::mt19937 m_random;
};

} // namespace frontwright::testing
