#include "core/hardware/fittings.h"

#include "core/catalogue/stocked.h"
#include "core/geometry/mm.h"

#include <algorithm>

namespace frontwright {
namespace {

FrontRect rectRound(FrontPoint centre, Length width, Length height) {
    const FrontPoint low{centre.x - width.half(), centre.y - height.half()};
    return {low.x, low.y, low.x + width, low.y + height};
}

FrontRect footprintOf(const FittingForm& form, FrontPoint centre, const FrontRect& front) {
    const Footprint& print = form.footprint;
    if (form.bearsOn == FrontFace::TopEdge)
        return {centre.x - print.width.half(), front.top, centre.x + print.width.half(), front.top};
    return rectRound(centre, print.width,
                     print.shape == FootprintShape::Round ? print.width : print.height);
}

/// Through the thickness, from the show face on.
FrontRect fromShowFace(const FittingForm& form, const FrontRect& place, Length thickness) {
    if (form.bearsOn != FrontFace::Back)
        return place;
    return {place.left, thickness - place.top, place.right, thickness - place.bottom};
}

std::optional<Length> woodBesideInEdge(const FrontRect& place, const FrontStock& stock) {
    const Length lost = stock.thickness - edgeThickness(*stock.profile, stock.thickness, Side::Top);
    const Length beforeIt = place.bottom - lost, behindIt = stock.thickness - place.top;
    const bool opensShow = place.bottom <= Length{}, opensBack = behindIt <= Length{};
    if (opensShow && opensBack)
        return std::nullopt;
    if (opensShow)
        return behindIt;
    return opensBack ? beforeIt : least(beforeIt, behindIt);
}

Length leastUnder(const FrontRect& rect, const FrontStock& stock) {
    Length thinnest = stock.thickness;
    for (const FrontPoint corner : {FrontPoint{rect.left, rect.bottom},
                                    {rect.right, rect.bottom},
                                    {rect.left, rect.top},
                                    {rect.right, rect.top}})
        thinnest =
            least(thinnest, localThickness(*stock.profile, stock.front, stock.thickness, corner));
    return thinnest;
}

MortisePlan mortiseAt(const FittingMortise& cut, const FittingForm& form, FrontPoint centre,
                      const FrontStock& stock) {
    MortisePlan plan{cut, std::nullopt};
    if (cut.from == FrontFace::TopEdge) {
        plan.cut.place =
            fromShowFace(form, cut.place, stock.thickness).movedBy({centre.x, Length{}});
        plan.woodLeft = woodBesideInEdge(plan.cut.place, stock);
        return plan;
    }
    plan.cut.place = cut.place.movedBy(centre);
    plan.woodLeft = leastUnder(plan.cut.place, stock) - cut.depth;
    return plan;
}

/// Depth of what is let in at a point of show face or back.
Length letIn(const std::vector<MortisePlan>& mortises, FrontPoint at) {
    Length depth;
    for (const MortisePlan& mortise : mortises)
        if (mortise.cut.from != FrontFace::TopEdge && mortise.cut.place.contains(at))
            depth = greatest(depth, mortise.cut.depth);
    return depth;
}

FittingScrew screwAt(const FittingPlan& plan, FrontPoint offset, const FrontStock& stock) {
    FittingScrew screw;
    if (plan.form->bearsOn == FrontFace::TopEdge) {
        screw.at = {plan.centre.x + offset.x, offset.y};
        screw.wood = stock.front.height();
        return screw;
    }
    screw.at = plan.centre + offset;
    const FrontDisc shank{screw.at, plan.screw->shankDiameter.half()};
    screw.wood = leastThickness(*stock.profile, stock.front, stock.thickness, shank) -
                 letIn(plan.mortises, screw.at);
    return screw;
}

/// Into an edge no screw need be longer than twice the least penetration: nothing stops it there.
Length longestUseful(const FittingPlan& plan, const Limits& limits) {
    Length wood = plan.screws.front().wood;
    for (const FittingScrew& screw : plan.screws)
        wood = least(wood, screw.wood);
    const Length behind = wood - limits.leastTipCover;
    return plan.form->bearsOn == FrontFace::TopEdge
               ? least(behind, 2 * limits.leastPenetration.length)
               : behind;
}

void chooseScrews(FittingPlan& plan, const FittingSpec& spec, const Limits& limits,
                  const FrontStock& stock) {
    if (!plan.screw)
        return;
    for (const FrontPoint offset : plan.form->screws)
        plan.screws.push_back(screwAt(plan, offset, stock));
    if (plan.screws.empty())
        return;
    plan.leastLength = plan.form->plate + limits.leastPenetration;
    plan.greatestLength = plan.form->plate + longestUseful(plan, limits);
    plan.screwLength = spec.screwLength ? std::optional<Length>(*spec.screwLength)
                                        : longestStocked(plan.screw->lengths,
                                                         {plan.leastLength, plan.greatestLength});
    for (FittingScrew& screw : plan.screws) {
        screw.penetration = plan.screwLength ? *plan.screwLength - plan.form->plate : Length{};
        screw.tipCover = screw.wood - screw.penetration;
    }
}

FittingPlan fittingAt(const FittingForm& form, const WoodScrew* screw, const FittingSpec& spec,
                      FrontPoint centre, const Limits& limits, const FrontStock& stock) {
    FittingPlan plan;
    plan.form = &form;
    plan.screw = screw;
    plan.centre = centre;
    plan.footprint = footprintOf(form, centre, stock.front);
    for (FittingBore bore : form.bores) {
        bore.at = centre + bore.at;
        plan.bores.push_back(bore);
    }
    for (const FittingMortise& cut : form.mortises)
        plan.mortises.push_back(mortiseAt(cut, form, centre, stock));
    chooseScrews(plan, spec, limits, stock);
    return plan;
}

Error notInCatalogue(Phrase what) {
    return {std::string("hardware.fittings"), std::move(what),
            text("choose one of the catalogue's or add your own")};
}

Length heightOf(const FittingSpec& spec, const FittingForm& form, const FrontRect& front) {
    if (form.belowTop)
        return front.top - *form.belowTop;
    switch (spec.upright) {
    case FittingUpright::Middle:
        break;
    case FittingUpright::FromTop:
        return front.top - spec.fromEdge;
    case FittingUpright::FromBottom:
        return front.bottom + spec.fromEdge;
    }
    return front.upright().middle();
}

} // namespace

const FittingScrew* FittingPlan::worstScrew() const {
    const auto worst = std::ranges::min_element(screws, {}, &FittingScrew::tipCover);
    return worst == screws.end() ? nullptr : &*worst;
}

std::optional<Length> FittingPlan::leastWoodLeft() const {
    std::optional<Length> result;
    for (const MortisePlan& mortise : mortises)
        if (mortise.woodLeft)
            result = result ? least(*result, *mortise.woodLeft) : *mortise.woodLeft;
    return result;
}

std::vector<FrontPoint> fittingCentres(const FittingSpec& spec, const FittingForm& form,
                                       FrontRect front) {
    const Length y = heightOf(spec, form, front);
    const FrontPoint left{front.left + spec.fromSide, y}, right{front.right - spec.fromSide, y};
    switch (spec.across) {
    case FittingAcross::Middle:
        break;
    case FittingAcross::FromLeft:
        return {left};
    case FittingAcross::FromRight:
        return {right};
    case FittingAcross::BothSides:
        return {left, right};
    }
    return {{front.across().middle(), y}};
}

Result<std::vector<FittingPlan>> planFittings(const HardwareSpec& spec, const Catalogue& catalogue,
                                              const Limits& limits, const FrontStock& stock) {
    std::vector<FittingPlan> plans;
    for (std::uint32_t i = 0; i < spec.fittings.size(); ++i) {
        const FittingSpec& wanted = spec.fittings[i];
        const FittingForm* form = catalogue.fittingForm(wanted.form);
        if (!form)
            return notInCatalogue(
                phrase("there is no fitting \"%1\" in the catalogue", wanted.form));
        const WoodScrew* screw = form->screw.empty() ? nullptr : catalogue.woodScrew(form->screw);
        if (!screw && !form->screw.empty())
            return notInCatalogue(
                phrase("there is no wood screw \"%1\" in the catalogue", form->screw));
        for (const FrontPoint centre : fittingCentres(wanted, *form, stock.front)) {
            plans.push_back(fittingAt(*form, screw, wanted, centre, limits, stock));
            plans.back().spec = i;
        }
    }
    return plans;
}

std::vector<FittingCut> cutsOf(const std::vector<FittingPlan>& fittings) {
    std::vector<FittingCut> cuts;
    for (std::uint32_t i = 0; i < fittings.size(); ++i) {
        const FittingPlan& fitting = fittings[i];
        if (fitting.form->bearsOn != FrontFace::TopEdge)
            for (const FittingScrew& screw : fitting.screws)
                cuts.push_back({i, FootprintShape::Round,
                                rectRound(screw.at, fitting.screw->shankDiameter,
                                          fitting.screw->shankDiameter)});
        for (const FittingBore& bore : fitting.bores)
            if (bore.from != FrontFace::TopEdge)
                cuts.push_back(
                    {i, FootprintShape::Round, rectRound(bore.at, bore.diameter, bore.diameter)});
        for (const MortisePlan& mortise : fitting.mortises)
            if (mortise.cut.from != FrontFace::TopEdge)
                cuts.push_back({i, FootprintShape::Rectangle, mortise.cut.place});
    }
    return cuts;
}

std::optional<HoleSpacing> holeSpacing(const HardwareForm& form) {
    if (form.holes.size() < 2)
        return std::nullopt;
    const FrontPoint& first = form.holes.front();
    const FrontPoint& last = form.holes.back();
    HoleSpacing spacing;
    spacing.distance = first.y == last.y
                           ? (last.x - first.x).magnitude()
                           : Length::nearestToMillimetres((toMm(last) - toMm(first)).norm());
    const std::int64_t nanometres = spacing.distance.nanometres();
    if (nanometres % (4 * Length::nanometresPer64th) == 0)
        return spacing;
    spacing.unit = Unit::Millimetre;
    spacing.isPattern = nanometres % Length::millimetres(1).nanometres() == 0;
    return spacing;
}

bool isMistakable(Length spacing, Length other) {
    const Length apart = (spacing - other).magnitude();
    return !apart.isZero() && apart <= Length::millimetres(2);
}

Length usualFromSide(Length frontWidth, Unit unit) {
    const bool isInch = unit == Unit::Inch;
    const Length narrow = isInch ? Length::inches(16) : Length::millimetres(400);
    if (frontWidth < narrow)
        return isInch ? Length::inches(2) : Length::millimetres(50);
    return isInch ? Length::inches(4) : Length::millimetres(100);
}

Length usualFromEdge(Unit unit) {
    return unit == Unit::Inch ? Length::inches(1, 32) : Length::millimetres(40);
}

} // namespace frontwright
