#pragma once

#include "core/plan/plan.h"

#include <deque>

namespace frontwright {

/// The last few fronts that were worked out, as others may take over what came out.
class AlikeFronts {
public:
    /// One of them of that front's size that decides the same and overlays the same; nullptr where
    /// there is none. Reads the front's use, place and choices.
    [[nodiscard]] const FrontPlan* alikeTo(const FrontPlan&) const;
    /// The front must stay where it is.
    void remember(const FrontPlan&);

private:
    std::deque<const FrontPlan*> m_distinct; ///< latest first
};

/// All that was worked out for a front that is alike; the box moves with the opening.
void takeOver(const Project&, FrontPlan&, const FrontPlan& alike);

} // namespace frontwright
