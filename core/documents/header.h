#pragma once

#include "core/documents/json_tree.h"

#include <optional>
#include <string_view>

namespace frontwright::documents {

inline constexpr std::string_view caseFormat = "frontwright-case";
inline constexpr std::string_view catalogueFormat = "frontwright-catalogue";

/// A document's "version": "1.0".
struct Version {
    int major = 0;
    int minor = 0;
    friend auto operator<=>(const Version&, const Version&) = default;
};
std::string textOf(Version version);
/// nullopt unless it is two whole numbers with a point between, as in "1.0".
std::optional<Version> versionFrom(std::string_view written);

/// Reads "format" and "version" before anything else is looked at. Error: it is another format, or
/// a newer major version than ours.
Result<Version> readHeader(const JsonTree& tree, std::string_view format, Version ours);

} // namespace frontwright::documents
