#pragma once

#include <array>
#include <concepts>
#include <iosfwd>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace frontwright {

/// An English text of the program's own, with places %1 to %9 for what is filled in. Made by
/// text(), which is how the texts to be translated are found.
struct Text {
    std::string_view english;
    friend constexpr bool operator==(Text a, Text b) { return a.english == b.english; }
    friend constexpr bool operator==(Text a, std::string_view b) { return a.english == b; }
};
std::ostream& operator<<(std::ostream&, Text);

constexpr bool isPlace(std::string_view pattern, std::size_t at) {
    return pattern[at] == '%' && at + 1 < pattern.size() && pattern[at + 1] >= '1' &&
           pattern[at + 1] <= '9';
}

/// The highest place of a pattern; −1 where one before it is missing.
constexpr int placesOf(std::string_view pattern) {
    std::array<bool, 10> has{};
    int highest = 0;
    for (std::size_t i = 0; i < pattern.size(); ++i)
        if (isPlace(pattern, i)) {
            const int place = pattern[i + 1] - '0';
            has[static_cast<std::size_t>(place)] = true;
            highest = place > highest ? place : highest;
        }
    for (int place = 1; place <= highest; ++place)
        if (!has[static_cast<std::size_t>(place)])
            return -1;
    return highest;
}

/// Marks a text of the program's own that is told later: in tables, for names of kinds.
constexpr Text text(std::string_view english) {
    return {english};
}

/// What the maker is told, not yet in any language: a text of the program's own and the phrases in
/// its places, or something that is alike in every language (a figure with its unit, a name that
/// the maker gave). Core makes phrases; told() puts them into words at the edge.
class Phrase {
public:
    Phrase() = default;
    /// Alike in every language.
    Phrase(std::string asIs) : m_asIs(std::move(asIs)) {}
    /// A literal is the program's own and wants telling: see text() and phrase().
    Phrase(const char*) = delete;
    /// No places.
    Phrase(Text text) : m_pattern(text.english) {}
    /// Precondition: as many parts as places, nine at most.
    Phrase(Text pattern, std::vector<Phrase> parts);

    [[nodiscard]] bool empty() const { return m_pattern.empty() && m_asIs.empty(); }
    /// In the program's own words; what tests and files for other programs read.
    [[nodiscard]] std::string english() const;

    /// By the English words.
    friend bool operator==(const Phrase& a, const Phrase& b) { return a.english() == b.english(); }
    friend bool operator==(const Phrase& a, std::string_view b) { return a.english() == b; }
    friend bool operator==(const Phrase& a, const std::string& b) { return a.english() == b; }
    friend bool operator==(const Phrase& a, const char* b) { return a.english() == b; }

private:
    friend std::string told(const Phrase&, const class Language&);
    std::string m_pattern;
    std::string m_asIs;
    std::vector<Phrase> m_parts;
};
std::ostream& operator<<(std::ostream&, const Phrase&);

/// A pattern whose places the compiler has counted.
template<std::size_t places>
struct Pattern {
    std::string_view english;
    template<std::convertible_to<std::string_view> Literal>
    consteval Pattern(const Literal& literal) : english(literal) {
        if (placesOf(english) != static_cast<int>(places))
            throw "the pattern has not as many places as there are parts";
    }
};

/// phrase("Only %1 of wood is left, less than %2", shown(cover, style), shown(least, style)).
/// Whole sentences, never halves to be glued: word order is the other language's affair.
template<class... Parts>
Phrase phrase(std::type_identity_t<Pattern<sizeof...(Parts)>> pattern, Parts&&... parts) {
    std::vector<Phrase> filled;
    filled.reserve(sizeof...(Parts));
    (filled.emplace_back(std::forward<Parts>(parts)), ...);
    return Phrase(Text{pattern.english}, std::move(filled));
}

/// A name of the program's own that comes from its data files, as a catalogue entry's.
Phrase nameFromData(std::string name);

/// The phrases after one another: "a b".
Phrase joined(Phrase first, Phrase second);

/// "A1, A2 and B3"
Phrase listed(const std::vector<Phrase>& phrases);

} // namespace frontwright
