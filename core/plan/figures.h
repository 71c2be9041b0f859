#pragma once

#include "core/catalogue/catalogue.h"
#include "core/lengths/length.h"

#include <string>

namespace frontwright {

/// Writes a formula's figures as a maker would: Figures(style).plus(a).plus(b).equals(c) gives
/// "12 5/8 in + 1/4 in = 12 7/8 in". What no shown fraction has is a decimal, so that the sum comes
/// out right to who reads it: "1 1/4 in + 0.2362 in = 1.486 in ≈ 1 31/64 in". A negative term is
/// written with the other sign. What it writes, without its " = …", can be read back by parseLength
/// ("×" taken as "*").
class Figures {
public:
    explicit Figures(LengthStyle style) : m_style(style) {}

    Figures& plus(Length term);
    Figures& minus(Length term);
    Figures& minusTwice(Length term);
    /// term × numerator / denominator; a numerator of 1 is left out.
    Figures& plusPart(Length term, std::int64_t numerator, std::int64_t denominator);
    /// Takes what is there so far in brackets: "(a − b) / 2".
    Figures& halved();
    [[nodiscard]] std::string text() const { return m_text; }
    [[nodiscard]] std::string equals(Length value) const;

private:
    enum class Sign : std::uint8_t { Plus, Minus };
    void write(Sign sign);
    LengthStyle m_style;
    std::string m_text;
};

/// Common practice where the limit in force is the program's default, else the maker's.
Source sourceOfLimit(Length inForce, Length ofProgram);

} // namespace frontwright
