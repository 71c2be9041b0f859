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
           code == FindingCode::InsetBinds || code == FindingCode::OverlayLost;
}

std::optional<std::uint32_t> bankOf(const Plan& plan, const Finding& finding) {
    const FrontPlan* front = finding.where.opening ? plan.frontOf(*finding.where.opening) : nullptr;
    return front == nullptr ? std::nullopt : std::optional(front->bank);
}

/// The same thing at the same place, whatever its figures are now. Gaps are uneven by the bank.
bool isSame(const Finding& a, const Plan& planOfA, const Finding& b, const Plan& planOfB) {
    if (a.code != b.code)
        return false;
    if (a.code == FindingCode::GapsUneven || a.code == FindingCode::GapsGoUneven)
        return bankOf(planOfA, a) == bankOf(planOfB, b);
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
    {SlotForMovement, SlotForMovement, nullptr},
    {BoltTooShort, CounterboreTooDeep, forBolt},
    {BackplateOffField, HandlesCollide, forHandle},
    {FrontsCollide, GapTight, forGap},
    {GapsUneven, GapsUneven, forUnevenGaps},
    {FrontOffCase, OverlayMissing, forOverlay},
    {GapCloses, ClearanceSmall, forSeason},
    {MoistureBeyondRange, WoodUnknown, nullptr},
    {FieldEmpty, ProfileTooDeep, forProfile},
    {BoxNoRoom, BottomOutOfWall, forBox},
    {AnchorCase, AnchorCase, nullptr},
    {HoldingWeak, HoldingWeak, forHolding},
    {ScrewNearEdge, ScrewsCrowded, forScrewDistance},
    {PilotHoleMissing, ClearanceHoleTight, forDrills},
    {HeadBearsLittle, HeadBearsLittle, forScrewHead},
    {BoltHoleTight, BoltHoleTight, nullptr},
    {EngagementThin, EngagementThin, forEngagement},
    {RunnerOverloaded, RunnerOverloaded, forRunnerLoad},
    {FitsMixed, FitsMixed, forMixedFits},
    {FittingOffField, FittingOffFront, forFittingPlace},
    {FittingScrewThrough, NoFittingScrewFits, forFittingScrew},
    {MortiseTooDeep, MortiseTooDeep, forMortise},
    {FittingsCollide, FittingsCollide, forFittingPlace},
    {HoleAtFitting, HoleAtFitting, forScrewHole},
    {CentresMixed, CentresMixed, forCentres},
});
static_assert(holdsEachOnce(searches, lastFindingCode));

void propose(const Search& search) {
    if (const auto look = valueFor(searches, search.finding.code))
        look(search);
}

/// As many as a maker reads.
constexpr std::size_t mostRemedies = 5;

} // namespace

std::vector<Remedy> remedies(const Finding& finding, const Project& project,
                             const Catalogue& catalogue, const Plan& plan, LengthStyle style) {
    const FrontPlan* front = finding.where.opening ? plan.frontOf(*finding.where.opening) : nullptr;
    if (front == nullptr)
        return {};
    std::vector<Remedy> proposed, forCase;
    propose({finding, project, catalogue, plan, *front, style, proposed, forCase});
    std::move(forCase.begin(), forCase.end(), std::back_inserter(proposed));
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
