#pragma once

#include "core/drawings/drawing.h"

#include <vector>

namespace frontwright {

/// Leaves out, along x, the long stretches of a drawing in which nothing begins or ends, as a shop
/// drawing breaks a long part off: two zigzags stand where the rest is left out, and what lies
/// beyond moves nearer. Dimensions are laid afterwards and tell the true lengths.
class LongBreak {
public:
    /// Nothing is left out.
    LongBreak() = default;
    LongBreak(const std::vector<Mark>&, double paperScale);

    [[nodiscard]] bool isEmpty() const { return m_gaps.empty(); }
    /// Where x of the whole drawing comes to lie.
    [[nodiscard]] double placed(double x) const;
    /// What is left of the marks, in its new place, with the zigzags.
    [[nodiscard]] std::vector<Mark> applied(const std::vector<Mark>&) const;

private:
    struct Stretch {
        double from = 0;
        double to = 0;
    };
    friend class Breaker;

    std::vector<Stretch> m_gaps; ///< ascending
    double m_paperScale = 1;
};

} // namespace frontwright
