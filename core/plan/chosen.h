#pragma once

#include "core/plan/plan.h"

namespace frontwright {

// What holds for one front: the opening's own choice where it has one, else the case's. `front`
// is of a Plan made from `project`; one without choices follows the case.

const SideFit& chosenFit(const Project& project, const FrontPlan& front, Side side);
const WrittenLength& chosenThickness(const Project& project, const FrontPlan& front);
const Stock& chosenStock(const Project& project, const FrontPlan& front);
const Profile& chosenProfile(const Project& project, const FrontPlan& front);
const BoxSpec& chosenBox(const Project& project, const FrontPlan& front);
const MountingSpec& chosenMounting(const Project& project, const FrontPlan& front);
const HardwareSpec& chosenHardware(const Project& project, const FrontPlan& front);

} // namespace frontwright
