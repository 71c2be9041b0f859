#pragma once

#include <concepts>
#include <cstdint>
#include <string>
#include <string_view>
#include <type_traits>

namespace frontwright::documents {

/// One step down from the value that keeps unknown members (a Project, an Opening, …) to the object
/// they stand in. Lives on the stack while that object is read or written.
struct Level {
    const Level* up = nullptr;
    std::string_view name;
};

/// The key under which Unknowns keeps a member: a JSON Pointer (RFC 6901) without its first slash,
/// relative to the value that keeps it: "box/futureMember", "own/bolts/bolt-8-32/futureMember".
/// A catalogue entry's step is its id, not its place in the list.
std::string unknownKey(const Level* level, std::string_view name);

/// What the keys of everything below `level` begin with; "" for nullptr.
std::string keyPrefix(const Level* level);

/// The member's name at the end of a key, escapes resolved.
std::string nameOfKey(std::string_view lastStep);

/// A whole number's range, both ends included.
struct Whole {
    std::int64_t least;
    std::int64_t greatest;
};

/// S is T or const T: one description of a form's members serves reading and writing.
template<class S, class T>
concept Is = std::same_as<std::remove_const_t<S>, T>;

/// Catalogue entries, which are known by their id.
template<class T>
concept HasId = requires(const T& entry) {
    { entry.id } -> std::convertible_to<std::string_view>;
};

/// Objects of a list that are known by their place in it: "fittings/0/futureMember".
template<class T>
inline constexpr bool isKnownByPlace = false;

} // namespace frontwright::documents
