#include "core/findings/judging.h"
#include "core/findings/remedying.h"

namespace frontwright::remedying {

namespace {

constexpr Length nothing{};

void proposePlacing(const Search& search, HardwareSpec spec, Placing placing, const Label& label) {
    if (spec.placing == placing && !spec.placedAt)
        return;
    spec.placing = placing;
    spec.placedAt.reset();
    search.propose(label, spec);
}

void proposePlacings(const Search& search, const HardwareSpec& spec) {
    proposePlacing(search, spec, Placing::CentredInField,
                   {phrase("Centre the handle of %1 in the field", search.name()),
                    text("Centre the handle of the whole case in the field")});
    proposePlacing(search, spec, Placing::CentredOnFront,
                   {phrase("Centre the handle of %1 on the front", search.name()),
                    text("Centre the handle of the whole case on the front")});
    proposePlacing(search, spec, Placing::OpticalCentre,
                   {phrase("Place the handle of %1 at the optical centre", search.name()),
                    text("Place the handle of the whole case at the optical centre")});
}

/// From the front's top edge to the handle's centre, wherever all is in order up the front: base in
/// the field, holes in the wall.
Span allowedFromTop(const Search& search) {
    const FrontPlan& front = search.front;
    const HardwarePlan& hardware = *front.hardware;
    const FrontRect& base = hardware.handles.front().footprint;
    const Length height = front.rect.height(), centre = hardware.handles.front().centre.y;
    Span heights{front.field.bottom + (centre - base.bottom),
                 front.field.top - (base.top - centre)};
    const Length radius = judging::radiusInWall(hardware);
    if (radius > nothing)
        heights = heights.common({front.box.wallOnFront.y + front.box.bottomTop + radius,
                                  front.box.wallOnFront.y + front.box.height - radius});
    return {height - heights.high, height - heights.low};
}

void proposeFromTop(const Search& search, HardwareSpec spec) {
    const Span allowed = allowedFromTop(search);
    if (allowed.isEmpty())
        return;
    const Length now = search.front.rect.height() - search.front.hardware->handles.front().centre.y;
    Length distance = now < allowed.low ? search.up(allowed.low) : search.down(allowed.high);
    if (!allowed.contains(distance))
        distance = allowed.middle();
    spec.placing = Placing::FromTop;
    spec.distance = distance;
    spec.placedAt.reset();
    search.propose(
        {phrase("Place the handle of %1 %2 below the top edge", search.name(),
                search.say(distance)),
         phrase("Place the handle of the whole case %1 below the top edge", search.say(distance))},
        spec);
}

void proposeFewer(const Search& search, HardwareSpec spec) {
    if (search.front.hardware->handles.size() < 2)
        return;
    spec.twoAtPercent = HardwareSpec{}.twoAtPercent;
    search.propose({phrase("Place the two handles of %1 at a quarter of the width", search.name()),
                    text("Place the two handles of the whole case at a quarter of the width")},
                   spec);
    if (search.front.hardware->handles.size() > 2) {
        spec.threePast.reset();
        search.propose({phrase("Use two handles on %1", search.name()),
                        text("Use two handles on the whole case")},
                       spec);
    }
    spec.twoPast.reset();
    search.propose(
        {phrase("Use one handle on %1", search.name()), text("Use one handle on the whole case")},
        spec);
}

/// Forms of the same kind, then the others, that bear on less.
void proposeSmallerForms(const Search& search, HardwareSpec spec) {
    const HardwareForm& now = *search.front.hardware->form;
    const auto isSmaller = [&](const HardwareForm& form) {
        return form.footprint.width < now.footprint.width ||
               form.footprint.height < now.footprint.height;
    };
    std::size_t proposed = 0;
    for (const bool sameKind : {true, false})
        for (const HardwareForm& form : search.catalogue.hardware)
            if ((form.kind == now.kind) == sameKind && isSmaller(form) && proposed < 4) {
                spec.form = form.id;
                search.propose(
                    {phrase("Use another handle on %1: %2", search.name(), nameFromData(form.name)),
                     phrase("Use another handle on the whole case: %1", nameFromData(form.name))},
                    spec);
                ++proposed;
            }
}

void proposeNarrowerProfile(const Search& search) {
    Profile profile = chosenProfile(search.project, search.front);
    const Length width = search.down(profile.width - search.finding.figures[0]);
    if (width <= nothing)
        return;
    profile.width = width;
    search.propose(widenProfile(search, width), profile);
}

void proposeWays(const Search& search, HardwareSpec spec) {
    spec.accessDiameter.reset();
    spec.way = MountingWay::FrontCounterbore;
    search.propose(boltHandle(search, spec.way), spec);
    spec.way = MountingWay::ThroughWall;
    search.propose(boltHandle(search, spec.way), spec);
}

} // namespace

void forHandle(const Search& search) {
    if (!search.front.hardware || search.front.hardware->handles.empty())
        return;
    const HardwareSpec spec = chosenHardware(search.project, search.front);
    const FindingCode code = search.finding.code;
    if (code == FindingCode::HandlesCollide)
        return proposeFewer(search, spec);
    if (code == FindingCode::AccessHoleOffWall) {
        proposeFromTop(search, spec);
        proposeWays(search, spec);
        return proposePlacings(search, spec);
    }
    proposePlacings(search, spec);
    proposeFromTop(search, spec);
    if (code == FindingCode::BackplateOffField)
        proposeNarrowerProfile(search);
    proposeFewer(search, spec);
    proposeSmallerForms(search, spec);
}

} // namespace frontwright::remedying
