#pragma once

#include "core/boards/board.h"
#include "core/limits/limits.h"

#include <optional>
#include <vector>

namespace frontwright {

/// What a brad or screw does to the last layer that it reaches, whose far side is seen.
enum class Passage : std::uint8_t {
    Holds,
    TooShort, ///< less than the least penetration in the last layer
    TipNear,  ///< less than the least cover before its tip
    BlowsOut  ///< its tip comes through the show side
};

/// A brad or screw through layers into the last one, as a furring's brad into the side panel.
///   penetration = length + set − layers passed;  cover = last layer − penetration
/// It fits between  layers − set + least penetration  and  layers − set + last − least cover.
struct LayerCheck {
    Length passed;      ///< all layers before the last
    Length penetration; ///< in the last; negative: it does not reach it
    Length cover;       ///< 0 or less: blown out
    Length leastLength;
    Length greatestLength; ///< less than the least one: no length fits
    Passage passage = Passage::Holds;
    [[nodiscard]] Span window() const { return {leastLength, greatestLength}; }
    friend bool operator==(const LayerCheck&, const LayerCheck&) = default;
};
/// `set`: how far its head goes below the first layer's face. Blown out counts before too short.
LayerCheck checkLayers(Length length, Length set, const std::vector<Length>& passed, Length last,
                       const Limits&);

/// The brad through the furring of that side; none where no furring is needed.
std::optional<LayerCheck> checkBrad(const BoardSpec&, const BoardPlan&, Side, const Limits&);
/// The keeper strip's screw through strip and furring; none where it goes down into the furring.
std::optional<LayerCheck> checkKeeperScrew(const KeeperSpec&, const BoardPlan&, Side,
                                           const Limits&);

} // namespace frontwright
