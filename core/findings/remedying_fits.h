#pragma once

#include "core/edits/choices.h"
#include "core/findings/remedying.h"
#include "core/geometry/side_names.h"
#include "core/plan/facing.h"

#include <optional>
#include <string>
#include <string_view>
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

    [[nodiscard]] std::string names() const {
        const bool lowerFirst = &lower < &upper; // as the plan lists them
        return label(search.project, lowerFirst ? lower : upper) + " and " +
               label(search.project, lowerFirst ? upper : lower);
    }
    [[nodiscard]] std::vector<NewFit> both(SideFit fit) const {
        return {{{lower.opening}, sideOfLower(member.kind), fit},
                {{upper.opening}, sideOfUpper(member.kind), fit}};
    }
    [[nodiscard]] std::vector<NewFit> bothOfCase(SideFit fit) const {
        return {{{}, sideOfLower(member.kind), fit}, {{}, sideOfUpper(member.kind), fit}};
    }
};

/// nullopt where no spacer lies between the two.
std::optional<Between> between(const Search&, OpeningId a, OpeningId b);

} // namespace frontwright::remedying
