#pragma once

#include "core/edits/choices.h"
#include "core/plan/plan.h"
#include "core/plan/quantity.h"
#include "core/results/result.h"

#include <utility>

namespace frontwright::typing {

/// Everything that one typed number needs.
struct Typing {
    const Project& project;
    const Plan& plan;
    Quantity quantity;
    WrittenLength value;

    [[nodiscard]] const FrontPlan& front() const { return plan.fronts[quantity.item]; }
    [[nodiscard]] EditTarget target() const { return {front().opening}; }
    [[nodiscard]] Error follows(Phrase from) const {
        return {nameOf(quantity.kind), phrase("follows from %1", std::move(from)),
                text("change that instead")};
    }
};

// Each changes the decision behind the number so that it becomes what was typed.
Result<Project> setCaseWidth(const Typing&);
Result<Project> setCaseHeight(const Typing&);
Result<Project> setMember(const Typing&);
Result<Project> setOpeningWidth(const Typing&);
Result<Project> setOpeningHeight(const Typing&);
Result<Project> setFrontWidth(const Typing&);
Result<Project> setFrontHeight(const Typing&);
Result<Project> setFrontThickness(const Typing&);
Result<Project> setOverlay(const Typing&); ///< of the side that the kind is of
Result<Project> setGap(const Typing&);     ///< of the side that the kind is of
Result<Project> setBoxHeight(const Typing&);
Result<Project> setBoxDepth(const Typing&);
Result<Project> setSideClearance(const Typing&);
Result<Project> setRunnerLength(const Typing&);
Result<Project> setFurring(const Typing&);
Result<Project> setScrewLength(const Typing&);
Result<Project> setClearanceHole(const Typing&);
Result<Project> setPilotHole(const Typing&);
Result<Project> setHoleX(const Typing&);
Result<Project> setHoleY(const Typing&);
Result<Project> setHandleX(const Typing&);
Result<Project> setHandleY(const Typing&);
Result<Project> setBoltLength(const Typing&);
Result<Project> setFittingX(const Typing&);
Result<Project> setFittingY(const Typing&);
Result<Project> setFittingScrewLength(const Typing&);
Result<Project> setCounterbore(const Typing&);
Result<Project> setSpacer(const Typing&);
Result<Project> setStopFromFarEdge(const Typing&);
Result<Project> setStopFromOpening(const Typing&);
Result<Project> setSpaceWidth(const Typing&);
Result<Project> setSpaceHeight(const Typing&);

} // namespace frontwright::typing
