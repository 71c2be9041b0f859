#include "core/findings/remedying.h"

#include "core/edits/choices.h"
#include "core/lengths/format.h"

namespace frontwright::remedying {

namespace {

template<class Spec>
Remedy remedyOf(const Phrase& label, EditTarget target,
                Result<Project> (*set)(const Project&, EditTarget, const Spec&), const Spec& spec) {
    return {label,
            [target, set, spec](const Project& project) { return set(project, target, spec); }};
}

template<class Spec, class Own>
void proposeSpec(const Search& search, const Label& label, const Spec& spec,
                 Result<Project> (*set)(const Project&, EditTarget, const Spec&),
                 Own FrontChoices::*own) {
    const FrontPlan& front = search.front;
    search.forFront.push_back(remedyOf(label.ofFront, {front.opening}, set, spec));
    const bool followsCase = front.choices != nullptr && !(front.choices->*own);
    if (followsCase && search.plan.fronts.size() > 1)
        search.forCase.push_back(remedyOf(label.wholeCase, {}, set, spec));
}

Length downTo(Length length, Length grid) {
    const std::int64_t step = grid.nanometres();
    const std::int64_t over = ((length.nanometres() % step) + step) % step;
    return Length::fromNanometres(length.nanometres() - over);
}

} // namespace

void Search::propose(Phrase label, const Edit& edit) const {
    forFront.push_back({std::move(label), edit});
}

void Search::propose(const Label& label, const MountingSpec& spec) const {
    proposeSpec(*this, label, spec, &setMounting, &FrontChoices::mounting);
}

void Search::propose(const Label& label, const HardwareSpec& spec) const {
    proposeSpec(*this, label, spec, &setHardware, &FrontChoices::hardware);
}

void Search::propose(const Label& label, const BoxSpec& spec) const {
    proposeSpec(*this, label, spec, &setBox, &FrontChoices::box);
}

void Search::propose(const Label& label, const Profile& profile) const {
    proposeSpec(*this, label, profile, &setProfile, &FrontChoices::profile);
}

void Search::propose(const Label& label, const Stock& stock) const {
    proposeSpec(*this, label, stock, &setStock, &FrontChoices::stock);
}

std::string Search::name() const {
    return label(project, front);
}

std::string Search::say(Length length) const {
    return shown(length, {style.unit, 64, style.mark});
}

Length Search::grid() const {
    return style.unit == Unit::Inch ? Length::fromSixtyFourths(4) : Length::millimetres(1);
}

Length Search::down(Length length) const {
    return downTo(length, grid());
}

Length Search::up(Length length) const {
    return -downTo(-length, grid());
}

} // namespace frontwright::remedying
