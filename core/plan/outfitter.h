#pragma once

#include "core/fastening/thin_rim.h"
#include "core/plan/plan.h"

#include <deque>
#include <optional>

namespace frontwright {

/// Gives fronts their thickness, profile, field, box, hardware and mounting screws. What the case
/// decides is looked up in the catalogue once, and a thin rim is solved once for fronts of one
/// profile and thickness.
class Outfitter {
public:
    /// Both must outlive this and what it outfits.
    Outfitter(const Project&, const Catalogue&);

    /// Reads the front's place and choices. Error, without a
    /// place: an id is not in the catalogue.
    std::optional<Error> outfit(FrontPlan&);

private:
    struct Handle {
        const HardwareForm* form = nullptr;
        const Bolt* bolt = nullptr;
    };
    struct SolvedRim {
        const Profile* profile;
        Length thickness;
        ThinRim rim;
    };
    [[nodiscard]] Handle handleOf(const HardwareSpec&) const;
    std::optional<Error> buildBox(FrontPlan&) const;
    std::optional<Error> placeHardware(FrontPlan&, const FrontStock&) const;
    std::optional<Error> placeScrews(FrontPlan&, const FrontStock&);
    void workOutHolding(FrontPlan&, const FrontStock&) const;
    void weigh(FrontPlan&) const;
    const ThinRim& rimOf(const FrontPlan&);

    const Project& m_project;
    const Catalogue& m_catalogue;
    const RunnerKind* m_runner; ///< the case's; null where it is not in the catalogue
    const WoodScrew* m_screw;   ///< likewise
    const Species* m_wood;      ///< likewise
    Handle m_handle;            ///< likewise
    Length m_rowGrid;
    std::deque<SolvedRim> m_rims; ///< the last few
};

} // namespace frontwright
