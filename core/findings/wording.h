#pragma once

#include "core/findings/finding.h"
#include "core/geometry/frames.h"
#include "core/lengths/format.h"
#include "core/plan/chosen.h"
#include "core/plan/figures.h"

namespace frontwright::wording {

/// A finding about to be put into words. The figures, whose meaning stands at the rule that tells
/// them (judge_*.cpp), are enough for every sentence; `front` is null for what is told of the whole
/// case.
struct Told {
    const Finding& finding;
    const Project& project;
    const Plan& plan;
    const FrontPlan* front;
    LengthStyle style;
    const PlannedBoard* board = nullptr; ///< that the finding is about
    /// A sentence's lengths are as a maker measures; a formula's as precise as its sum needs.
    enum class In : std::uint8_t { Sentence, Formula } in = In::Sentence;

    [[nodiscard]] Length figure(std::size_t i) const { return finding.figures[i]; }
    /// In a sentence to 1/64 in, lest a sentence about 3/32 in say "≈ 1/8 in"; what would be shown
    /// as 0 without being it is "less than 1/64 in" (0.1 mm).
    [[nodiscard]] Phrase say(Length length, Rounding rounding = Rounding::Nearest) const;
    [[nodiscard]] Phrase say(std::size_t i) const { return say(figure(i)); }
    /// A least is not shown less than it is, nor a most more.
    [[nodiscard]] Phrase sayLeast(std::size_t i) const { return say(figure(i), Rounding::Up); }
    [[nodiscard]] Phrase sayMost(std::size_t i) const { return say(figure(i), Rounding::Down); }
    /// The same without the mark: for estimates that say "about" themselves.
    [[nodiscard]] Phrase sayAbout(std::size_t i) const;
    /// The end of a formula: "= 1/8 in", "= 0.413 in ≈ 13/32 in".
    [[nodiscard]] Phrase equals(Length length) const;
    [[nodiscard]] Phrase equals(std::size_t i) const { return equals(figure(i)); }
    /// Precondition: the finding is about a side.
    [[nodiscard]] Side side() const { return finding.where.side.value_or(Side::Left); }
    /// What is said of the finding's side: other languages inflect its name, so that each has a
    /// pattern of its own.
    [[nodiscard]] Phrase bySide(const PerSide<Text>& patterns, std::vector<Phrase> parts) const;
    /// "8.0 %", "0.134 in" in the style's decimal mark.
    [[nodiscard]] std::string number(double value, int decimals) const;

private:
    /// nullopt where it is shown as 0 without being it.
    [[nodiscard]] std::optional<std::string>
    shownFinely(Length length, Rounding rounding = Rounding::Nearest) const;
};

struct Words {
    Phrase sentence;
    Phrase reason;
    Source source;
};

// wording_screws.cpp
Words screwThroughShowFace(const Told&);
Words tipCoverThin(const Told&);
Words penetrationShort(const Told&);
Words noScrewFits(const Told&);
Words wallThinUnderHead(const Told&);
Words slotForMovement(const Told&);
// wording_holes.cpp
Words holeInBottom(const Told&);
Words recessToolBlocked(const Told&);
Words holeAtBoxSide(const Told&);
Words holeAtTopEdge(const Told&);
Words holeAtHardware(const Told&);
Words holeOffFront(const Told&);
Words holeAtRunner(const Told&);
// wording_faces.cpp
Words frontMissesWall(const Told&);
Words fixedFrontNoRoom(const Told&);
Words fixedFrontNoFrame(const Told&);
Words holeOffMember(const Told&);
Words fillerNoThickness(const Told&);
Words fillerBends(const Told&);
// wording_bolts.cpp
Words boltTooShort(const Told&);
Words boltBottomsOut(const Told&);
Words noBoltFits(const Told&);
Words counterboreTooDeep(const Told&);
Words backplateOffField(const Told&);
Words handleOffFront(const Told&);
Words accessHoleOffWall(const Told&);
Words handlesCollide(const Told&);
// wording_fronts.cpp
Words frontsCollide(const Told&);
Words gapTight(const Told&);
Words gapsUneven(const Told&);
Words frontOffCase(const Told&);
Words overlayMissing(const Told&);
Words fieldEmpty(const Told&);
Words profileTooDeep(const Told&);
// wording_surroundings.cpp
Words frontAtWall(const Told&);
Words frontAtNeighbour(const Told&);
Words frontAtTrim(const Told&);
Words stepOffPitch(const Told&);
// wording_season.cpp
Words gapCloses(const Told&);
Words gapTightens(const Told&);
Words insetBinds(const Told&);
Words overlayLost(const Told&);
Words gapsGoUneven(const Told&);
Words clearanceSmall(const Told&);
Words moistureBeyondRange(const Told&);
Words woodUnknown(const Told&);
// wording_boxes.cpp
Words boxNoRoom(const Told&);
Words boxTooTall(const Told&);
Words boxTooDeep(const Told&);
Words bottomOutOfWall(const Told&);
Words anchorCase(const Told&);
// wording_holding.cpp
Words holdingWeak(const Told&);
Words screwNearEdge(const Told&);
Words screwsCrowded(const Told&);
Words screwRowsNear(const Told&);
Words pilotHoleMissing(const Told&);
Words pilotHoleWrong(const Told&);
Words clearanceHoleTight(const Told&);
Words headBearsLittle(const Told&);
Words boltHoleTight(const Told&);
Words engagementThin(const Told&);
Words runnerOverloaded(const Told&);
Words fitsMixed(const Told&);
// wording_runners.cpp
Words runnerTooLong(const Told&);
Words noRunnerFits(const Told&);
Words boxOffRunner(const Told&);
Words boxLowForRunner(const Told&);
Words boxNarrowForRunner(const Told&);
Words bottomOnRunner(const Told&);
Words runnerOutOfOpening(const Told&);
Words sideClearanceOff(const Told&);
Words boxSticks(const Told&);
// wording_fittings.cpp
Words fittingOffField(const Told&);
Words fittingOffFront(const Told&);
Words fittingScrewThrough(const Told&);
Words fittingScrewThin(const Told&);
Words fittingScrewShort(const Told&);
Words noFittingScrewFits(const Told&);
Words mortiseTooDeep(const Told&);
Words fittingsCollide(const Told&);
Words holeAtFitting(const Told&);
Words centresMixed(const Told&);

// wording_boards.cpp
Words ofBoard(const Told&);
/// Where more fronts than the finding's move too much: "It is the same with A2, A3 and B1."
Phrase withTheOthers(const Told&, Phrase sentence);
/// Of a finding about an earlier state of the case.
Words gone();

} // namespace frontwright::wording
