#pragma once

#include "core/plan/facing.h"
#include "core/plan/figures.h"
#include "core/plan/quantity.h"

namespace frontwright::deriving {

/// Whether " = result" is still to be written after the figures.
enum class Ending : std::uint8_t { Result, Complete };

/// How a number came about, before it gets its name and value.
struct Rule {
    Phrase formula;
    Phrase figures; ///< without the result, where the ending does not say Complete
    Source source;
    std::vector<InputPlace> inputs;
    Ending ending = Ending::Result;
};

/// What is asked for. `value` is the plan's own number; a rule only explains it. Where a plan's
/// number does not follow the rule that is told, the plain rule of the drawing is told instead, so
/// that figures always sum to the value.
struct Asked {
    const Project& project;
    const Plan& plan;
    Quantity quantity;
    Length value; ///< 0 where it is no length
    LengthStyle style;

    [[nodiscard]] const FrontPlan& front() const { return plan.fronts[quantity.item]; }
    [[nodiscard]] Figures figures() const { return Figures(style); }
    [[nodiscard]] std::string number(double of, int decimals) const {
        return withMark(decimal(of, decimals), style.mark);
    }
};

/// Two nanometres: what halving and thirds may lose.
bool isSame(Length a, Length b);

Rule asGiven(const Asked&, InputPlace);

// One function for each theme; each knows the kinds that its file names.
Rule ruleOfMoisture(const Asked&);
Rule ruleOfSeason(const Asked&);
Rule ruleOfRow(const Asked&);
Rule ruleOfMember(const Asked&);
Rule ruleOfFrontSize(const Asked&);
Rule ruleOfSpace(const Asked&);
Rule ruleOfOverlay(const Asked&, Side);
Rule ruleOfGap(const Asked&, Side);
Rule ruleOfTotal(const Asked&);
Rule ruleOfSurround(const Asked&, Side);
Rule ruleOfStep(const Asked&);
Rule ruleOfBox(const Asked&);
Rule ruleOfRunner(const Asked&);
Rule ruleOfScrew(const Asked&);
Rule ruleOfHole(const Asked&);
Rule ruleOfHandle(const Asked&);
Rule ruleOfBolt(const Asked&);
Rule ruleOfFitting(const Asked&);
Rule ruleOfSetup(const Asked&);
Rule ruleOfFiller(const Asked&);
Rule ruleOfHolding(const Asked&);
Rule ruleOfWeight(const Asked&);

/// That the front's box runs in: of a divided face all of it.
const CaseRect& openingBehind(const Asked&);

/// The width of the member beside that side of the front, across its length.
Length memberWidthAt(const Plan&, const FrontPlan&, Side);

} // namespace frontwright::deriving
