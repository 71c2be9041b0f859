#include "core/lengths/characters.h"

#include <array>

namespace frontwright::reading {
namespace {

struct Range32 {
    char32_t first;
    char32_t last;
    char32_t plain;
};

// Names of the characters as in the Unicode character database.
constexpr std::array lookAlikes{
    Range32{U'\t', U'\t', U' '},    Range32{0x00A0, 0x00A0, U' '},  // no-break space
    Range32{0x00B4, 0x00B4, U'\''},                                 // acute accent
    Range32{0x00D7, 0x00D7, U'*'},                                  // multiplication sign
    Range32{0x02B9, 0x02B9, U'\''}, Range32{0x02BA, 0x02BA, U'"'},  // modifier primes
    Range32{0x02BC, 0x02BC, U'\''},                                 // modifier apostrophe
    Range32{0x2000, 0x200B, U' '},                                  // en quad to zero width space
    Range32{0x2010, 0x2013, U'-'},                                  // hyphens, figure and en dash
    Range32{0x2018, 0x2019, U'\''}, Range32{0x201B, 0x201B, U'\''}, // single quotes
    Range32{0x201C, 0x201D, U'"'},  Range32{0x201F, 0x201F, U'"'},  // double quotes
    Range32{0x202F, 0x202F, U' '},                                  // narrow no-break space
    Range32{0x2032, 0x2032, U'\''}, Range32{0x2033, 0x2033, U'"'},  // prime, double prime
    Range32{0x2044, 0x2044, U'/'},                                  // fraction slash
    Range32{0x205F, 0x2060, U' '},                                  // math space, word joiner
    Range32{0x2212, 0x2212, U'-'},                                  // minus sign
    Range32{0x2215, 0x2215, U'/'},  Range32{0x3000, 0x3000, U' '},  // division slash, wide space
    Range32{0xFEFF, 0xFEFF, U' '},                                  // zero width no-break space
};

char32_t plainOf(char32_t code) {
    for (const Range32& range : lookAlikes)
        if (range.first <= code && code <= range.last)
            return range.plain;
    return code;
}

/// Bytes of the character that begins with `lead`, 0 where none can.
std::size_t lengthFromLead(unsigned char lead) {
    if (lead < 0x80)
        return 1;
    if (lead >= 0xC2 && lead < 0xE0)
        return 2;
    if (lead >= 0xE0 && lead < 0xF0)
        return 3;
    return lead >= 0xF0 && lead < 0xF5 ? 4 : 0;
}

bool isProperCode(char32_t code, std::size_t length) {
    constexpr std::array<char32_t, 5> least{0, 0, 0x80, 0x800, 0x10000};
    const bool surrogate = code >= 0xD800 && code < 0xE000;
    return code >= least[length] && !surrogate && code <= 0x10FFFF;
}

struct Decoded {
    char32_t code = 0;
    std::size_t length = 0; ///< 0: not UTF-8
};

Decoded decoded(std::string_view rest) {
    const auto lead = static_cast<unsigned char>(rest.front());
    const std::size_t length = lengthFromLead(lead);
    if (length == 0 || length > rest.size())
        return {};
    if (length == 1)
        return {lead, 1};
    char32_t code = lead & (0xFFU >> (length + 1));
    for (std::size_t i = 1; i < length; ++i) {
        const auto next = static_cast<unsigned char>(rest[i]);
        if ((next & 0xC0U) != 0x80U)
            return {};
        code = (code << 6U) | (next & 0x3FU);
    }
    return isProperCode(code, length) ? Decoded{code, length} : Decoded{};
}

} // namespace

Result<std::vector<Character>> charactersOf(std::string_view typed) {
    std::vector<Character> characters;
    characters.reserve(typed.size() < longestText ? typed.size() : longestText);
    std::size_t byte = 0;
    while (byte < typed.size()) {
        const std::size_t position = characters.size() + 1;
        if (position > longestText)
            return errorAt(position, text("the text has more than 64 characters"),
                           text("write the length shorter"));
        const Decoded next = decoded(typed.substr(byte));
        if (next.length == 0)
            return errorAt(position, text("the text is not UTF-8 here"),
                           text("type the length again"));
        characters.push_back({next.code, plainOf(next.code), byte});
        byte += next.length;
    }
    return characters;
}

std::optional<Rational> fractionCharacter(char32_t code) {
    // U+2150 to U+215E in their order.
    constexpr std::array<Rational, 15> row{{{1, 7},
                                            {1, 9},
                                            {1, 10},
                                            {1, 3},
                                            {2, 3},
                                            {1, 5},
                                            {2, 5},
                                            {3, 5},
                                            {4, 5},
                                            {1, 6},
                                            {5, 6},
                                            {1, 8},
                                            {3, 8},
                                            {5, 8},
                                            {7, 8}}};
    if (code >= 0x00BC && code <= 0x00BE)
        return std::array<Rational, 3>{{{1, 4}, {1, 2}, {3, 4}}}[code - 0x00BC];
    if (code >= 0x2150 && code <= 0x215E)
        return row[code - 0x2150];
    return std::nullopt;
}

Error errorAt(std::size_t position, Phrase what, Phrase remedy) {
    return {phrase("position %1", std::to_string(position)), std::move(what), std::move(remedy)};
}

} // namespace frontwright::reading
