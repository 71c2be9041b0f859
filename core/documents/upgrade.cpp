#include "core/documents/upgrade.h"

#include <algorithm>

namespace frontwright::documents {

std::span<const UpgradeStep> caseUpgrades() {
    return {};
}

Result<std::string> upgraded(std::string_view json, Version version, Version ours,
                             std::span<const UpgradeStep> steps) {
    std::string current(json);
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
        return Error{{},
                     phrase("the file has version %1, which leads to version %2 by no known way",
                            textOf(version), textOf(ours)),
                     {}};
    return current;
}

} // namespace frontwright::documents
