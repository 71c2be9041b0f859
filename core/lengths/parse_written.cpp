#include "core/lengths/characters.h"
#include "core/lengths/grammar.h"
#include "core/lengths/numerals.h"
#include "core/lengths/parse.h"

#include <array>
#include <optional>

namespace frontwright {
namespace {

constexpr std::array<std::int64_t, 10> powersOfTen{
    1, 10, 100, 1'000, 10'000, 100'000, 1'000'000, 10'000'000, 100'000'000, 1'000'000'000};

/// Reads what `written` writes, and no more: "-12 5/8 in", "12.625 in", "1 ft 2 1/2 in", "320.7
/// mm". Whatever it gives up on is read, or refused with a reason, by the grammar.
class PlainLength {
public:
    explicit PlainLength(std::string_view text) : m_at(text.data()), m_end(m_at + text.size()) {}

    std::optional<WrittenLength> read() {
        const bool negative = take('-');
        std::int64_t whole = 0;
        if (!digits(whole))
            return std::nullopt;
        const auto size = take('.') ? decimal(whole) : numberAndUnit(whole);
        if (!size || m_at != m_end || size->length.nanometres() > reading::largestNanometres)
            return std::nullopt;
        return negative ? WrittenLength(-size->length, size->notation) : *size;
    }

private:
    bool take(char c) {
        if (m_at == m_end || *m_at != c)
            return false;
        ++m_at;
        return true;
    }

    /// One to nine of them.
    bool digits(std::int64_t& value) {
        const char* const first = m_at;
        for (; m_at != m_end && *m_at >= '0' && *m_at <= '9'; ++m_at) {
            if (m_at - first == 9)
                return false;
            value = value * 10 + (*m_at - '0');
        }
        return m_at != first;
    }

    bool restIs(std::string_view rest) {
        if (std::string_view(m_at, static_cast<std::size_t>(m_end - m_at)) != rest)
            return false;
        m_at = m_end;
        return true;
    }

    std::optional<WrittenLength> decimal(std::int64_t whole) {
        const char* const first = m_at;
        std::int64_t part = 0;
        if (!digits(part))
            return std::nullopt;
        const auto count = static_cast<std::size_t>(m_at - first);
        if (restIs(" mm"))
            return scaled(whole, part, count, Length::nanometresPerMillimetre,
                          Notation::Millimetre);
        if (restIs(" in"))
            return scaled(whole, part, count, Length::nanometresPerInch, Notation::InchDecimal);
        if (restIs(" cm"))
            return scaled(whole, part, count, 10 * Length::nanometresPerMillimetre,
                          Notation::Centimetre);
        if (restIs(" m"))
            return scaled(whole, part, count, 1'000 * Length::nanometresPerMillimetre,
                          Notation::Metre);
        return std::nullopt;
    }

    static std::optional<WrittenLength> scaled(std::int64_t whole, std::int64_t part,
                                               std::size_t decimals, std::int64_t unit,
                                               Notation notation) {
        const std::int64_t scale = powersOfTen[decimals];
        if (part * unit % scale != 0)
            return std::nullopt;
        return WrittenLength(Length::fromNanometres(whole * unit + part * unit / scale), notation);
    }

    std::optional<WrittenLength> numberAndUnit(std::int64_t whole) {
        if (restIs(" mm"))
            return WrittenLength(Length::millimetres(whole), Notation::Millimetre);
        if (restIs(" cm"))
            return WrittenLength(Length::millimetres(10 * whole), Notation::Centimetre);
        if (restIs(" m"))
            return WrittenLength(Length::millimetres(1'000 * whole), Notation::Metre);
        if (restIs(" ft"))
            return WrittenLength(Length::inches(12 * whole), Notation::FeetInches);
        if (m_end - m_at > 3 && m_at[1] == 'f' && m_at[2] == 't')
            return feetAndInches(whole);
        return inches(whole);
    }

    std::optional<WrittenLength> feetAndInches(std::int64_t feet) {
        m_at += 3;
        std::int64_t whole = 0;
        // The first character was never looked at: it has to be the space of " ft ".
        if (m_at[-3] != ' ' || !take(' ') || !digits(whole))
            return std::nullopt;
        const auto rest = inches(whole);
        if (!rest || rest->length >= Length::inches(12))
            return std::nullopt;
        return WrittenLength(Length::inches(12 * feet) + rest->length, Notation::FeetInches);
    }

    /// After the digits: the rest of "12 in", "12 5/8 in", "5/8 in".
    std::optional<WrittenLength> inches(std::int64_t whole) {
        if (restIs(" in"))
            return WrittenLength(Length::inches(whole), Notation::InchFraction);
        const bool isMixed = take(' ');
        std::int64_t above = isMixed ? 0 : whole;
        if (isMixed && !digits(above))
            return std::nullopt;
        std::int64_t below = 0;
        if (!take('/') || !digits(below) || below == 0 || !restIs(" in"))
            return std::nullopt;
        const std::int64_t parts = above * Length::nanometresPerInch;
        if (parts % below != 0 || (isMixed && above >= below))
            return std::nullopt;
        return WrittenLength(Length::inches(isMixed ? whole : 0) +
                                 Length::fromNanometres(parts / below),
                             Notation::InchFraction);
    }

    const char* m_at;
    const char* m_end;
};

Error notWhole(const reading::Reading& reading) {
    const std::int64_t nearest = reading::nearestWhole(reading.nanometres);
    return reading::errorAt(
        1, text("the length is not a whole number of nanometres"),
        phrase("write %1 mm, the nearest that can be kept", numerals::decimal(nearest, 6)));
}

Result<WrittenLength> readByGrammar(std::string_view typed) {
    const auto result = reading::readLength(typed, Unit::Millimetre, CommaGrouping::Ambiguous);
    if (!result.ok())
        return result.error();
    const reading::Reading& reading = result.value();
    if (reading.isSum)
        return reading::errorAt(1, text("expected a plain length, found a sum"),
                                text("write its result, such as 12 5/8 in or 321 mm"));
    if (!reading.isUnitWritten)
        return reading::errorAt(reading.tokens.back().position,
                                text("expected a unit, found the end"),
                                text("write in, ft, mm, cm or m"));
    if (!reading::isWhole(reading.nanometres))
        return notWhole(reading);
    return WrittenLength(Length::fromNanometres(reading.nanometres.numerator), reading.notation);
}

} // namespace

Result<WrittenLength> parseWrittenLength(std::string_view text) {
    if (const auto plain = PlainLength(text).read())
        return *plain;
    return readByGrammar(text);
}

} // namespace frontwright
