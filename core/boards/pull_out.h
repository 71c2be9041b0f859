#pragma once

#include "core/boards/keeper_hold.h"
#include "core/boards/skew.h"

#include <optional>

namespace frontwright {

/// A force times its arm, in whole micronewton metres.
class Moment {
public:
    constexpr Moment() = default;
    static constexpr Moment fromMicronewtonMetres(std::int64_t n) { return Moment(n); }
    /// Nearest, halves away from zero; at most 9 million kN m.
    static Moment nearestToNewtonMetres(double nm);

    [[nodiscard]] constexpr std::int64_t micronewtonMetres() const { return m_n; }
    [[nodiscard]] constexpr double inNewtonMetres() const { return static_cast<double>(m_n) / 1e6; }
    friend constexpr auto operator<=>(Moment, Moment) = default;

private:
    constexpr explicit Moment(std::int64_t n) : m_n(n) {}
    std::int64_t m_n = 0;
};

/// A board with its keeper strips and what is at its front edge.
struct LoadedBoard {
    const BoardPlan& board;
    const PerSide<KeeperStrip>& strips; ///< left and right
    const KeeperHold& hold;
    Force load; ///< at the front edge; at a corner, so that one strip bears all
    std::optional<Mass> weight = {}; ///< the board's own; none: not counted
};

/// The strip of one side over a board that is pulled out. The board turns about the runners' front
/// end, at the frame's back, and bears on the strip behind: at the rearmost place where there is
/// both strip and board.
struct KeeperLoad {
    Side side = Side::Left;
    Length behind; ///< strip that is left over the board, all pieces together
    Length lever;  ///< runners' front end to where the board bears; 0: nothing holds its back
    Force uplift;  ///< moment / lever; 0 where nothing lifts, or nothing holds
    Force lift;    ///< the most loaded screw's part of it
    Force pull;    ///< lift × prying
    std::optional<Ratio> use; ///< of that screw; none: not known
    friend bool operator==(const KeeperLoad&, const KeeperLoad&) = default;
};

struct PulledOut {
    Length pullOut; ///< x
    /// load × (x + frame) + weight × (x + frame − depth / 2), frame its thickness; at least 0.
    Moment moment;
    KeeperLoad keeper; ///< the worse side
    /// How far the front edge sinks until the back meets the strip:
    ///   play in height × (x + frame) / lever.  None where nothing holds its back.
    std::optional<Length> droop;
    friend bool operator==(const PulledOut&, const PulledOut&) = default;
};
/// Precondition: 0 <= pull-out <= depth. A lever under 1 mm is none.
PulledOut pulledOut(const LoadedBoard&, Length pullOut);

/// How far a board's front edge may sink: 1/4 in. Common practice, no source.
inline constexpr Length mostDroop = Length::fromSixtyFourths(16);

enum class PullOutEnd : std::uint8_t {
    Keeper, ///< a screw of the keeper strip would bear more than its design value
    Tips,   ///< nothing is left to hold the board's back down
    Droops, ///< its front edge sinks by more than mostDroop
    Jams    ///< less of it is guided than leastSafelyGuided
};
/// What is wrong with how a board's back is held down; nullopt where nothing is.
std::optional<PullOutEnd> endOfHold(const PulledOut&);

struct SafePullOut {
    Length pullOut; ///< greatest whole number of steps up to which all is well; 0: none is
    PullOutEnd end = PullOutEnd::Tips; ///< what the next step would bring
    friend bool operator==(const SafePullOut&, const SafePullOut&) = default;
};
/// Precondition: step > 0. Where the screws' strength is not known it does not stop the board.
SafePullOut safePullOut(const LoadedBoard&, Length pullOffCentre, Length step);

} // namespace frontwright
