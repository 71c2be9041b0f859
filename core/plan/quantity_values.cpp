#include "core/plan/quantity_values.h"

#include "core/plan/facing.h"
#include "core/plan/kind_table.h"

namespace frontwright {

namespace {

using enum QuantityKind;
constexpr auto indices = std::to_array<ForKinds<QuantityKind, CountedBy>>({
    {CaseWidth, MemberReveal, CountedBy::Nothing},
    {SeasonReveal, SeasonReveal, CountedBy::Extreme},
    {OpeningWidth, FrontStep, CountedBy::Nothing},
    {SeasonWidth, SeasonGapTop, CountedBy::Extreme},
    {EdgeThickness, ScrewGreatestLength, CountedBy::Nothing},
    {ScrewPenetration, HoleY, CountedBy::ScrewHole},
    {LeastHoleHeight, FixedRow, CountedBy::Nothing},
    {RowMovement, RowDrill, CountedBy::ScrewRow},
    {ClearanceHole, PullDesignSafety, CountedBy::Nothing},
    {ScrewToEdge, ScrewPull, CountedBy::ScrewHole},
    {HandleX, HandleY, CountedBy::HandleHole},
    {BoltGrip, BoltEngagement, CountedBy::Way},
    {HandleCentres, HandleCentres, CountedBy::Nothing},
    {FittingX, MortiseWood, CountedBy::Fitting},
    {FrontWeight, SpaceHeight, CountedBy::Nothing},
});
static_assert(holdsEachOnce(indices, lastQuantityKind));

Value valueOfCase(const Plan& plan, Quantity quantity) {
    if (quantity.item != 0)
        return std::nullopt;
    if (quantity.kind == CaseWidth)
        return plan.outline.width();
    if (quantity.kind == CaseHeight)
        return plan.outline.height();
    // Told where they differ from the case's own.
    if (quantity.kind == TotalWidth || quantity.kind == TotalHeight) {
        if (plan.whole == plan.outline)
            return std::nullopt;
        return quantity.kind == TotalWidth ? plan.whole.width() : plan.whole.height();
    }
    if (quantity.kind == CaseContents)
        return plan.load.contents;
    if (quantity.kind == CaseStorage)
        return plan.load.storage;
    if (quantity.kind == CaseWeight)
        return plan.load.isWoodKnown ? Value(plan.load.empty) : std::nullopt;
    if (!plan.season)
        return std::nullopt;
    const SeasonMoisture& moisture = *plan.season;
    return Percent::nearestTo(quantity.kind == MoistureWhenCut  ? moisture.whenCut
                              : quantity.kind == MoistureDriest ? moisture.driest
                                                                : moisture.wettest);
}

Value valueOfMember(const MemberPlan& member, QuantityKind kind, Index index) {
    if (kind == QuantityKind::SeasonReveal)
        return member.season && member.season->least != member.season->greatest
                   ? ofRange(*member.season, index)
                   : std::nullopt;
    const Length across = widthOf(member);
    if (kind == QuantityKind::MemberWidth)
        return across;
    if (kind == QuantityKind::MemberLength)
        return member.rect.width() + member.rect.height() - across;
    return member.hasFronts ? Value(member.reveal.least) : std::nullopt;
}

/// Of mounting screws and what they hold.
bool isOfScrews(QuantityKind kind) {
    return kind >= ScrewLength && kind <= ScrewPull;
}

/// Of the spacers, filler strips and stops that are wanted.
template<class Wanted>
std::vector<Quantity> quantitiesOfBlocks(const Plan& plan, Wanted wanted) {
    std::vector<Quantity> found;
    const auto add = [&](const auto& blocks, std::initializer_list<QuantityKind> kinds) {
        for (Index block = 0; block < blocks.size(); ++block)
            for (const QuantityKind kind : kinds)
                if (const Quantity quantity{kind, block};
                    wanted(blocks[block]) && measureOf(plan, quantity))
                    found.push_back(quantity);
    };
    add(plan.spacers, {SpacerWidth});
    add(plan.fillers,
        {FillerWidth, FillerLength, FillerThickness, FillerSpan, FillerBend, FillerLeastThickness});
    add(plan.stops, {StopFromFarEdge, StopFromOpening});
    return found;
}

} // namespace

CountedBy countedBy(QuantityKind kind) {
    return valueFor(indices, kind);
}

std::optional<Measure> measureOf(const Plan& plan, Quantity quantity) {
    const std::size_t item = quantity.item;
    if (countedBy(quantity.kind) == CountedBy::Nothing && quantity.index != 0)
        return std::nullopt;
    if (quantity.kind <= CaseStorage)
        return valueOfCase(plan, quantity);
    if (quantity.kind <= SeasonReveal)
        return item < plan.members.size()
                   ? valueOfMember(plan.members[item], quantity.kind, quantity.index)
                   : std::nullopt;
    if (quantity.kind == SpacerWidth)
        return item < plan.spacers.size() ? Value(plan.spacers[item].width) : std::nullopt;
    if (quantity.kind <= FillerLeastThickness && quantity.kind >= FillerWidth)
        return item < plan.fillers.size() ? valueOfFiller(plan.fillers[item], quantity.kind)
                                          : std::nullopt;
    if (quantity.kind == StopFromFarEdge)
        return item < plan.stops.size() ? Value(plan.stops[item].fromFarEdge) : std::nullopt;
    if (quantity.kind == StopFromOpening)
        return item < plan.stops.size() ? Value(plan.stops[item].fromOpening) : std::nullopt;
    if (quantity.kind == SpaceWidth)
        return item < plan.spaces.size() ? Value(plan.spaces[item].rect.width()) : std::nullopt;
    if (quantity.kind == SpaceHeight)
        return item < plan.spaces.size() ? Value(plan.spaces[item].rect.height()) : std::nullopt;
    if (item >= plan.fronts.size())
        return std::nullopt;
    if (isOfScrews(quantity.kind) && !plan.fronts[item].isScrewedOn())
        return std::nullopt;
    return valueOfFront(plan.fronts[item], quantity.kind, quantity.index);
}

std::optional<Length> valueOf(const Plan& plan, Quantity quantity) {
    const std::optional<Measure> measure = measureOf(plan, quantity);
    return measure && measure->isLength() ? std::optional(measure->length()) : std::nullopt;
}

std::vector<Quantity> quantitiesOfCase(const Plan& plan) {
    std::vector<Quantity> found;
    for (const QuantityKind kind :
         {CaseWidth, CaseHeight, TotalWidth, TotalHeight, MoistureWhenCut, MoistureDriest,
          MoistureWettest, CaseWeight, CaseContents, CaseStorage})
        if (const Quantity quantity{kind}; measureOf(plan, quantity))
            found.push_back(quantity);
    return found;
}

std::vector<Quantity> quantitiesOfMember(const Plan& plan, std::uint32_t member) {
    std::vector<Quantity> found;
    for (const QuantityKind kind : {MemberWidth, MemberLength, MemberReveal, SeasonReveal})
        for (Index index = 0; index < (countedBy(kind) == CountedBy::Extreme ? 2 : 1); ++index)
            if (const Quantity quantity{kind, member, index}; measureOf(plan, quantity))
                found.push_back(quantity);
    return found;
}

std::vector<Quantity> quantitiesOfSpace(std::uint32_t space) {
    return {{SpaceWidth, space}, {SpaceHeight, space}};
}

std::vector<Quantity> quantitiesOfBlocksBeside(const Plan& plan, std::uint32_t front) {
    return quantitiesOfBlocks(plan, [&](const auto& block) {
        if constexpr (requires { block.front; })
            return block.front == front;
        else
            return block.lower == front || block.upper == front;
    });
}

std::vector<Quantity> quantitiesOfBlocksAt(const Plan& plan, std::uint32_t member) {
    return quantitiesOfBlocks(plan, [&](const auto& block) {
        if constexpr (requires { block.front; })
            return plan.fronts[block.front].neighbours[block.side].member == member;
        else
            return block.member == member;
    });
}

std::vector<Quantity> allQuantities(const Plan& plan) {
    std::vector<Quantity> all = quantitiesOfCase(plan);
    const auto append = [&all](const std::vector<Quantity>& more) {
        all.insert(all.end(), more.begin(), more.end());
    };
    for (Index member = 0; member < plan.members.size(); ++member)
        append(quantitiesOfMember(plan, member));
    for (Index front = 0; front < plan.fronts.size(); ++front)
        append(quantitiesOfFront(plan, front));
    append(quantitiesOfBlocks(plan, [](const auto&) { return true; }));
    for (Index space = 0; space < plan.spaces.size(); ++space)
        append(quantitiesOfSpace(space));
    return all;
}

} // namespace frontwright
