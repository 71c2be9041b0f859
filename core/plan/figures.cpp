#include "core/plan/figures.h"

#include "core/lengths/format.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <string_view>

namespace frontwright {

namespace {

/// Whole, so that other languages tell them whole.
constexpr std::array handbookTitles{
    text("Forest Products Laboratory, Wood Handbook (GTR-282), equation 4-5"),
    text("Forest Products Laboratory, Wood Handbook (GTR-282), chapter 13: change = size × "
         "coefficient × change of moisture"),
    text("Forest Products Laboratory, Wood Handbook (GTR-282), chapter 13; the wider formula from "
         "memory")};

} // namespace

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

Source sourceOf(SourceKind kind, Text title) {
    return {kind, std::string(title.english)};
}

Source commonPractice() {
    return sourceOf(SourceKind::CommonPractice, text("common practice, no source"));
}

Source woodHandbook(std::string_view where) {
    const auto listed = std::find_if(handbookTitles.begin(), handbookTitles.end(),
                                     [&](Text title) { return title.english.ends_with(where); });
    assert(listed != handbookTitles.end());
    return sourceOf(SourceKind::Published, *listed);
}

Source makersDecision() {
    return sourceOf(SourceKind::Maker, text("as the maker decided"));
}

Source sourceOfLimit(Length inForce, Length ofProgram) {
    return inForce == ofProgram ? commonPractice()
                                : sourceOf(SourceKind::Maker, text("the maker's limit"));
}

} // namespace frontwright
