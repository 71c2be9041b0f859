#include "core/findings/wording.h"

#include "core/plan/banks.h"
#include "core/plan/chosen.h"
#include "core/plan/screw_rows.h"
#include "core/wood/movement.h"

namespace frontwright::wording {

namespace {

constexpr Length nothing{};

Source ofMovement() {
    return sourceNamed(SourceKind::Published,
                       text("Forest Products Laboratory, Wood Handbook (GTR-282), chapter 13: "
                            "change = size × coefficient × change of moisture"));
}

/// A clause of its own: what the air does to the wood.
Phrase seasonWords(const Told& told) {
    const SeasonMoisture moisture = told.plan.season.value_or(SeasonMoisture{});
    const auto percent = [&](double m) { return told.number(m, 1) + " %"; };
    return phrase("wood cut at %1 moisture goes from %2 to %3 in this room",
                  percent(moisture.whenCut), percent(moisture.driest), percent(moisture.wettest));
}

// gap when cut, least over the season, least gap
Phrase gapReason(const Told& told) {
    return phrase("gap at the wettest = gap when cut − movement %1 − %2 %3; %4; at least %5",
                  told.equals(0), told.say(told.figure(0) - told.figure(1)), told.equals(1),
                  seasonWords(told), told.say(2));
}

} // namespace

Words gapCloses(const Told& told) {
    return {told.figure(1) < nothing
                ? phrase("In the room's wettest air the fronts touch: their gap of %1 when cut "
                         "closes, and %2 is missing.",
                         told.say(0), told.say(-told.figure(1)))
                : phrase("In the room's wettest air the fronts touch: their gap of %1 when cut "
                         "closes.",
                         told.say(0)),
            gapReason(told), ofMovement()};
}

// gap when cut, least over the season, least gap
Words gapTightens(const Told& told) {
    const Phrase least = told.say(2);
    return {told.finding.where.other
                ? phrase("In the room's wettest air the gap between the fronts is only %1, less "
                         "than %2; when cut it is %3.",
                         told.say(1), least, told.say(0))
                : told.bySide({text("In the room's wettest air the gap at the left is only %1, "
                                    "less than %2; when cut it is %3."),
                               text("In the room's wettest air the gap at the right is only %1, "
                                    "less than %2; when cut it is %3."),
                               text("In the room's wettest air the gap at the bottom is only %1, "
                                    "less than %2; when cut it is %3."),
                               text("In the room's wettest air the gap at the top is only %1, "
                                    "less than %2; when cut it is %3.")},
                              {told.say(1), least, told.say(0)}),
            gapReason(told), sourceOfLimit(told.project.limits.leastGap, Limits{}.leastGap)};
}

// gap when cut, least over the season, least gap
Words insetBinds(const Told& told) {
    return {told.bySide({text("In the room's wettest air the front binds at its opening's left "
                              "edge: its gap of %1 when cut closes."),
                         text("In the room's wettest air the front binds at its opening's right "
                              "edge: its gap of %1 when cut closes."),
                         text("In the room's wettest air the front binds at its opening's bottom "
                              "edge: its gap of %1 when cut closes."),
                         text("In the room's wettest air the front binds at its opening's top "
                              "edge: its gap of %1 when cut closes.")},
                        {told.say(0)}),
            gapReason(told), ofMovement()};
}

namespace {

Phrase justReaches(const Told& told) {
    return told.bySide({text("In the room's driest air the front only just reaches its opening's "
                             "left edge and does not cover it."),
                        text("In the room's driest air the front only just reaches its opening's "
                             "right edge and does not cover it."),
                        text("In the room's driest air the front only just reaches its opening's "
                             "bottom edge and does not cover it."),
                        text("In the room's driest air the front only just reaches its opening's "
                             "top edge and does not cover it.")},
                       {});
}

Phrase endsShort(const Told& told) {
    return told.bySide({text("In the room's driest air the front ends %1 short of its opening's "
                             "left edge, which it should cover."),
                        text("In the room's driest air the front ends %1 short of its opening's "
                             "right edge, which it should cover."),
                        text("In the room's driest air the front ends %1 short of its opening's "
                             "bottom edge, which it should cover."),
                        text("In the room's driest air the front ends %1 short of its opening's "
                             "top edge, which it should cover.")},
                       {told.say(-told.figure(1))});
}

} // namespace

// overlay when cut, least over the season
Words overlayLost(const Told& told) {
    return {told.figure(1) == nothing ? justReaches(told) : endsShort(told),
            phrase("overlay at the driest = overlay when cut − movement %1 − %2 %3; %4; it needs "
                   "more than 0",
                   told.equals(0), told.say(told.figure(0) - told.figure(1)), told.equals(1),
                   seasonWords(told)),
            ofMovement()};
}

// narrowest gap, widest gap when they differ most, difference when cut, difference that an eye sees
Words gapsGoUneven(const Told& told) {
    const Length difference = told.figure(1) - told.figure(0);
    return {phrase("Over the year the gaps down bank %1 come to differ by %2, which an eye sees: "
                   "%3 here, %4 at the widest. Fronts of different heights move differently.",
                   bankLetters(told.front->bank), told.say(difference), told.say(0), told.say(1)),
            phrase("difference = widest − narrowest gap %1 − %2 %3, when cut %4; at most %5; %6",
                   told.equals(1), told.say(0), told.equals(difference), told.say(2), told.say(3),
                   seasonWords(told)),
            sourceOfLimit(told.project.limits.unevenGaps, Limits{}.unevenGaps)};
}

namespace {

/// The row that asks for the largest hole, and where it lies.
Phrase worstRow(const Told& told) {
    const FrontSeason& season = *told.front->season;
    const std::uint32_t row = rowOfLargestHole(season);
    const std::string number = std::to_string(row + 1);
    const Phrase at = told.say(season.rows[row].at);
    return chosenStock(told.project, *told.front).grain == Grain::AlongHeight
               ? phrase("screw row %1, %2 from the box's left side", number, at)
               : phrase("screw row %1, %2 above the box's lower edge", number, at);
}

/// What a screw's head does over a hole so large.
Phrase headOver(const Told& told, Length drill) {
    const Length head = told.front->mounting.screw->headDiameter;
    const Length bearing = (head - drill).half();
    if (bearing >= told.project.limits.leastHeadBearing)
        return phrase("The screws' heads of %1 still cover such a hole.", told.say(head));
    if (bearing > nothing)
        return phrase("The screws' heads of %1 bear on only %2 round such a hole: put washers "
                      "under them.",
                      told.say(head), told.say(bearing));
    return phrase("The screws' heads of %1 go through such a hole: make slots, or put washers "
                  "under them.",
                  told.say(head));
}

} // namespace

// movement at the screws, shank, clearance hole, drill that suffices
Words clearanceSmall(const Told& told) {
    const Phrase movement = told.say(0), drill = told.say(3);
    const Phrase play = told.say((told.figure(2) - told.figure(1)).half());
    const bool isColumn =
        told.front != nullptr && chosenStock(told.project, *told.front).grain == Grain::AlongHeight;
    const Phrase row = worstRow(told);
    const Phrase sentence =
        isColumn ? phrase("Screws that do not hold the front need room: over the year it moves %1 "
                          "at %2, and the clearance holes leave %3. Let the column of screws "
                          "nearest to the middle hold; drill the others %4, or make slots of that "
                          "length, left to right.",
                          movement, row, play, drill)
                 : phrase("Screws that do not hold the front need room: over the year it moves %1 "
                          "at %2, and the clearance holes leave %3. Let the lowest row of screws "
                          "hold; drill the others %4, or make slots of that length, up and down.",
                          movement, row, play, drill);
    return {withTheOthers(told, joined(sentence, headOver(told, told.figure(3)))),
            phrase("clearance hole ≥ shank + 2 × movement %1 + 2 × %2 %3; it is %4; %5",
                   told.equals(1), movement, told.equals(told.figure(1) + 2 * told.figure(0)),
                   told.say(2), seasonWords(told)),
            ofMovement()};
}

Words moistureBeyondRange(const Told& told) {
    return {phrase("The wood's moisture leaves the range of 6 to 14 % for which its coefficient of "
                   "movement is stated: %1. What lies beyond is worked out by a wider formula.",
                   seasonWords(told)),
            text("change = size × (M2 − M1) / (1 / C − 10 + M1) beyond 6 to 14 %, which is size × "
                 "C × (M2 − M1) at 10 %"),
            sourceNamed(SourceKind::Published,
                        text("Forest Products Laboratory, Wood Handbook (GTR-282), chapter 13; the "
                             "wider formula from memory"))};
}

Words woodUnknown(const Told& told) {
    const std::string species =
        told.front != nullptr ? chosenStock(told.project, *told.front).species : std::string();
    return {species.empty()
                ? Phrase(text("No wood is chosen, so its movement over the year cannot be told; "
                              "the front is taken to stay as it was cut."))
                : phrase("Nothing is known of how \"%1\" shrinks and swells, so its movement over "
                         "the year cannot be told; the front is taken to stay as it was cut.",
                         species),
            text("give the wood's coefficients per 1 % of moisture or its shrinkage from green to "
                 "ovendry, or choose stock that does not move"),
            commonPractice()};
}

} // namespace frontwright::wording
