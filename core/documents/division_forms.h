#pragma once

#include "core/case/divisions.h"
#include "core/documents/reading.h"
#include "core/documents/writing.h"

namespace frontwright::documents {

// The form of the tree of divisions. A region is one object: an opening with what it decides for
// itself, or a split with "columns" (left to right) or "rows" (top to bottom). Within a split the
// object also says its size by one of "size", "share" and "graduated".

inline constexpr std::size_t mostOpenings = 10'000;

/// The whole case's divisions. Ids are given in the order in which things stand.
void readValue(const Place&, RegionPtr&);
void writeValue(const Target&, const RegionPtr&);

void readValue(const Place&, Graduation&);
void writeValue(const Target&, const Graduation&);

} // namespace frontwright::documents
