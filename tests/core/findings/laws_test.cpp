#include "tests/core/findings/provoking.h"

#include <gtest/gtest.h>

#include <set>
#include <tuple>

// What must hold whatever the case: judged on cases by chance, with fixed seeds.
namespace frontwright {
namespace {

using testing::allProvocations;
using testing::bank;
using testing::Found;
using testing::n64;
using testing::Provocation;
using testing::randomProject;
using testing::withOpenings;

/// Randomly divided, with a bevel and screws that often do not do.
Project roughCase(std::uint64_t seed) {
    testing::Dice dice(seed + 1000);
    Project project = randomProject(seed);
    project.fronts.profile = {ProfileFamily::Chamfer,
                              dice.sixtyFourths(8, 96),
                              dice.sixtyFourths(4, 40),
                              {},
                              PerSide<bool>::all(true)};
    project.fronts.mounting.length = dice.sixtyFourths(30, 90);
    project.fronts.mounting.recess = dice.sixtyFourths(0, 24);
    project.fronts.hardware.boltLength = dice.sixtyFourths(60, 130);
    return project;
}

/// Rows that the program places move with the limits and the unit's grid.
Project withTypedRows(Project project) {
    project.fronts.mounting.fromBottom = n64(64);
    project.fronts.mounting.fromTop = n64(40);
    project.fronts.mounting.fromSides = n64(80);
    return project;
}

using CodesAt = std::multiset<std::tuple<FindingCode, std::int32_t>>;

CodesAt codesAt(const Found& found, const std::set<FindingCode>& only) {
    CodesAt codes;
    for (const Finding& finding : found.findings)
        if (only.contains(finding.code))
            codes.insert({finding.code, finding.where.opening.value_or(OpeningId{}).number});
    return codes;
}

/// A stricter limit finds all that the looser one did, in these codes together.
void expectMoreWith(void (*stricter)(Limits&), const std::set<FindingCode>& codes) {
    std::size_t grew = 0;
    for (std::uint64_t seed = 1; seed <= 25; ++seed) {
        Project project = withTypedRows(roughCase(seed));
        const CodesAt before = codesAt(Found(project), codes);
        stricter(project.limits);
        const CodesAt after = codesAt(Found(project), codes);
        for (const auto& [code, opening] : before) {
            const bool isStill = std::any_of(codes.begin(), codes.end(), [&](FindingCode other) {
                return after.contains({other, opening});
            });
            EXPECT_TRUE(isStill) << key(code) << " of seed " << seed;
        }
        grew += after.size() > before.size() ? 1 : 0;
    }
    EXPECT_GT(grew, 0U); // else the law would hold for nothing
}

TEST(Limits, ThatAreStricterForTheTipFindAllThatLooserOnesDo) {
    expectMoreWith([](Limits& limits) { limits.leastTipCover = n64(16); },
                   {FindingCode::ScrewThroughShowFace, FindingCode::TipCoverThin});
}

TEST(Limits, ThatAreStricterForThePenetrationFindAllThatLooserOnesDo) {
    expectMoreWith([](Limits& limits) { limits.leastPenetration = n64(36); },
                   {FindingCode::PenetrationShort});
}

TEST(Limits, ThatAreStricterForTheGapFindAllThatLooserOnesDo) {
    expectMoreWith([](Limits& limits) { limits.leastGap = n64(40); },
                   {FindingCode::GapTight, FindingCode::FrontsCollide});
}

TEST(Limits, ThatAreStricterForTheWallFindAllThatLooserOnesDo) {
    expectMoreWith([](Limits& limits) { limits.leastWallUnderHead = n64(20); },
                   {FindingCode::WallThinUnderHead});
}

/// Left and right exchanged: the tree's columns, the fits and the frame.
RegionPtr mirrored(const RegionPtr& region) {
    Region copy = *region;
    if (auto* leaf = std::get_if<Opening>(&copy.content)) {
        std::swap(leaf->choices.fit.left, leaf->choices.fit.right);
        return std::make_shared<const Region>(std::move(copy));
    }
    auto& split = std::get<Split>(copy.content);
    for (Child& child : split.children)
        child.region = mirrored(child.region);
    if (split.direction == Direction::Columns) {
        std::reverse(split.children.begin(), split.children.end());
        std::reverse(split.members.begin(), split.members.end());
        split.remainderChild = split.children.size() - 1 - split.remainderChild;
    }
    return std::make_shared<const Region>(std::move(copy));
}
Project mirrored(Project project) {
    project.casework.divisions = mirrored(project.casework.divisions);
    std::swap(project.fronts.fit.left, project.fronts.fit.right);
    std::swap(project.casework.frame.left, project.casework.frame.right);
    return project;
}

/// Where a finding is, as far as it does not depend on the side.
std::multiset<std::tuple<FindingCode, Severity, std::int32_t>> asSet(const Found& found) {
    std::multiset<std::tuple<FindingCode, Severity, std::int32_t>> set;
    for (const Finding& finding : found.findings) {
        // Between two fronts the first one is told; which is first depends on the order.
        const bool isBetween = finding.where.other.has_value();
        set.insert({finding.code, finding.severity,
                    isBetween ? -1 : finding.where.opening.value_or(OpeningId{}).number});
    }
    return set;
}

TEST(Findings, OfACaseSeenInAMirrorAreTheSame) {
    for (std::uint64_t seed = 1; seed <= 25; ++seed) {
        const Project project = roughCase(seed);
        const Found found(project), mirror(mirrored(project));
        // Gaps that two sides share by halves may differ by a nanometre, not by what is found; the
        // front for which movement is told is the first of equals.
        auto here = asSet(found), there = asSet(mirror);
        const auto isOfCase = [](const auto& entry) {
            return std::get<0>(entry) == FindingCode::SlotForMovement;
        };
        std::erase_if(here, isOfCase);
        std::erase_if(there, isOfCase);
        EXPECT_EQ(here, there) << "seed " << seed;
    }
}

TEST(Findings, DoNotDependOnHowLengthsAreShown) {
    for (std::uint64_t seed = 1; seed <= 15; ++seed) {
        Project project = withTypedRows(roughCase(seed));
        const Found inches(project);
        project.style.denominator = 64;
        EXPECT_EQ(Found(project).findings, inches.findings);
        project.style.unit = Unit::Millimetre;
        EXPECT_EQ(Found(project).findings, inches.findings);
    }
}

TEST(Findings, DoNotDependOnNames) {
    const Project project = roughCase(7);
    const Project named = withOpenings(
        project, [](Opening& leaf, std::size_t i) { leaf.name = "Drawer " + std::to_string(i); });
    EXPECT_EQ(Found(project).findings, Found(named).findings);
}

TEST(Findings, NameOnlyFrontsMembersAndHolesThatThePlanHas) {
    for (std::uint64_t seed = 30; seed < 60; ++seed) {
        const Found found(roughCase(seed));
        for (const Finding& finding : found.findings) {
            const Whereabouts& where = finding.where;
            const FrontPlan* front = where.opening ? found.plan.frontOf(*where.opening) : nullptr;
            EXPECT_EQ(front == nullptr, finding.code == FindingCode::AnchorCase);
            EXPECT_TRUE(!where.other || found.plan.frontOf(*where.other) != nullptr);
            EXPECT_TRUE(!where.member || found.plan.memberOf(*where.member) != nullptr);
            if (where.mountingHole) {
                EXPECT_LT(*where.mountingHole, front->mounting.holes.size());
            }
            if (where.handleHole) {
                EXPECT_LT(*where.handleHole, front->hardware->holes.size());
            }
        }
    }
}

TEST(Findings, AboutHolesComeExactlyWhereAHoleIsNotAllowed) {
    using enum FindingCode;
    const std::set<FindingCode> aboutHoles{HoleInBottom,  RecessToolBlocked,    HoleAtBoxSide,
                                           HoleAtTopEdge, HoleAtHardware,       HoleOffFront,
                                           HoleAtRunner,  ScrewThroughShowFace, TipCoverThin};
    for (std::uint64_t seed = 60; seed < 85; ++seed) {
        const Found found(roughCase(seed));
        std::set<std::int32_t> told;
        for (const auto& [code, opening] : codesAt(found, aboutHoles))
            told.insert(opening);
        for (const FrontPlan& front : found.plan.fronts) {
            const bool allAllowed =
                std::all_of(front.mounting.holes.begin(), front.mounting.holes.end(),
                            [](const MountingHole& hole) { return hole.allowed; });
            const bool hasRoom =
                !codesAt(found, {BoxNoRoom}).contains({BoxNoRoom, front.opening.number});
            if (!allAllowed && hasRoom) {
                EXPECT_TRUE(told.contains(front.opening.number)) << "seed " << seed;
            }
        }
    }
}

TEST(Findings, OfScrewsAgreeWithThePlansTipCover) {
    using enum FindingCode;
    for (std::uint64_t seed = 90; seed < 115; ++seed) {
        const Found found(roughCase(seed));
        const CodesAt through = codesAt(found, {ScrewThroughShowFace});
        const CodesAt noRoom = codesAt(found, {BoxNoRoom});
        for (const FrontPlan& front : found.plan.fronts) {
            const bool comesOut = std::any_of(
                front.mounting.holes.begin(), front.mounting.holes.end(),
                [](const MountingHole& h) { return h.thickness > n64(0) && h.tipCover <= n64(0); });
            const bool isTold = through.contains({ScrewThroughShowFace, front.opening.number});
            if (!noRoom.contains({BoxNoRoom, front.opening.number})) {
                EXPECT_EQ(isTold, comesOut) << "seed " << seed;
            }
        }
    }
}

TEST(Findings, OfManyAlikeFrontsAreAlike) {
    for (const Provocation& provocation : allProvocations()) {
        const Found found(provocation.beyond);
        const Finding* first = found.find(provocation.code);
        ASSERT_NE(first, nullptr);
        for (const Finding& finding : found.findings)
            if (finding.code == provocation.code && !finding.where.side && !first->where.side) {
                EXPECT_EQ(finding.figures, first->figures) << key(finding.code);
                EXPECT_EQ(finding.severity, first->severity) << key(finding.code);
            }
    }
}

} // namespace
} // namespace frontwright
