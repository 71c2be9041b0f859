#pragma once

#include "core/findings/finding.h"
#include "core/plan/chosen.h"

namespace frontwright::judging {

using Figures4 = std::array<Length, 4>;

/// One front under judgement. What is found is added in a fixed order; each code is told once for
/// a front (or once for each side of it), at the place where it is worst.
struct Judged {
    const Project& project;
    const CaseRect& outline; ///< of the case
    const FrontPlan& front;
    std::vector<Finding>& found;
    const Plan& plan;

    [[nodiscard]] Finding at(FindingCode code, Severity severity, const Figures4& figures) const {
        Finding finding{code, severity, {}, figures};
        finding.where.opening = front.opening;
        return finding;
    }
    void tell(FindingCode code, Severity severity, const Figures4& figures) const {
        found.push_back(at(code, severity, figures));
    }
    void tell(FindingCode code, Severity severity, const Figures4& figures, Side side) const {
        found.push_back(at(code, severity, figures));
        found.back().where.side = side;
    }
};

// Judges of one front, by theme. The figures they tell, by code, stand beside each rule in the
// .cpp; wording_*.cpp puts them into sentences.
void judgeFront(const Judged&);
void judgeSurroundings(const Judged&);
void judgeBox(const Judged&);
void judgeScrewLength(const Judged&);
void judgeScrewHoles(const Judged&);
void judgeScrewRows(const Judged&);
void judgeBolt(const Judged&);
void judgeHandles(const Judged&);
void judgeSeason(const Judged&);
void judgeHandleHolesInWall(const Judged&);
void judgeHolding(const Judged&);
void judgeBoltHolding(const Judged&);
void judgeRunnerLoad(const Judged&);
void judgeRunner(const Judged&);
void judgeMixedFits(const Judged&);
void judgeFittings(const Judged&);
void judgeSharedWall(const Judged&);
void judgeFixedFront(const Judged&);

/// A finding about two fronts or a whole bank, and the front in whose place it is listed.
struct BetweenFronts {
    std::uint32_t front;
    Finding finding;
};
void judgeCollisions(const Plan&, std::vector<BetweenFronts>&);
void judgeGaps(const Project&, const Plan&, std::vector<BetweenFronts>&);
void judgeSteps(const Project&, const Plan&, std::vector<BetweenFronts>&);
void judgeFillers(const Project&, const Plan&, std::vector<BetweenFronts>&);
void judgeSeasonGaps(const Project&, const Plan&, std::vector<BetweenFronts>&);
/// Told about two fronts at the first of them in the plan, at its side.
Finding atSpacer(const Plan&, const Spacer&, FindingCode, Severity, const Figures4&);
std::uint32_t firstOf(const Spacer&);

/// Told for two forms of handles at the first front that carries the second of them.
void judgeCentres(const Plan&, std::vector<BetweenFronts>&);

/// In the boards' order.
void judgeBoards(const Plan&, std::vector<Finding>&);
/// About the case as a whole.
void judgeAir(const Project&, const Plan&, std::vector<Finding>&);
void judgeMovement(const Project&, const Plan&, std::vector<Finding>&);
void judgeHeight(const Plan&, std::vector<Finding>&);

/// Whether something stands at that side for an overlay front to cover: without a shelf two
/// openings meet, and their fronts stay apart by their gap.
bool hasMember(const Judged&, Side);
/// Of one of several fronts: whether wall and front meet where a screw may go.
bool hasRoomOnSharedWall(const Judged&);
/// Whether there is a wall for screws and bolts to go through.
bool hasWall(const FrontPlan&);
/// Whether the bottom leaves room above it: where it does not, no place for a hole can be told.
bool hasBottomInWall(const FrontPlan&);

/// From the lowest to the highest row that the screws stand in.
Length rowsApart(const MountingPlan&);
/// Solid wood whose grain runs from left to right.
bool movesUpright(const Stock&);

/// A front is tall from 8 in (203 mm) on, and its rows of screws are to stand at least a quarter of
/// its height apart. Common practice, no source.
inline constexpr Length tallFront = Length::inches(8);
inline constexpr std::int64_t heightsPerRows = 4;

/// Of what is drilled through the wall for each handle hole; 0 where nothing is.
Length radiusInWall(const HardwarePlan&);

/// Seasonal movement across the grain by the rule of thumb: 1/8 in for each foot of width.
/// Common practice, no source; told where there is no air to ask the wood's own figures for.
inline constexpr std::int64_t widthsPerMovement = 96;

} // namespace frontwright::judging
