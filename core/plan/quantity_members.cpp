#include "core/plan/quantity_parts.h"

#include <algorithm>

namespace frontwright::deriving {

namespace {

Rule lengthRule(const Asked& asked, const MemberPlan& member) {
    const Span span = alongMember(member.kind, member.rect);
    return {text("one end − the other, from the case's lower left corner"),
            asked.figures().plus(span.high).minus(span.low).text(),
            commonPractice(),
            {InputPlace::CaseSize, InputPlace::Frame, InputPlace::Divisions}};
}

Length covered(const FrontPlan& front, Side side) {
    return greatest({}, front.overlay[side]);
}

/// The spacer where least shows of the member; nullptr where none accounts for it.
const Spacer* narrowest(const Asked& asked) {
    const auto& spacers = asked.plan.spacers; // by member
    auto spacer =
        std::lower_bound(spacers.begin(), spacers.end(), asked.quantity.item,
                         [](const Spacer& s, std::uint32_t member) { return s.member < member; });
    for (; spacer != spacers.end() && spacer->member == asked.quantity.item; ++spacer)
        if (spacer->width == asked.value)
            return &*spacer;
    return nullptr;
}

/// The front by whose overlay alone the reveal comes about; nullptr where there is none.
const FrontPlan* besideAlone(const Asked& asked, Length width, Side& side) {
    for (const FrontPlan& front : asked.plan.fronts)
        for (const Side s : allSides)
            if (front.neighbours[s].member == asked.quantity.item &&
                width - covered(front, s) == asked.value) {
                side = s;
                return &front;
            }
    return nullptr;
}

Rule revealRule(const Asked& asked, const MemberPlan& member) {
    const Length width = widthOf(member);
    const std::vector<InputPlace> inputs{InputPlace::MemberWidth, InputPlace::Fit};
    if (const Spacer* spacer = narrowest(asked))
        return {text("member − overlay − overlay, where the fronts are nearest"),
                asked.figures()
                    .plus(width)
                    .minus(asked.plan.fronts[spacer->lower].overlay[sideOfLower(member.kind)])
                    .minus(asked.plan.fronts[spacer->upper].overlay[sideOfUpper(member.kind)])
                    .text(),
                commonPractice(), inputs};
    Side side = Side::Left;
    if (const FrontPlan* front = besideAlone(asked, width, side))
        return {text("member − overlay, where it is covered most"),
                asked.figures().plus(width).minus(covered(*front, side)).text(), commonPractice(),
                inputs};
    return {text("what the fronts leave of the member"), asked.figures().plus(asked.value).text(),
            commonPractice(), inputs};
}

} // namespace

Rule ruleOfMember(const Asked& asked) {
    const MemberPlan& member = asked.plan.members[asked.quantity.item];
    if (asked.quantity.kind == QuantityKind::MemberLength)
        return lengthRule(asked, member);
    if (asked.quantity.kind == QuantityKind::MemberReveal)
        return revealRule(asked, member);
    return asGiven(asked, isOuter(member.kind) ? InputPlace::Frame : InputPlace::MemberWidth);
}

} // namespace frontwright::deriving
