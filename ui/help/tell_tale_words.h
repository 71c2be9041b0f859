#pragma once

#include "core/sheets/calibration.h"

#include <QString>

#include <optional>

namespace frontwright {

/// What happened, in the maker's words.
QString causeWords(ScaleCause);
/// What to do about it.
QString causeRemedy(ScaleCause);

/// The table of tell-tale sizes as rich text, for the help and for a print that came out wrong;
/// the likeliest cause is marked by an arrow and bold.
QString tellTaleTable(std::optional<ScaleCause> likeliest = std::nullopt);

} // namespace frontwright
