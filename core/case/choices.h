#pragma once

#include "core/boxes/box_spec.h"
#include "core/case/rare.h"
#include "core/fastening/mounting_spec.h"
#include "core/fronts/fit.h"
#include "core/fronts/profile.h"
#include "core/hardware/hardware_spec.h"
#include "core/wood/stock.h"

#include <array>
#include <cstdint>
#include <string>
#include <utility>
#include <vector>

namespace frontwright {

/// Members of a document that this version does not know, with their values as JSON text. The key
/// is the member's place below the value that keeps it, a JSON Pointer without its first slash:
/// "futureMember", "box/futureMember". They are written back where they stood, after the known
/// ones.
using Unknowns = std::vector<std::pair<std::string, std::string>>;

/// What the document can keep a value of under a name, for many fronts to follow.
enum class PresetKind : std::uint8_t { Hardware, Profile, Box, Mounting };
inline constexpr std::array<PresetKind, 4> allPresetKinds{PresetKind::Hardware, PresetKind::Profile,
                                                          PresetKind::Box, PresetKind::Mounting};

/// Which presets decisions come from, by kind; an empty name: from none. A decision that equals its
/// preset follows it, and changes with it; any other value departs from it.
struct PresetNames {
    std::string hardware;
    std::string profile;
    std::string box;
    std::string mounting;

    [[nodiscard]] bool isEmpty() const {
        return hardware.empty() && profile.empty() && box.empty() && mounting.empty();
    }
    std::string& operator[](PresetKind kind) { return this->*nameOf(kind); }
    const std::string& operator[](PresetKind kind) const { return this->*nameOf(kind); }
    friend bool operator==(const PresetNames&, const PresetNames&) = default;

private:
    static constexpr std::string PresetNames::*nameOf(PresetKind kind) {
        switch (kind) {
        case PresetKind::Hardware:
            return &PresetNames::hardware;
        case PresetKind::Profile:
            return &PresetNames::profile;
        case PresetKind::Box:
            return &PresetNames::box;
        case PresetKind::Mounting:
            break;
        }
        return &PresetNames::mounting;
    }
};

/// Everything that makes a front, for the whole case.
struct FrontDefaults {
    FrontFit fit;
    WrittenLength thickness;
    Stock stock;
    Profile profile;
    BoxSpec box;
    MountingSpec mounting;
    HardwareSpec hardware;
    PresetNames presets; ///< that profile, box, mounting and hardware come from
    Unknowns unknowns;
    friend bool operator==(const FrontDefaults&, const FrontDefaults&) = default;
};

/// What one opening decides for itself; the rest is the case's.
struct FrontChoices {
    PerSide<Rare<SideFit>> fit;
    Rare<WrittenLength> thickness;
    Rare<Stock> stock;
    Rare<Profile> profile;
    Rare<BoxSpec> box;
    Rare<MountingSpec> mounting;
    Rare<HardwareSpec> hardware;
    Rare<PresetNames> presets; ///< that its own values come from; never without a name
    friend bool operator==(const FrontChoices&, const FrontChoices&) = default;
};

} // namespace frontwright
