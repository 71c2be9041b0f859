#include "core/plan/chosen.h"
#include "core/plan/quantity_parts.h"

namespace frontwright::deriving {

namespace {

const FrontPlan* facing(const Asked& asked, Side side) {
    const auto& front = asked.front().neighbours[side].front;
    return front ? &asked.plan.fronts[*front] : nullptr;
}

Length edgeOf(const CaseRect& rect, Side side) {
    switch (side) {
    case Side::Left:
        return rect.left;
    case Side::Right:
        return rect.right;
    case Side::Bottom:
        return rect.bottom;
    case Side::Top:
        break;
    }
    return rect.top;
}

std::vector<InputPlace> fitAndMember() {
    return {InputPlace::Fit, InputPlace::MemberWidth};
}

/// Where several fronts face this one, the overlay follows from the one that leaves least.
Rule overlayInElevation(const Asked& asked, Side side) {
    const Length near = edgeOf(asked.front().openingRect, side);
    const Length far = edgeOf(asked.front().rect, side);
    const bool isUpward = side == Side::Right || side == Side::Top;
    return {text("from the opening's edge to the front's, where the least gap leaves room"),
            asked.figures().plus(isUpward ? far : near).minus(isUpward ? near : far).text(),
            commonPractice(), fitAndMember()};
}

/// An inset front covers nothing of the member.
Length covered(const FrontPlan& front, Side side) {
    return greatest({}, front.overlay[side]);
}

Rule overlayFromGap(const Asked& asked, Side side) {
    const FrontPlan& front = asked.front();
    const Length member = memberWidthAt(asked.plan, front, side);
    const Length gap = front.neighbours[side].gap;
    const FrontPlan* other = facing(asked, side);
    if (other == nullptr)
        return {text("member − gap"), asked.figures().plus(member).minus(gap).text(),
                commonPractice(), fitAndMember()};
    if (other->fit[opposite(side)] == Fit::Gap && isSame((member - gap).half(), asked.value))
        return {text("half of what the gap leaves of the member: (member − gap) / 2"),
                asked.figures().plus(member).minus(gap).halved().text(), commonPractice(),
                fitAndMember()};
    return {text("member − gap − overlay of the facing front"),
            asked.figures().plus(member).minus(gap).minus(covered(*other, opposite(side))).text(),
            commonPractice(), fitAndMember()};
}

Length expectedGap(const Asked& asked, Side side) {
    const Length member = memberWidthAt(asked.plan, asked.front(), side);
    const FrontPlan* other = facing(asked, side);
    if (other == nullptr)
        return member - asked.front().overlay[side];
    return member - covered(asked.front(), side) - covered(*other, opposite(side));
}

} // namespace

Rule ruleOfOverlay(const Asked& asked, Side side) {
    const FrontPlan& front = asked.front();
    if (front.fit[side] == Fit::Overlay)
        return asGiven(asked, InputPlace::Fit);
    Rule rule = overlayFromGap(asked, side);
    const Length given = chosenFit(asked.project, front, side).amount;
    if (given == front.neighbours[side].gap && isSame(expectedGap(asked, side), given))
        return rule;
    return overlayInElevation(asked, side);
}

Rule ruleOfGap(const Asked& asked, Side side) {
    const FrontPlan& front = asked.front();
    const FrontPlan* other = facing(asked, side);
    const SideFit& given = chosenFit(asked.project, front, side);
    if (given.fit != Fit::Overlay && given.amount.length == asked.value)
        return asGiven(asked, InputPlace::Fit);
    if (!isSame(expectedGap(asked, side), asked.value))
        return {text("least distance to what the front faces"),
                asked.figures().plus(asked.value).text(), commonPractice(), fitAndMember()};
    Figures figures = asked.figures().plus(memberWidthAt(asked.plan, front, side));
    if (other == nullptr)
        return {text("member − overlay"), figures.minus(front.overlay[side]).text(),
                commonPractice(), fitAndMember()};
    return {text("member − overlay − overlay of the facing front"),
            figures.minus(covered(front, side)).minus(covered(*other, opposite(side))).text(),
            commonPractice(), fitAndMember()};
}

} // namespace frontwright::deriving
