#include "core/lengths/tokens.h"

#include "core/lengths/characters.h"

#include <array>
#include <optional>
#include <string>

namespace frontwright::reading {
namespace {

constexpr std::size_t mostDigits = 18;

bool isDigit(char32_t c) {
    return c >= U'0' && c <= U'9';
}
bool isDecimalMark(char32_t c) {
    return c == U'.' || c == U',';
}
bool isLetter(char32_t c) {
    return (c >= U'a' && c <= U'z') || (c >= U'A' && c <= U'Z');
}

std::optional<TypedUnit> unitNamed(std::string_view word) {
    struct Name {
        std::string_view word;
        TypedUnit unit;
    };
    static constexpr std::array names{
        Name{"in", TypedUnit::Inch},       Name{"inch", TypedUnit::Inch},
        Name{"inches", TypedUnit::Inch},   Name{"ft", TypedUnit::Foot},
        Name{"foot", TypedUnit::Foot},     Name{"feet", TypedUnit::Foot},
        Name{"mm", TypedUnit::Millimetre}, Name{"cm", TypedUnit::Centimetre},
        Name{"m", TypedUnit::Metre},       Name{"metre", TypedUnit::Metre},
        Name{"metres", TypedUnit::Metre},  Name{"meter", TypedUnit::Metre},
        Name{"meters", TypedUnit::Metre},
    };
    std::string lower(word);
    for (char& c : lower)
        if (c >= 'A' && c <= 'Z')
            c = static_cast<char>(c - 'A' + 'a');
    for (const Name& name : names)
        if (name.word == lower)
            return name.unit;
    return std::nullopt;
}

TokenKind kindOfSign(char32_t c) {
    switch (c) {
    case U'+':
        return TokenKind::Plus;
    case U'-':
        return TokenKind::Minus;
    case U'*':
        return TokenKind::Times;
    case U'/':
        return TokenKind::Slash;
    case U'÷':
        return TokenKind::Divide;
    case U'(':
        return TokenKind::Open;
    case U')':
        return TokenKind::Close;
    case U'=':
        return TokenKind::Equals;
    default:
        return TokenKind::Unknown;
    }
}

class Tokeniser {
public:
    Tokeniser(std::string_view text, const std::vector<Character>& characters,
              CommaGrouping grouping)
        : m_text(text),
          m_characters(characters),
          m_grouping(grouping) {}

    Result<std::vector<Token>> run() {
        std::vector<Token> tokens;
        tokens.reserve(m_characters.size() + 1);
        do {
            tokens.push_back(next());
            if (m_error)
                return *m_error;
        } while (tokens.back().kind != TokenKind::End);
        return tokens;
    }

private:
    [[nodiscard]] char32_t at(std::size_t index) const {
        return index < m_characters.size() ? m_characters[index].plain : U'\0';
    }
    [[nodiscard]] std::string_view sourceFrom(std::size_t first) const {
        const auto byteOf = [this](std::size_t index) {
            return index < m_characters.size() ? m_characters[index].byte : m_text.size();
        };
        return m_text.substr(byteOf(first), byteOf(m_index) - byteOf(first));
    }

    Token next();
    void number(Token& token);
    void digits(std::int64_t& value, std::size_t& count);
    void word(Token& token);
    void quote(Token& token);
    void refuseGrouping(std::size_t first);
    void refuse(std::size_t first, Phrase what, Phrase remedy) {
        if (!m_error)
            m_error = errorAt(first + 1, std::move(what), std::move(remedy));
    }

