#include "core/plan/banks.h"

#include <algorithm>
#include <tuple>

namespace frontwright {
namespace {

/// What the order depends on, side by side in memory for the sort.
struct Key {
    Length left;
    Length right;
    Length depth; ///< the top edge, downwards
    std::uint32_t opening;
    friend auto operator<=>(const Key&, const Key&) = default;
};

/// A bank in that order, from its top.
struct Run {
    std::size_t first;
    std::size_t last; ///< one past the end
};

std::vector<Key> inBankOrder(const Layout& layout) {
    std::vector<Key> order(layout.openings.size());
    for (std::uint32_t i = 0; i < order.size(); ++i) {
        const CaseRect& opening = layout.openings[i].rect;
        order[i] = {opening.left, opening.right, -opening.top, i};
    }
    if (!std::is_sorted(order.begin(), order.end())) // columns of plain rows are
        std::sort(order.begin(), order.end());
    return order;
}

std::vector<Run> runsOf(const std::vector<Key>& order) {
    std::vector<Run> runs;
    for (std::size_t i = 0; i < order.size(); ++i)
        if (i > 0 && order[i - 1].left == order[i].left && order[i - 1].right == order[i].right)
            runs.back().last = i + 1;
        else
            runs.push_back({i, i + 1});
    const auto key = [&](const Run& run) {
        const Key& top = order[run.first];
        return std::tuple(top.left, top.depth, top.right);
    };
    std::sort(runs.begin(), runs.end(),
              [&](const Run& a, const Run& b) { return key(a) < key(b); });
    return runs;
}

} // namespace

std::vector<BankPlace> banksOf(const Layout& layout) {
    const auto order = inBankOrder(layout);
    std::vector<BankPlace> result(order.size());
    std::uint32_t bank = 0;
    for (const Run& run : runsOf(order)) {
        for (std::size_t i = run.first; i < run.last; ++i)
            result[order[i].opening] = {bank, static_cast<std::uint32_t>(i - run.first)};
        ++bank;
    }
    return result;
}

std::string bankLetters(std::uint32_t bank) {
    std::string letters;
    for (std::uint64_t rest = std::uint64_t{bank} + 1; rest > 0; rest = (rest - 1) / 26)
        letters.insert(letters.begin(), static_cast<char>('A' + (rest - 1) % 26));
    return letters;
}

std::string label(const Project&, const FrontPlan& front) {
    if (front.name && !front.name->empty())
        return *front.name;
    return bankLetters(front.bank) + std::to_string(front.place + 1);
}

std::string label(const SpacePlan& space) {
    if (space.name && !space.name->empty())
        return *space.name;
    return bankLetters(space.bank) + std::to_string(space.place + 1);
}

} // namespace frontwright
