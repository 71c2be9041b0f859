#pragma once

#include "core/geometry/frames.h"
#include "core/results/source.h"

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace frontwright {

enum class FootprintShape : std::uint8_t { Round, Rectangle };

/// The face of a handle or fitting that bears on the front: base, rose or backplate.
struct Footprint {
    FootprintShape shape = FootprintShape::Round;
    Length width; ///< the diameter where round
    Length height;
    friend bool operator==(const Footprint&, const Footprint&) = default;
};

/// A face of a front that something is cut into or lies on.
enum class FrontFace : std::uint8_t { Show, Back, TopEdge };
inline constexpr std::array<FrontFace, 3> allFrontFaces{FrontFace::Show, FrontFace::Back,
                                                        FrontFace::TopEdge};

enum class FittingKind : std::uint8_t { CupPull, EdgePull, RingPull, LabelHolder, Lock };

/// A hole of a fitting beside its screws': a key-hole, a post.
struct FittingBore {
    FrontPoint at; ///< from the fitting's centre
    Length diameter;
    std::optional<Length> depth; ///< none: right through
    FrontFace from = FrontFace::Show;
    friend bool operator==(const FittingBore&, const FittingBore&) = default;
};

/// A rectangle let into the front. In show face and back `place` lies round the fitting's centre,
/// as seen from the front. In the top edge it runs across from the centre and, for its height,
/// through the thickness: how far from the face that the fitting bears on (from the show face where
/// that is the edge itself).
struct FittingMortise {
    FrontFace from = FrontFace::Back;
    FrontRect place;
    Length depth;
    friend bool operator==(const FittingMortise&, const FittingMortise&) = default;
};

/// A generic fitting that wood screws hold to a front: no bolt reaches through.
struct FittingForm {
    std::string id;   ///< "label-60", "lock-half-mortise"
    std::string name; ///< "Label holder, 60 × 25 mm"
    FittingKind kind = FittingKind::LabelHolder;
    FrontFace bearsOn = FrontFace::Show;
    Footprint footprint; ///< round its centre; of a fitting on the top edge its height runs through
                         ///< the thickness, from the show face on
    Length projection;   ///< how far it stands out of that face
    Length plate;        ///< thickness that its screws pass before they reach wood
    std::string screw;   ///< id of a WoodScrew; empty: none hold it
    std::vector<FrontPoint> screws; ///< offsets from the centre, as the mortises' places
    std::vector<FittingBore> bores;
    std::vector<FittingMortise> mortises;
    /// Its centre lies always so far below the front's top edge: a lock's key-hole under its
    /// selvedge. None: the maker places it.
    std::optional<Length> belowTop;
    Source source;
    friend bool operator==(const FittingForm&, const FittingForm&) = default;
};

} // namespace frontwright
