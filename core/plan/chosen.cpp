#include "core/plan/chosen.h"

namespace frontwright {

namespace {

template<class T>
const T& chosen(const Project& project, const FrontPlan& front, Rare<T> FrontChoices::*own,
                T FrontDefaults::*ofCase) {
    const FrontChoices* choices = front.choices;
    return choices != nullptr && choices->*own ? *(choices->*own) : project.fronts.*ofCase;
}

} // namespace

const SideFit& chosenFit(const Project& project, const FrontPlan& front, Side side) {
    const FrontChoices* choices = front.choices;
    return choices != nullptr && choices->fit[side] ? *choices->fit[side]
                                                    : project.fronts.fit[side];
}

const WrittenLength& chosenThickness(const Project& project, const FrontPlan& front) {
    return chosen(project, front, &FrontChoices::thickness, &FrontDefaults::thickness);
}

const Stock& chosenStock(const Project& project, const FrontPlan& front) {
    return chosen(project, front, &FrontChoices::stock, &FrontDefaults::stock);
}

const Profile& chosenProfile(const Project& project, const FrontPlan& front) {
    return chosen(project, front, &FrontChoices::profile, &FrontDefaults::profile);
}

const BoxSpec& chosenBox(const Project& project, const FrontPlan& front) {
    const FrontChoices* choices = front.boxChoices;
    return choices != nullptr && choices->box ? *choices->box : project.fronts.box;
}

const MountingSpec& chosenMounting(const Project& project, const FrontPlan& front) {
    return chosen(project, front, &FrontChoices::mounting, &FrontDefaults::mounting);
}

const HardwareSpec& chosenHardware(const Project& project, const FrontPlan& front) {
    return chosen(project, front, &FrontChoices::hardware, &FrontDefaults::hardware);
}

} // namespace frontwright
