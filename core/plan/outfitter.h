#pragma once

#include "core/plan/alike_fronts.h"
#include "core/plan/thin_rims.h"

#include <optional>

namespace frontwright {

/// Gives fronts their thickness, profile, field, box, hardware and mounting screws, and tells how
/// they move. What the case decides is looked up in the catalogue once, a thin rim is solved once
/// for fronts of one profile and thickness, and all of it is worked out once for fronts of one size
/// that decide the same and overlay the same: rows of drawers side by side.
class Outfitter {
public:
    /// Project and catalogue must outlive this and what it outfits. `moisture`: where there is air.
    Outfitter(const Project&, const Catalogue&, const std::optional<SeasonMoisture>& moisture);

    /// Reads the front's use, place and choices; the layout is the fronts'. The front must stay
    /// where it is while others are outfitted. Error, without a place: an id is not in the
    /// catalogue.
    std::optional<Error> outfit(FrontPlan&, const Layout&);

private:
    struct Handle {
        const HardwareForm* form = nullptr;
        const Bolt* bolt = nullptr;
    };
    std::optional<Error> workOut(FrontPlan&, const Layout&);
    std::optional<Error> fitOut(FrontPlan&, const CaseRect& behind);
    std::optional<Error> fitOutFixed(FrontPlan&, const Layout&);
    std::optional<Error> fitOutDoor(FrontPlan&) const;
    [[nodiscard]] Handle handleOf(const HardwareSpec&) const;
    std::optional<Error> buildBox(FrontPlan&, const CaseRect& behind) const;
    std::optional<Error> placeHardware(FrontPlan&, const FrontStock&, const HardwareSpec&) const;
    std::optional<Error> placeFittings(FrontPlan&, const FrontStock&) const;
    Result<const WoodScrew*> screwOf(const FrontPlan&) const;
    [[nodiscard]] MountingPlace placeOf(const FrontPlan&, const FrontStock&, const WoodScrew&);
    std::optional<Error> placeScrews(FrontPlan&, const FrontStock&);
    void workOutHolding(FrontPlan&, const FrontStock&) const;
    void weigh(FrontPlan&, const CaseRect& behind) const;
    void letMove(FrontPlan&) const;
    /// Of the box's height, its sides flat-sawn. Precondition: there is air.
    [[nodiscard]] std::optional<Length> swellingOf(const FrontPlan&) const;

    const Project& m_project;
    const Catalogue& m_catalogue;
    std::optional<SeasonMoisture> m_moisture;
    const RunnerKind* m_runner; ///< the case's; null where it is not in the catalogue
    const WoodScrew* m_screw;   ///< likewise
    const Species* m_wood;      ///< likewise
    Handle m_handle;            ///< likewise
    Length m_rowGrid;
    ThinRims m_rims;
    AlikeFronts m_done; ///< those worked out last
};

} // namespace frontwright
