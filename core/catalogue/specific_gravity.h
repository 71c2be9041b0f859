#pragma once

#include <cstdint>

namespace frontwright {

/// Specific gravity is ovendry weight over the weight of water of some volume: whose? Equations are
/// each for one of these, and a value of one basis must never meet the coefficient of another.
enum class GravityBasis : std::uint8_t {
    At12Percent, ///< volume at 12 % moisture: Wood Handbook, table 5-3 and its withdrawal equations
    Ovendry,     ///< volume ovendry: National Design Specification (NDS)
    Green        ///< volume green ("basic"): Wood Handbook, imported woods
};

struct SpecificGravity {
    std::int64_t thousandths = 0;
    GravityBasis basis = GravityBasis::At12Percent;
    friend bool operator==(const SpecificGravity&, const SpecificGravity&) = default;
};

/// On the basis of volume at 12 % moisture, of ovendry volume. Wood Handbook, chapter 4, from
/// memory: G_M = G_b / (1 − 0.265 a G_b), a = (30 − M) / 30, with G_b the basic one.
double gravityAt12Percent(SpecificGravity);
double gravityOvendry(SpecificGravity);

} // namespace frontwright
