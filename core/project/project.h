#pragma once

#include "core/case/divisions.h"
#include "core/catalogue/catalogue.h"
#include "core/limits/limits.h"
#include "core/project/presets.h"
#include "core/wood/air.h"

#include <optional>
#include <string>

namespace frontwright {

/// What the maker decided: everything a document holds, and nothing that follows from it.
/// A value: copying is cheap enough for an undo step, since divisions are shared.
struct Project {
    std::string title;
    std::string note;  ///< one line, e.g. what to look at
    LengthStyle style; ///< the document's unit (of bare numbers) and denominator
    Presets presets;
    Case casework;
    FrontDefaults fronts;
    Limits limits;
    Catalogue own;                         ///< the maker's own entries
    std::optional<Air> air = std::nullopt; ///< none: nothing is told of the seasons
    Unknowns unknowns;
    std::int32_t nextId = firstFreeId; ///< for the next opening or member; not in documents
    friend bool operator==(const Project&, const Project&) = default;
};

/// A new case of one opening, with defaults a maker would expect in that unit.
Project newProject(Unit unit, Construction construction = Construction::FaceFrame);

} // namespace frontwright
