#pragma once

#include "core/results/result.h"

#include <cstdint>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

namespace frontwright::documents {

/// What a text may be before any work is spent on it.
struct JsonLimits {
    std::size_t bytes = std::size_t{16} * 1024 * 1024;
    std::size_t depth = 64;
    std::size_t stringBytes = 10'000;
};

enum class JsonKind : std::uint8_t { Null, False, True, Number, String, Array, Object };

/// For messages: "a list [ ]", "a text in double quotes".
Text nameOf(JsonKind kind);

/// Index of a value in its JsonTree.
using NodeIndex = std::uint32_t;
inline constexpr NodeIndex noNode = 0xFFFFFFFFU;

/// A JSON text as a tree of values, each with its place in the text, so that an error found much
/// later still names line, column and path. All nodes lie in one row in the order of the text: a
/// container's first child is the next node, and `next` skips what a node holds. Guaranteed:
/// well-formed UTF-8 (escaped text too), within the limits, no member twice in one object, nothing
/// after the value. The text must outlive the tree.
class JsonTree {
public:
    /// The error's place is "line L, column C (case.divisions.rows[2])".
    static Result<JsonTree> read(std::string_view text, const JsonLimits& limits = {});

    [[nodiscard]] NodeIndex root() const { return 0; }
    [[nodiscard]] JsonKind kind(NodeIndex i) const { return m_nodes[i].kind; }
    /// Past the node and all it holds: the next sibling, or the container's `next`.
    [[nodiscard]] NodeIndex next(NodeIndex i) const { return m_nodes[i].next; }
    [[nodiscard]] NodeIndex firstChild(NodeIndex i) const { return i + 1; }
    [[nodiscard]] bool isContainer(NodeIndex i) const { return kind(i) >= JsonKind::Array; }
    [[nodiscard]] std::uint32_t childCount(NodeIndex i) const { return m_nodes[i].length; }
    /// The member's name without quotes, escapes resolved; empty in arrays.
    [[nodiscard]] std::string_view name(NodeIndex i) const {
        return {m_decoded.get() + m_nodes[i].nameBegin, m_nodes[i].nameLength};
    }
    /// String: its text, escapes resolved. Number: as written.
    [[nodiscard]] std::string_view text(NodeIndex i) const {
        const Node& node = m_nodes[i];
        return {m_decoded.get() + node.begin + (node.kind == JsonKind::String ? 1 : 0),
                node.length};
    }
    /// The value's own bytes, as they stand in the text.
    [[nodiscard]] std::string_view raw(NodeIndex i) const;

    /// The value for a message: "12 in" with its quotes, 12, "a list [ ]".
    [[nodiscard]] Phrase found(NodeIndex i) const;
    /// "case.divisions.rows[2]"; empty for the whole.
    [[nodiscard]] std::string pathTo(NodeIndex i) const;
    /// An error whose place is where the value begins.
    [[nodiscard]] Error errorAt(NodeIndex i, Phrase what, Phrase remedy = {}) const;

private:
    friend class TreeBuilder;
    struct Node {
        std::uint32_t begin = 0;      ///< offset of its first byte
        std::uint32_t length = 0;     ///< String, Number: bytes of text(); containers: children
        std::uint32_t nameBegin = 0;  ///< offset of the member's name, past its quote
        std::uint32_t nameLength = 0; ///< after escapes are resolved
        NodeIndex next = 0;
        std::uint32_t end = 0; ///< containers only: offset past the closing bracket
        JsonKind kind = JsonKind::Null;
    };

    std::string_view m_text;
    std::unique_ptr<char[]> m_decoded; ///< a copy, strings resolved in place, 0-terminated
    std::vector<Node> m_nodes;
};

} // namespace frontwright::documents
