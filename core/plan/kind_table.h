#pragma once

#include <array>
#include <cstddef>

namespace frontwright {

/// One value for all kinds of an enumeration from `first` to `last`, in the order of the
/// enumerators: a row of a table that stands in for a long switch.
template<class Kind, class Value>
struct ForKinds {
    Kind first;
    Kind last;
    Value value;
};
template<class Kind, class Value, std::size_t rows>
using KindTable = std::array<ForKinds<Kind, Value>, rows>;

/// Whether the rows follow one another from the first enumerator (of value 0) to `last` without a
/// gap: to be asserted beside each table, so that the compiler names every table that a new kind
/// has to enter.
template<class Kind, class Value, std::size_t rows>
constexpr bool holdsEachOnce(const KindTable<Kind, Value, rows>& table, Kind last) {
    auto next = static_cast<std::size_t>(0);
    for (const auto& row : table) {
        if (static_cast<std::size_t>(row.first) != next || row.last < row.first)
            return false;
        next = static_cast<std::size_t>(row.last) + 1;
    }
    return next == static_cast<std::size_t>(last) + 1;
}

/// Precondition: the table holds the kind.
template<class Kind, class Value, std::size_t rows>
constexpr const Value& valueFor(const KindTable<Kind, Value, rows>& table, Kind kind) {
    std::size_t row = 0;
    while (table[row].last < kind)
        ++row;
    return table[row].value;
}

} // namespace frontwright
