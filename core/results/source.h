#pragma once

#include "core/words/phrase.h"

#include <cstdint>
#include <string>

namespace frontwright {

/// How far a value can be trusted.
enum class SourceKind : std::uint8_t {
    Published,      ///< a named standard or handbook
    CommonPractice, ///< a fact of the trade without a published source
    FromMemory,     ///< a standard's value recalled, not seen again
    Maker           ///< the maker's own entry or decision
};

/// Where a value or a rule comes from: "ASME B18.6.1", "common practice, no source".
struct Source {
    SourceKind kind = SourceKind::Maker;
    std::string title;
    /// Titles of the program's own that are no names of works ("common practice, no source") are
    /// made from text().
    [[nodiscard]] Phrase words() const { return nameFromData(title); }
    friend bool operator==(const Source&, const Source&) = default;
};

/// A source whose title is the program's own text, so that Source::words() finds its translation.
Source sourceNamed(SourceKind, Text title);
/// "common practice, no source"
Source commonPractice();
/// "as the maker decided"
Source makersDecision();

} // namespace frontwright
