#include "core/findings/judging.h"

namespace frontwright::judging {

namespace {

constexpr Length nothing{};

/// The counterbore in force leaves too little wood. figures: counterbore, wood that it goes into,
/// wood left under the head, least wood there
void tellTooDeep(const Judged& judged, const WayPlan& way) {
    judged.tell(
        FindingCode::CounterboreTooDeep,
        way.grip <= nothing ? Severity::Ruins : Severity::OutsidePractice,
        {way.counterbore, way.throughWood, way.grip, judged.project.limits.leastWoodUnderHead});
}

} // namespace

void judgeBolt(const Judged& judged) {
    const HardwarePlan& hardware = *judged.front.hardware;
    const WayPlan& way = hardware.chosenWay();
    const HardwareForm& form = *hardware.form;
    switch (way.verdict) {
    case BoltVerdict::Fits:
        return;
    case BoltVerdict::NoneStocked:
        // figures: least length, greatest length, grip
        judged.tell(FindingCode::NoBoltFits, Severity::WontWork,
                    {way.leastLength, way.greatestLength, way.grip});
        return;
    case BoltVerdict::BottomsOut:
        // figures: bolt, grip, thread depth, too much
        judged.tell(FindingCode::BoltBottomsOut, Severity::WontWork,
                    {*way.length, way.grip, form.threadDepth, way.shortBy});
        return;
    case BoltVerdict::TooShort:
    case BoltVerdict::TooDeep:
        break;
    }
    if (way.length && *way.length < way.leastLength)
        // figures: bolt, grip, least engagement, short by
        judged.tell(FindingCode::BoltTooShort, Severity::WontWork,
                    {*way.length, way.grip, form.leastEngagement, way.shortBy});
    else
        tellTooDeep(judged, way);
}

} // namespace frontwright::judging
