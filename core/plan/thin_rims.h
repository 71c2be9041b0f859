#pragma once

#include "core/fastening/thin_rim.h"
#include "core/plan/plan.h"

#include <deque>

namespace frontwright {

/// The thin rims of fronts, each solved once for fronts of one profile and thickness as long as
/// they follow one another.
class ThinRims {
public:
    /// The limits must outlive this.
    explicit ThinRims(const Limits& limits) : m_limits(limits) {}

    /// Precondition: the front has its thickness and its profile, which outlives this. Valid until
    /// the next call.
    const ThinRim& of(const FrontPlan&);

private:
    struct Solved {
        const Profile* profile;
        Length thickness;
        ThinRim rim;
    };

    const Limits& m_limits;
    std::deque<Solved> m_solved; ///< the last few
};

} // namespace frontwright
