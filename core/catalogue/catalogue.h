#pragma once

#include "core/amounts/amounts.h"
#include "core/catalogue/fitting_form.h"
#include "core/catalogue/specific_gravity.h"
#include "core/geometry/frames.h"
#include "core/results/source.h"
#include "core/wood/air.h"
#include "core/wood/movement.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace frontwright {

/// Wood screw with a flat (countersunk) head; its length counts overall.
struct WoodScrew {
    std::string id;   ///< "wood-screw-8"
    std::string name; ///< "No. 8 flat-head wood screw"
    Length shankDiameter;
    Length headDiameter; ///< the sharp edge's
    Length headHeight;
    Length clearanceHole;        ///< drill through the box wall
    Length pilotHole;            ///< drill into the front (hardwood)
    std::vector<Length> lengths; ///< stocked, ascending
    Source source;
    /// Under the thread, NDS appendix L; none: two thirds of the shank (Wood Handbook, for most
    /// sizes). Sources differ: lead holes that are a part of it move with the one that is taken.
    std::optional<Length> rootDiameter = std::nullopt;
    friend bool operator==(const WoodScrew&, const WoodScrew&) = default;
};

/// Machine screw that holds hardware; its length counts from under the head.
struct Bolt {
    std::string id;     ///< "bolt-8-32"
    std::string name;   ///< "8-32 pan head", "M4 pan head"
    std::string thread; ///< "8-32 UNC", "M4 × 0.7"
    Length majorDiameter;
    Length headDiameter;
    Length headHeight;
    Length clearanceHole;
    std::vector<Length> lengths; ///< stocked, ascending
    Source source;
    friend bool operator==(const Bolt&, const Bolt&) = default;
};

enum class HardwareKind : std::uint8_t { Knob, Pull, CupPull, RingPull };

/// A generic handle: holes relative to its centre, what it bears on, and its thread.
struct HardwareForm {
    std::string id;   ///< "knob-32", "pull-96"
    std::string name; ///< "Round knob, 32 mm"
    HardwareKind kind = HardwareKind::Knob;
    std::vector<FrontPoint> holes;      ///< offsets from the handle's centre, left to right
    Footprint footprint;                ///< of the whole handle or backplate, round its centre
    Length projection;                  ///< how far it stands out from the front
    std::string bolt;                   ///< id of the Bolt whose thread it takes
    Length threadDepth;                 ///< how deep a bolt can go in before it bottoms out
    Length leastEngagement;             ///< thread that must be in to hold
    std::optional<Length> suppliedBolt; ///< length of the bolt that comes with it
    Source source;
    friend bool operator==(const HardwareForm&, const HardwareForm&) = default;
};

/// A generic way for a box to run in its opening, with the clearances that it asks for.
struct RunnerKind {
    std::string id;       ///< "wooden", "side-mounted"
    std::string name;     ///< "Side-mounted metal runners"
    Length sideClearance; ///< each side, between box and opening
    Length clearanceBelow;
    Length clearanceAbove;
    Source source;
    std::optional<Mass> rating = std::nullopt; ///< a pair's: drawer and what is in it
    friend bool operator==(const RunnerKind&, const RunnerKind&) = default;
};

enum class WoodKind : std::uint8_t { Hardwood, Softwood };
/// How a wood looks, planed and oiled, in the rendering. By eye: no wood is of one colour, and no
/// source measures it.
struct WoodTone {
    std::int32_t red = 0;    ///< 0 … 255, as on screens (sRGB)
    std::int32_t green = 0;  ///< 0 … 255
    std::int32_t blue = 0;   ///< 0 … 255
    std::int32_t figure = 0; ///< how much darker the growth rings are drawn, 0 … 100
    friend bool operator==(const WoodTone&, const WoodTone&) = default;
};

struct Species {
    std::string id;   ///< "cherry"
    std::string name; ///< "Black cherry"
    WoodKind kind = WoodKind::Hardwood;
    std::optional<SpecificGravity> gravity = std::nullopt; ///< none: not known
    /// None: a middling brown is drawn.
    std::optional<WoodTone> tone = {};
    std::string botanical = {}; ///< "Prunus serotina"
    WoodFigures figures = {};   ///< how it shrinks and swells
    std::string note = {};      ///< what to know of the figures
    friend bool operator==(const Species&, const Species&) = default;
};

/// What the air of a kind of room makes of wood over the year.
struct AirRange {
    std::string id;   ///< "us-interior"
    std::string name; ///< "Heated home"
    AirState average; ///< what wood is ordinarily worked at
    AirState driest;
    AirState wettest;
    Source source;
    friend bool operator==(const AirRange&, const AirRange&) = default;
};

/// What the maker can choose from: the program's own entries and the document's.
struct Catalogue {
    std::vector<WoodScrew> woodScrews;
    std::vector<Bolt> bolts;
    std::vector<HardwareForm> hardware;
    std::vector<RunnerKind> runners;
    std::vector<Species> species;
    std::vector<AirRange> airs = {};
    std::vector<FittingForm> fittings = {};

    /// nullptr where there is none of that id.
    [[nodiscard]] const WoodScrew* woodScrew(std::string_view id) const;
    [[nodiscard]] const Bolt* bolt(std::string_view id) const;
    [[nodiscard]] const HardwareForm* hardwareForm(std::string_view id) const;
    [[nodiscard]] const RunnerKind* runner(std::string_view id) const;
    [[nodiscard]] const Species* speciesOf(std::string_view id) const;
    [[nodiscard]] const AirRange* airRange(std::string_view id) const;
    [[nodiscard]] const FittingForm* fittingForm(std::string_view id) const;

    friend bool operator==(const Catalogue&, const Catalogue&) = default;
};

/// `own` entries win over `base` entries of the same id and take their place in the list; the rest
/// of them follow the base's. Of two own entries with one id the later wins.
Catalogue merged(const Catalogue& base, const Catalogue& own);

} // namespace frontwright
