#include "core/lengths/numerals.h"

#include <numeric>

namespace frontwright::numerals {
namespace {

/// Also right for the least 64-bit number.
std::uint64_t magnitude(std::int64_t value) {
    const auto bits = static_cast<std::uint64_t>(value);
    return value < 0 ? ~bits + 1 : bits;
}

} // namespace

std::int64_t nearestCount(std::int64_t value, std::int64_t step) {
    const std::int64_t count = value / step;
    const std::int64_t rest = value % step;
    const std::int64_t size = rest < 0 ? -rest : rest;
    if (size < step - size)
        return count;
    return value < 0 ? count - 1 : count + 1;
}

std::string mixedNumber(std::int64_t count, std::int64_t denominator) {
    const std::uint64_t size = magnitude(count);
    const auto parts = static_cast<std::uint64_t>(denominator);
    const std::uint64_t whole = size / parts;
    const std::uint64_t rest = size % parts;
    std::string text = count < 0 ? "-" : "";
    if (whole != 0 || rest == 0)
        text += std::to_string(whole);
    if (rest == 0)
        return text;
    if (whole != 0)
        text += ' ';
    const std::uint64_t common = std::gcd(rest, parts);
    return text + std::to_string(rest / common) + "/" + std::to_string(parts / common);
}

std::string decimal(std::int64_t value, int decimals) {
    std::string digits = std::to_string(magnitude(value));
    const auto places = static_cast<std::size_t>(decimals);
    if (digits.size() <= places)
        digits.insert(0, places + 1 - digits.size(), '0');
    const std::string whole = digits.substr(0, digits.size() - places);
    std::string part = digits.substr(digits.size() - places);
    while (!part.empty() && part.back() == '0')
        part.pop_back();
    const std::string sign = value < 0 ? "-" : "";
    return sign + (part.empty() ? whole : whole + "." + part);
}

} // namespace frontwright::numerals
