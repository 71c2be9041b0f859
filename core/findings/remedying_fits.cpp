#include "core/findings/remedying_fits.h"

#include "core/edits/choices.h"

namespace frontwright::remedying {

Edit setFits(std::vector<NewFit> fits) {
    return [fits = std::move(fits)](const Project& project) {
        Result<Project> changed(project);
        for (const NewFit& fit : fits) {
            changed = setFrontFit(changed.value(), fit.target, fit.side, fit.fit);
            if (!changed.ok())
                break;
        }
        return changed;
    };
}

std::optional<Between> between(const Search& search, OpeningId a, OpeningId b) {
    for (const Spacer& spacer : search.plan.spacers) {
        const FrontPlan& lower = search.plan.fronts[spacer.lower];
        const FrontPlan& upper = search.plan.fronts[spacer.upper];
        if ((lower.opening == a && upper.opening == b) ||
            (lower.opening == b && upper.opening == a))
            return Between{search, lower, upper, search.plan.members[spacer.member]};
    }
    return std::nullopt;
}

} // namespace frontwright::remedying
