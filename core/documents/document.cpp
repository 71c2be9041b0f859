#include "core/documents/document.h"

#include "core/documents/json_layout.h"
#include "core/documents/project_forms.h"
#include "core/documents/upgrade.h"
#include "core/lengths/format.h"
#include "core/lengths/parse.h"

namespace frontwright {

namespace {

using namespace documents;

constexpr Version ours{documentMajor, documentMinor};

/// Gives limits that a document does not name the notation in which they will be written, so that
/// a Project is the same after saving and opening.
struct Settling {
    Unit unit;
    void always(std::string_view, WrittenLength& length) const {
        if (const auto read = parseWrittenLength(written(length, unit)); read.ok())
            length = read.value();
    }
    /// Not written where it is the default, so it keeps that one's notation.
    void defaulted(std::string_view, const WrittenLength&, const WrittenLength&) const {}
};

Result<Project> readProject(const JsonTree& tree) {
    ReadState state(tree);
    Project project;
    readValue(Place{state, tree.root(), &project.unknowns, nullptr}, project);
    if (state.error)
        return std::move(*state.error);
    project.nextId = state.nextId;
    const Settling settling{project.style.unit};
    members(settling, project.limits);
    return project;
}

Result<Project> readOlder(std::string_view bytes, Version version) {
    const Result<std::string> text = upgraded(bytes, version, ours, caseUpgrades());
    if (!text.ok())
        return text.error();
    const Result<JsonTree> tree = JsonTree::read(text.value());
    return tree.ok() ? readProject(tree.value()) : Result<Project>(tree.error());
}

} // namespace

Result<Project> readDocument(std::string_view bytes) {
    const Result<JsonTree> tree = JsonTree::read(bytes);
    if (!tree.ok())
        return tree.error();
    const Result<Version> version = readHeader(tree.value(), caseFormat, ours);
    if (!version.ok())
        return version.error();
    if (version.value() < ours)
        return readOlder(bytes, version.value());
    Result<Project> read = readProject(tree.value());
    if (version.value() == ours || !read.ok())
        return read;
    // Its number is kept like its members: saved as ours, the next program would pass over them.
    Project project = std::move(read).value();
    project.unknowns.emplace(project.unknowns.begin(), "version",
                             '"' + textOf(version.value()) + '"');
    return project;
}

std::string writeDocument(const Project& project) {
    std::string json;
    const WriteState state{project.style.unit, project.presets};
    writeValue(Target{json, state, nullptr, nullptr}, project);
    return layOutJson(json);
}

} // namespace frontwright
