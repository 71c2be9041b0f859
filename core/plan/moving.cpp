#include "core/plan/moving.h"

#include "core/holding/holding.h"
#include "core/plan/chosen.h"
#include "core/plan/screw_rows.h"
#include "core/wood/movement.h"

#include <algorithm>

namespace frontwright {

namespace {

SeasonRange rangeOf(Length a, Length b) {
    return {least(a, b), greatest(a, b)};
}

/// The fronts' overlays as they are where each has changed by the part that `change` tells.
template<class Change>
std::vector<PerSide<Length>> movedOverlays(const Project& project,
                                           const std::vector<FrontPlan>& all, Change change) {
    std::vector<PerSide<Length>> overlays;
    overlays.reserve(all.size());
    for (const FrontPlan& front : all) {
        const PerSide<Length> out =
            outward(front, chosenStock(project, front).grain, change(*front.season));
        PerSide<Length>& overlay = overlays.emplace_back(front.overlay);
        for (const Side side : allSides)
            overlay[side] += out[side];
    }
    return overlays;
}

void addMoisture(FrontSeason& season, const FrontPlan& front, const Stock& stock,
                 const WoodFigures& figures, const SeasonMoisture& moisture) {
    const std::optional<double> coefficient = coefficientOf(figures, stock);
    season.isKnown = coefficient.has_value();
    season.coefficient = coefficient.value_or(0);
    season.driest = relativeChange(season.coefficient, moisture.whenCut, moisture.driest);
    season.wettest = relativeChange(season.coefficient, moisture.whenCut, moisture.wettest);
    const bool isUpright = stock.grain == Grain::AlongLength;
    const Length width = front.rect.width(), height = front.rect.height();
    const auto across = [&](Length size) {
        return rangeOf(size + partOf(size, season.driest), size + partOf(size, season.wettest));
    };
    season.width = isUpright ? SeasonRange{width, width} : across(width);
    season.height = isUpright ? across(height) : SeasonRange{height, height};
}

/// At both ends of the season.
void addNeighbours(Plan& plan, const Arrangement& dry, const Arrangement& wet) {
    for (std::size_t i = 0; i < plan.fronts.size(); ++i) {
        FrontSeason& season = *plan.fronts[i].season;
        for (const Side side : allSides) {
            season.overlay[side] = rangeOf(dry.overlays[i][side], wet.overlays[i][side]);
            season.gap[side] = rangeOf(dry.neighbours[i][side].gap, wet.neighbours[i][side].gap);
        }
    }
}

void addReveals(Arrangement& all, const Arrangement& dry, const Arrangement& wet) {
    for (std::size_t i = 0; i < all.members.size(); ++i)
        if (all.members[i].hasFronts)
            all.members[i].season = SeasonRange{
                least(dry.members[i].reveal.least, wet.members[i].reveal.least),
                greatest(dry.members[i].reveal.greatest, wet.members[i].reveal.greatest)};
}

/// A spacer's width where its fronts have moved; the member stays.
Length moved(const Spacer& spacer, const MemberPlan& member, const Arrangement& all) {
    return widthOf(member) - all.overlays[spacer.lower][sideOfLower(member.kind)] -
           all.overlays[spacer.upper][sideOfUpper(member.kind)];
}

double changeAt(const FrontSeason& season, const SeasonMoisture& from, double moisture) {
    return relativeChange(season.coefficient, from.whenCut, moisture);
}

} // namespace

PerSide<Length> outward(const FrontPlan& front, Grain grain, double relative) {
    const Length held = front.season ? front.season->held : Length{};
    PerSide<Length> out;
    for (const Side side : allSides) {
        if (isEnd(side, grain))
            continue;
        const bool isFar = side == Side::Right || side == Side::Top;
        const Length size = isLeftOrRight(side) ? front.rect.width() : front.rect.height();
        out[side] = partOf(isFar ? size - held : held, relative);
    }
    return out;
}

Result<std::optional<SeasonMoisture>> moistureOf(const Project& project) {
    if (!project.air)
        return std::optional<SeasonMoisture>();
    if (auto error = impossible(*project.air))
        return *error;
    const Air& air = *project.air;
    return std::optional(
        SeasonMoisture{moistureOf(air.whenCut), moistureOf(air.driest), moistureOf(air.wettest)});
}

FrontSeason seasonOf(const FrontPlan& front, const Stock& stock, const WoodFigures& figures,
                     const SeasonMoisture& moisture, Unit drills) {
    FrontSeason season;
    addMoisture(season, front, stock, figures, moisture);
    addRows(season, front, stock.grain, drills);
    return season;
}

void addSeasonGaps(Plan& plan, const Project& project, Arrangement& all) {
    const auto atDriest = [](const FrontSeason& season) { return season.driest; };
    const auto atWettest = [](const FrontSeason& season) { return season.wettest; };
    const Arrangement dry = rearranged(all, movedOverlays(project, plan.fronts, atDriest));
    const Arrangement wet = rearranged(all, movedOverlays(project, plan.fronts, atWettest));
    addNeighbours(plan, dry, wet);
    addReveals(all, dry, wet);
    for (Spacer& spacer : all.spacers) {
        const MemberPlan& member = all.members[spacer.member];
        spacer.season = rangeOf(moved(spacer, member, dry), moved(spacer, member, wet));
    }
}

Plan movedPlan(const Project& project, const Plan& plan, double moisture, double times) {
    Plan changed = plan;
    auto whole = layOut(project.casework);
    if (!plan.season || !whole.ok())
        return changed;
    const Layout layout = withFrontsOnly(std::move(whole).value());
    const auto overlays = movedOverlays(project, plan.fronts, [&](const FrontSeason& season) {
        return times * changeAt(season, *plan.season, moisture);
    });
    Arrangement fits{layout, facingOpenings(layout), plan.members, {}, {}, {}, {}, {}, {}};
    for (const FrontPlan& front : plan.fronts)
        fits.fits.push_back(front.fit);
    Arrangement all = rearranged(fits, overlays);
    for (std::size_t i = 0; i < changed.fronts.size(); ++i) {
        FrontPlan& front = changed.fronts[i];
        front.rect = all.rects[i];
        front.overlay = all.overlays[i];
        front.neighbours = all.neighbours[i];
        front.field =
            field(*front.profile, FrontRect::atOrigin(front.rect.width(), front.rect.height()));
    }
    changed.members = std::move(all.members);
    changed.spacers = std::move(all.spacers);
    changed.stops = std::move(all.stops);
    return changed;
}

std::optional<Length> smallestGap(const Project& project, const Plan& plan, double moisture) {
    if (!plan.season)
        return std::nullopt;
    std::vector<PerSide<Length>> out;
    out.reserve(plan.fronts.size());
    std::optional<Length> smallest;
    const auto take = [&smallest](Length gap) {
        smallest = smallest ? least(*smallest, gap) : gap;
    };
    for (const FrontPlan& front : plan.fronts) {
        const double change = changeAt(*front.season, *plan.season, moisture);
        out.push_back(outward(front, chosenStock(project, front).grain, change));
        for (const Side side : allSides)
            if (front.fit[side] == Fit::Inset)
                take(-front.overlay[side] - out.back()[side]);
    }
    for (const Spacer& spacer : plan.spacers) {
        const MemberKind kind = plan.members[spacer.member].kind;
        take(spacer.width - out[spacer.lower][sideOfLower(kind)] -
             out[spacer.upper][sideOfUpper(kind)]);
    }
    return smallest;
}

} // namespace frontwright
