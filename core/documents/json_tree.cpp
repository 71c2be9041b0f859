#include "core/documents/json_tree.h"

#include "core/documents/json_text.h"
#include "core/documents/tree_builder.h"

#include <algorithm>

namespace frontwright::documents {

namespace {

Error errorInText(std::string_view json, std::size_t offset, const std::string& path, Phrase what,
                  Phrase remedy = {}) {
    const LineAndColumn at = lineAndColumn(json, offset);
    std::string line = std::to_string(at.line);
    std::string column = std::to_string(at.column);
    constexpr std::size_t most = 120;
    Phrase place = path.empty() ? phrase("line %1, column %2", std::move(line), std::move(column))
                                : phrase("line %1, column %2 (%3)", std::move(line),
                                         std::move(column), shortened(path, most));
    return {std::move(place), std::move(what), std::move(remedy)};
}

std::string mebibytes(std::size_t bytes) {
    return std::to_string(bytes / (std::size_t{1024} * 1024));
}

/// What can be said of the text before it is taken apart.
std::optional<Error> refusedAtSight(std::string_view json, const JsonLimits& limits) {
    if (json.size() > limits.bytes)
        return Error{{}, phrase("the file is larger than %1 MiB", mebibytes(limits.bytes)), {}};
    if (json.starts_with("\xEF\xBB\xBF"))
        return errorInText(json, 0, {}, text("expected '{', found a byte-order mark"),
                           text("save the file as UTF-8 without a byte-order mark"));
    if (const std::optional<std::size_t> bad = firstBadUtf8(json))
        return errorInText(json, *bad, {}, text("expected UTF-8 text, found a byte that is not"),
                           text("save the file as UTF-8"));
    return std::nullopt;
}

} // namespace

Text nameOf(JsonKind kind) {
    switch (kind) {
    case JsonKind::Null:
        return text("null");
    case JsonKind::False:
    case JsonKind::True:
        return text("true or false");
    case JsonKind::Number:
        return text("a number");
    case JsonKind::String:
        return text("a text in double quotes");
    case JsonKind::Array:
        return text("a list [ ]");
    case JsonKind::Object:
        break;
    }
    return text("an object { }");
}

Result<JsonTree> JsonTree::read(std::string_view text, const JsonLimits& limits) {
    if (std::optional<Error> refused = refusedAtSight(text, limits))
        return std::move(*refused);
    JsonTree tree;
    tree.m_text = text;
    tree.m_decoded = std::make_unique_for_overwrite<char[]>(text.size() + 1);
    *std::copy(text.begin(), text.end(), tree.m_decoded.get()) = '\0';
    const std::optional<TreeFault> fault = TreeBuilder(tree, limits).build();
    if (!fault)
        return tree;
    const std::string path = tree.m_nodes.empty() ? "" : tree.pathTo(fault->within);
    return errorInText(text, fault->offset, path, fault->what, fault->remedy);
}

std::string_view JsonTree::raw(NodeIndex i) const {
    const Node& node = m_nodes[i];
    const std::size_t end = isContainer(i) ? node.end : endOfScalar(m_text, node.begin);
    return m_text.substr(node.begin, end - node.begin);
}

Phrase JsonTree::found(NodeIndex i) const {
    constexpr std::size_t most = 40;
    return isContainer(i) ? Phrase(nameOf(kind(i))) : Phrase(shortened(raw(i), most));
}

std::string JsonTree::pathTo(NodeIndex i) const {
    std::string path;
    NodeIndex at = root();
    while (at != i) {
        const bool inArray = kind(at) == JsonKind::Array;
        NodeIndex child = firstChild(at);
        std::size_t place = 0;
        for (; next(child) <= i; child = next(child))
            ++place;
        if (inArray)
            path += '[' + std::to_string(place) + ']';
        else
            (path += path.empty() ? "" : ".") += name(child);
        at = child;
    }
    return path;
}

Error JsonTree::errorAt(NodeIndex i, Phrase what, Phrase remedy) const {
    return errorInText(m_text, m_nodes[i].begin, pathTo(i), std::move(what), std::move(remedy));
}

} // namespace frontwright::documents
