#pragma once

#include "core/sheets/page_layout.h"
#include "core/sheets/sheets.h"

namespace frontwright {

/// A template with its tiles chosen, before pages are numbered.
struct Arranged {
    const Template* part = nullptr;
    Orientation orientation = Orientation::Portrait;
    PageLayout layout; ///< of the paper as it is before a printer's factors are applied
    Tiling tiling;
    std::vector<bool> isUsed;
    [[nodiscard]] std::size_t pageCount() const;
};

/// All of them in their order; where the options leave it open, each in the orientation with the
/// fewest pages. The first has a legend on its first page, and room for it on its others.
/// Error: as of pages().
Result<std::vector<Arranged>> arranged(const Project&, std::span<const Template>,
                                       const SheetOptions&);

/// A page's words under that title, with what the pages of that orientation are corrected by, in
/// the options' language.
PageText pageWords(const Project&, const Template&, const SheetOptions&, Orientation,
                   const Phrase& title);
/// "Front A2 · tile B1 · page 3 of 12"; `tile` may be empty.
Phrase pageLabel(const Template&, const std::string& tile, const std::string& number,
                 const std::string& count);

} // namespace frontwright
