#pragma once

#include "core/findings/finding.h"
#include "core/plan/quantity.h"
#include "core/words/language.h"

#include <string>
#include <vector>

namespace frontwright {

// What a plan and its findings say, for people (text) and for other programs (JSON). JSON: keys in
// a fixed order, lengths in millimetres with six decimals at most beside the text as shown, LF,
// final newline, words in English; described in resources/schema. The same input gives the same
// bytes.

/// Every computed number with its formula and figures.
std::string planJson(const Project&, const Plan&, LengthStyle);
/// The same as tables: the case, each member, each front with its box and holes, blocks.
std::string planText(const Project&, const Plan&, LengthStyle, const Language& = {});

std::string findingsJson(const Project&, const Plan&, const std::vector<Finding>&, LengthStyle);
/// One paragraph each; one line where there are none.
std::string findingsText(const Project&, const Plan&, const std::vector<Finding>&, LengthStyle,
                         const Language& = {});

} // namespace frontwright
