#include "core/lengths/token_row.h"

#include "core/lengths/characters.h"

namespace frontwright::reading {

Spacing TokenRow::spacingOf(std::size_t index) const {
    const bool before = m_tokens[index].spaceBefore;
    if (before != m_tokens[index + 1].spaceBefore)
        return Spacing::OneSided;
    return before ? Spacing::Wide : Spacing::Tight;
}

bool TokenRow::fractionBeginsAt(std::size_t index) const {
    if (m_tokens[index].kind != TokenKind::Whole)
        return m_tokens[index].kind == TokenKind::Fraction;
    const Token& bar = m_tokens[index + 1];
    if (bar.kind != TokenKind::Slash || bar.spaceBefore)
        return false;
    const Token& below = m_tokens[index + 2];
    return below.kind == TokenKind::Whole && !below.spaceBefore;
}

Error TokenRow::unexpected(Text expected, Text remedy) const {
    const Phrase found = peek().kind == TokenKind::End
                             ? Phrase(text("the end"))
                             : phrase("\"%1\"", std::string(peek().source));
    return errorAt(peek().position, phrase("expected %1, found %2", expected, found), remedy);
}

bool beginsNumber(const Token& token) {
    return token.kind == TokenKind::Whole || token.kind == TokenKind::Decimal ||
           token.kind == TokenKind::Fraction;
}

Error oneSided(const Token& hyphen, Phrase remedy) {
    return errorAt(hyphen.position, text("this hyphen has a space on one side only"),
                   std::move(remedy));
}

} // namespace frontwright::reading
