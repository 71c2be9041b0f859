#pragma once

#include "core/findings/finding.h"
#include "core/plan/chosen.h"

#include <string>
#include <string_view>
#include <vector>

namespace frontwright::remedying {

using Edit = std::function<Result<Project>(const Project&)>;

/// A search for edits that may cure a finding. What is proposed is tried afterwards, on a copy, and
/// what does not cure or makes something graver is dropped: proposals may be optimistic.
struct Search {
    const Finding& finding;
    const Project& project;
    const Catalogue& catalogue;
    const Plan& plan;
    const FrontPlan& front;
    LengthStyle style;
    std::vector<Remedy>& forFront;
    std::vector<Remedy>& forCase; ///< the same decision made for all that follow the case

    /// `label` is an imperative with "%" where the front's name goes: "Use 1 in screws in %".
    void propose(std::string_view label, const Edit& edit) const;
    // A decision for this front; where it follows the case, the same for the case too.
    void propose(std::string_view label, const MountingSpec&) const;
    void propose(std::string_view label, const HardwareSpec&) const;
    void propose(std::string_view label, const BoxSpec&) const;
    void propose(std::string_view label, const Profile&) const;
    void propose(std::string_view label, const Stock&) const;

    [[nodiscard]] std::string say(Length) const;
    /// What a maker sets by hand: whole 1/16 in or whole millimetres.
    [[nodiscard]] Length grid() const;
    [[nodiscard]] Length down(Length) const; ///< to the grid
    [[nodiscard]] Length up(Length) const;   ///< to the grid
};

// Proposals by theme, best first.
void forScrewLength(const Search&);
void forWallUnderHead(const Search&);
void forScrewHole(const Search&);
void forBolt(const Search&);
void forHandle(const Search&);
void forGap(const Search&);
void forUnevenGaps(const Search&);
void forOverlay(const Search&);
void forProfile(const Search&);
void forBox(const Search&);
void forSeason(const Search&);
void forHolding(const Search&);
void forScrewDistance(const Search&);
void forDrills(const Search&);
void forEngagement(const Search&);
void forRunnerLoad(const Search&);
void forMixedFits(const Search&);

/// The allowed place nearest to `p`, on the search's grid where that is allowed too; nullopt where
/// the region is empty.
std::optional<WallPoint> nearestAllowed(const WallRegion&, WallPoint p, Length grid);

} // namespace frontwright::remedying
