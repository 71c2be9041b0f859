#include "core/boards/skew.h"

#include <cmath>

namespace frontwright {
namespace {

constexpr double hardFrom = 2; // times as hard as pulled straight

} // namespace

Angle skewIn(Length width, Length length, Length play) {
    if (play <= Length{})
        return {};
    const double w = width.inMillimetres();
    const double l = length.inMillimetres();
    const double c = play.inMillimetres();
    // l² − 2 w c − c² = (diagonal)² − (w + c)², without its loss of digits
    const double squared = l * l - 2 * w * c - c * c;
    if (length <= Length{} || squared <= 0)
        return Angle::quarterTurn();
    return Angle::nearestToRadians(std::atan2(l, w) - std::atan2(std::sqrt(squared), w + c));
}

Skew skewOf(const BoardPlan& board, Length pullOut) {
    const Length inside = board.depth - pullOut;
    const Length frame = least(board.strip.low, inside);
    const Length gap = greatest(board.insideGap.left, board.insideGap.right);
    const Angle byInside = skewIn(board.width, inside, board.sidePlay + gap);
    const Angle byFrame = skewIn(board.width, frame, 2 * board.sidePlay);
    Skew skew;
    const bool frameFirst = byFrame < byInside;
    skew.guide = frameFirst ? Guide::Frame : Guide::Inside;
    skew.angle = frameFirst ? byFrame : byInside;
    skew.guided = frameFirst ? frame : inside;
    skew.aside =
        Length::nearestToMillimetres(std::sin(skew.angle.inRadians()) * pullOut.inMillimetres());
    return skew;
}

RunningJudgement judgeRunning(const BoardPlan& board, const Skew& skew, Length offCentre) {
    const double width = board.width.inMillimetres();
    const double guided = skew.guided.inMillimetres();
    const double least = 2 * frictionOfDryWood * offCentre.inMillimetres();
    RunningJudgement judged;
    judged.guided = skew.guided;
    judged.least = Length::nearestToMillimetres(least);
    judged.toWidth = Ratio::of(guided, width);
    judged.leastToWidth = Ratio::of(least, width);
    const bool jams = judged.guided <= judged.least;
    judged.harder =
        jams ? Ratio::fromThousandths(Ratio::mostThousandths) : Ratio::of(guided, guided - least);
    if (jams)
        judged.running = Running::Jams;
    else if (guided < least * hardFrom / (hardFrom - 1))
        judged.running = Running::Hard;
    return judged;
}

Length leastSafelyGuided(const RunningJudgement& running) {
    return Length::fromNanometres((running.least.nanometres() * 5 + 3) / 4);
}

Length pullOffCentre(const BoardSpec& spec, const BoardPlan& board) {
    return spec.pullOffCentre ? Length(*spec.pullOffCentre) : board.width.half();
}

} // namespace frontwright
