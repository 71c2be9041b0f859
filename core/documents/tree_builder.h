#pragma once

#include "core/documents/json_tree.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace frontwright::documents {

/// Why a text is no tree, and where.
struct TreeFault {
    std::size_t offset = 0;
    NodeIndex within = 0; ///< the innermost value begun so far
    Phrase what;
    Phrase remedy;
};

/// Takes the parser's events and lays the nodes down. Its public functions down to `EndArray` are
/// the events, under the parser's names; false stops the parser.
class TreeBuilder {
public:
    TreeBuilder(JsonTree& tree, const JsonLimits& limits);
    /// nullopt: the tree is complete.
    std::optional<TreeFault> build();

    bool Null();
    bool Bool(bool value);
    bool Int(int) { return false; } // numbers come as RawNumber
    bool Uint(unsigned) { return false; }
    bool Int64(std::int64_t) { return false; }
    bool Uint64(std::uint64_t) { return false; }
    bool Double(double) { return false; }
    bool RawNumber(const char* number, std::uint32_t length, bool);
    bool String(const char* text, std::uint32_t length, bool);
    bool StartObject();
    bool Key(const char* text, std::uint32_t length, bool);
    bool EndObject(std::uint32_t members);
    bool StartArray();
    bool EndArray(std::uint32_t elements);

private:
    using Node = JsonTree::Node;

    Node& begin(JsonKind kind, std::size_t offset);
    bool scalar(JsonKind kind, std::size_t offset, std::uint32_t length);
    bool open(JsonKind kind);
    bool close(std::uint32_t children);
    bool fail(std::size_t offset, Phrase what, Phrase remedy = {});
    bool isTextFine(std::size_t begin, std::uint32_t length);
    NodeIndex nameTwice(NodeIndex object, std::uint32_t members) const;
    TreeFault faultWithin(TreeFault fault);
    [[nodiscard]] std::size_t offsetOf(const char* text) const;
    /// Just past what the parser has read of brackets and words.
    [[nodiscard]] std::size_t position() const;

    JsonTree& m_tree;
    const JsonLimits& m_limits;
    char* const* m_at = nullptr;   ///< where the parser reads, while build() runs
    std::vector<NodeIndex> m_open; ///< containers that are not closed yet, outermost first
    NodeIndex m_named = noNode;    ///< a node that has its name and waits for its value
    bool m_hasEscapes = false;
    std::optional<TreeFault> m_fault;
};

} // namespace frontwright::documents
