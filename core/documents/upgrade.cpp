#include "core/documents/upgrade.h"

#include <algorithm>

namespace frontwright::documents {

std::span<const UpgradeStep> caseUpgrades() {
    return {};
}

Result<std::string> upgraded(std::string_view text, Version version, Version ours,
                             std::span<const UpgradeStep> steps) {
    std::string current(text);
    while (version < ours) {
        const auto step = std::find_if(steps.begin(), steps.end(),
                                       [&](const UpgradeStep& s) { return s.from == version; });
        if (step == steps.end())
            break;
        Result<std::string> next = step->apply(current);
        if (!next.ok())
            return next.error();
        current = std::move(next).value();
        version = step->to;
    }
    if (version.major < ours.major)
        return Error{"",
                     "the file has version " + textOf(version) + ", which leads to version " +
                         textOf(ours) + " by no known way",
                     ""};
    return current;
}

} // namespace frontwright::documents
