#include "core/sheets/part_templates.h"

#include "core/catalogue/drills.h"
#include "core/lengths/format.h"
#include "core/plan/own_part.h"
#include "core/sheets/text_lines.h"

#include <algorithm>
#include <functional>
#include <numeric>

namespace frontwright {

namespace {

constexpr const char* diameterSign = "\u00d8";

/// Bank by bank from the left, each from the top, as one reads an elevation.
Alike inReadingOrder(const Plan& plan) {
    Alike order(plan.fronts.size());
    std::iota(order.begin(), order.end(), 0U);
    std::stable_sort(order.begin(), order.end(), [&](std::uint32_t a, std::uint32_t b) {
        const FrontPlan& p = plan.fronts[a];
        const FrontPlan& q = plan.fronts[b];
        return p.bank != q.bank ? p.bank < q.bank : p.place < q.place;
    });
    return order;
}

/// Nothing is marked on a door.
bool isDrilled(const FrontPlan& front) {
    return isCut(front) && front.use != OpeningUse::Door;
}
/// A wall that several fronts share is told at the first; of a fixed front what is bored through
/// the frame.
bool hasWall(const FrontPlan& front) {
    if (!front.hasBox())
        return !front.mounting.holes.empty();
    return isFirstOnBox(front) && front.box.width > Length{} && front.box.height > Length{};
}

using Alikeness = std::function<bool(const FrontPlan&, const FrontPlan&)>;

std::vector<Alike> grouped(const Plan& plan, const Alike& order,
                           const std::function<bool(const FrontPlan&)>& exists,
                           const Alikeness& areAlike) {
    std::vector<Alike> groups;
    for (std::uint32_t index : order) {
        const FrontPlan& front = plan.fronts[index];
        if (!exists(front))
            continue;
        const auto group = std::find_if(groups.begin(), groups.end(), [&](const Alike& known) {
            return areAlike(plan.fronts[known.front()], front);
        });
        if (group == groups.end())
            groups.push_back({index});
        else
            group->push_back(index);
    }
    return groups;
}

} // namespace

std::vector<OpeningId> openingsOf(const Plan& plan, const Alike& alike) {
    std::vector<OpeningId> ids;
    for (std::uint32_t index : alike)
        ids.push_back(plan.fronts[index].opening);
    return ids;
}

Phrase servesWhat(const TemplateSource& source, const Alike& alike) {
    std::vector<std::string> names;
    for (std::uint32_t index : alike)
        names.push_back(label(source.project, source.plan.fronts[index]));
    const Phrase which = listed(names, 12);
    return alike.size() == 1 ? phrase("Serves one front, %1", which)
                             : phrase("Serves %1 fronts, %2", std::to_string(alike.size()), which);
}

std::string drill(const TemplateSource& source, Length diameter) {
    constexpr std::int64_t tenth = Length::nanometresPerMillimetre / 10;
    const std::int64_t nm = diameter.nanometres();
    const bool isInches = source.style.unit == Unit::Inch;
    const bool isFraction = nm % Length::nanometresPer64th == 0;
    // A drill is chosen to a tenth of a millimetre; the hole on paper has its true size.
    if (!isInches)
        return std::string(diameterSign) + shown(diameter, source.style);
    if (!isFraction && nm % tenth == 0)
        return std::string(diameterSign) +
               shown(diameter, {Unit::Millimetre, 64, source.style.mark});
    const std::optional<int> number = isFraction ? std::nullopt : numberDrill(diameter);
    const std::string size = std::string(diameterSign) + shownInFull(diameter, source.style);
    return number ? size + " (No. " + std::to_string(*number) + ")" : size;
}

std::vector<Template> templates(const Project& project, const Plan& plan, LengthStyle style,
                                const Language& language) {
    const TemplateSource source{project, plan, style, language};
    const Alike order = inReadingOrder(plan);
    std::vector<Template> result;
    for (const Alike& alike : grouped(plan, order, isDrilled, haveSameFront))
        result.push_back(frontTemplate(source, alike));
    for (const Alike& alike : grouped(plan, order, hasWall, haveSameWall))
        result.push_back(wallTemplate(source, alike));
    for (const auto& sticks : {storySticks(source), rowSticks(source)})
        result.insert(result.end(), sticks.begin(), sticks.end());
    addKeeperTemplates(source, result);
    return result;
}

} // namespace frontwright
