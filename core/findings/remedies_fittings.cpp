#include "core/findings/remedying.h"

#include "core/catalogue/stocked.h"
#include "core/edits/choices.h"
#include "core/edits/every_opening.h"

#include <algorithm>

namespace frontwright::remedying {

namespace {

constexpr Length nothing{};

const FittingPlan* fittingOf(const Search& search) {
    const auto& index = search.finding.where.fitting;
    const auto& fittings = search.front.fittings;
    return index && fittings && *index < fittings->size() ? &(*fittings)[*index] : nullptr;
}

HardwareSpec specOf(const Search& search) {
    return chosenHardware(search.project, search.front);
}

void proposeThicker(const Search& search, Length missing) {
    if (missing <= nothing)
        return;
    const Length thickness = search.up(search.front.thickness + missing);
    const auto opening = search.front.opening;
    search.propose(phrase("Make the front of %1 %2 thick", search.name(), search.say(thickness)),
                   [opening, thickness](const Project& project) {
                       return setThickness(project, {opening}, thickness);
                   });
}

void proposeWithout(const Search& search, const FittingPlan& fitting) {
    HardwareSpec spec = specOf(search);
    spec.fittings.erase(spec.fittings.begin() + fitting.spec);
    search.propose(
        {phrase("Leave the fitting of %1 away: %2", search.name(),
                nameFromData(fitting.form->name)),
         phrase("Leave the fitting of the whole case away: %1", nameFromData(fitting.form->name))},
        spec);
}

/// Where a fitting may go, told as distances from edges.
class Places {
public:
    Places(const Search& search, const FittingPlan& fitting)
        : m_search(search),
          m_fitting(fitting),
          m_spec(specOf(search)) {}

