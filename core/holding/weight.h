#pragma once

#include "core/amounts/amounts.h"
#include "core/boxes/box.h"
#include "core/catalogue/catalogue.h"

#include <optional>

namespace frontwright {

/// Wood at 12 % moisture weighs G × 1000 kg/m³ × 1.12, G on volume at 12 % (Wood Handbook, chapter
/// 4, from memory).
double densityAt12Percent(SpecificGravity); ///< kg/m³
Mass massOf(Volume, SpecificGravity);

/// What one drawer weighs and holds.
struct DrawerLoad {
    std::optional<Mass> front; ///< the whole block, edge profile left on; none: wood not known
    std::optional<Mass> box;   ///< all of it as of the front's wood
    Mass otherFronts;          ///< on the same box; nothing where the wood is not known
    Mass contents;             ///< by purpose, or the maker's
    /// 16 CFR 1261 (ASTM F2057-23): from the bottom to the lowest obstruction less 1/8 in, times
    /// inside width times inside depth.
    Volume storage;
    std::optional<Mass> rating; ///< of the runner

    /// What the runner carries; none where the wood is not known.
    [[nodiscard]] std::optional<Mass> onRunner() const {
        return front && box ? std::optional(*front + otherFronts + *box + contents) : std::nullopt;
    }
    friend bool operator==(const DrawerLoad&, const DrawerLoad&) = default;
};

struct DrawerParts {
    const BoxSpec& spec;
    const BoxPlan& box;
    CaseRect opening;
    CaseRect front;
    Length thickness; ///< the front's
    const Species* wood = nullptr;
    const RunnerKind* runner = nullptr;
};
DrawerLoad drawerLoad(const DrawerParts&);

/// Loads by purpose; see DrawerPurpose.
Mass contentsOf(DrawerPurpose, const BoxPlan&, Volume storage);
inline constexpr std::int64_t householdPoundsPerSquareFoot = 15;
inline constexpr double clothingPoundsPerCubicFoot = 8.5;
inline constexpr std::int64_t schoolPounds = 100;

// Scope of 16 CFR part 1261 (ASTM F2057-23) for clothing storage; all three must be met.
inline constexpr Length storageScopeHeight = Length::inches(27);
inline constexpr Mass storageScopeMass = Mass::pounds(30);
inline constexpr double storageScopeCubicFeet = 3.2;

/// Of the whole case: what is known of it. Its sides, back and top are not.
struct CaseLoad {
    Mass empty; ///< fronts, boxes and face frame
    Mass contents;
    Volume storage;
    bool isWoodKnown = false;
    friend bool operator==(const CaseLoad&, const CaseLoad&) = default;
};

} // namespace frontwright
