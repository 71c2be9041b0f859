#include "core/lengths/grammar.h"

#include "core/lengths/characters.h"
#include "core/lengths/number_grammar.h"
#include "core/lengths/quantity.h"
#include "core/lengths/token_row.h"

#include <utility>

namespace frontwright::reading {
namespace {

bool isSumSign(const Token& token) {
    return token.kind == TokenKind::Plus || token.kind == TokenKind::Minus;
}

bool isProductSign(const Token& token) {
    return token.kind == TokenKind::Times || token.kind == TokenKind::Slash ||
           token.kind == TokenKind::Divide;
}

bool isInch(const Token& token) {
    return token.kind == TokenKind::Unit && token.unit == TypedUnit::Inch;
}

Result<Quantity> placed(std::size_t position, const Result<Quantity>& result) {
    if (result.ok())
        return result;
    return errorAt(position, result.error().what, result.error().remedy);
}

class Grammar {
public:
    Grammar(std::vector<Token> tokens, Unit bareUnit)
        : m_row(std::move(tokens)),
          m_bareUnit(bareUnit) {}

    Result<Reading> read(std::optional<Length> current);

private:
    Result<Quantity> whole(std::optional<Length> current);
    Result<Quantity> sum();
    Result<Quantity> product();
    Result<Quantity> factor();
    Result<Quantity> bracket();
    Result<Quantity> measure();
    Result<Quantity> inchesAfter(const Quantity& feet, const Token& firstOfFeet);

    [[nodiscard]] bool isChange() const;
    [[nodiscard]] Result<Quantity> applied(const Token& sign, const Quantity& a,
                                           const Quantity& b) const;
    [[nodiscard]] Error leftOver() const;