    void fromTop(Length distance) {
        if (m_fitting.form->belowTop || distance < nothing)
            return;
        HardwareSpec spec = m_spec;
        FittingSpec& fitting = spec.fittings[m_fitting.spec];
        fitting.upright = FittingUpright::FromTop;
        fitting.fromEdge = distance;
        m_search.propose({phrase("Place the fitting of %1 %2 below the top edge", m_search.name(),
                                 m_search.say(distance)),
                          phrase("Place the fitting of the whole case %1 below the top edge",
                                 m_search.say(distance))},
                         spec);
    }
    void fromSide(Length distance) {
        if (distance < nothing)
            return;
        HardwareSpec spec = m_spec;
        FittingSpec& fitting = spec.fittings[m_fitting.spec];
        if (fitting.across == FittingAcross::Middle)
            fitting.across = FittingAcross::FromLeft;
        fitting.fromSide = distance;
        m_search.propose({phrase("Place the fitting of %1 %2 from the side", m_search.name(),
                                 m_search.say(distance)),
                          phrase("Place the fitting of the whole case %1 from the side",
                                 m_search.say(distance))},
                         spec);
    }
    void inMiddle() {
        HardwareSpec spec = m_spec;
        FittingSpec& fitting = spec.fittings[m_fitting.spec];
        fitting.across = FittingAcross::Middle;
        fitting.upright = FittingUpright::Middle;
        if (spec != m_spec)
            m_search.propose({phrase("Place the fitting of %1 in the middle", m_search.name()),
                              text("Place the fitting of the whole case in the middle")},
                             spec);
    }

private:
    const Search& m_search;
    const FittingPlan& m_fitting;
    HardwareSpec m_spec;
};

/// Into the field, as little as it takes.
void proposeInto(const Search& search, const FittingPlan& fitting, Places& places) {
    const FrontPlan& front = search.front;
    const FrontRect& field = front.field;
    const FrontRect& plate = fitting.footprint;
    const Length up = plate.top - fitting.centre.y, side = plate.right - fitting.centre.x;
    const Length height = front.rect.height();
    if (plate.top > field.top || plate.bottom < field.bottom) {
        places.fromTop(search.up(height - field.top + up));
        places.fromTop(search.down(height - field.bottom - (fitting.centre.y - plate.bottom)));
    }
    if (plate.left < field.left || plate.right > field.right)
        places.fromSide(search.up(field.left + side));
    places.inMiddle();
}

/// Just above, below or beside what it meets.
void proposeClear(const Search& search, const FittingPlan& fitting, const FrontRect& other,
                  Places& places) {
    const Length height = search.front.rect.height();
    const Length up = fitting.footprint.height().half(), side = fitting.footprint.width().half();
    places.fromTop(search.down(height - other.top - up - search.grid()));
    places.fromTop(search.up(height - other.bottom + up + search.grid()));
    places.fromSide(search.down(other.left - side - search.grid()));
}

std::optional<FrontRect> inTheWay(const Search& search, const FittingPlan& fitting) {
    const auto& other = search.finding.where.otherFitting;
    if (other && *other < search.front.fittings->size())
        return (*search.front.fittings)[*other].footprint;
    if (search.front.hardware)
        for (const HandlePlan& handle : search.front.hardware->handles)
            if (const FrontRect common = handle.footprint.common(fitting.footprint);
                common.width() > nothing && common.height() > nothing)
                return handle.footprint;
    return std::nullopt;
}

} // namespace

void forFittingPlace(const Search& search) {
    const FittingPlan* fitting = fittingOf(search);
    if (fitting == nullptr)
        return;
    Places places(search, *fitting);
    if (search.finding.code != FindingCode::FittingsCollide)
        proposeInto(search, *fitting, places);
    else if (const auto other = inTheWay(search, *fitting))
        proposeClear(search, *fitting, *other, places);
    proposeWithout(search, *fitting);
}

void forFittingScrew(const Search& search) {
    const FittingPlan* fitting = fittingOf(search);
    if (fitting == nullptr)
        return;
    HardwareSpec spec = specOf(search);
    const std::vector<Length>& stock = fitting->screw->lengths;
    if (const auto length =
            longestStocked(stock, {fitting->leastLength, fitting->greatestLength})) {
        spec.fittings[fitting->spec].screwLength = *length;
        search.propose(
            {phrase("Hold the fitting of %1 with %2 screws", search.name(), search.say(*length)),
             phrase("Hold the fitting of the whole case with %1 screws", search.say(*length))},
            spec);
    }
    const auto shortest = std::ranges::lower_bound(stock, fitting->leastLength);
    if (shortest != stock.end())
        proposeThicker(search, *shortest - fitting->greatestLength);
}

void forMortise(const Search& search) {
    const FittingPlan* fitting = fittingOf(search);
    if (fitting == nullptr)
        return;
    proposeThicker(search, search.finding.figures[3] - search.finding.figures[2]);
    proposeWithout(search, *fitting);
}

namespace {

std::vector<std::pair<OpeningId, HardwareSpec>> ownSpecs(const Project& project) {
    std::vector<std::pair<OpeningId, HardwareSpec>> specs;
    withEveryOpening(project, [&](const Opening& opening) -> std::optional<Opening> {
        if (opening.choices.hardware)
            specs.emplace_back(opening.id, *opening.choices.hardware);
        return std::nullopt;
    });
    return specs;
}

/// All handles of `from` become `to`, the case's and those of openings.
Result<Project> withForm(const Project& project, std::string_view from, const std::string& to) {
    HardwareSpec common = project.fronts.hardware;
    Result<Project> changed = project;
    if (common.form == from) {
        common.form = to;
        changed = setHardware(project, {}, common);
    }
    for (const auto& [opening, spec] : ownSpecs(project))
        if (changed.ok() && spec.form == from) {
            HardwareSpec own = spec;
            own.form = to;
            changed = setHardware(changed.value(), {opening}, own);
        }
    return changed;
}

void proposeForm(const Search& search, const HardwareForm& from, const HardwareForm& to) {
    search.propose(phrase("Use one handle everywhere instead of %1: %2", nameFromData(from.name),
                          nameFromData(to.name)),
                   [from = from.id, to = to.id](const Project& project) {
                       return withForm(project, from, to);
                   });
}

} // namespace

void forCentres(const Search& search) {
    const FrontPlan* other =
        search.finding.where.other ? search.plan.frontOf(*search.finding.where.other) : nullptr;
    if (!other || !other->hardware || !search.front.hardware)
        return;
    const HardwareForm& here = *search.front.hardware->form;
    const HardwareForm& there = *other->hardware->form;
    proposeForm(search, here, there);
    proposeForm(search, there, here);
}

} // namespace frontwright::remedying
