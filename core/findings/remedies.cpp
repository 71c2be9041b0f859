#include "core/findings/remedying.h"
#include "core/plan/kind_table.h"

#include <algorithm>

namespace frontwright {

using namespace remedying;

namespace {

/// Whether the finding is told once for each side of a front.
bool isPerSide(FindingCode code) {
    return code == FindingCode::OverlayMissing || code == FindingCode::FrontOffCase ||
           code == FindingCode::GapTight || code == FindingCode::GapTightens ||
           code == FindingCode::InsetBinds || code == FindingCode::OverlayLost ||
           code == FindingCode::FrontAtWall || code == FindingCode::FrontAtNeighbour ||
           code == FindingCode::FrontAtTrim;
}

std::optional<std::uint32_t> bankOf(const Plan& plan, const Finding& finding) {
    const FrontPlan* front = finding.where.opening ? plan.frontOf(*finding.where.opening) : nullptr;
    return front == nullptr ? std::nullopt : std::optional(front->bank);
}

/// The same thing at the same place, whatever its figures are now. Gaps are uneven by the bank,
/// and movement is told once of all fronts that move too much.
bool isSame(const Finding& a, const Plan& planOfA, const Finding& b, const Plan& planOfB) {
    if (a.code != b.code || a.fault != b.fault)
        return false;
    if (a.code == FindingCode::GapsUneven || a.code == FindingCode::GapsGoUneven ||
        a.code == FindingCode::StepOffPitch)
        return bankOf(planOfA, a) == bankOf(planOfB, b);
    if (a.code == FindingCode::SlotForMovement || a.code == FindingCode::ClearanceSmall)
        return true;
    return a.where.opening == b.where.opening && a.where.other == b.where.other &&
           a.where.member == b.where.member && (!isPerSide(a.code) || a.where.side == b.where.side);
}

/// How a trial of a remedy came out.
struct Trial {
    bool cures = false;
    std::size_t newOnes = 0; ///< findings as grave as the cured one that were not there before
};

class Trials {
public:
    Trials(const Finding& finding, const Project& project, const Catalogue& catalogue,
           const Plan& plan)
        : m_finding(finding),
          m_project(project),
          m_catalogue(catalogue),
          m_plan(plan),
          m_before(judge(project, plan)) {}

    [[nodiscard]] Trial of(const Remedy& remedy) const {
        const Result<Project> changed = remedy.apply(m_project);
        if (!changed.ok())
            return {};
        const Result<Plan> plan = makePlan(changed.value(), m_catalogue);
        if (!plan.ok())
            return {};
        Trial trial{true, 0};
        for (const Finding& after : judge(changed.value(), plan.value())) {
            if (isSame(after, plan.value(), m_finding, m_plan))
                return {};
            if (after.severity > m_finding.severity || wasThere(after, plan.value()))
                continue;
            // Graver, or as grave where that spoils a part or will not work: one would go in
            // circles.
            if (after.severity < m_finding.severity || after.severity <= Severity::WontWork)
                return {};
            ++trial.newOnes;
        }
        return trial;
    }

private:
    [[nodiscard]] bool wasThere(const Finding& after, const Plan& plan) const {
        return std::any_of(m_before.begin(), m_before.end(), [&](const Finding& before) {
            return isSame(before, m_plan, after, plan) && before.severity <= after.severity;
        });
    }

