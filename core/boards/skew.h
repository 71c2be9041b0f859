#pragma once

#include "core/boards/board.h"

#include <cstdint>

namespace frontwright {

/// A turn in whole microradians; nearest, halves away from zero.
class Angle {
public:
    constexpr Angle() = default;
    static constexpr Angle fromMicroradians(std::int64_t n) { return Angle(n); }
    /// Precondition: |radians| < 9e12.
    static constexpr Angle nearestToRadians(double radians) {
        return Angle(static_cast<std::int64_t>(radians * 1e6 + (radians < 0 ? -0.5 : 0.5)));
    }
    static constexpr Angle quarterTurn() { return Angle(1'570'796); }

    [[nodiscard]] constexpr std::int64_t microradians() const { return m_n; }
    [[nodiscard]] constexpr double inRadians() const { return static_cast<double>(m_n) / 1e6; }
    [[nodiscard]] constexpr double inDegrees() const {
        return inRadians() * 180 / 3.14159265358979323846;
    }
    friend constexpr auto operator<=>(Angle, Angle) = default;

private:
    constexpr explicit Angle(std::int64_t n) : m_n(n) {}
    std::int64_t m_n = 0;
};

/// How far a board of that width turns in a straight guide, of which it fills that length, with
/// that much play in all (both sides together): its diagonal corners touch when
///   width × cos θ + length × sin θ = width + play
/// which for a small angle is θ = play / length. A quarter turn where the guide is wider than the
/// board's diagonal, so that nothing stops it; 0 without play.
Angle skewIn(Length width, Length length, Length play);

/// What stops a skewed board.
enum class Guide : std::uint8_t {
    Inside, ///< the frame's face on one side, furring (or side panel) behind on the other
    Frame   ///< the opening's edges, over the frame's thickness only
};

/// How far a board pulled out by so much turns in its case.
struct Skew {
    Angle angle; ///< the lesser of what the two guides let
    Guide guide = Guide::Inside;
    Length guided; ///< depth − pull-out; where the frame stops it first, its thickness
    Length aside;  ///< its front edge is aside by sin θ × pull-out
    friend bool operator==(const Skew&, const Skew&) = default;
};
/// Play over the length inside: side play + the greater inside gap; over the frame's thickness:
/// 2 × side play. Precondition: 0 <= pull-out <= depth.
Skew skewOf(const BoardPlan&, Length pullOut);

/// Dry smooth wood on wood slides with 0.3 to 0.5 of what presses (Wood Handbook, 1999, chapter 4,
/// from memory); the worse is taken. Wax lessens it.
inline constexpr double frictionOfDryWood = 0.5;

/// Whether a board can be pulled from one side. A board pulled with force P at a distance e beside
/// its middle turns until it bears at two places, a guided length L apart, with N = P e / L at each
/// (moments about the middle: what rubs on the left and on the right cancels out). Both rub with
/// μ N, so that it moves only where
///   P > 2 μ N, which is L > 2 μ e
/// however hard one pulls: P is on both sides. Pulled at a corner, e = width / 2: the length in the
/// case must exceed μ × width. What is left of the pull is 1 − 2 μ e / L, so that it runs
/// 1 / (1 − 2 μ e / L) times as hard as pulled straight. Statics; the skew's own small angle is not
/// counted.
enum class Running : std::uint8_t {
    Freely,
    Hard, ///< more than twice as hard as pulled straight: L < 4 μ e; with μ = 0.5 at a corner,
          ///< wider than it is guided (common practice: a drawer wider than deep racks)
    Jams  ///< L <= 2 μ e
};
struct RunningJudgement {
    Running running = Running::Freely;
    Length guided;      ///< L
    Length least;       ///< 2 μ e: at this length it jams
    Ratio toWidth;      ///< L / width
    Ratio leastToWidth; ///< 2 μ e / width
    Ratio harder;       ///< times as hard as straight; the greatest ratio where it jams
    friend bool operator==(const RunningJudgement&, const RunningJudgement&) = default;
};
RunningJudgement judgeRunning(const BoardPlan&, const Skew&, Length pullOffCentre);

/// What a board is to be guided over at least when it is out, so that a damp day does not jam it:
/// 5/4 of the length at which it jams. It then runs up to five times as hard as pulled straight.
/// Common practice, no source.
Length leastSafelyGuided(const RunningJudgement&);

/// e: as given, else half the board's width.
Length pullOffCentre(const BoardSpec&, const BoardPlan&);

} // namespace frontwright
