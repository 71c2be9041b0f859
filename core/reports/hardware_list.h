#pragma once

#include "core/plan/plan.h"

#include <string>
#include <vector>

namespace frontwright {

/// What is to be bought or laid out for the fronts: one row for each kind and length.
struct HardwareRow {
    enum class Kind : std::uint8_t { Handle, Fitting, Bolt, WoodScrew } kind = Kind::Handle;
    std::string id;               ///< of the catalogue's entry
    std::string name;             ///< its name
    std::optional<Length> length; ///< of bolts and screws; none where no length fits
    std::size_t count = 0;
    std::vector<std::uint32_t> fronts; ///< indices into Plan::fronts, ascending
    friend bool operator==(const HardwareRow&, const HardwareRow&) = default;
};

/// Handles, fittings, bolts, then wood screws (those of fronts and of fittings together), each kind
/// in the order in which the fronts first carry it.
std::vector<HardwareRow> hardwareList(const Plan&);

} // namespace frontwright
