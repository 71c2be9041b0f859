#include "core/findings/judging.h"

namespace frontwright::judging {

namespace {

constexpr Length nothing{};

/// figures: length, room in the case, box's depth
void judgeLength(const Judged& judged, const RunnerPlan& runner) {
    const Length depth = judged.front.box.depth, room = runner.reach.room;
    const RunnerKind& kind = *runner.kind;
    if (!runner.reach.length) {
        // figures: shortest stocked, room in the case, box's depth
        judged.tell(FindingCode::NoRunnerFits, Severity::WontWork,
                    {kind.lengths.empty() ? nothing : kind.lengths.front(), room, depth});
        return;
    }
    const Length length = *runner.reach.length;
    const bool runsPastBox = kind.form == RunnerForm::SideMounted && length > depth;
    if (length > room || runsPastBox)
        judged.tell(FindingCode::RunnerTooLong,
                    length > room ? Severity::WontWork : Severity::OutsidePractice,
                    {length, room, depth});
    // figures: box's depth, runner's length
    if (kind.form == RunnerForm::UnderMounted && length != depth)
        judged.tell(FindingCode::BoxOffRunner, Severity::WontWork, {depth, length});
}

/// figures: box's height, runner's top, its lower edge
void judgeSection(const Judged& judged, const RunnerPlan& runner) {
    const BoxPlan& box = judged.front.box;
    if (runner.kind->form == RunnerForm::SideMounted && runner.top > box.height)
        judged.tell(FindingCode::BoxLowForRunner, Severity::WontWork,
                    {box.height, runner.top, runner.foot});
    // figures: inside width, needed
    const Length inside = box.width - 2 * box.sideThickness;
    if (const Length needed = leastInsideWidth(runner, box); inside < needed)
        judged.tell(FindingCode::BoxNarrowForRunner, Severity::WontWork, {inside, needed});
    // figures: how far below the box it reaches, clearance below
    const bool isInOpening = liesUnderBottom(runner.kind->form) && runner.kind->setback;
    if (isInOpening && box.clearanceBelow + runner.foot < nothing)
        judged.tell(FindingCode::RunnerOutOfOpening, Severity::WontWork,
                    {-runner.foot, box.clearanceBelow});
}

/// figures: bottom's underside, least height, runner's top
void judgeBottomOverRunner(const Judged& judged, const RunnerPlan& runner) {
    const Length leastHeight = leastGrooveHeight(runner);
    if (judged.front.box.bottomUnderside < leastHeight)
        judged.tell(FindingCode::BottomOnRunner, Severity::WontWork,
                    {judged.front.box.bottomUnderside, leastHeight, runner.top});
}

/// figures: clearance, needed, tolerance, sides' thickness
void judgeSideClearance(const Judged& judged, const RunnerPlan& runner) {
    const BoxPlan& box = judged.front.box;
    if (!runner.kind->tolerance)
        return;
    const Length tolerance = *runner.kind->tolerance;
    const Figures4 figures{box.sideClearance, runner.sideNeeded, tolerance, box.sideThickness};
    if (box.sideClearance < runner.sideNeeded)
        judged.tell(FindingCode::SideClearanceOff, Severity::WontWork, figures);
    else if (box.sideClearance > runner.sideNeeded + tolerance)
        judged.tell(FindingCode::SideClearanceOff, Severity::OutsidePractice, figures);
}

/// figures: what the box gains, clearance above, box's height
void judgeSwelling(const Judged& judged) {
    const FrontPlan& front = judged.front;
    const Length play = front.runner && front.runner->kickerPlay ? *front.runner->kickerPlay
                                                                 : front.box.clearanceAbove;
    if (front.boxSwelling && play > nothing && *front.boxSwelling >= play)
        judged.tell(FindingCode::BoxSticks, Severity::WontWork,
                    {*front.boxSwelling, play, front.box.height});
}

} // namespace

void judgeRunner(const Judged& judged) {
    judgeSwelling(judged);
    if (!judged.front.runner)
        return;
    const RunnerPlan& runner = *judged.front.runner;
    judgeLength(judged, runner);
    judgeSection(judged, runner);
    judgeBottomOverRunner(judged, runner);
    judgeSideClearance(judged, runner);
}

} // namespace frontwright::judging