    const Finding& m_finding;
    const Project& m_project;
    const Catalogue& m_catalogue;
    const Plan& m_plan;
    std::vector<Finding> m_before;
};

using enum FindingCode;
/// Who looks for what cures a finding; nobody where the maker has to decide.
constexpr auto searches = std::to_array<ForKinds<FindingCode, void (*)(const Search&)>>({
    {ScrewThroughShowFace, NoScrewFits, forScrewLength},
    {HoleInBottom, HoleAtRunner, forScrewHole},
    {WallThinUnderHead, WallThinUnderHead, forWallUnderHead},
    {FrontMissesWall, FrontMissesWall, forSharedWall},
    {FixedFrontNoRoom, FixedFrontNoRoom, forFixedFront},
    {FixedFrontNoFrame, FixedFrontNoFrame, forFixedWithoutFrame},
    {HoleOffMember, HoleOffMember, forScrewHole},
    {SlotForMovement, SlotForMovement, forMovement},
    {BoltTooShort, CounterboreTooDeep, forBolt},
    {BackplateOffField, HandlesCollide, forHandle},
    {FrontsCollide, GapTight, forGap},
    {GapsUneven, GapsUneven, forUnevenGaps},
    {FrontOffCase, OverlayMissing, forOverlay},
    {FrontAtWall, FrontAtTrim, forSurround},
    {StepOffPitch, StepOffPitch, forStep},
    {FillerNoThickness, FillerBends, forFiller},
    {GapCloses, ClearanceSmall, forSeason},
    {MoistureBeyondRange, WoodUnknown, nullptr},
    {FieldEmpty, ProfileTooDeep, forProfile},
    {BoxNoRoom, BottomOutOfWall, forBox},
    {AnchorCase, AnchorCase, nullptr},
    {HoldingWeak, HoldingWeak, forHolding},
    {ScrewNearEdge, ScrewsCrowded, forScrewDistance},
    {ScrewRowsNear, ScrewRowsNear, forScrewRows},
    {PilotHoleMissing, ClearanceHoleTight, forDrills},
    {HeadBearsLittle, HeadBearsLittle, forScrewHead},
    {BoltHoleTight, BoltHoleTight, nullptr},
    {EngagementThin, EngagementThin, forEngagement},
    {RunnerOverloaded, RunnerOverloaded, forRunnerLoad},
    {RunnerTooLong, BoxSticks, forRunner},
    {FitsMixed, FitsMixed, forMixedFits},
    {FittingOffField, FittingOffFront, forFittingPlace},
    {FittingScrewThrough, NoFittingScrewFits, forFittingScrew},
    {MortiseTooDeep, MortiseTooDeep, forMortise},
    {FittingsCollide, FittingsCollide, forFittingPlace},
    {HoleAtFitting, HoleAtFitting, forScrewHole},
    {CentresMixed, CentresMixed, forCentres},
    {OfBoard, OfBoard, nullptr},
});
static_assert(holdsEachOnce(searches, lastFindingCode));

void propose(const Search& search) {
    if (const auto look = valueFor(searches, search.finding.code))
        look(search);
}

/// All that may cure it, not tried yet; what holds for the whole case comes last.
std::vector<Remedy> proposals(const Finding& finding, const Project& project,
                              const Catalogue& catalogue, const Plan& plan, LengthStyle style) {
    if (!finding.where.opening)
        return {};
    if (finding.fault)
        return forBoard(finding, project, catalogue, plan, style);
    const FrontPlan* front = plan.frontOf(*finding.where.opening);
    if (front == nullptr)
        return {};
    std::vector<Remedy> proposed, forCase;
    propose({finding, project, catalogue, plan, *front, style, proposed, forCase});
    std::move(forCase.begin(), forCase.end(), std::back_inserter(proposed));
    return proposed;
}

/// As many as a maker reads.
constexpr std::size_t mostRemedies = 5;

} // namespace

std::vector<Remedy> remedies(const Finding& finding, const Project& project,
                             const Catalogue& catalogue, const Plan& plan, LengthStyle style) {
    std::vector<Remedy> proposed = proposals(finding, project, catalogue, plan, style);
    if (proposed.empty())
        return {};
    const Trials trials(finding, project, catalogue, plan);
    std::vector<Remedy> clean, others;
    for (Remedy& remedy : proposed) {
        if (clean.size() == mostRemedies)
            break;
        const Trial trial = trials.of(remedy);
        if (trial.cures)
            (trial.newOnes == 0 ? clean : others).push_back(std::move(remedy));
    }
    std::move(others.begin(), others.end(), std::back_inserter(clean));
    clean.resize(std::min(clean.size(), mostRemedies));
    return clean;
}

} // namespace frontwright