    TokenRow m_row;
    Unit m_bareUnit;
    bool m_isSum = false;
    bool m_isUnitWritten = false;
};

Result<Reading> Grammar::read(std::optional<Length> current) {
    const Result<Quantity> quantity = whole(current);
    if (!quantity.ok())
        return quantity.error();
    const Result<Quantity> length = placed(1, asLength(quantity.value(), m_bareUnit));
    if (!length.ok())
        return length.error();
    const Rational nanometres = length.value().value;
    const std::int64_t nearest = nearestWhole(nanometres);
    if (nearest > largestNanometres || nearest < -largestNanometres)
        return errorAt(1, text("the length is beyond 1000 m"), text("write a shorter length"));
    return Reading{nanometres, length.value().notation, m_isSum, m_isUnitWritten,
                   std::move(m_row).release()};
}

bool Grammar::isChange() const {
    return (isSumSign(m_row.at(0)) || isProductSign(m_row.at(0))) &&
           m_row.at(1).kind == TokenKind::Equals && !m_row.at(1).spaceBefore;
}

Result<Quantity> Grammar::whole(std::optional<Length> current) {
    if (m_row.peek().kind == TokenKind::End)
        return errorAt(m_row.peek().position, text("expected a length, found nothing"),
                       text("write one, such as 12 5/8 in or 321 mm"));
    const bool change = current && isChange();
    if (change) {
        m_row.take(Role::OfChange);
        m_row.take(Role::OfChange);
        m_isSum = true;
    }
    const Result<Quantity> result = sum();
    if (result.ok() && m_row.peek().kind != TokenKind::End)
        return leftOver();
    if (!result.ok() || !change)
        return result;
    const Quantity before{{current->nanometres(), 1}, Dimension::Length, Notation::OfDocument};
    return applied(m_row.at(0), before, result.value());
}

Result<Quantity> Grammar::applied(const Token& sign, const Quantity& a, const Quantity& b) const {
    if (sign.kind == TokenKind::Plus)
        return placed(sign.position, added(a, b, m_bareUnit));
    if (sign.kind == TokenKind::Minus)
        return placed(sign.position, added(a, negated(b), m_bareUnit));
    return placed(sign.position, sign.kind == TokenKind::Times ? multiplied(a, b) : divided(a, b));
}

Result<Quantity> Grammar::sum() {
    Result<Quantity> left = product();
    while (left.ok() && isSumSign(m_row.peek())) {
        const Token& sign = m_row.take(Role::Operator);
        m_isSum = true;
        const Result<Quantity> right = product();
        if (!right.ok())
            return right;
        left = applied(sign, left.value(), right.value());
    }
    return left;
}

Result<Quantity> Grammar::product() {
    Result<Quantity> left = factor();
    while (left.ok() && isProductSign(m_row.peek())) {
        const Token& sign = m_row.take(Role::Operator);
        m_isSum = true;
        const Result<Quantity> right = factor();
        if (!right.ok())
            return right;
        left = applied(sign, left.value(), right.value());
    }
    return left;
}

Result<Quantity> Grammar::factor() {
    const bool negative = m_row.peek().kind == TokenKind::Minus;
    if (isSumSign(m_row.peek()))
        m_row.take(Role::Sign);
    const Result<Quantity> value = m_row.peek().kind == TokenKind::Open ? bracket() : measure();
    return value.ok() && negative ? negated(value.value()) : value;
}

Result<Quantity> Grammar::bracket() {
    m_row.take();
    m_isSum = true;
    const Result<Quantity> inner = sum();
    if (!inner.ok())
        return inner;
    if (m_row.peek().kind != TokenKind::Close)
        return m_row.unexpected(text("\")\""), text("close the bracket"));
    m_row.take();
    if (m_row.peek().kind != TokenKind::Unit)
        return inner;
    const Token& unit = m_row.take();
    if (inner.value().dimension == Dimension::Length)
        return errorAt(unit.position, text("what stands in the bracket has a unit already"),
                       text("leave this one out"));
    return placed(unit.position, inUnit(inner.value(), unit.unit));
}

Result<Quantity> Grammar::measure() {
    const Token& first = m_row.peek();
    const Result<Quantity> value = readNumber(m_row);
    if (!value.ok() || m_row.peek().kind != TokenKind::Unit)
        return value;
    const Token& unit = m_row.take();
    m_isUnitWritten = true;
    const Result<Quantity> length = placed(first.position, inUnit(value.value(), unit.unit));
    return length.ok() && unit.unit == TypedUnit::Foot ? inchesAfter(length.value(), first)
                                                       : length;
}

Result<Quantity> Grammar::inchesAfter(const Quantity& feet, const Token& firstOfFeet) {
    const std::size_t after = m_row.next();
    const bool hyphen = m_row.peek().kind == TokenKind::Minus && beginsNumber(m_row.at(after + 1));
    if (!hyphen && !beginsNumber(m_row.peek()))
        return feet;
    if (hyphen && m_row.spacingOf(after) == Spacing::Wide)
        return feet;
    if (hyphen)
        m_row.take(Role::Joiner);
    const std::size_t position = m_row.peek().position;
    const Result<Quantity> inches = readNumber(m_row);
    if (!inches.ok())
        return inches;
    const Token& end = m_row.peek();
    const bool otherUnit = end.kind == TokenKind::Unit && !isInch(end);
    if (hyphen && (otherUnit || isProductSign(end))) {
        m_row.goBackTo(after); // 12'-2 mm and 12'-2*3 in are subtractions
        return feet;
    }
    if (otherUnit || (!isInch(end) && m_bareUnit != Unit::Inch))
        return m_row.unexpected(text("inches after feet"),
                                text("write their unit, as in 12 ft 2 in"));
    if (hyphen && m_row.spacingOf(after) == Spacing::OneSided)
        return oneSided(
            m_row.at(after),
            text("write 12'-2\" for feet and inches, or a space on both sides to subtract"));
    if (firstOfFeet.kind != TokenKind::Whole || &m_row.at(after - 2) != &firstOfFeet)
        return errorAt(firstOfFeet.position, text("feet before inches must be a whole number"),
                       text("write whole feet, as in 12 ft 2 1/2 in"));
    if (reaches(inches.value(), 12))
        return errorAt(position, text("inches after feet must be fewer than 12"),
                       text("carry them into the feet, or join the two by +"));
    if (isInch(end))
        m_row.take();
    const Result<Quantity> length = placed(position, inUnit(inches.value(), TypedUnit::Inch));
    if (!length.ok())
        return length;
    return placed(position, added(feet, {length.value().value, Dimension::Length, feet.notation},
                                  m_bareUnit));
}

Error Grammar::leftOver() const {
    const bool afterUnit = m_row.at(m_row.next() - 1).kind == TokenKind::Unit;
    const Text expected = afterUnit || m_isSum ? text("+, -, *, / or the end")
                                               : text("a unit, +, -, *, / or the end");
    if (m_row.peek().kind == TokenKind::Unknown)
        return m_row.unexpected(expected, text("the units are in, ft, mm, cm and m"));
    if (!beginsNumber(m_row.peek()))
        return m_row.unexpected(expected, text("leave it out"));
    if (afterUnit)
        return m_row.unexpected(expected, text("write the unit last, as in 12 5/8 in, and + or - "
                                               "between lengths"));
    return m_row.unexpected(expected, text("write a fraction without spaces, as in 12 5/8"));
}

} // namespace

Result<Reading> readLength(std::string_view text, Unit bareUnit, CommaGrouping grouping,
                           std::optional<Length> current) {
    Result<std::vector<Token>> tokens = tokensOf(text, grouping);
    if (!tokens.ok())
        return tokens.error();
    return Grammar(std::move(tokens).value(), bareUnit).read(current);
}

} // namespace frontwright::reading
