#include "core/documents/tree_builder.h"

#include "core/documents/json_text.h"

#include <rapidjson/reader.h>

#include <algorithm>
#include <charconv>

namespace frontwright::documents {

namespace {

constexpr unsigned parseFlags = rapidjson::kParseInsituFlag | rapidjson::kParseStopWhenDoneFlag |
                                rapidjson::kParseNumbersAsStringsFlag;

constexpr Text outOfRange = text("the number is out of range");
constexpr Text loneSurrogate =
    text("expected both halves of a character, found a lone surrogate escape");

/// What the grammar would have had there; empty where something found is the trouble.
Phrase expectedInstead(rapidjson::ParseErrorCode code) {
    switch (code) {
    case rapidjson::kParseErrorDocumentEmpty:
    case rapidjson::kParseErrorValueInvalid:
        return text("a value");
    case rapidjson::kParseErrorObjectMissName:
        return text("a member's name in double quotes");
    case rapidjson::kParseErrorObjectMissColon:
        return text("':' after the member's name");
    case rapidjson::kParseErrorObjectMissCommaOrCurlyBracket:
        return text("',' or '}'");
    case rapidjson::kParseErrorArrayMissCommaOrSquareBracket:
        return text("',' or ']'");
    case rapidjson::kParseErrorStringMissQuotationMark:
        return text("the closing '\"' of a text");
    case rapidjson::kParseErrorNumberMissFraction:
        return text("a digit after the decimal point");
    case rapidjson::kParseErrorNumberMissExponent:
        return text("a digit after the exponent's 'e'");
    default:
        return {};
    }
}

TreeFault faultOf(rapidjson::ParseErrorCode code, std::size_t offset, std::string_view json) {
    TreeFault fault{offset, 0, {}, {}};
    const Phrase expected = expectedInstead(code);
    if (!expected.empty()) {
        fault.what = phrase("expected %1, found %2", expected, characterAt(json, offset));
        return fault;
    }
    switch (code) {
    case rapidjson::kParseErrorNumberTooBig:
        fault.what = outOfRange;
        break;
    case rapidjson::kParseErrorStringUnicodeSurrogateInvalid:
        fault.what = loneSurrogate;
        break;
    case rapidjson::kParseErrorStringUnicodeEscapeInvalidHex:
        fault.what = text("expected four hexadecimal digits after \\u");
        break;
    default:
        if (offset < json.size() && json[offset] == '\\')
            fault.what = text("unknown escape in a text");
        else
            fault.what = text("expected plain text, found a control character");
    }
    return fault;
}

bool isInRange(std::string_view number) {
    constexpr std::size_t surelyShort = 15;
    if (number.size() <= surelyShort && number.find_first_of("eE") == std::string_view::npos)
        return true;
    double value = 0;
    const auto [end, error] = std::from_chars(number.data(), number.data() + number.size(), value);
    return error == std::errc();
}

} // namespace

TreeBuilder::TreeBuilder(JsonTree& tree, const JsonLimits& limits)
    : m_tree(tree),
      m_limits(limits),
      m_hasEscapes(tree.m_text.find('\\') != std::string_view::npos) {
    m_tree.m_nodes.reserve(m_tree.m_text.size() / 16 + 16);
}

std::optional<TreeFault> TreeBuilder::build() {
    rapidjson::InsituStringStream stream(m_tree.m_decoded.get());
    m_at = &stream.src_;
    rapidjson::Reader reader;
    const rapidjson::ParseResult outcome = reader.Parse<parseFlags>(stream, *this);
    if (m_fault)
        return faultWithin(std::move(*m_fault));
    if (outcome.IsError())
        return faultWithin(faultOf(outcome.Code(), outcome.Offset(), m_tree.m_text));
    rapidjson::SkipWhitespace(stream);
    if (stream.Tell() != m_tree.m_text.size())
        return TreeFault{stream.Tell(),
                         0,
                         phrase("expected the end of the file, found %1",
                                characterAt(m_tree.m_text, stream.Tell())),
                         {}};
    return std::nullopt;
}

TreeFault TreeBuilder::faultWithin(TreeFault fault) {
    if (m_tree.m_nodes.empty())
        return fault;
    const auto end = static_cast<NodeIndex>(m_tree.m_nodes.size());
    for (const NodeIndex container : m_open)
        m_tree.m_nodes[container].next = end;
    if (m_named != noNode)
        m_tree.m_nodes[m_named].next = end;
    fault.within = m_named != noNode ? m_named : m_open.empty() ? 0 : m_open.back();
    return fault;
}

bool TreeBuilder::fail(std::size_t offset, Phrase what, Phrase remedy) {
    m_fault = TreeFault{offset, 0, std::move(what), std::move(remedy)};
    return false;
}

std::size_t TreeBuilder::offsetOf(const char* text) const {
    return static_cast<std::size_t>(text - m_tree.m_decoded.get());
}

std::size_t TreeBuilder::position() const {
    return offsetOf(*m_at);
}

TreeBuilder::Node& TreeBuilder::begin(JsonKind kind, std::size_t offset) {
    if (m_named == noNode)
        m_tree.m_nodes.emplace_back();
    Node& node = m_tree.m_nodes.back(); // the named one, where there is one, came last
    m_named = noNode;
    node.kind = kind;
    node.begin = static_cast<std::uint32_t>(offset);
    node.next = static_cast<NodeIndex>(m_tree.m_nodes.size());
    return node;
}

bool TreeBuilder::scalar(JsonKind kind, std::size_t offset, std::uint32_t length) {
    begin(kind, offset).length = length;
    return true;
}

bool TreeBuilder::Null() {
    return scalar(JsonKind::Null, position() - 4, 0);
}

bool TreeBuilder::Bool(bool value) {
    return value ? scalar(JsonKind::True, position() - 4, 0)
                 : scalar(JsonKind::False, position() - 5, 0);
}

bool TreeBuilder::RawNumber(const char* number, std::uint32_t length, bool) {
    if (!isInRange({number, length}))
        return fail(offsetOf(number), outOfRange);
    return scalar(JsonKind::Number, offsetOf(number), length);
}

bool TreeBuilder::isTextFine(std::size_t begin, std::uint32_t length) {
    if (length > m_limits.stringBytes)
        return fail(begin - 1, phrase("the text is longer than %1 bytes",
                                      std::to_string(m_limits.stringBytes)));
    // The whole file is UTF-8; only an escape can have made something else.
    if (m_hasEscapes && firstBadUtf8({m_tree.m_decoded.get() + begin, length}))
        return fail(begin - 1, loneSurrogate);
    return true;
}

bool TreeBuilder::String(const char* text, std::uint32_t length, bool) {
    return isTextFine(offsetOf(text), length) &&
           scalar(JsonKind::String, offsetOf(text) - 1, length);
}

bool TreeBuilder::Key(const char* text, std::uint32_t length, bool) {
    if (!isTextFine(offsetOf(text), length))
        return false;
    m_named = static_cast<NodeIndex>(m_tree.m_nodes.size());
    Node& node = m_tree.m_nodes.emplace_back();
    node.nameBegin = static_cast<std::uint32_t>(offsetOf(text));
    node.nameLength = length;
    return true;
}

bool TreeBuilder::open(JsonKind kind) {
    if (m_open.size() == m_limits.depth)
        return fail(position() - 1, phrase("lists and objects lie more than %1 deep",
                                           std::to_string(m_limits.depth)));
    begin(kind, position() - 1);
    m_open.push_back(static_cast<NodeIndex>(m_tree.m_nodes.size() - 1));
    return true;
}

bool TreeBuilder::close(std::uint32_t children) {
    Node& node = m_tree.m_nodes[m_open.back()];
    node.length = children;
    node.end = static_cast<std::uint32_t>(position());
    node.next = static_cast<NodeIndex>(m_tree.m_nodes.size());
    m_open.pop_back();
    return true;
}

bool TreeBuilder::StartObject() {
    return open(JsonKind::Object);
}

bool TreeBuilder::StartArray() {
    return open(JsonKind::Array);
}

bool TreeBuilder::EndArray(std::uint32_t elements) {
    return close(elements);
}

bool TreeBuilder::EndObject(std::uint32_t members) {
    const NodeIndex object = m_open.back();
    m_tree.m_nodes[object].next = static_cast<NodeIndex>(m_tree.m_nodes.size());
    if (const NodeIndex twice = nameTwice(object, members); twice != noNode)
        return fail(m_tree.m_nodes[twice].nameBegin - 1,
                    phrase("the member \"%1\" stands twice", std::string(m_tree.name(twice))),
                    text("take one of them out"));
    return close(members);
}

NodeIndex TreeBuilder::nameTwice(NodeIndex object, std::uint32_t members) const {
    constexpr std::uint32_t few = 24; // up to here comparing each with each is quickest
    const NodeIndex end = m_tree.next(object);
    if (members <= few) {
        for (NodeIndex i = m_tree.firstChild(object); i < end; i = m_tree.next(i))
            for (NodeIndex j = m_tree.firstChild(object); j < i; j = m_tree.next(j))
                if (m_tree.name(i) == m_tree.name(j))
                    return i;
        return noNode;
    }
    std::vector<NodeIndex> sorted;
    sorted.reserve(members);
    for (NodeIndex i = m_tree.firstChild(object); i < end; i = m_tree.next(i))
        sorted.push_back(i);
    std::sort(sorted.begin(), sorted.end(), [this](NodeIndex a, NodeIndex b) {
        const auto order = m_tree.name(a) <=> m_tree.name(b);
        return order != 0 ? order < 0 : a < b;
    });
    const auto twice =
        std::adjacent_find(sorted.begin(), sorted.end(), [this](NodeIndex a, NodeIndex b) {
            return m_tree.name(a) == m_tree.name(b);
        });
    return twice == sorted.end() ? noNode : *std::next(twice);
}

} // namespace frontwright::documents
