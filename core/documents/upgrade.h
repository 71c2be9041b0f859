#pragma once

#include "core/documents/header.h"

#include <span>
#include <string>
#include <string_view>

namespace frontwright::documents {

/// One step from a version to the next: the older document's text in, the newer one's out.
struct UpgradeStep {
    Version from;
    Version to;
    Result<std::string> (*apply)(std::string_view text);
};

/// The steps between the versions of case documents there have been. None yet: 1.0 is the first.
std::span<const UpgradeStep> caseUpgrades();

/// Takes a document of an older version to `ours`, step by step, in memory. A minor version without
/// a step of its own needs none: what it added has a value where it is missing. Error: there is no
/// way from that version, or a step failed.
Result<std::string> upgraded(std::string_view json, Version version, Version ours,
                             std::span<const UpgradeStep> steps);

} // namespace frontwright::documents
