#include "core/findings/judging.h"

namespace frontwright::judging {

namespace {

constexpr Length nothing{};

/// How far the front reaches past the case at that side; negative inside.
Length beyondCase(const CaseRect& front, const CaseRect& outline, Side side) {
    switch (side) {
    case Side::Left:
        return outline.left - front.left;
    case Side::Right:
        return front.right - outline.right;
    case Side::Bottom:
        return outline.bottom - front.bottom;
    case Side::Top:
        break;
    }
    return front.top - outline.top;
}

/// figures: overlay
void judgeOverlay(const Judged& judged, Side side) {
    const FrontPlan& front = judged.front;
    if (front.fit[side] != Fit::Inset && front.overlay[side] <= nothing && hasMember(judged, side))
        judged.tell(FindingCode::OverlayMissing, Severity::WontWork, {front.overlay[side]}, side);
}

/// figures: gap, least gap
void judgeInsetGap(const Judged& judged, Side side) {
    const FrontPlan& front = judged.front;
    const Length leastGap = judged.project.limits.leastGap, gap = front.neighbours[side].gap;
    if (front.fit[side] == Fit::Inset && gap < leastGap)
        judged.tell(FindingCode::GapTight,
                    gap <= nothing ? Severity::WontWork : Severity::OutsidePractice,
                    {gap, leastGap}, side);
}

/// figures: front's width, front's height, profile's width
void judgeField(const Judged& judged) {
    const FrontPlan& front = judged.front;
    if (front.field.width() <= nothing || front.field.height() <= nothing)
        judged.tell(FindingCode::FieldEmpty, Severity::WontWork,
                    {front.rect.width(), front.rect.height(), front.profile->width});
}

/// figures: profile's depth, front's thickness
void judgeProfile(const Judged& judged) {
    const FrontPlan& front = judged.front;
    for (const Side side : allSides)
        if (edgeThickness(*front.profile, front.thickness, side) <= nothing) {
            judged.tell(FindingCode::ProfileTooDeep, Severity::Ruins,
                        {front.profile->depth, front.thickness}, side);
            return;
        }
}

} // namespace

void judgeFront(const Judged& judged) {
    judgeProfile(judged);
    judgeField(judged);
    for (const Side side : allSides) {
        judgeOverlay(judged, side);
        judgeInsetGap(judged, side);
        // figures: how far past the case, overlay
        const Length beyond = beyondCase(judged.front.rect, judged.outline, side);
        if (beyond > nothing)
            judged.tell(FindingCode::FrontOffCase, Severity::OutsidePractice,
                        {beyond, judged.front.overlay[side]}, side);
    }
}

void judgeHeight(const Plan& plan, std::vector<Finding>& found) {
    const CaseLoad& load = plan.load;
    const bool isTall = plan.whole.height() >= storageScopeHeight;
    const bool isHeavy =
        load.empty >= storageScopeMass && load.storage.inCubicFeet() >= storageScopeCubicFeet;
    // figures: height with plinth and top, height of the scope
    if (isTall || isHeavy)
        found.push_back({FindingCode::AnchorCase,
                         Severity::ToKnow,
                         {},
                         {plan.whole.height(), storageScopeHeight}});
}

} // namespace frontwright::judging
