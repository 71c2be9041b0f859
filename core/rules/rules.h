#pragma once

#include "core/catalogue/catalogue.h"
#include "core/words/decimal_mark.h"

#include <string>
#include <string_view>
#include <vector>

namespace frontwright {

/// What kind of thing a rule is; the page's sections, in this order.
enum class RuleKind : std::uint8_t {
    Equation, ///< equations and fixed values by which the program judges
    Number,   ///< how each number of a plan follows
    Limit,    ///< thresholds that the maker can change
    Default,  ///< what a new case begins with
    Entry     ///< what the program's catalogue says
};

/// One rule by which the program works, and where it is from.
struct RuleRow {
    RuleKind kind = RuleKind::Equation;
    std::string id; ///< "equation.screw_withdrawal_ultimate", "limits.leastGap", "bolts.bolt-m4"
    Phrase rule;    ///< in words
    Phrase value;   ///< with its unit: "3/8 in; in millimetres 10 mm"
    Phrase where;   ///< what it is used for
    Source source;
};

/// Every rule: equations and fixed values, numbers, limits, defaults, and the catalogue's rows.
/// `program` is the catalogue that comes with the program. Figures are written with that mark.
std::vector<RuleRow> allRules(const Catalogue& program, DecimalMark = DecimalMark::Point);

/// "published", "common practice, no source", "from memory", "the maker's"
Text wordsFor(SourceKind);
/// "Equations and fixed values", "Defaults of a new case", …
Text wordsFor(RuleKind);

/// All of them as a page in Markdown, in English, the same text each time.
std::string rulesPage(const Catalogue& program);

} // namespace frontwright
