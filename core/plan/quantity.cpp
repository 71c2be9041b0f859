#include "core/plan/quantity.h"

#include "core/lengths/format.h"
#include "core/plan/quantity_parts.h"

namespace frontwright {

using namespace deriving;

namespace {

Rule ruleOf(const Asked& asked) {
    using enum QuantityKind;
    switch (asked.quantity.kind) {
    case CaseWidth:
    case CaseHeight:
        return asGiven(asked, InputPlace::CaseSize);
    case MoistureWhenCut:
    case MoistureDriest:
    case MoistureWettest:
        return ruleOfMoisture(asked);
    case SeasonReveal:
    case SeasonWidth:
    case SeasonHeight:
    case SeasonOverlayLeft:
    case SeasonOverlayRight:
    case SeasonOverlayBottom:
    case SeasonOverlayTop:
    case SeasonGapLeft:
    case SeasonGapRight:
    case SeasonGapBottom:
    case SeasonGapTop:
        return ruleOfSeason(asked);
    case FixedRow:
    case RowMovement:
    case RowHole:
    case RowDrill:
        return ruleOfRow(asked);
    case CaseWeight:
    case CaseContents:
    case CaseStorage:
    case FrontWeight:
    case BoxWeight:
    case ContentsWeight:
    case RunnerLoad:
    case RunnerSafety:
    case StorageVolume:
        return ruleOfWeight(asked);
    case MemberWidth:
    case MemberLength:
    case MemberReveal:
        return ruleOfMember(asked);
    case OpeningWidth:
    case OpeningHeight:
    case FrontWidth:
    case FrontHeight:
    case FrontThickness:
    case EdgeThickness:
    case FieldWidth:
    case FieldHeight:
        return ruleOfFrontSize(asked);
    case OverlayLeft:
        return ruleOfOverlay(asked, Side::Left);
    case OverlayRight:
        return ruleOfOverlay(asked, Side::Right);
    case OverlayBottom:
        return ruleOfOverlay(asked, Side::Bottom);
    case OverlayTop:
        return ruleOfOverlay(asked, Side::Top);
    case GapLeft:
        return ruleOfGap(asked, Side::Left);
    case GapRight:
        return ruleOfGap(asked, Side::Right);
    case GapBottom:
        return ruleOfGap(asked, Side::Bottom);
    case GapTop:
        return ruleOfGap(asked, Side::Top);
    case BoxWidth:
    case BoxHeight:
    case BoxDepth:
    case BoxSetback:
    case BottomTop:
        return ruleOfBox(asked);
    case ScrewLength:
    case ScrewLeastLength:
    case ScrewGreatestLength:
    case ScrewPenetration:
    case ScrewTipCover:
        return ruleOfScrew(asked);
    case HoleX:
    case HoleY:
    case LeastHoleHeight:
        return ruleOfHole(asked);
    case ClearanceHole:
    case PilotHole:
    case ScrewThread:
    case PullSafety:
    case PullDesignSafety:
    case ScrewToEdge:
    case ScrewToEnd:
    case ScrewUltimate:
    case ScrewDesign:
    case ScrewPull:
    case BoltEngagement:
        return ruleOfHolding(asked);
    case HandleX:
    case HandleY:
        return ruleOfHandle(asked);
    case BoltGrip:
    case BoltLeastLength:
    case BoltGreatestLength:
    case BoltLength:
    case Counterbore:
    case WoodUnderHead:
        return ruleOfBolt(asked);
    case SpacerWidth:
    case StopFromFarEdge:
    case StopFromOpening:
        break;
    }
    return ruleOfSetup(asked);
}

} // namespace

std::optional<Derivation> derive(const Project& project, const Plan& plan, Quantity quantity,
                                 LengthStyle style) {
    const std::optional<Measure> value = measureOf(plan, quantity);
    if (!value)
        return std::nullopt;
    const Length length = value->isLength() ? value->length() : Length{};
    Rule rule = ruleOf({project, plan, quantity, length, style});
    const std::string result = shown(*value, style);
    if (rule.ending == Ending::Result && rule.figures != result)
        rule.figures = withApproximateResults(rule.figures + " = " + result);
    return Derivation{std::string(nameOf(quantity.kind)),
                      *value,
                      std::move(rule.formula),
                      std::move(rule.figures),
                      std::move(rule.source),
                      std::move(rule.inputs)};
}

namespace deriving {

bool isSame(Length a, Length b) {
    return (a - b).magnitude() <= Length::fromNanometres(2);
}

Rule asGiven(const Asked& asked, InputPlace place) {
    return {"as given", asked.figures().plus(asked.value).text(), makersDecision(), {place}};
}

Length memberWidthAt(const Plan& plan, const FrontPlan& front, Side side) {
    return widthOf(plan.members[front.neighbours[side].member]);
}

} // namespace deriving

} // namespace frontwright
