#pragma once

#include "core/catalogue/catalogue.h"
#include "core/hardware/bolts.h"
#include "core/hardware/hardware_spec.h"
#include "core/limits/limits.h"
#include "core/results/result.h"

#include <optional>
#include <vector>

namespace frontwright {

/// One wood screw that holds a fitting.
///   penetration p = L − plate;  tip cover = wood behind − p
struct FittingScrew {
    FrontPoint at;      ///< of one in the top edge: y runs from the show face, not up
    Length wood;        ///< what is before it: local thickness less what is let in there
    Length penetration; ///< 0 where no length fits
    Length tipCover;
    friend bool operator==(const FittingScrew&, const FittingScrew&) = default;
};

/// A mortise of a fitting where it lies on the front. In the top edge the height of `cut.place`
/// runs from the show face.
struct MortisePlan {
    FittingMortise cut;
    /// Behind it, to the face beyond; of one in the top edge: beside it, to the nearer face that it
    /// does not open. None where it opens both.
    std::optional<Length> woodLeft;
    friend bool operator==(const MortisePlan&, const MortisePlan&) = default;
};

/// One fitting on one front.
struct FittingPlan {
    const FittingForm* form = nullptr; ///< into the Catalogue; never null
    const WoodScrew* screw = nullptr;  ///< into the Catalogue; null where no screws hold it
    std::uint32_t spec = 0;            ///< index into HardwareSpec::fittings
    FrontPoint centre;
    FrontRect footprint; ///< bounding rectangle, seen from the front; of one on the top
                         ///< edge without height
    std::vector<FittingScrew> screws; ///< in the form's order
    std::vector<FittingBore> bores;   ///< in the front's frame
    std::vector<MortisePlan> mortises;
    Length leastLength;                ///< plate + least penetration
    Length greatestLength;             ///< plate + least wood before a screw − least tip cover
    std::optional<Length> screwLength; ///< as given, else the longest stocked one in the window

    /// The least tip cover's; nullptr where no screws hold it.
    [[nodiscard]] const FittingScrew* worstScrew() const;
    /// The least wood that a mortise leaves; none where none is let in.
    [[nodiscard]] std::optional<Length> leastWoodLeft() const;
    friend bool operator==(const FittingPlan&, const FittingPlan&) = default;
};

/// Where the spec puts the centres of its fitting, left to right: one, or two at both sides.
std::vector<FrontPoint> fittingCentres(const FittingSpec&, const FittingForm&, FrontRect front);

/// All fittings of a front, in the spec's order. Error: a form or its screw is not in the
/// catalogue.
Result<std::vector<FittingPlan>> planFittings(const HardwareSpec&, const Catalogue&, const Limits&,
                                              const FrontStock&);

/// What a fitting takes out of the front where a screw from the back might come: screw holes, bores
/// and mortises in show face and back, by their outlines seen from the front.
struct FittingCut {
    std::uint32_t fitting = 0; ///< index into what planFittings gave
    FootprintShape shape = FootprintShape::Round;
    FrontRect around; ///< of a round one its square
    friend bool operator==(const FittingCut&, const FittingCut&) = default;
};
std::vector<FittingCut> cutsOf(const std::vector<FittingPlan>&);

/// In which measure a handle's holes are spaced.
struct HoleSpacing {
    Length distance;        ///< first to last hole, from centre to centre
    Unit unit = Unit::Inch; ///< whole sixteenths of an inch, else whole millimetres …
    bool isPattern = true;  ///< … or neither
    friend bool operator==(const HoleSpacing&, const HoleSpacing&) = default;
};
/// none for a handle of one hole.
std::optional<HoleSpacing> holeSpacing(const HardwareForm&);
/// Whether two spacings are nearly but not quite the same: an eye takes one for the other, a jig
/// does not. 96 mm and 3 3/4 in are 0.75 mm apart, 128 mm and 5 in 1 mm. Common practice: at most
/// 2 mm.
bool isMistakable(Length spacing, Length other);

/// Where a fitting is put to begin with, well inside the front: from its side by the front's width,
/// and from its top or lower edge. Common practice, no source.
Length usualFromSide(Length frontWidth, Unit);
Length usualFromEdge(Unit);

} // namespace frontwright
