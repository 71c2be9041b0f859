#include "core/plan/quantity.h"

#include "core/lengths/format.h"
#include "core/plan/kind_table.h"
#include "core/plan/quantity_parts.h"

namespace frontwright {

using namespace deriving;

namespace {

using enum QuantityKind;
constexpr auto rules = std::to_array<ForKinds<QuantityKind, Rule (*)(const Asked&)>>({
    {CaseWidth, CaseHeight,
     [](const Asked& asked) { return asGiven(asked, InputPlace::CaseSize); }},
    {TotalWidth, TotalHeight, ruleOfTotal},
    {MoistureWhenCut, MoistureWettest, ruleOfMoisture},
    {CaseWeight, CaseStorage, ruleOfWeight},
    {MemberWidth, MemberReveal, ruleOfMember},
    {SeasonReveal, SeasonReveal, ruleOfSeason},
    {OpeningWidth, FrontThickness, ruleOfFrontSize},
    {OverlayLeft, OverlayTop,
     [](const Asked& asked) {
         return ruleOfOverlay(asked, sideOf(OverlayLeft, asked.quantity.kind));
     }},
    {GapLeft, GapTop,
     [](const Asked& asked) { return ruleOfGap(asked, sideOf(GapLeft, asked.quantity.kind)); }},
    {ToSurroundLeft, ToSurroundTop,
     [](const Asked& asked) {
         return ruleOfSurround(asked, sideOf(ToSurroundLeft, asked.quantity.kind));
     }},
    {FrontStep, FrontStep, ruleOfStep},
    {SeasonWidth, SeasonGapTop, ruleOfSeason},
    {EdgeThickness, FieldHeight, ruleOfFrontSize},
    {BoxWidth, BottomTop, ruleOfBox},
    {SideClearance, BoxSwelling, ruleOfRunner},
    {ScrewLength, ScrewTipCover, ruleOfScrew},
    {HoleX, LeastHoleHeight, ruleOfHole},
    {FixedRow, RowDrill, ruleOfRow},
    {ClearanceHole, ScrewPull, ruleOfHolding},
    {HandleX, HandleY, ruleOfHandle},
    {BoltGrip, WoodUnderHead, ruleOfBolt},
    {BoltEngagement, BoltEngagement, ruleOfHolding},
    {HandleCentres, MortiseWood, ruleOfFitting},
    {FrontWeight, StorageVolume, ruleOfWeight},
    {SpacerWidth, SpacerWidth, ruleOfSetup},
    {FillerWidth, FillerLeastThickness, ruleOfFiller},
    {StopFromFarEdge, StopFromOpening, ruleOfSetup},
    {SpaceWidth, SpaceHeight, ruleOfSpace},
});
static_assert(holdsEachOnce(rules, lastQuantityKind));

/// A sum's result, as precise as its terms and then as it is shown.
std::string resultOf(QuantityKind kind, Length value, LengthStyle style) {
    switch (showingOf(kind)) {
    case Showing::Nearest:
        break;
    case Showing::Least:
        return shownAsResult(value, style, Rounding::Up);
    case Showing::Most:
        return shownAsResult(value, style, Rounding::Down);
    case Showing::Drill:
    case Showing::Fine:
        return shown(kind, value, style);
    }
    return shownAsResult(value, style);
}

/// A number that is as given needs no " = …": "4.763 mm ≈ 4.8 mm".
Phrase withResult(Phrase figures, QuantityKind kind, const Measure& value, LengthStyle style) {
    const std::string result = shown(kind, value, style);
    if (!value.isLength())
        return figures == result ? figures : phrase("%1 = %2", std::move(figures), result);
    const std::string alone = shownPrecisely(value.length(), style);
    if (figures == alone)
        return alone == result || result == "≈ " + alone ? result : alone + " " + result;
    return phrase("%1 = %2", std::move(figures), resultOf(kind, value.length(), style));
}

} // namespace

std::optional<Derivation> derive(const Project& project, const Plan& plan, Quantity quantity,
                                 LengthStyle style) {
    const std::optional<Measure> value = measureOf(plan, quantity);
    if (!value)
        return std::nullopt;
    const Length length = value->isLength() ? value->length() : Length{};
    Rule rule = valueFor(rules, quantity.kind)({project, plan, quantity, length, style});
    if (rule.ending == Ending::Result)
        rule.figures = withResult(std::move(rule.figures), quantity.kind, *value, style);
    return Derivation{nameOf(quantity.kind, plan.construction),
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
    return {text("as given"), asked.figures().plus(asked.value).text(), makersDecision(), {place}};
}

Length memberWidthAt(const Plan& plan, const FrontPlan& front, Side side) {
    return widthOf(plan.members[front.neighbours[side].member]);
}

} // namespace deriving

} // namespace frontwright
