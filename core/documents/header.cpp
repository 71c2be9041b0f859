#include "core/documents/header.h"

#include "core/documents/json_text.h"

#include <charconv>

namespace frontwright::documents {

namespace {

NodeIndex member(const JsonTree& tree, std::string_view name) {
    for (NodeIndex i = tree.firstChild(tree.root()); i < tree.next(tree.root()); i = tree.next(i))
        if (tree.name(i) == name)
            return i;
    return noNode;
}

std::optional<int> wholeFrom(std::string_view digits) {
    int value = 0;
    constexpr std::size_t most = 6;
    const auto [end, error] = std::from_chars(digits.data(), digits.data() + digits.size(), value);
    const bool whole = error == std::errc() && end == digits.data() + digits.size();
    const bool plain = !digits.empty() && digits.size() <= most && digits[0] != '-' &&
                       (digits.size() == 1 || digits[0] != '0');
    return whole && plain ? std::optional(value) : std::nullopt;
}

} // namespace

std::string textOf(Version version) {
    return std::to_string(version.major) + '.' + std::to_string(version.minor);
}

std::optional<Version> versionFrom(std::string_view written) {
    const std::size_t point = written.find('.');
    if (point == std::string_view::npos)
        return std::nullopt;
    const auto major = wholeFrom(written.substr(0, point));
    const auto minor = wholeFrom(written.substr(point + 1));
    if (!major || !minor)
        return std::nullopt;
    return Version{*major, *minor};
}

Result<Version> readHeader(const JsonTree& tree, std::string_view format, Version ours) {
    if (tree.kind(tree.root()) != JsonKind::Object)
        return tree.errorAt(tree.root(),
                            phrase("expected an object { }, found %1", tree.found(tree.root())));
    const NodeIndex formatMember = member(tree, "format");
    if (formatMember == noNode)
        return tree.errorAt(tree.root(),
                            phrase("expected \"format\": \"%1\", found none", std::string(format)));
    if (tree.kind(formatMember) != JsonKind::String || tree.text(formatMember) != format)
        return tree.errorAt(formatMember, phrase("expected \"format\": \"%1\", found %2",
                                                 std::string(format), tree.found(formatMember)));
    const NodeIndex versionMember = member(tree, "version");
    if (versionMember == noNode)
        return tree.errorAt(tree.root(),
                            phrase("expected \"version\": \"%1\", found none", textOf(ours)));
    const std::optional<Version> version = tree.kind(versionMember) == JsonKind::String
                                               ? versionFrom(tree.text(versionMember))
                                               : std::nullopt;
    if (!version)
        return tree.errorAt(versionMember, phrase("expected \"version\": \"%1\", found %2",
                                                  textOf(ours), tree.found(versionMember)));
    if (version->major > ours.major)
        return tree.errorAt(versionMember,
                            phrase("the file has version %1, this program reads up to %2.x",
                                   textOf(*version), std::to_string(ours.major)),
                            text("open it with a newer Frontwright"));
    return *version;
}

} // namespace frontwright::documents
