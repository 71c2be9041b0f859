#include "core/findings/judging.h"
#include "core/plan/own_part.h"

namespace frontwright::judging {

namespace {

constexpr Length nothing{};

/// figures: box's height, opening's height, clearance below, clearance asked for above
void judgeBoxHeight(const Judged& judged) {
    const BoxPlan& box = judged.front.box;
    const auto& asked = chosenBox(judged.project, judged.front).clearanceAbove;
    const Length above = asked ? asked->length : nothing;
    if (box.clearanceAbove >= above)
        return;
    judged.tell(
        FindingCode::BoxTooTall,
        box.clearanceAbove < nothing ? Severity::WontWork : Severity::OutsidePractice,
        {box.height, openingBehind(judged.plan, judged.front).height(), box.clearanceBelow, above});
}

/// figures: box's depth, setback, frame's thickness, case's depth inside
void judgeBoxDepth(const Judged& judged) {
    const BoxPlan& box = judged.front.box;
    const Case& casework = judged.project.casework;
    const Length frame = thicknessOfFrame(casework);
    if (box.setback + box.depth > frame + casework.depth.length)
        judged.tell(FindingCode::BoxTooDeep, Severity::WontWork,
                    {box.depth, box.setback, frame, casework.depth});
}

/// figures: bottom's underside, bottom's top, box's height
void judgeBottom(const Judged& judged) {
    const BoxPlan& box = judged.front.box;
    if (!hasBottomInWall(judged.front))
        judged.tell(FindingCode::BottomOutOfWall, Severity::WontWork,
                    {box.bottomUnderside, box.bottomTop, box.height});
}

} // namespace

bool hasWall(const FrontPlan& front) {
    const BoxPlan& box = front.box;
    return box.width - 2 * box.sideThickness > nothing && box.height > nothing &&
           box.depth > nothing;
}

bool hasBottomInWall(const FrontPlan& front) {
    return front.box.bottomUnderside >= nothing && front.box.bottomTop < front.box.height;
}

void judgeBox(const Judged& judged) {
    const BoxPlan& box = judged.front.box;
    if (!hasWall(judged.front)) {
        // figures: box's width, height, depth, side thickness
        judged.tell(FindingCode::BoxNoRoom, Severity::WontWork,
                    {box.width, box.height, box.depth, box.sideThickness});
        return;
    }
    judgeBoxHeight(judged);
    judgeBoxDepth(judged);
    judgeBottom(judged);
}

} // namespace frontwright::judging
