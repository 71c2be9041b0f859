#include "core/amounts/amounts.h"
#include "core/plan/chosen.h"
#include "core/plan/moving.h"
#include "core/plan/quantity_parts.h"
#include "core/wood/movement.h"

#include <string>

namespace frontwright::deriving {

namespace {

constexpr int moistureDecimals = 1, humidityDecimals = 1, coefficientDecimals = 5;

std::vector<InputPlace> seasonInputs() {
    return {InputPlace::Stock, InputPlace::Air, InputPlace::Fit, InputPlace::Mounting};
}

const AirState& stateOf(const Air& air, QuantityKind kind) {
    if (kind == QuantityKind::MoistureWhenCut)
        return air.whenCut;
    return kind == QuantityKind::MoistureDriest ? air.driest : air.wettest;
}

std::string percent(const Asked& asked, double value) {
    return asked.number(value, moistureDecimals) + " %";
}

/// At the end of the season where the front is least, or greatest, across its grain.
struct End {
    double change;
    double moisture;
};
End endOf(const Plan& plan, const FrontSeason& season, std::uint32_t index) {
    const End dry{season.driest, plan.season->driest}, wet{season.wettest, plan.season->wettest};
    return (index == 0) == (dry.change <= wet.change) ? dry : wet;
}

/// "0.00248 for each 1 % of moisture, from 8.0 % when cut to 10.0 %"
Phrase changeWords(const Asked& asked, const FrontSeason& season, const End& end) {
    const double whenCut = asked.plan.season->whenCut;
    const std::string coefficient = asked.number(season.coefficient, coefficientDecimals);
    const std::string from = percent(asked, whenCut), to = percent(asked, end.moisture);
    if (isBeyondCoefficient(whenCut, end.moisture))
        return phrase(
            "%1 for each 1 % of moisture, from %2 when cut to %3; beyond 6 to 14 % by the "
            "wider formula",
            coefficient, from, to);
    return phrase("%1 for each 1 % of moisture, from %2 when cut to %3", coefficient, from, to);
}

Source movementSource() {
    return sourceNamed(SourceKind::Published,
                       text("Forest Products Laboratory, Wood Handbook (GTR-282), chapter 13: "
                            "change = size × coefficient × change of moisture"));
}

/// What a length was when cut, and what has come to it since.
Rule since(const Asked& asked, Text what, Length whenCut) {
    const FrontSeason& season = *asked.front().season;
    const End end = endOf(asked.plan, season, asked.quantity.index);
    return {phrase("%1: %2", what, changeWords(asked, season, end)),
            asked.figures().plus(whenCut).plus(asked.value - whenCut).text(), movementSource(),
            seasonInputs()};
}

Rule ruleOfSeasonSide(const Asked& asked, Length whenCut) {
    const bool hasRows = !asked.front().season->rows.empty();
    return {hasRows ? text("when cut + what edges have moved since, away from the row of screws "
                           "that holds the front")
                    : text("when cut + what edges have moved since, away from the front's middle"),
            asked.figures().plus(whenCut).plus(asked.value - whenCut).text(), movementSource(),
            seasonInputs()};
}

Rule ruleOfSeasonReveal(const Asked& asked) {
    const MemberPlan& member = asked.plan.members[asked.quantity.item];
    const Length whenCut = asked.quantity.index == 0 ? member.reveal.least : member.reveal.greatest;
    return {text("when cut + what the fronts' edges have moved since"),
            asked.figures().plus(whenCut).plus(asked.value - whenCut).text(), movementSource(),
            seasonInputs()};
}

} // namespace

Rule ruleOfMoisture(const Asked& asked) {
    const AirState& state = stateOf(*asked.project.air, asked.quantity.kind);
    switch (state.by) {
    case MoistureBy::Meter:
        return {text("as read by a moisture meter"),
                percent(asked, state.reading.value()),
                makersDecision(),
                {InputPlace::Air},
                Ending::Complete};
    case MoistureBy::Air:
        break;
    }
    return {text("(1800 / W) × (K h / (1 − K h) + (K1 K h + 2 K1 K2 K² h²) / (1 + K1 K h + K1 K2 "
                 "K² h²)), h = relative humidity; W, K, K1, K2 by temperature"),
            phrase("in air of %1 and %2 % relative humidity: %3",
                   withMark(shown(state.temperature), asked.style.mark),
                   asked.number(state.humidity.value(), humidityDecimals),
                   percent(asked, moistureOf(state))),
            sourceNamed(SourceKind::Published,
                        text("Forest Products Laboratory, Wood Handbook (GTR-282), equation 4-5")),
            {InputPlace::Air},
            Ending::Complete};
}

Rule ruleOfSeason(const Asked& asked) {
    using enum QuantityKind;
    const QuantityKind kind = asked.quantity.kind;
    if (kind == SeasonReveal)
        return ruleOfSeasonReveal(asked);
    const FrontPlan& front = asked.front();
    if (kind == SeasonWidth)
        return since(asked, text("width + change"), front.rect.width());
    if (kind == SeasonHeight)
        return since(asked, text("height + change"), front.rect.height());
    const Side side = sideOf(kind).value();
    const bool isOverlay = kind >= SeasonOverlayLeft && kind <= SeasonOverlayTop;
    return ruleOfSeasonSide(asked, isOverlay ? front.overlay[side] : front.neighbours[side].gap);
}

Rule ruleOfRow(const Asked& asked) {
    using enum QuantityKind;
    const FrontPlan& front = asked.front();
    const FrontSeason& season = *front.season;
    const bool isUpright = chosenStock(asked.project, front).grain == Grain::AlongLength;
    if (asked.quantity.kind == FixedRow)
        return {isUpright
                    ? text("the lowest row, above the box's lower edge: it carries the front, "
                           "so that all fronts of a bank go the same way")
                    : text("the row nearest to the front's middle, from the box's left side"),
                asked.figures().plus(asked.value).text(), commonPractice(), seasonInputs()};
    const SeasonRow& row = season.rows[asked.quantity.index];
    const Length shank = front.mounting.screw->shankDiameter;
    if (asked.quantity.kind == RowMovement) {
        const End end = row.driest.magnitude() > row.wettest.magnitude()
                            ? End{season.driest, asked.plan.season->driest}
                            : End{season.wettest, asked.plan.season->wettest};
        return {phrase("distance from the row that holds the front × change: %1",
                       changeWords(asked, season, end)),
                asked.figures().plus(asked.value).text(), movementSource(), seasonInputs()};
    }
    if (asked.quantity.kind == RowHole)
        return {
            text(
                "shank + 2 × movement at the screws, which stand in their holes' middles when cut; "
                "across the grain a slot of that length does the same"),
            asked.figures().plus(shank).plus(asked.value - shank).text(), commonPractice(),
            seasonInputs()};
    return {
        text("the screw's clearance hole, or the next drill above the least hole for the movement"),
        asked.figures().plus(asked.value).text(), commonPractice(), seasonInputs()};
}

} // namespace frontwright::deriving
