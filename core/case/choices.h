#pragma once

#include "core/boxes/box_spec.h"
#include "core/case/rare.h"
#include "core/fastening/mounting_spec.h"
#include "core/fronts/fit.h"
#include "core/fronts/profile.h"
#include "core/hardware/hardware_spec.h"

#include <string>
#include <utility>
#include <vector>

namespace frontwright {

/// Members of a document that this version does not know, with their values as JSON text. The key
/// is the member's place below the value that keeps it, a JSON Pointer without its first slash:
/// "futureMember", "box/futureMember". They are written back where they stood, after the known
/// ones.
using Unknowns = std::vector<std::pair<std::string, std::string>>;

/// Everything that makes a front, for the whole case.
struct FrontDefaults {
    FrontFit fit;
    WrittenLength thickness;
    std::string species; ///< id of a Species
    Profile profile;
    BoxSpec box;
    MountingSpec mounting;
    HardwareSpec hardware;
    Unknowns unknowns;
    friend bool operator==(const FrontDefaults&, const FrontDefaults&) = default;
};

/// What one opening decides for itself; the rest is the case's.
struct FrontChoices {
    PerSide<Rare<SideFit>> fit;
    Rare<WrittenLength> thickness;
    Rare<Profile> profile;
    Rare<BoxSpec> box;
    Rare<MountingSpec> mounting;
    Rare<HardwareSpec> hardware;
    friend bool operator==(const FrontChoices&, const FrontChoices&) = default;
};

} // namespace frontwright
