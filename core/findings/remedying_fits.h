#pragma once

#include "core/edits/choices.h"
#include "core/findings/remedying.h"
#include "core/plan/facing.h"

#include <optional>
#include <string>
#include <vector>

namespace frontwright::remedying {

/// One side of one front and how it shall meet what is beside it.
struct NewFit {
    EditTarget target;
    Side side = Side::Left;
    SideFit fit;
};

Edit setFits(std::vector<NewFit> fits);

/// The two fronts of a spacer, their sides, and the member between.
struct Between {
    const Search& search;
    const FrontPlan& lower;
    const FrontPlan& upper;
    const MemberPlan& member;

    // As the plan lists them.
    [[nodiscard]] std::string firstName() const {
        return label(search.project, &lower < &upper ? lower : upper);
    }
    [[nodiscard]] std::string secondName() const {
        return label(search.project, &lower < &upper ? upper : lower);
    }
    [[nodiscard]] std::vector<NewFit> both(SideFit fit) const {
        return {{{lower.opening}, sideOfLower(member.kind), fit},
                {{upper.opening}, sideOfUpper(member.kind), fit}};
    }
    [[nodiscard]] std::vector<NewFit> bothOfCase(SideFit fit) const {
        return {{{}, sideOfLower(member.kind), fit}, {{}, sideOfUpper(member.kind), fit}};
    }
};

/// An amount for one side: of one front by its name, and of all the fronts of the case.
struct SideLabel {
    Phrase ofFront;
    Phrase ofAll;
};
SideLabel makeOverlay(Side, const std::string& front, const std::string& amount);
SideLabel makeOverlayWhenCut(Side, const std::string& front, const std::string& amount);
SideLabel makeGap(Side, const std::string& front, const std::string& amount);
SideLabel makeGapWhenCut(Side, const std::string& front, const std::string& amount);
/// The label's front is the search's.
void proposeForSide(const Search&, SideLabel, Side, SideFit);

/// nullopt where no spacer lies between the two.
std::optional<Between> between(const Search&, OpeningId a, OpeningId b);

} // namespace frontwright::remedying
