#include "core/catalogue/specific_gravity.h"

namespace frontwright {

namespace {

constexpr double shrinking = 0.265; ///< part of the volume for each unit of basic gravity
constexpr double at12 = (30.0 - 12.0) / 30.0;
constexpr double atOvendry = 1.0;

double partAt(GravityBasis basis) {
    switch (basis) {
    case GravityBasis::At12Percent:
        return at12;
    case GravityBasis::Ovendry:
        return atOvendry;
    case GravityBasis::Green:
        break;
    }
    return 0;
}

/// G = G_b / (1 − k G_b) solved for G_b, then the same forward with the other k.
double on(double part, SpecificGravity gravity) {
    const double given = static_cast<double>(gravity.thousandths) / 1000;
    const double basic = given / (1 + shrinking * partAt(gravity.basis) * given);
    return basic / (1 - shrinking * part * basic);
}

} // namespace

double gravityAt12Percent(SpecificGravity gravity) {
    return on(at12, gravity);
}

double gravityOvendry(SpecificGravity gravity) {
    return on(atOvendry, gravity);
}

} // namespace frontwright
