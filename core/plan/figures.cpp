#include "core/plan/figures.h"

#include "core/lengths/format.h"

namespace frontwright {

void Figures::write(Sign sign) {
    if (m_text.empty())
        m_text = sign == Sign::Minus ? "−" : "";
    else
        m_text += sign == Sign::Minus ? " − " : " + ";
}

Figures& Figures::plus(Length term) {
    write(term < Length{} ? Sign::Minus : Sign::Plus);
    m_text += shownPrecisely(term.magnitude(), m_style);
    return *this;
}

Figures& Figures::minus(Length term) {
    write(term < Length{} ? Sign::Plus : Sign::Minus);
    m_text += shownPrecisely(term.magnitude(), m_style);
    return *this;
}

Figures& Figures::minusTwice(Length term) {
    write(term < Length{} ? Sign::Plus : Sign::Minus);
    m_text += "2 × " + shownPrecisely(term.magnitude(), m_style);
    return *this;
}

Figures& Figures::plusPart(Length term, std::int64_t numerator, std::int64_t denominator) {
    plus(term);
    if (numerator != 1)
        m_text += " × " + std::to_string(numerator);
    m_text += " / " + std::to_string(denominator);
    return *this;
}

Figures& Figures::halved() {
    m_text = "(" + m_text + ") / 2";
    return *this;
}

std::string Figures::equals(Length value) const {
    return m_text + " = " + shownAsResult(value, m_style);
}

Source sourceOfLimit(Length inForce, Length ofProgram) {
    return inForce == ofProgram ? commonPractice()
                                : sourceNamed(SourceKind::Maker, text("the maker's limit"));
}

} // namespace frontwright
