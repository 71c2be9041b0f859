#pragma once

#include "core/words/decimal_mark.h"

#include <compare>
#include <cstdint>
#include <type_traits>

namespace frontwright {

/// A length as a whole number of nanometres in 64 bits: ±9.2 million km.
/// Guaranteed exact: every multiple of 1/64 in (396 875 nm) and of 0.001 mm (1 000 nm), their sums,
/// and products with whole numbers. Not exact: anything made from double (fits, roots, transforms),
/// which is rounded once, to the nearest nanometre, halves away from zero.
/// No implicit conversions: a length is made by a named maker and read by a named reader.
class Length {
public:
    static constexpr std::int64_t nanometresPerInch = 25'400'000;
    static constexpr std::int64_t nanometresPer64th = 396'875;
    static constexpr std::int64_t nanometresPerMillimetre = 1'000'000;

    constexpr Length() = default;

    static constexpr Length fromNanometres(std::int64_t nm) { return Length(nm); }
    static constexpr Length fromMicrometres(std::int64_t um) { return Length(um * 1'000); }
    static constexpr Length fromSixtyFourths(std::int64_t n) {
        return Length(n * nanometresPer64th);
    }
    /// Whole inches plus a fraction of 64ths: inches(12, 40) is 12 5/8 in.
    static constexpr Length inches(std::int64_t whole, std::int64_t sixtyFourths = 0) {
        return Length(whole * nanometresPerInch + sixtyFourths * nanometresPer64th);
    }
    static constexpr Length millimetres(std::int64_t whole) {
        return Length(whole * nanometresPerMillimetre);
    }
    /// Nearest nanometre, halves away from zero. Precondition: |mm| < 9e12.
    static constexpr Length nearestToMillimetres(double mm) {
        const double nm = mm * static_cast<double>(nanometresPerMillimetre);
        return Length(static_cast<std::int64_t>(nm < 0 ? nm - 0.5 : nm + 0.5));
    }

    [[nodiscard]] constexpr std::int64_t nanometres() const { return m_nm; }
    [[nodiscard]] constexpr double inMillimetres() const {
        return static_cast<double>(m_nm) / static_cast<double>(nanometresPerMillimetre);
    }
    [[nodiscard]] constexpr double inInches() const {
        return static_cast<double>(m_nm) / static_cast<double>(nanometresPerInch);
    }
    [[nodiscard]] constexpr bool isZero() const { return m_nm == 0; }

    friend constexpr auto operator<=>(Length, Length) = default;
    friend constexpr Length operator+(Length a, Length b) { return Length(a.m_nm + b.m_nm); }
    friend constexpr Length operator-(Length a, Length b) { return Length(a.m_nm - b.m_nm); }
    friend constexpr Length operator-(Length a) { return Length(-a.m_nm); }
    friend constexpr Length operator*(Length a, std::int64_t n) { return Length(a.m_nm * n); }
    friend constexpr Length operator*(std::int64_t n, Length a) { return a * n; }
    template<class F>
    requires std::is_floating_point_v<F>
    friend Length operator*(Length, F) = delete; // round on purpose: nearestToMillimetres
    constexpr Length& operator+=(Length b) { return *this = *this + b; }
    constexpr Length& operator-=(Length b) { return *this = *this - b; }

    /// Half, rounded down to a nanometre; a − half(a) is the other half, so the two always sum.
    [[nodiscard]] constexpr Length half() const {
        return Length(m_nm >= 0 ? m_nm / 2 : -((-m_nm + 1) / 2));
    }
    [[nodiscard]] constexpr Length magnitude() const { return m_nm < 0 ? Length(-m_nm) : *this; }

private:
    constexpr explicit Length(std::int64_t nm) : m_nm(nm) {}
    std::int64_t m_nm = 0;
};

constexpr Length least(Length a, Length b) {
    return b < a ? b : a;
}
constexpr Length greatest(Length a, Length b) {
    return a < b ? b : a;
}

enum class Unit : std::uint8_t { Inch, Millimetre };

/// How the maker wrote a length, so that the document gives it back as it was written.
enum class Notation : std::uint8_t {
    OfDocument,   ///< the document's unit where that is exact, else the other one
    InchFraction, ///< 12 5/8 in
    InchDecimal,  ///< 12.625 in
    FeetInches,   ///< 1 ft 2 1/2 in
    Millimetre,   ///< 320.675 mm
    Centimetre,   ///< 32.1 cm
    Metre         ///< 1.2 m
};

/// A length that the maker decided, with the notation it was written in. Every length in a Project
/// is one of these; computed lengths are plain Length. Reads as a Length wherever one is wanted.
struct WrittenLength {
    Length length;
    Notation notation = Notation::OfDocument;

    constexpr WrittenLength() = default;
    constexpr WrittenLength(Length l, Notation n = Notation::OfDocument) : length(l), notation(n) {}
    constexpr operator Length() const { return length; } // NOLINT: the one intended conversion
    friend constexpr bool operator==(const WrittenLength&, const WrittenLength&) = default;
};

/// How lengths and other amounts are shown: the unit and, for inches, the finest fraction (8, 16,
/// 32 or 64).
struct LengthStyle {
    Unit unit = Unit::Inch;
    int denominator = 16;
    DecimalMark mark = DecimalMark::Point; ///< by the language; a document is always in points
    friend bool operator==(const LengthStyle&, const LengthStyle&) = default;
};

} // namespace frontwright
