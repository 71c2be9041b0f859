#include "core/findings/wording.h"

#include "core/amounts/amounts.h"
#include "core/plan/banks.h"
#include "core/plan/chosen.h"
#include "core/wood/movement.h"

namespace frontwright::wording {

namespace {

constexpr Length nothing{};

Source ofMovement() {
    return woodHandbook("chapter 13: change = size × coefficient × change of moisture");
}

std::string percent(double moisture) {
    return decimal(moisture, 1) + " %";
}

/// "wood cut at 8.0 % moisture goes from 6.0 % to 11.0 % in this room"
std::string seasonWords(const Told& told) {
    const SeasonMoisture moisture = told.plan.season.value_or(SeasonMoisture{});
    return "wood cut at " + percent(moisture.whenCut) + " moisture goes from " +
           percent(moisture.driest) + " to " + percent(moisture.wettest) + " in this room";
}

/// "gap at the wettest = gap when cut − movement = 1/8 in − 3/32 in = 1/32 in; …"
std::string lessByMovement(const Told& told, const std::string& what, const std::string& when) {
    return what + " at the " + when + " = " + what + " when cut − movement = " + told.say(0) +
           " − " + told.say(told.figure(0) - told.figure(1)) + " = " + told.say(1) + "; " +
           seasonWords(told);
}

} // namespace

// gap when cut, least over the season, least gap
Words gapCloses(const Told& told) {
    return {"In the room's wettest air the fronts touch: their gap of " + told.say(0) +
                " when cut closes" +
                (told.figure(1) < nothing ? ", and " + told.say(-told.figure(1)) + " is missing."
                                          : std::string(".")),
            lessByMovement(told, "gap", "wettest") + "; at least " + told.say(2), ofMovement()};
}

// gap when cut, least over the season, least gap
Words gapTightens(const Told& told) {
    const bool isBetween = told.finding.where.other.has_value();
    return {"In the room's wettest air the gap " +
                (isBetween ? std::string("between the fronts") : "at the " + told.side()) +
                " is only " + told.say(1) + ", less than " + told.say(2) + "; when cut it is " +
                told.say(0) + ".",
            lessByMovement(told, "gap", "wettest") + "; at least " + told.say(2),
            sourceOfLimit(told.project.limits.leastGap, Limits{}.leastGap)};
}

// gap when cut, least over the season, least gap
Words insetBinds(const Told& told) {
    return {"In the room's wettest air the front binds at its opening's " + told.side() +
                " edge: its gap of " + told.say(0) + " when cut closes.",
            lessByMovement(told, "gap", "wettest") + "; at least " + told.say(2), ofMovement()};
}

// overlay when cut, least over the season
Words overlayLost(const Told& told) {
    const std::string edge = "opening's " + told.side() + " edge";
    return {told.figure(1) == nothing
                ? "In the room's driest air the front only just reaches its " + edge +
                      " and does not cover it."
                : "In the room's driest air the front ends " + told.say(-told.figure(1)) +
                      " short of its " + edge + ", which it should cover.",
            lessByMovement(told, "overlay", "driest") + "; it needs more than 0", ofMovement()};
}

// narrowest gap, widest gap when they differ most, difference when cut, difference that an eye sees
Words gapsGoUneven(const Told& told) {
    const Length difference = told.figure(1) - told.figure(0);
    const std::string bank = "bank " + bankLetters(told.front->bank);
    return {"Over the year the gaps down " + bank + " come to differ by " + told.say(difference) +
                ", which an eye sees: " + told.say(0) + " here, " + told.say(1) +
                " at the widest. Fronts of different heights move differently.",
            "difference = widest − narrowest gap = " + told.say(1) + " − " + told.say(0) + " = " +
                told.say(difference) + ", when cut " + told.say(2) + "; at most " + told.say(3) +
                "; " + seasonWords(told),
            sourceOfLimit(told.project.limits.unevenGaps, Limits{}.unevenGaps)};
}

// movement at the screws, shank, clearance hole, drill that suffices
Words clearanceSmall(const Told& told) {
    const Length play = (told.figure(2) - told.figure(1)).half();
    const bool isColumn =
        told.front != nullptr && chosenStock(told.project, *told.front).grain == Grain::AlongHeight;
    const std::string fixed =
        isColumn ? "the column of screws nearest to the middle" : "the lowest row of screws";
    return {"Screws that do not hold the front need room: over the year it moves " + told.say(0) +
                " at them, and the clearance holes leave " + told.say(play) + ". Let " + fixed +
                " hold; drill the others " + told.say(3) + ", or make slots of that length, " +
                (isColumn ? "left to right." : "up and down."),
            "clearance hole ≥ shank + 2 × movement = " + told.say(1) + " + 2 × " + told.say(0) +
                " = " + told.say(told.figure(1) + 2 * told.figure(0)) + "; it is " + told.say(2) +
                "; " + seasonWords(told),
            ofMovement()};
}

Words moistureBeyondRange(const Told& told) {
    return {"The wood's moisture leaves the range of 6 to 14 % for which its coefficient of "
            "movement is stated: " +
                seasonWords(told) + ". What lies beyond is worked out by a wider formula.",
            "change = size × (M2 − M1) / (1 / C − 10 + M1) beyond 6 to 14 %, which is size × C × "
            "(M2 − M1) at 10 %",
            woodHandbook("chapter 13; the wider formula from memory")};
}

Words woodUnknown(const Told& told) {
    const std::string species =
        told.front != nullptr ? chosenStock(told.project, *told.front).species : std::string();
    return {species.empty() ? std::string("No wood is chosen, so its movement over the year cannot "
                                          "be told; the front is taken to stay as it was cut.")
                            : "Nothing is known of how \"" + species +
                                  "\" shrinks and swells, so its movement over the year cannot be "
                                  "told; the front is taken to stay as it was cut.",
            "give the wood's coefficients per 1 % of moisture or its shrinkage from green to "
            "ovendry, or choose stock "
            "that does not move",
            commonPractice()};
}

} // namespace frontwright::wording
