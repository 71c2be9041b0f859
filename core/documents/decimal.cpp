#include "core/documents/decimal.h"

namespace frontwright::documents {

namespace {

constexpr std::int64_t million = 1'000'000;
constexpr std::size_t decimals = 6;

std::optional<std::int64_t> wholeFrom(std::string_view digits) {
    constexpr std::size_t most = 9;
    if (digits.empty() || digits.size() > most)
        return std::nullopt;
    std::int64_t value = 0;
    for (const char c : digits) {
        if (c < '0' || c > '9')
            return std::nullopt;
        value = value * 10 + (c - '0');
    }
    return value;
}

} // namespace

std::optional<std::int64_t> millionthsFrom(std::string_view number) {
    const std::size_t point = number.find('.');
    const std::optional<std::int64_t> whole = wholeFrom(number.substr(0, point));
    if (!whole)
        return std::nullopt;
    if (point == std::string_view::npos)
        return *whole * million;
    std::string part(number.substr(point + 1));
    if (part.empty() || part.size() > decimals)
        return std::nullopt;
    part.resize(decimals, '0');
    const std::optional<std::int64_t> fraction = wholeFrom(part);
    if (!fraction)
        return std::nullopt;
    return *whole * million + *fraction;
}

std::string textOfMillionths(std::int64_t millionths) {
    std::string text = std::to_string(millionths / million);
    std::string part = std::to_string(million + millionths % million).substr(1);
    part.resize(part.find_last_not_of('0') + 1);
    return part.empty() ? text : text + '.' + part;
}

} // namespace frontwright::documents
