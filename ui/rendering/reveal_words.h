#pragma once

#include "core/plan/reveals.h"

#include <QStringList>

namespace frontwright {

struct Work;

/// One sentence for each kind of reveal that the case has: whether they are even, else the smallest
/// and the largest with their places.
QStringList revealSentences(const Work&, LengthStyle);

/// "smallest 5/8 in", "largest 3/4 in": for a tag beside a reveal.
enum class RevealExtreme : std::uint8_t { Smallest, Largest };
QString revealTag(RevealExtreme, Length width, LengthStyle);

} // namespace frontwright
