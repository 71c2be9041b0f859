#pragma once

#include "core/words/phrase.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace frontwright::documents {

/// A place in a text as an editor shows it: both from 1, columns in characters, not bytes.
struct LineAndColumn {
    std::size_t line = 1;
    std::size_t column = 1;
    friend bool operator==(const LineAndColumn&, const LineAndColumn&) = default;
};
LineAndColumn lineAndColumn(std::string_view text, std::size_t offset);

/// Offset of the first byte that is not part of well-formed UTF-8 (RFC 3629: no overlong forms, no
/// surrogates, nothing above U+10FFFF); nullopt where all is well.
std::optional<std::size_t> firstBadUtf8(std::string_view text);

/// The character at `offset` for a message: "\"x\"", "the end of the file", "the end
/// of the line", "a control character".
Phrase characterAt(std::string_view json, std::size_t offset);

/// No more than `most` bytes of a text, whole characters, "…" where something is left out.
std::string shortened(std::string_view text, std::size_t most);

/// Appends `text` as a JSON string with its quotes. Only what must be escaped is; what is not
/// UTF-8 becomes U+FFFD, so that the result can always be read.
void appendQuoted(std::string& to, std::string_view text);

/// JSON text without the white space between its tokens. Precondition: `json` is valid JSON.
std::string withoutWhiteSpace(std::string_view json);

/// Offset just past the JSON scalar (string, number, true, false, null) that begins at `begin`.
/// Precondition: one begins there.
std::size_t endOfScalar(std::string_view json, std::size_t begin);

} // namespace frontwright::documents
