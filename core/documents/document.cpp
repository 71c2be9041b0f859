#include "core/documents/document.h"

#include "core/documents/json_layout.h"
#include "core/documents/project_forms.h"
#include "core/documents/upgrade.h"

namespace frontwright {

namespace {

using namespace documents;

constexpr Version ours{documentMajor, documentMinor};

Result<Project> readProject(const JsonTree& tree) {
    ReadState state(tree);
    Project project;
    readValue(Place{state, tree.root(), &project.unknowns, nullptr}, project);
    if (state.error)
        return std::move(*state.error);
    project.nextId = state.nextId;
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
    return version.value() < ours ? readOlder(bytes, version.value()) : readProject(tree.value());
}

std::string writeDocument(const Project& project) {
    std::string json;
    writeValue(Target{json, project.style.unit, nullptr, nullptr}, project);
    return layOutJson(json);
}

} // namespace frontwright
