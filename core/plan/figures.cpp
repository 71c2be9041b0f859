#include "core/plan/figures.h"

#include "core/lengths/format.h"

#include <string_view>

namespace frontwright {

void Figures::write(Sign sign) {
    if (m_text.empty())
        m_text = sign == Sign::Minus ? "−" : "";
    else
        m_text += sign == Sign::Minus ? " − " : " + ";
}

Figures& Figures::plus(Length term) {
    write(term < Length{} ? Sign::Minus : Sign::Plus);
    m_text += shown(term.magnitude(), m_style);
    return *this;
}

Figures& Figures::minus(Length term) {
    write(term < Length{} ? Sign::Plus : Sign::Minus);
    m_text += shown(term.magnitude(), m_style);
    return *this;
}

Figures& Figures::minusTwice(Length term) {
    write(term < Length{} ? Sign::Plus : Sign::Minus);
    m_text += "2 × " + shown(term.magnitude(), m_style);
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
    return withApproximateResults(m_text + " = " + shown(value, m_style));
}

std::string withApproximateResults(std::string figures) {
    constexpr std::string_view both = "= ≈";
    for (auto at = figures.find(both); at != std::string::npos; at = figures.find(both, at))
        figures.erase(at, 2);
    return figures;
}

Source commonPractice() {
    return {SourceKind::CommonPractice, "common practice, no source"};
}

Source woodHandbook(std::string_view where) {
    return {SourceKind::Published,
            "Forest Products Laboratory, Wood Handbook (GTR-282), " + std::string(where)};
}

Source makersDecision() {
    return {SourceKind::Maker, "as the maker decided"};
}

Source sourceOfLimit(Length inForce, Length ofProgram) {
    return inForce == ofProgram ? commonPractice() : Source{SourceKind::Maker, "the maker's limit"};
}

} // namespace frontwright
