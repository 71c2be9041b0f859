#pragma once

#include "core/lengths/tokens.h"

#include <cstddef>
#include <string>
#include <utility>
#include <vector>

namespace frontwright::reading {

/// Spaces round a hyphen: on both sides it subtracts, on none it joins, on one it is refused.
enum class Spacing : std::uint8_t { Tight, OneSided, Wide };

/// Tokens, and which of them is read next.
class TokenRow {
public:
    explicit TokenRow(std::vector<Token> tokens) : m_tokens(std::move(tokens)) {}

    [[nodiscard]] const Token& peek() const { return m_tokens[m_next]; }
    [[nodiscard]] const Token& at(std::size_t index) const { return m_tokens[index]; }
    [[nodiscard]] std::size_t next() const { return m_next; }
    /// Precondition: peek() is not the End.
    const Token& take(Role role = Role::Undecided) {
        Token& token = m_tokens[m_next++];
        token.role = role;
        return token;
    }
    void goBackTo(std::size_t index) { m_next = index; }
    [[nodiscard]] std::vector<Token> release() && { return std::move(m_tokens); }

    /// Of the sign at `index`, which is not the End.
    [[nodiscard]] Spacing spacingOf(std::size_t index) const;
    /// ¾, or a whole number, slash and whole number without spaces between them.
    [[nodiscard]] bool fractionBeginsAt(std::size_t index) const;

    /// "expected …, found …" at the next token.
    [[nodiscard]] Error unexpected(Text expected, Text remedy) const;

private:
    std::vector<Token> m_tokens;
    std::size_t m_next = 0;
};

bool beginsNumber(const Token& token);

/// A hyphen with a space on one side only; `remedy` says how it is written where it joins.
Error oneSided(const Token& hyphen, Phrase remedy);

} // namespace frontwright::reading
