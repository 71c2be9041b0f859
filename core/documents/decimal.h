#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace frontwright::documents {

/// A plain decimal number such as "1.25" in millionths, exactly. nullopt for anything else: signs,
/// exponents, more than six decimals, more than nine digits before the point.
std::optional<std::int64_t> millionthsFrom(std::string_view number);

/// Its counterpart: no more decimals than it takes. Precondition: not negative.
std::string textOfMillionths(std::int64_t millionths);

} // namespace frontwright::documents
