#pragma once

#include "core/edits/divisions.h"
#include "tests/core/case/laid_out.h"

namespace frontwright::testing {

/// The project of an edit that must succeed.
inline Project edited(Result<Project> result) {
    EXPECT_TRUE(result.ok()) << (result.ok() ? Phrase() : result.error().sentence());
    return result.ok() ? std::move(result).value() : Project{};
}
inline DragOutcome dragged(const Project& project, MemberId member, Length delta) {
    auto outcome = dragMember(project, member, delta);
    EXPECT_TRUE(outcome.ok()) << (outcome.ok() ? Phrase() : outcome.error().sentence());
    return outcome.ok() ? std::move(outcome).value() : DragOutcome{};
}
inline std::string refusal(const Result<Project>& result) {
    return result.ok() ? "" : result.error().sentence().english();
}

/// One bank in a case whose inside is exactly `height` high; rails 1 in.
inline Project bankOf(std::vector<Child> children, Length height) {
    return projectWith(rows(std::move(children), in(1)), in(30), height + in(3));
}
/// One row of columns in a case whose inside is exactly `width` wide; stiles 1 in.
inline Project rowOf(std::vector<Child> children, Length width) {
    return projectWith(columns(std::move(children), in(1)), width + in(3), in(30));
}
using Sizes = std::vector<Length>;

/// The region of a split's child, for looking at what is shared.
inline RegionPtr childRegion(const RegionPtr& region, std::size_t child) {
    return std::get<Split>(region->content).children.at(child).region;
}
inline const Split& splitAt(const RegionPtr& region) {
    return std::get<Split>(region->content);
}

} // namespace frontwright::testing
