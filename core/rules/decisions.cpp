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
    Text rule;
    Text where;
};
constexpr std::array<LimitWords, 13> limitWords{{
    {"limits.leastPenetration", text("Least penetration of a screw in the front"),
     text("which screw lengths fit; whether a screw reaches far enough")},
    {"limits.leastTipCover", text("Least wood between a screw's tip and the show face"),
     text("which screw lengths fit; whether enough wood is left before the tip")},
    {"limits.screwMargin", text("Margin between a screw's head and the bottom or the wall's edge"),
     text("least hole height; screw holes at the bottom and at the wall's upper edge")},
    {"limits.leastWallUnderHead", text("Least wall under a screw's head"),
     text("whether the wall under a screw's head holds")},
    {"limits.leastWoodUnderHead", text("Least wood under a bolt's head"),
     text("counterbores and how deep they may be")},
    {"limits.headAllowance", text("Room round a bolt's head"),
     text("counterbore and access hole diameters")},
    {"limits.leastGap", text("Least gap between fronts"), text("gaps between fronts")},
    {"limits.leastOpening", text("Smallest useful opening"), text("divisions, dragging")},
    {"limits.holeToHole", text("Wood between two holes"),
     text("where screws may go; holes that crowd each other")},
    {"limits.unevenGaps", text("Difference between gaps of one bank that still look alike"),
     text("gaps down a bank, when cut and over the season")},
    {"limits.leastHeadBearing", text("Least wood under a screw's head, all round its hole"),
     text("screw heads over their clearance holes")},
    {"limits.fillerShadow", text("How far a filler strip lies back behind the edges of its fronts"),
     text("thickness of filler strips")},
    {"limits.fillerBend", text("Greatest bend of a filler strip under a hand's push"),
     text("least thickness of filler strips")},
}};

struct DefaultWords {
    std::string_view id;
    Text rule;
};
constexpr std::array<DefaultWords, 28> defaultWords{{
    {"case.width", text("Case: width")},
    {"case.height", text("Case: height")},
    {"case.depth", text("Case: depth")},
    {"case.construction", text("Case: construction")},
    {"case.frame.all", text("Case: frame: all")},
    {"case.frameThickness", text("Case: frame thickness")},
    {"case.grid", text("Case: grid")},
    {"fronts.fit.all", text("Fronts: fit: all")},
    {"fronts.thickness", text("Fronts: thickness")},
    {"fronts.species", text("Fronts: species")},
    {"fronts.profile.family", text("Fronts: profile: family")},
    {"fronts.profile.width", text("Fronts: profile: width")},
    {"fronts.profile.depth", text("Fronts: profile: depth")},
    {"fronts.box.runner", text("Fronts: box: runner")},
    {"fronts.box.sideClearance", text("Fronts: box: side clearance")},
    {"fronts.box.depth", text("Fronts: box: depth")},
    {"fronts.box.wallThickness", text("Fronts: box: wall thickness")},
    {"fronts.box.sideThickness", text("Fronts: box: side thickness")},
    {"fronts.box.grooveHeight", text("Fronts: box: groove height")},
    {"fronts.box.bottomThickness", text("Fronts: box: bottom thickness")},
    {"fronts.mounting.screw", text("Fronts: mounting: screw")},
    {"fronts.mounting.recess", text("Fronts: mounting: recess")},
    {"fronts.mounting.toolDiameter", text("Fronts: mounting: tool diameter")},
    {"fronts.mounting.pattern", text("Fronts: mounting: pattern")},
    {"fronts.hardware.form", text("Fronts: hardware: form")},
    {"fronts.hardware.placing", text("Fronts: hardware: placing")},
    {"fronts.hardware.twoPast", text("Fronts: hardware: two past")},
    {"fronts.hardware.way", text("Fronts: hardware: way")},
}};

/// Choices as a document writes them.
constexpr std::array<Text, 12> choices{
    {text("face-frame"), text("cherry"), text("eased"), text("side-mounted"),
     text("side-mounted-mm"), text("wood-screw-8"), text("wood-screw-4mm"), text("four-corners"),
     text("knob-32"), text("knob-32-m4"), text("centred-on-front"), text("through-wall")}};

/// A document's value as it is told.
Phrase valueWords(const std::string& value, DecimalMark mark) {
    constexpr std::string_view overlay = "overlay ";
    if (value.starts_with(overlay))
        return phrase("overlay %1", withMark(value.substr(overlay.size()), mark));
    for (const Text choice : choices)
        if (choice == value)
            return choice;
    return withMark(value, mark);
}

RuleRow rowOf(const std::string& path, Phrase value) {
    const Source source = commonPractice();
    for (const LimitWords& limit : limitWords)
        if (limit.id == path)
            return {RuleKind::Limit, path, limit.rule, std::move(value), limit.where, source};
    const bool isLimit = path.starts_with("limits.");
    Phrase rule = path;
    for (const DefaultWords& one : defaultWords)
        if (one.id == path)
            rule = one.rule;
    return {
        isLimit ? RuleKind::Limit : RuleKind::Default,   path,  std::move(rule), std::move(value),
        isLimit ? text("findings") : text("a new case"), source};
}

bool isRule(const std::string& path) {
    return path.starts_with("case.") || path.starts_with("fronts.") || path.starts_with("limits.");
}

} // namespace

void addDecisions(std::vector<RuleRow>& rows, DecimalMark mark) {
    const Leaves inches = decisionsIn(Unit::Inch), millimetres = decisionsIn(Unit::Millimetre);
    std::map<std::string, std::string> other(millimetres.begin(), millimetres.end());
    // Documents leave it out where it is as ever, so that older ones stay as they are.
    const LengthStyle style{Unit::Inch, 64, mark};
    for (const auto& [path, limit] :
         {std::pair{"limits.unevenGaps", Limits{}.unevenGaps},
          std::pair{"limits.leastHeadBearing", Limits{}.leastHeadBearing}})
        rows.push_back(rowOf(path, shown(limit, style)));
    rows.push_back(rowOf("limits.fillerShadow", shown(Limits{}.fillerShadow, style)));
    rows.push_back(rowOf("limits.fillerBend", shown(Limits{}.fillerBend, style)));
    for (const RuleKind kind : {RuleKind::Limit, RuleKind::Default})
        for (const auto& [path, value] : inches) {
            if (!isRule(path))
                continue;
            const std::string& metric = other[path];
            const Phrase words = valueWords(value, mark);
            RuleRow row =
                rowOf(path, metric == value || metric.empty()
                                ? words
                                : phrase("%1; in millimetres %2", words, valueWords(metric, mark)));
            if (row.kind == kind)
                rows.push_back(std::move(row));
        }
}

} // namespace frontwright
