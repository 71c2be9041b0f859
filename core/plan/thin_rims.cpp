#include "core/plan/thin_rims.h"

namespace frontwright {
namespace {

constexpr std::size_t mostRims = 8;

} // namespace

const ThinRim& ThinRims::of(const FrontPlan& front) {
    for (const Solved& solved : m_solved)
        if (solved.thickness == front.thickness &&
            (solved.profile == front.profile || *solved.profile == *front.profile))
            return solved.rim;
    if (m_solved.size() == mostRims)
        m_solved.pop_front();
    m_solved.push_back({front.profile, front.thickness,
                        thinRim(*front.profile, front.thickness,
                                m_limits.leastPenetration.length + m_limits.leastTipCover.length)});
    return m_solved.back().rim;
}

} // namespace frontwright
