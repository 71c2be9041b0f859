#pragma once

#include "core/findings/finding.h"
#include "core/plan/chosen.h"

#include <string>
#include <vector>

namespace frontwright::remedying {

using Edit = std::function<Result<Project>(const Project&)>;

/// A remedy's name, an imperative: of this front, and where the same is decided for the whole case.
struct Label {
    Phrase ofFront;   ///< "Use 1 in screws in B3"
    Phrase wholeCase; ///< "Use 1 in screws in the whole case"
};

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

    void propose(Phrase label, const Edit& edit) const;
    // A decision for this front; where it follows the case, the same for the case too.
    void propose(const Label&, const MountingSpec&) const;
    void propose(const Label&, const HardwareSpec&) const;
    void propose(const Label&, const BoxSpec&) const;
    void propose(const Label&, const Profile&) const;
    void propose(const Label&, const Stock&) const;

    [[nodiscard]] std::string name() const; ///< of the front: "B3"
    [[nodiscard]] std::string say(Length) const;
    /// What a maker sets by hand: whole 1/16 in or whole millimetres.
    [[nodiscard]] Length grid() const;
    [[nodiscard]] Length down(Length) const; ///< to the grid
    [[nodiscard]] Length up(Length) const;   ///< to the grid
};

// Labels of what several themes propose.
Label useBolts(const Search&, Length);
Label boltHandle(const Search&, MountingWay);
Label widenProfile(const Search&, Length width);

/// As high as the opening leaves, where the maker gave its height.
void proposeBoxHeight(const Search&);

// Proposals by theme, best first.
void forScrewLength(const Search&);
void forWallUnderHead(const Search&);
void forScrewHole(const Search&);
void forBolt(const Search&);
void forHandle(const Search&);
void forGap(const Search&);
void forUnevenGaps(const Search&);
void forOverlay(const Search&);
void forSurround(const Search&);
void forStep(const Search&);
void forProfile(const Search&);
void forBox(const Search&);
void forSeason(const Search&);
void forMovement(const Search&);
void forScrewRows(const Search&);
void forHolding(const Search&);
void forScrewDistance(const Search&);
void forDrills(const Search&);
void forScrewHead(const Search&);
void forEngagement(const Search&);
void forRunnerLoad(const Search&);
void forRunner(const Search&);
void forMixedFits(const Search&);
void forFittingPlace(const Search&);
void forFittingScrew(const Search&);
void forMortise(const Search&);
void forCentres(const Search&);
void forSharedWall(const Search&);
void forFixedFront(const Search&);
void forFixedWithoutFrame(const Search&);
void forFiller(const Search&);

/// About a pull-out board: no front. Empty where there is no such board any more.
std::vector<Remedy> forBoard(const Finding&, const Project&, const Catalogue&, const Plan&,
                             LengthStyle);

/// The allowed place nearest to `p`, on the search's grid where that is allowed too; nullopt where
/// the region is empty.
std::optional<WallPoint> nearestAllowed(const WallRegion&, WallPoint p, Length grid);

} // namespace frontwright::remedying
