#include "core/documents/document.h"
#include "core/documents/json_tree.h"
#include "core/lengths/format.h"
#include "core/rules/rule_parts.h"

#include <array>
#include <map>

namespace frontwright {

namespace {

using namespace documents;

/// What a new case holds, as its document says it: path → value.
using Leaves = std::vector<std::pair<std::string, std::string>>;

void collect(const JsonTree& tree, NodeIndex node, const std::string& path, Leaves& leaves) {
    const bool isObject = tree.kind(node) == JsonKind::Object;
    if (!isObject) {
        const bool isText = tree.kind(node) == JsonKind::String;
        leaves.emplace_back(path, std::string(isText ? tree.text(node) : tree.raw(node)));
        return;
    }
    for (NodeIndex i = tree.firstChild(node); i < tree.next(node); i = tree.next(i))
        collect(tree, i,
                path.empty() ? std::string(tree.name(i)) : path + "." + std::string(tree.name(i)),
                leaves);
}

Leaves decisionsIn(Unit unit) {
    Leaves leaves;
    const std::string text = writeDocument(newProject(unit));
    const Result<JsonTree> tree = JsonTree::read(text);
    if (tree.ok())
        collect(tree.value(), tree.value().root(), {}, leaves);
    return leaves;
}

struct LimitWords {
    std::string_view id;
    const char* rule;
    const char* where;
};
constexpr std::array<LimitWords, 10> limitWords{{
    {"limits.leastPenetration", "Least penetration of a screw in the front",
     "window of screw lengths; finding penetration_short"},
    {"limits.leastTipCover", "Least wood between a screw's tip and the show face",
     "window of screw lengths; finding tip_cover_thin"},
    {"limits.screwMargin", "Margin between a screw's head and the bottom or the wall's edge",
     "least hole height; findings hole_in_bottom, hole_at_top_edge"},
    {"limits.leastWallUnderHead", "Least wall under a screw's head",
     "finding wall_thin_under_head"},
    {"limits.leastWoodUnderHead", "Least wood under a bolt's head",
     "counterbores; finding counterbore_too_deep"},
    {"limits.headAllowance", "Room round a bolt's head", "counterbore and access hole diameters"},
    {"limits.leastGap", "Least gap between fronts", "finding gap_tight"},
    {"limits.leastOpening", "Smallest useful opening", "divisions, dragging"},
    {"limits.holeToHole", "Wood between two holes", "allowed region; finding hole_at_hardware"},
    {"limits.unevenGaps", "Difference between gaps of one bank that still look alike",
     "findings gaps_uneven, gaps_go_uneven"},
}};

/// "fronts.box.wallThickness" → "Fronts: box: wall thickness"
std::string inWords(std::string_view path) {
    std::string words;
    for (const char c : path) {
        if (c == '.')
            words += ": ";
        else if (c >= 'A' && c <= 'Z')
            words += std::string(" ") + static_cast<char>(c - 'A' + 'a');
        else
            words += c;
    }
    if (!words.empty() && words.front() >= 'a' && words.front() <= 'z')
        words.front() = static_cast<char>(words.front() - 'a' + 'A');
    return words;
}

RuleRow rowOf(const std::string& path, const std::string& value) {
    const Source source{SourceKind::CommonPractice, "common practice, no source"};
    for (const LimitWords& limit : limitWords)
        if (limit.id == path)
            return {RuleKind::Limit, path, limit.rule, value, limit.where, source};
    if (path.starts_with("limits."))
        return {RuleKind::Limit, path, inWords(path), value, "findings", source};
    return {RuleKind::Default, path, inWords(path), value, "a new case", source};
}

bool isRule(const std::string& path) {
    return path.starts_with("case.") || path.starts_with("fronts.") || path.starts_with("limits.");
}

} // namespace

void addDecisions(std::vector<RuleRow>& rows) {
    const Leaves inches = decisionsIn(Unit::Inch), millimetres = decisionsIn(Unit::Millimetre);
    std::map<std::string, std::string> other(millimetres.begin(), millimetres.end());
    // Documents leave it out where it is as ever, so that older ones stay as they are.
    rows.push_back(rowOf("limits.unevenGaps", shown(Limits{}.unevenGaps, {Unit::Inch, 64})));
    for (const RuleKind kind : {RuleKind::Limit, RuleKind::Default})
        for (const auto& [path, value] : inches) {
            if (!isRule(path))
                continue;
            const std::string& metric = other[path];
            RuleRow row = rowOf(path, metric == value || metric.empty()
                                          ? value
                                          : value + "; in millimetres " + metric);
            if (row.kind == kind)
                rows.push_back(std::move(row));
        }
}

} // namespace frontwright