    std::string_view m_text;
    const std::vector<Character>& m_characters;
    CommaGrouping m_grouping;
    std::size_t m_index = 0;
    std::optional<Error> m_error;
};

Token Tokeniser::next() {
    Token token;
    while (at(m_index) == U' ') {
        token.spaceBefore = true;
        ++m_index;
    }
    const std::size_t first = m_index;
    token.position = first + 1;
    if (first == m_characters.size())
        return token;
    const char32_t c = at(first);
    if (isDigit(c) || (isDecimalMark(c) && isDigit(at(first + 1)))) {
        number(token);
    } else if (isLetter(c)) {
        word(token);
    } else if (c == U'\'' || c == U'"') {
        quote(token);
    } else {
        const auto fraction = fractionCharacter(c);
        token.kind = fraction ? TokenKind::Fraction : kindOfSign(c);
        token.value = fraction.value_or(Rational{});
        ++m_index;
    }
    token.source = sourceFrom(first);
    return token;
}

void Tokeniser::digits(std::int64_t& value, std::size_t& count) {
    for (; isDigit(at(m_index)); ++m_index)
        if (++count <= mostDigits)
            value = value * 10 + static_cast<std::int64_t>(at(m_index) - U'0');
}

void Tokeniser::number(Token& token) {
    const std::size_t first = m_index;
    std::int64_t value = 0;
    std::size_t count = 0;
    std::int64_t scale = 1;
    token.kind = TokenKind::Whole;
    digits(value, count);
    if (isDecimalMark(at(m_index)) && isDigit(at(m_index + 1))) {
        token.kind = TokenKind::Decimal;
        const std::size_t beforeMark = count;
        ++m_index;
        digits(value, count);
        for (std::size_t i = beforeMark; i < count && i < mostDigits; ++i)
            scale *= 10;
        refuseGrouping(first);
    }
    if (count > mostDigits)
        refuse(first, text("the number has more than 18 digits"), text("write fewer digits"));
    token.value = quotientOf({value, 1}, {scale, 1}).value;
}

/// A comma between one to three digits (not beginning with 0) and exactly three more can be the
/// mark of thousands; two marks in one number can be nothing else.
void Tokeniser::refuseGrouping(std::size_t first) {
    if (isDecimalMark(at(m_index)) && isDigit(at(m_index + 1))) {
        refuse(first, text("the number has two decimal marks"),
               text("leave digits ungrouped, as in 1234.5"));
        return;
    }
    std::size_t comma = first;
    while (isDigit(at(comma)))
        ++comma;
    const bool grouped = at(comma) == U',' && comma > first && comma - first <= 3 &&
                         at(first) != U'0' && m_index - comma == 4;
    if (grouped && m_grouping == CommaGrouping::Ambiguous) {
        const std::string source(sourceFrom(first));
        const std::size_t mark = source.find(',');
        const std::string whole = source.substr(0, mark);
        const std::string rest = source.substr(mark + 1);
        refuse(first, phrase("\"%1\" can be read in two ways", source),
               phrase("write %1 or %2", whole + rest, whole + "." + rest));
    }
}

void Tokeniser::word(Token& token) {
    const std::size_t first = m_index;
    while (isLetter(at(m_index)))
        ++m_index;
    const auto unit = unitNamed(sourceFrom(first));
    token.kind = unit ? TokenKind::Unit : TokenKind::Unknown;
    token.unit = unit.value_or(TypedUnit::Inch);
    // The stop of "in." and "ft." belongs to the word; that of "in.5" does not.
    const bool ofTrade = unit == TypedUnit::Inch || unit == TypedUnit::Foot;
    if (ofTrade && at(m_index) == U'.' && !isDigit(at(m_index + 1)))
        ++m_index;
}

void Tokeniser::quote(Token& token) {
    token.kind = TokenKind::Unit;
    const bool twoApostrophes = at(m_index) == U'\'' && at(m_index + 1) == U'\'';
    token.unit = at(m_index) == U'"' || twoApostrophes ? TypedUnit::Inch : TypedUnit::Foot;
    m_index += twoApostrophes ? 2 : 1;
}

} // namespace

Result<std::vector<Token>> tokensOf(std::string_view text, CommaGrouping grouping) {
    const Result<std::vector<Character>> characters = charactersOf(text);
    if (!characters.ok())
        return characters.error();
    return Tokeniser(text, characters.value(), grouping).run();
}

} // namespace frontwright::reading
