#include "core/holding/withdrawal.h"

#include <array>

namespace frontwright {

namespace {

Force withdrawal(double coefficient, double gravity, Length shank, Length thread) {
    if (thread <= Length{})
        return {};
    return Force::nearestToNewtons(coefficient * gravity * gravity * shank.inMillimetres() *
                                   thread.inMillimetres());
}

struct Tested {
    Length length;
    double leastGauge, greatestGauge;
};
constexpr std::array<Tested, 7> testedScrews{{{Length::inches(0, 32), 1, 6},
                                              {Length::inches(0, 48), 2, 11},
                                              {Length::inches(1), 3, 12},
                                              {Length::inches(1, 32), 5, 14},
                                              {Length::inches(2), 7, 16},
                                              {Length::inches(2, 32), 9, 18},
                                              {Length::inches(3), 12, 20}}};

bool holds(const Tested& tested, double gauge) {
    constexpr double hair = 1e-6; // a gauge comes from a diameter in nanometres
    return tested.leastGauge - hair <= gauge && gauge <= tested.greatestGauge + hair;
}

} // namespace

Force ultimateWithdrawal(double gravityAt12, Length shank, Length thread) {
    return withdrawal(ultimateCoefficient, gravityAt12, shank, thread);
}

Force designWithdrawal(double gravityOvendry, Length shank, Length thread) {
    return withdrawal(designCoefficient, gravityOvendry, shank, thread);
}

Length threadInWood(Length penetration, Length screw) {
    const Length threaded = Length::fromNanometres(screw.nanometres() * 2 / 3);
    return greatest(Length{}, least(penetration, threaded));
}

double gaugeOf(Length shank) {
    return (shank.inInches() - 0.060) / 0.013;
}

bool isInTestedRange(Length shank, Length screw) {
    const double gauge = gaugeOf(shank);
    for (std::size_t i = 0; i < testedScrews.size(); ++i) {
        if (screw == testedScrews[i].length)
            return holds(testedScrews[i], gauge);
        if (i > 0 && screw > testedScrews[i - 1].length && screw < testedScrews[i].length)
            return holds(testedScrews[i - 1], gauge) && holds(testedScrews[i], gauge);
    }
    return false;
}

} // namespace frontwright
