#pragma once

#include "core/lengths/length.h"
#include "core/lengths/rational.h"
#include "core/lengths/tokens.h"
#include "core/results/result.h"

namespace frontwright::reading {

enum class Dimension : std::uint8_t {
    Number, ///< without a unit as yet: multiplies, or stands as a length in the bare unit
    Length
};

/// A value inside a sum. Errors of the functions below have no place; the grammar knows it.
struct Quantity {
    Rational value; ///< nanometres of a Length
    Dimension dimension = Dimension::Number;
    /// Of a Number: the notation that it would have as inches, fraction or decimal.
    Notation notation = Notation::InchFraction;
};

Result<Quantity> inUnit(const Quantity& number, TypedUnit unit);
/// A Number becomes a Length in `bareUnit`; a Length stays what it is.
Result<Quantity> asLength(const Quantity& quantity, Unit bareUnit);

/// Two Numbers stay a Number; beside a Length, a Number is one in `bareUnit`.
Result<Quantity> added(const Quantity& a, const Quantity& b, Unit bareUnit);
/// Refuses Length × Length.
Result<Quantity> multiplied(const Quantity& a, const Quantity& b);
/// Refuses a Length and zero as divisor.
Result<Quantity> divided(const Quantity& a, const Quantity& b);

constexpr Quantity negated(const Quantity& q) {
    return {negated(q.value), q.dimension, q.notation};
}

} // namespace frontwright::reading
