#include "core/sheets/part_templates.h"

#include <algorithm>
#include <tuple>

namespace frontwright {
namespace {

StickOpening withFront(const TemplateSource& source, std::uint32_t index) {
    const FrontPlan& front = source.plan.fronts[index];
    StickOpening opening{
        front.opening, label(source.project, front), front.openingRect, {}, front.bank, front.place,
        index};
    for (const Side side : allSides)
        opening.bounds[side] = front.neighbours[side].member;
    return opening;
}

StickOpening withoutFront(const SpacePlan& space) {
    return {space.opening, label(space), space.rect, space.bounds, space.bank, space.place, {}};
}

/// Bank by bank, each from the top.
std::vector<StickOpenings> banksOf(const TemplateSource& source) {
    const Plan& plan = source.plan;
    StickOpenings all;
    for (std::uint32_t i = 0; i < plan.fronts.size(); ++i)
        if (isCut(plan.fronts[i]))
            all.push_back(withFront(source, i));
    for (const SpacePlan& space : plan.spaces)
        all.push_back(withoutFront(space));
    std::ranges::stable_sort(all, {}, [](const StickOpening& opening) {
        return std::tuple(opening.bank, opening.place);
    });
    std::vector<StickOpenings> banks;
    for (StickOpening& opening : all) {
        if (banks.empty() || banks.back().front().bank != opening.bank)
            banks.emplace_back();
        banks.back().push_back(std::move(opening));
    }
    return banks;
}

bool hasFront(const StickOpenings& openings) {
    return std::ranges::any_of(openings, [](const StickOpening& o) { return o.front.has_value(); });
}

/// Its fronts' widths are what a bank adds to a row.
const StickOpening& shownInRow(const StickOpenings& bank) {
    const auto front =
        std::ranges::find_if(bank, [](const StickOpening& o) { return o.front.has_value(); });
    return front == bank.end() ? bank.front() : *front;
}

/// Banks that stand side by side share a stick; what lies above or below starts another.
std::vector<StickOpenings> rowsOf(const std::vector<StickOpenings>& banks) {
    std::vector<StickOpenings> rows;
    for (const StickOpenings& bank : banks) {
        const StickOpening& shown = shownInRow(bank);
        const auto row = std::ranges::find_if(rows, [&](const StickOpenings& known) {
            return known.back().rect.right <= shown.rect.left;
        });
        if (row == rows.end())
            rows.push_back({shown});
        else
            row->push_back(shown);
    }
    return rows;
}

} // namespace

std::vector<Template> storySticks(const TemplateSource& source) {
    std::vector<Template> sticks;
    const std::vector<StickOpenings> banks = banksOf(source);
    for (const StickOpenings& bank : banks)
        if (hasFront(bank))
            sticks.push_back(heightsStick(source, bank));
    for (const StickOpenings& row : rowsOf(banks))
        if (hasFront(row))
            sticks.push_back(widthsStick(source, row));
    return sticks;
}

} // namespace frontwright
