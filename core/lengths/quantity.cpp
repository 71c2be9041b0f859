#include "core/lengths/quantity.h"

namespace frontwright::reading {
namespace {

Result<Quantity> fitted(const CheckedRational& value, Dimension dimension, Notation notation) {
    switch (value.range) {
    case Range::Fits:
        return Quantity{value.value, dimension, notation};
    case Range::TooLarge:
        return Error{{}, text("the length is beyond 1000 m"), text("write a shorter length")};
    case Range::TooFine:
        break;
    }
    return Error{
        {}, text("the numbers are too long to be computed exactly"), text("write fewer digits")};
}

std::int64_t nanometresIn(TypedUnit unit) {
    switch (unit) {
    case TypedUnit::Inch:
        return Length::nanometresPerInch;
    case TypedUnit::Foot:
        return 12 * Length::nanometresPerInch;
    case TypedUnit::Millimetre:
        return Length::nanometresPerMillimetre;
    case TypedUnit::Centimetre:
        return 10 * Length::nanometresPerMillimetre;
    case TypedUnit::Metre:
        break;
    }
    return 1000 * Length::nanometresPerMillimetre;
}

Notation notationIn(TypedUnit unit, Notation ofNumber) {
    switch (unit) {
    case TypedUnit::Inch:
        return ofNumber;
    case TypedUnit::Foot:
        return Notation::FeetInches;
    case TypedUnit::Millimetre:
        return Notation::Millimetre;
    case TypedUnit::Centimetre:
        return Notation::Centimetre;
    case TypedUnit::Metre:
        break;
    }
    return Notation::Metre;
}

Notation shared(const Quantity& a, const Quantity& b) {
    return a.notation == b.notation ? a.notation : Notation::OfDocument;
}

} // namespace

Result<Quantity> inUnit(const Quantity& number, TypedUnit unit) {
    return fitted(productOf(number.value, {nanometresIn(unit), 1}), Dimension::Length,
                  notationIn(unit, number.notation));
}

Result<Quantity> asLength(const Quantity& quantity, Unit bareUnit) {
    if (quantity.dimension == Dimension::Length)
        return quantity;
    switch (bareUnit) {
    case Unit::Inch:
        return inUnit(quantity, TypedUnit::Inch);
    case Unit::Millimetre:
        break;
    }
    return inUnit(quantity, TypedUnit::Millimetre);
}

Result<Quantity> added(const Quantity& a, const Quantity& b, Unit bareUnit) {
    if (a.dimension == b.dimension)
        return fitted(sumOf(a.value, b.value), a.dimension, shared(a, b));
    const Result<Quantity> left = asLength(a, bareUnit);
    const Result<Quantity> right = asLength(b, bareUnit);
    if (!left.ok())
        return left;
    return right.ok() ? added(left.value(), right.value(), bareUnit) : right;
}

Result<Quantity> multiplied(const Quantity& a, const Quantity& b) {
    if (a.dimension == Dimension::Length && b.dimension == Dimension::Length)
        return Error{{},
                     text("a length times a length is an area, not a length"),
                     text("multiply by a plain number")};
    const CheckedRational product = productOf(a.value, b.value);
    if (a.dimension == b.dimension)
        return fitted(product, Dimension::Number, shared(a, b));
    const Quantity& length = a.dimension == Dimension::Length ? a : b;
    return fitted(product, Dimension::Length, length.notation);
}

Result<Quantity> divided(const Quantity& a, const Quantity& b) {
    if (b.dimension == Dimension::Length)
        return Error{
            {},
            text("what is divided by a length is no length"),
            text("divide by a plain number; write a fraction without spaces, as in 3/4 in")};
    if (b.value.numerator == 0)
        return Error{{}, text("the divisor is 0"), text("divide by another number")};
    const bool plain = a.dimension == Dimension::Number;
    return fitted(quotientOf(a.value, b.value), a.dimension, plain ? shared(a, b) : a.notation);
}

} // namespace frontwright::reading
