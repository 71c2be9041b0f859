#include "core/documents/division_forms.h"

#include "core/documents/board_forms.h"
#include "core/documents/decimal.h"
#include "core/documents/front_forms.h"

#include <algorithm>

namespace frontwright::documents {

namespace {

constexpr Whole weights{1, 1'000'000};
constexpr std::int64_t leastRatio = 10'000;         // 0.01
constexpr std::int64_t greatestRatio = 100'000'000; // 100

void readRule(Reading& object, SizeRule& rule) {
    const Place& at = object.at();
    const NodeIndex size = object.take("size");
    const NodeIndex share = object.take("share");
    const NodeIndex graduated = object.take("graduated");
    const int given = (size != noNode) + (share != noNode) + (graduated != noNode);
    if (given != 1) {
        if (!object.failed())
            at.fail(
                given == 0
                    ? text("expected one of \"size\", \"share\" and \"graduated\", found none")
                    : text("expected one of \"size\", \"share\" and \"graduated\", found more"));
        return;
    }
    if (size != noNode)
        return readValue(object.placeOf(size, nullptr), rule.emplace<FixedSize>().size);
    if (share != noNode)
        return readWhole(object.placeOf(share, nullptr), rule.emplace<Share>().weight, weights);
    rule = GraduatedPlace{};
    const Place flag = object.placeOf(graduated, nullptr);
    if (flag.kind() != JsonKind::True)
        flag.failExpecting(text("true"));
}

void readSplit(Reading& object, Split& split, NodeIndex list);

/// What an opening decides for itself. `a` is a Reading or a Writing.
void members(auto& a, Is<Opening> auto& opening) {
    a.defaulted("name", opening.name, {});
    a.defaulted("use", opening.use, OpeningUse::Drawer);
    a.defaulted("hinge", opening.hinge, HingeSide::Left);
    if (opening.use == OpeningUse::Board)
        board(a, opening.board);
    members(a, opening.choices);
}

/// What is in a region, but for its rule. Not recursive by itself: readChild leads down.
void readContent(Reading& object, Region& region) {
    ReadState& state = object.at().state;
    const NodeIndex columns = object.take("columns");
    const NodeIndex rows = object.take("rows");
    if (columns != noNode && rows != noNode)
        return object.at().fail(text("expected \"columns\" or \"rows\", found both"));
    if (columns != noNode || rows != noNode) {
        Split& split = region.content.emplace<Split>();
        split.direction = rows != noNode ? Direction::Rows : Direction::Columns;
        readSplit(object, split, rows != noNode ? rows : columns);
        return;
    }
    Opening& opening = std::get<Opening>(region.content);
    object.keepUnknownsIn(opening.unknowns);
    if (++state.openings > mostOpenings)
        return object.at().fail(phrase("more than %1 openings", std::to_string(mostOpenings)));
    opening.id = {state.nextId++};
    members(object, opening);
}

void readChild(const Place& at, Child& child) {
    if (!at.demand(JsonKind::Object))
        return;
    auto region = std::make_shared<Region>();
    Reading object(at);
    readRule(object, child.rule);
    if (!object.failed())
        readContent(object, *region);
    object.finish();
    child.region = std::move(region);
}

bool isGraduated(const Child& child) {
    return std::holds_alternative<GraduatedPlace>(child.rule);
}

/// Children and the members between them, numbered as they stand.
void readChildren(const Place& list, const Place& widths, Split& split) {
    const JsonTree& tree = list.state.tree;
    split.children.reserve(tree.childCount(list.node));
    split.members.reserve(tree.childCount(widths.node));
    NodeIndex width = tree.firstChild(widths.node);
    const NodeIndex end = tree.next(list.node);
    for (NodeIndex i = tree.firstChild(list.node); i < end && !list.state.error; i = tree.next(i)) {
        readChild({list.state, i, list.keep, nullptr}, split.children.emplace_back());
        if (tree.next(i) >= end || list.state.error)
            return;
        Member& member = split.members.emplace_back();
        member.id = {list.state.nextId++};
        readValue({list.state, width, nullptr, nullptr}, member.width);
        width = tree.next(width);
    }
}

void readSplit(Reading& object, Split& split, NodeIndex list) {
    object.keepUnknownsIn(split.unknowns);
    const Place children = object.placeOf(list, nullptr);
    const NodeIndex widthList = object.take("members");
    if (!children.demand(JsonKind::Array))
        return;
    const JsonTree& tree = children.state.tree;
    const std::uint32_t count = tree.childCount(list);
    if (count < 2)
        return children.fail(
            phrase("expected at least two parts, found %1", std::to_string(count)));
    if (widthList == noNode)
        return object.failMissing("members");
    const Place widths = object.placeOf(widthList, nullptr);
    if (!widths.demand(JsonKind::Array))
        return;
    if (tree.childCount(widthList) != count - 1)
        return widths.fail(phrase("expected %1 widths of members between %2 parts, found %3",
                                  std::to_string(count - 1), std::to_string(count),
                                  std::to_string(tree.childCount(widthList))));
    readChildren(children, widths, split);
    object.defaulted("divides", split.divides, Divides::Case);
    object.optional("graduation", split.graduation);
    object.whole("remainder", split.remainderChild, {0, count - 1});
    if (!object.failed() && !split.graduation &&
        std::any_of(split.children.begin(), split.children.end(), isGraduated))
        object.failMissing("graduation");
}

void writeRule(Writing& object, const SizeRule& rule) {
    if (const auto* fixed = std::get_if<FixedSize>(&rule))
        object.required("size", fixed->size);
    else if (const auto* share = std::get_if<Share>(&rule))
        object.required("share", share->weight);
    else
        object.begin("graduated", nullptr).out += "true";
}

void writeRegion(const Target& to, const Region& region, const SizeRule* rule);

void writeSplit(Writing& object, const Split& split) {
    const Target to = object.begin(wordOf(split.direction), nullptr);
    to.out += '[';
    for (const Child& child : split.children) {
        if (&child != &split.children.front())
            to.out += ',';
        writeRegion(to, *child.region, &child.rule);
    }
    to.out += ']';
    const Target widths = object.begin("members", nullptr);
    widths.out += '[';
    for (const Member& member : split.members) {
        if (&member != &split.members.front())
            widths.out += ',';
        writeValue(widths, member.width);
    }
    widths.out += ']';
    object.defaulted("divides", split.divides, Divides::Case);
    object.optional("graduation", split.graduation);
    object.required("remainder", static_cast<std::int64_t>(split.remainderChild));
}

void writeRegion(const Target& to, const Region& region, const SizeRule* rule) {
    const auto* opening = std::get_if<Opening>(&region.content);
    Writing object(opening != nullptr ? keptIn(to, *opening)
                                      : keptIn(to, std::get<Split>(region.content)));
    if (rule != nullptr)
        writeRule(object, *rule);
    if (opening == nullptr) {
        writeSplit(object, std::get<Split>(region.content));
    } else {
        members(object, *opening);
    }
    object.finish();
}

} // namespace

void readValue(const Place& at, RegionPtr& divisions) {
    if (!at.demand(JsonKind::Object))
        return;
    auto region = std::make_shared<Region>();
    Reading object(at);
    for (const std::string_view rule : {"size", "share", "graduated"})
        object.refuse(rule, text("no size for the divisions as a whole"));
    if (!object.failed())
        readContent(object, *region);
    object.finish();
    divisions = std::move(region);
}

void writeValue(const Target& to, const RegionPtr& divisions) {
    writeRegion(to, *divisions, nullptr);
}

void readValue(const Place& at, Graduation& graduation) {
    if (!at.demand(JsonKind::Object))
        return;
    Reading object(at);
    const NodeIndex step = object.take("step");
    const NodeIndex ratio = object.take("ratio");
    if ((step == noNode) == (ratio == noNode))
        return at.fail(step == noNode ? text("expected \"step\" or \"ratio\", found neither")
                                      : text("expected \"step\" or \"ratio\", found both"));
    if (step != noNode) {
        readLength(object.placeOf(step, nullptr), graduation.emplace<ArithmeticRun>().step,
                   Sign::Any);
    } else {
        const Place place = object.placeOf(ratio, nullptr);
        const std::optional<std::int64_t> millionths =
            place.kind() == JsonKind::Number ? millionthsFrom(at.state.tree.text(ratio))
                                             : std::nullopt;
        if (!millionths || *millionths < leastRatio || *millionths > greatestRatio)
            place.failExpecting(text("a number from 0.01 to 100 with at most six decimals"));
        graduation = GeometricRun{millionths.value_or(leastRatio)};
    }
    object.finish();
}

void writeValue(const Target& to, const Graduation& graduation) {
    Writing object(to);
    if (const auto* run = std::get_if<ArithmeticRun>(&graduation))
        object.required("step", run->step);
    else
        object.begin("ratio", nullptr).out +=
            textOfMillionths(std::get<GeometricRun>(graduation).ratioMillionths);
    object.finish();
}

} // namespace frontwright::documents
