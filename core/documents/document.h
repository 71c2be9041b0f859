#pragma once

#include "core/project/project.h"
#include "core/results/result.h"

#include <string>
#include <string_view>
#include <vector>

namespace frontwright {

/// "frontwright-case", major.minor. Newer minor: opened, unknown members kept. Newer major: refused
/// here, both versions named.
inline constexpr int documentMajor = 1;
inline constexpr int documentMinor = 0;

/// Limits before any work: 16 MiB, depth 64, 10 000 openings, strings of 10 000 bytes.
/// The error's place is "line L, column C (case.divisions.rows[2])". Every length comes with the
/// notation it was written in (never Notation::OfDocument); lengths that are no choice of notation
/// (points, catalogue entries) are plain. Openings and members are numbered as they stand.
Result<Project> readDocument(std::string_view bytes);

/// JSON, keys in a fixed order, lengths as the maker wrote them, LF, final newline; unknown members
/// after the known ones; the version is ours, or the newer one that was read.
/// readDocument(writeDocument(p)) == p for every p that
/// a document can hold; what it cannot hold (more than the limits, a case of no width) is written
/// all the same and refused by readDocument, so check before saving.
std::string writeDocument(const Project&);

/// The program's own catalogue, one file per kind under resources/catalogue.
Result<Catalogue> readCatalogue(std::string_view bytes, std::string_view fileName);

} // namespace frontwright
