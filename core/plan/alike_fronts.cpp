#include "core/plan/alike_fronts.h"

#include "core/plan/chosen.h"

#include <algorithm>

namespace frontwright {
namespace {

/// As many as the rows of most banks: those of the bank beside it are alike.
constexpr std::size_t mostDistinct = 8;

bool areOfOneSize(const CaseRect& a, const CaseRect& b) {
    return a.width() == b.width() && a.height() == b.height();
}

/// Whether all that is worked out is the same for both, but for where the box lies in the case.
/// Fits follow from what they decide; overlays do not, where a gap is shared with a neighbour.
bool areAlike(const FrontPlan& a, const FrontPlan& b) {
    return a.use == b.use && a.hinge == b.hinge && !a.face && !b.face &&
           a.use != OpeningUse::FixedFront && // screwed to members, which differ
           areOfOneSize(a.openingRect, b.openingRect) && a.overlay == b.overlay &&
           *a.choices == *b.choices;
}

} // namespace

const FrontPlan* AlikeFronts::alikeTo(const FrontPlan& front) const {
    const auto found =
        std::find_if(m_distinct.begin(), m_distinct.end(),
                     [&](const FrontPlan* distinct) { return areAlike(*distinct, front); });
    return found == m_distinct.end() ? nullptr : *found;
}

void AlikeFronts::remember(const FrontPlan& front) {
    if (m_distinct.size() == mostDistinct)
        m_distinct.pop_back();
    m_distinct.push_front(&front);
}

void takeOver(const Project& project, FrontPlan& front, const FrontPlan& alike) {
    front.thickness = alike.thickness;
    front.profile = &chosenProfile(project, front);
    front.field = alike.field;
    front.box = alike.box;
    front.runner = alike.runner;
    front.boxSwelling = alike.boxSwelling;
    front.box.origin =
        alike.box.origin + (front.openingRect.lowerLeft() - alike.openingRect.lowerLeft());
    front.mounting = alike.mounting;
    front.hardware = alike.hardware;
    front.fittings = alike.fittings;
    front.season = alike.season;
    front.holding = alike.holding;
    front.load = alike.load;
    front.wood = alike.wood;
}

} // namespace frontwright
