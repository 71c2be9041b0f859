#include "core/lengths/number_grammar.h"

#include "core/lengths/characters.h"

namespace frontwright::reading {
namespace {

Quantity plain(Rational value, Notation notation) {
    return {value, Dimension::Number, notation};
}

/// Precondition: a fraction begins at the next token.
Result<Quantity> readFraction(TokenRow& row) {
    const Token& above = row.take();
    if (above.kind == TokenKind::Fraction)
        return plain(above.value, Notation::InchFraction);
    row.take(Role::FractionBar);
    const Token& below = row.take();
    if (below.value.numerator == 0)
        return errorAt(below.position, text("the denominator is 0"),
                       text("write one of at least 1"));
    return plain(quotientOf(above.value, below.value).value, Notation::InchFraction);
}

/// "12-5/8" of "12 -5/8"; the next token is the hyphen.
std::string joinedBy(const Token& whole, const TokenRow& row) {
    const std::size_t above = row.next() + 1;
    std::string text = std::string(whole.source) + "-" + std::string(row.at(above).source);
    if (row.at(above).kind == TokenKind::Whole)
        text += "/" + std::string(row.at(above + 2).source);
    return text;
}

/// Precondition: the next token is a whole number.
Result<Quantity> readMixedNumber(TokenRow& row) {
    const Token& first = row.take();
    const Quantity whole = plain(first.value, Notation::InchFraction);
    const std::size_t after = row.next();
    const bool hyphen = row.peek().kind == TokenKind::Minus && row.fractionBeginsAt(after + 1);
    if (!hyphen && !row.fractionBeginsAt(after))
        return whole;
    if (hyphen) {
        const Spacing spacing = row.spacingOf(after);
        if (spacing == Spacing::Wide)
            return whole;
        if (spacing == Spacing::OneSided)
            return oneSided(
                row.peek(),
                phrase("write %1 for a mixed number, or a space on both sides to subtract",
                       joinedBy(first, row)));
        row.take(Role::Joiner);
    }
    const std::size_t position = row.peek().position;
    const Result<Quantity> part = readFraction(row);
    if (!part.ok())
        return part;
    if (reaches(part.value(), 1))
        return errorAt(position, text("the fraction of a mixed number must be less than 1"),
                       text("write a sum or a subtraction with spaces, as in 12 + 5/4"));
    const CheckedRational sum = sumOf(whole.value, part.value().value);
    if (sum.range != Range::Fits)
        return errorAt(position, text("the number is too long to be computed exactly"),
                       text("write fewer digits"));
    return plain(sum.value, Notation::InchFraction);
}

} // namespace

Result<Quantity> readNumber(TokenRow& row) {
    if (!beginsNumber(row.peek()))
        return row.unexpected(text("a number"),
                              text("write a length there, such as 12 5/8 in or 321 mm"));
    if (row.fractionBeginsAt(row.next()))
        return readFraction(row);
    if (row.peek().kind == TokenKind::Whole)
        return readMixedNumber(row);
    return plain(row.take().value, Notation::InchDecimal);
}

bool reaches(const Quantity& number, std::int64_t limit) {
    return number.value.numerator / number.value.denominator >= limit;
}

} // namespace frontwright::reading
