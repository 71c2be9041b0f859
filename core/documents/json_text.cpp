#include "core/documents/json_text.h"

#include <algorithm>
#include <cstring>

namespace frontwright::documents {

namespace {

unsigned byteAt(std::string_view text, std::size_t i) {
    return i < text.size() ? static_cast<unsigned char>(text[i]) : 0U;
}

bool isContinuation(unsigned byte) {
    return (byte & 0xC0U) == 0x80U;
}

bool isWhiteSpace(char c) {
    return c == ' ' || c == '\n' || c == '\r' || c == '\t';
}

/// Bytes of the character that begins at `i`, 0 where none does. RFC 3629, section 4.
std::size_t characterLength(std::string_view text, std::size_t i) {
    const unsigned first = byteAt(text, i);
    const unsigned second = byteAt(text, i + 1);
    if (first < 0x80U)
        return i < text.size() ? 1 : 0;
    if (!isContinuation(second))
        return 0;
    if (first >= 0xC2U && first <= 0xDFU)
        return 2;
    if (!isContinuation(byteAt(text, i + 2)))
        return 0;
    if (first >= 0xE0U && first <= 0xEFU) {
        const bool overlong = first == 0xE0U && second < 0xA0U;
        const bool surrogate = first == 0xEDU && second >= 0xA0U;
        return overlong || surrogate ? 0 : 3;
    }
    if (!isContinuation(byteAt(text, i + 3)) || first < 0xF0U || first > 0xF4U)
        return 0;
    const bool overlong = first == 0xF0U && second < 0x90U;
    const bool tooHigh = first == 0xF4U && second >= 0x90U;
    return overlong || tooHigh ? 0 : 4;
}

/// First byte from `i` on that is not ASCII; documents are mostly ASCII, so eight at a time.
std::size_t skipAscii(std::string_view text, std::size_t i) {
    constexpr std::uint64_t highBits = 0x8080808080808080U;
    while (i + sizeof(std::uint64_t) <= text.size()) {
        std::uint64_t eight = 0;
        std::memcpy(&eight, text.data() + i, sizeof eight);
        if ((eight & highBits) != 0)
            break;
        i += sizeof eight;
    }
    while (i < text.size() && byteAt(text, i) < 0x80U)
        ++i;
    return i;
}

void appendEscape(std::string& to, char c) {
    constexpr std::string_view hex = "0123456789abcdef";
    switch (c) {
    case '"':
        to += "\\\"";
        return;
    case '\\':
        to += "\\\\";
        return;
    case '\n':
        to += "\\n";
        return;
    case '\t':
        to += "\\t";
        return;
    default:
        to += "\\u00";
        to += hex[static_cast<unsigned char>(c) >> 4U];
        to += hex[static_cast<unsigned char>(c) & 0xFU];
    }
}

} // namespace

LineAndColumn lineAndColumn(std::string_view text, std::size_t offset) {
    LineAndColumn at;
    for (const char c : text.substr(0, offset)) {
        if (c == '\n')
            at = {at.line + 1, 1};
        else if (!isContinuation(static_cast<unsigned char>(c)))
            ++at.column;
    }
    return at;
}

std::optional<std::size_t> firstBadUtf8(std::string_view text) {
    for (std::size_t i = skipAscii(text, 0); i < text.size(); i = skipAscii(text, i)) {
        const std::size_t length = characterLength(text, i);
        if (length == 0)
            return i;
        i += length;
    }
    return std::nullopt;
}

Phrase characterAt(std::string_view json, std::size_t offset) {
    if (offset >= json.size())
        return text("the end of the file");
    if (json[offset] == '\n' || json[offset] == '\r')
        return text("the end of the line");
    const std::size_t length = characterLength(json, offset);
    if (length == 0 || byteAt(json, offset) < 0x20U || byteAt(json, offset) == 0x7FU)
        return text("a control character");
    std::string quoted(1, '\'');
    quoted += json.substr(offset, length);
    quoted += '\'';
    return quoted;
}

void appendQuoted(std::string& to, std::string_view text) {
    to += '"';
    for (std::size_t i = 0; i < text.size();) {
        const std::size_t length = characterLength(text, i);
        const char c = text[i];
        if (length == 0)
            to += "\xEF\xBF\xBD"; // U+FFFD
        else if (length == 1 && (c == '"' || c == '\\' || byteAt(text, i) < 0x20U))
            appendEscape(to, c);
        else
            to += text.substr(i, length);
        i += std::max<std::size_t>(length, 1);
    }
    to += '"';
}

std::string shortened(std::string_view text, std::size_t most) {
    if (text.size() <= most)
        return std::string(text);
    std::string begin(text.substr(0, most));
    if (const auto cut = firstBadUtf8(begin)) // within a character
        begin.resize(*cut);
    return begin + "…";
}

std::size_t endOfScalar(std::string_view json, std::size_t begin) {
    std::size_t i = begin;
    if (json[i] == '"') {
        for (++i; json[i] != '"'; ++i)
            if (json[i] == '\\')
                ++i;
        return i + 1;
    }
    constexpr std::string_view ends = " \n\r\t,:]}";
    return std::min(json.find_first_of(ends, i), json.size());
}

std::string withoutWhiteSpace(std::string_view json) {
    std::string result;
    result.reserve(json.size());
    for (std::size_t i = 0; i < json.size();) {
        const std::size_t end = json[i] == '"' ? endOfScalar(json, i) : i + 1;
        if (!isWhiteSpace(json[i]))
            result += json.substr(i, end - i);
        i = end;
    }
    return result;
}

} // namespace frontwright::documents
