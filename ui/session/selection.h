#pragma once

#include "core/case/divisions.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace frontwright {

/// What the maker has picked out, by id, so that it survives edits. Either openings or a member.
struct Selection {
    std::vector<OpeningId> openings; ///< in the order in which they were picked
    std::optional<MemberId> member;
    std::optional<std::uint32_t> mountingHole; ///< of the last opening
    std::optional<std::uint32_t> handleHole;   ///< of the last opening

    [[nodiscard]] bool isEmpty() const { return openings.empty() && !member; }
    [[nodiscard]] std::optional<OpeningId> lastOpening() const {
        return openings.empty() ? std::nullopt : std::optional(openings.back());
    }
    [[nodiscard]] bool contains(OpeningId id) const;
    static Selection of(OpeningId id) {
        return {.openings = {id}, .member = {}, .mountingHole = {}, .handleHole = {}};
    }
    static Selection of(MemberId id) {
        return {.openings = {}, .member = id, .mountingHole = {}, .handleHole = {}};
    }
    friend bool operator==(const Selection&, const Selection&) = default;
};

} // namespace frontwright
