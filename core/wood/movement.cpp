#include "core/wood/movement.h"

#include <algorithm>

namespace frontwright {

namespace {

/// The moisture at which the handbook's coefficients meet the wider formula.
constexpr double meeting = 10;

double ofCut(double radial, double tangential, Cut cut) {
    switch (cut) {
    case Cut::FlatSawn:
        return tangential;
    case Cut::QuarterSawn:
        return radial;
    case Cut::Rift:
        break;
    }
    return (radial + tangential) / 2;
}

} // namespace

double coefficientFrom(Percent shrinkage, Percent start) {
    return 1 / (100 * start.value() / shrinkage.value() - start.value() + meeting);
}

std::optional<double> coefficientOf(const WoodFigures& figures, Cut cut) {
    if (const auto& c = figures.coefficients) {
        constexpr double million = 1e6;
        return ofCut(static_cast<double>(c->radial) / million,
                     static_cast<double>(c->tangential) / million, cut);
    }
    if (const auto& s = figures.shrinkage)
        return ofCut(coefficientFrom(s->radial, s->start), coefficientFrom(s->tangential, s->start),
                     cut);
    return std::nullopt;
}

std::optional<double> coefficientOf(const WoodFigures& figures, const Stock& stock) {
    switch (stock.build) {
    case Build::Stable:
        return 0;
    case Build::Solid:
        break;
    }
    return coefficientOf(figures, stock.cut);
}

double linearChange(double coefficient, double from, double to) {
    return coefficient * (to - from);
}

double wideChange(Percent shrinkage, Percent start, double from, double to) {
    return (to - from) / (100 * start.value() / shrinkage.value() - start.value() + from);
}

double wideChange(double coefficient, double from, double to) {
    return coefficient == 0 ? 0 : (to - from) / (1 / coefficient - meeting + from);
}

bool isBeyondCoefficient(double from, double to) {
    return std::min(from, to) < leastOfCoefficient.value() ||
           std::max(from, to) > greatestOfCoefficient.value();
}

double relativeChange(double coefficient, double from, double to) {
    const auto within = [](double moisture) {
        return std::clamp(moisture, leastOfCoefficient.value(), greatestOfCoefficient.value());
    };
    const double size = (1 + wideChange(coefficient, from, within(from))) *
                        (1 + linearChange(coefficient, within(from), within(to))) *
                        (1 + wideChange(coefficient, within(to), to));
    return size - 1;
}

Length partOf(Length length, double relative) {
    return Length::nearestToMillimetres(length.inMillimetres() * relative);
}

} // namespace frontwright
