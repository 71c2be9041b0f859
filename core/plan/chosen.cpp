#include "core/plan/chosen.h"

#include "core/edits/divisions.h"

namespace frontwright {

namespace {

/// Plans made by hand may lack the pointer; then the tree is asked.
const FrontChoices* choicesOf(const Project& project, const FrontPlan& front) {
    if (front.choices != nullptr)
        return front.choices;
    const Opening* opening = findOpening(project, front.opening);
    return opening == nullptr ? nullptr : &opening->choices;
}

template<class T>
const T& chosen(const Project& project, const FrontPlan& front, Rare<T> FrontChoices::*own,
                T FrontDefaults::*ofCase) {
    const FrontChoices* choices = choicesOf(project, front);
    return choices != nullptr && choices->*own ? *(choices->*own) : project.fronts.*ofCase;
}

} // namespace

const SideFit& chosenFit(const Project& project, const FrontPlan& front, Side side) {
    const FrontChoices* choices = choicesOf(project, front);
    return choices != nullptr && choices->fit[side] ? *choices->fit[side]
                                                    : project.fronts.fit[side];
}

const WrittenLength& chosenThickness(const Project& project, const FrontPlan& front) {
    return chosen(project, front, &FrontChoices::thickness, &FrontDefaults::thickness);
}

const Profile& chosenProfile(const Project& project, const FrontPlan& front) {
    return chosen(project, front, &FrontChoices::profile, &FrontDefaults::profile);
}

const BoxSpec& chosenBox(const Project& project, const FrontPlan& front) {
    return chosen(project, front, &FrontChoices::box, &FrontDefaults::box);
}

const MountingSpec& chosenMounting(const Project& project, const FrontPlan& front) {
    return chosen(project, front, &FrontChoices::mounting, &FrontDefaults::mounting);
}

const HardwareSpec& chosenHardware(const Project& project, const FrontPlan& front) {
    return chosen(project, front, &FrontChoices::hardware, &FrontDefaults::hardware);
}

} // namespace frontwright
