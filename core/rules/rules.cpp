#include "core/rules/rules.h"

#include "core/rules/rule_parts.h"

namespace frontwright {

namespace {

/// A cell of a Markdown table.
std::string cell(std::string_view text) {
    std::string safe;
    for (const char c : text)
        safe += c == '|' ? std::string("\\|") : std::string(1, c);
    return safe.empty() ? "—" : safe;
}

} // namespace

Text wordsFor(SourceKind kind) {
    switch (kind) {
    case SourceKind::Published:
        return text("published");
    case SourceKind::CommonPractice:
        return text("common practice, no source");
    case SourceKind::FromMemory:
        return text("from memory");
    case SourceKind::Maker:
        break;
    }
    return text("the maker's");
}

Text wordsFor(RuleKind kind) {
    switch (kind) {
    case RuleKind::Equation:
        return text("Equations and fixed values");
    case RuleKind::Number:
        return text("How each number follows");
    case RuleKind::Limit:
        return text("Limits that the maker can change");
    case RuleKind::Default:
        return text("What a new case begins with");
    case RuleKind::Entry:
        break;
    }
    return text("The program's catalogue");
}

std::vector<RuleRow> allRules(const Catalogue& program, DecimalMark mark) {
    std::vector<RuleRow> rows;
    addEquations(rows);
    addNumbers(rows, program, mark);
    addDecisions(rows, mark);
    addEntries(rows, program, mark);
    return rows;
}

std::string rulesPage(const Catalogue& program) {
    std::string page =
        "# Rules and their sources\n\n"
        "Every rule by which Frontwright works, as `frontwright rules` writes it. Published: in a "
        "named standard or handbook. Common practice: a fact of the trade for which no published "
        "source is known. From memory: a published value that was recalled and not seen again.\n";
    std::optional<RuleKind> kind;
    for (const RuleRow& row : allRules(program)) {
        if (row.kind != kind)
            page += "\n## " + std::string(wordsFor(row.kind).english) +
                    "\n\n| rule | value | used for | source | kind | id |\n"
                    "|---|---|---|---|---|---|\n";
        kind = row.kind;
        page += "| " + cell(row.rule.english()) + " | " + cell(row.value.english()) + " | " +
                cell(row.where.english()) + " | " + cell(row.source.title) + " | " +
                std::string(wordsFor(row.source.kind).english) + " | `" + row.id + "` |\n";
    }
    return page;
}

} // namespace frontwright
