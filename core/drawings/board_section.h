#pragma once

#include "core/drawings/drawing.h"
#include "core/drawings/section.h"
#include "core/words/language.h"

namespace frontwright {

struct BoardSectionOptions {
    LengthStyle style;
    double paperScale = 0.25;
    Side side = Side::Left; ///< whose runner and keeper strip are seen: left or right
    SectionNotes notes = SectionNotes::Below;
    Language language = {}; ///< of its words
};

/// Upright section through a pull-out board from front to back, seen from the right: the frame's
/// face to the left, x = depth behind it, y = height above the opening's lower edge. Members above
/// and below, the case's back, the board closed (cut) and pulled out (phantom line), its runner and
/// the pieces of its keeper strip with their screws; real dimensions.
///
///     ┌ ─ pulled out ─ ┬─frame─┬─ keeper piece ─┐   ┌─ piece ─┐ |
///     └ ─ ─ ─ ─ ─ ─ ─ ─┴──────── board ─────────────────────┘   | back
///                      └─frame─┴──────── runner ────────────────┘
Drawing boardSection(const Plan&, std::uint32_t board, const BoardSectionOptions&);

/// Level section through a pull-out board, seen from above: the frame's face below, x from the
/// opening's left edge, y = depth behind the face. The members beside the opening, the side panels
/// with the furring on them, the board closed (cut) and pulled out (phantom line), the case's back.
///
///     ┌panel┬furring┬────────── back ──────────┬furring┬panel┐
///     │     │       │┌──────── board ─────────┐│       │     │
///     └─────┴─┬stile┴┤                        ├┴stile┬─┴─────┘
///                    └ ─ ─ ─ pulled out ─ ─ ─ ┘
Drawing boardLevelSection(const Plan&, std::uint32_t board, const BoardSectionOptions&);

} // namespace frontwright
