#include "tests/core/findings/provoking.h"

#include <gtest/gtest.h>

#include <set>

namespace frontwright {
namespace {

using testing::allProvocations;
using testing::bank;
using testing::Found;
using testing::Planned;
using testing::Provocation;
using testing::randomProject;

std::string listed(const Found& found) {
    std::string text;
    for (const Finding& finding : found.findings)
        text +=
            describe(finding, found.project, found.plan, found.project.style).sentence.english() +
            "\n";
    return text;
}

/// How a finding of each code is weighed, at the very limit where it begins.
Severity severityAtItsLimit(FindingCode code) {
    using enum FindingCode;
    const std::set<FindingCode> ruins{ScrewThroughShowFace, HoleInBottom, AccessHoleOffWall,
                                      ProfileTooDeep};
    const std::set<FindingCode> outsidePractice{
        TipCoverThin,      PenetrationShort,   HoleAtTopEdge,      HoleAtHardware,
        WallThinUnderHead, GapTight,           CounterboreTooDeep, GapsUneven,
        FrontOffCase,      GapTightens,        GapsGoUneven,       ClearanceSmall,
        HoldingWeak,       ScrewNearEdge,      ScrewsCrowded,      PilotHoleMissing,
        PilotHoleWrong,    ClearanceHoleTight, HeadBearsLittle,    RunnerOverloaded,
        FitsMixed,         FittingScrewThin,   FittingScrewShort,  MortiseTooDeep,
        HoleAtFitting,     CentresMixed,       ScrewRowsNear,      FrontAtWall,
        FrontAtNeighbour,  FrontAtTrim,        StepOffPitch,       FillerBends,
        FixedFrontNoFrame};
    const std::set<FindingCode> toKnow{SlotForMovement, AnchorCase, MoistureBeyondRange,
                                       WoodUnknown};
    if (ruins.contains(code))
        return Severity::Ruins;
    if (outsidePractice.contains(code))
        return Severity::OutsidePractice;
    return toKnow.contains(code) ? Severity::ToKnow : Severity::WontWork;
}

TEST(Findings, EveryOneIsProvokedJustBeyondItsLimitAndNotJustWithin) {
    for (const Provocation& provocation : allProvocations()) {
        const Found beyond(provocation.beyond), within(provocation.within);
        EXPECT_TRUE(beyond.has(provocation.code)) << key(provocation.code) << "\n"
                                                  << listed(beyond);
        EXPECT_FALSE(within.has(provocation.code)) << key(provocation.code) << "\n"
                                                   << listed(within);
    }
}

TEST(Findings, EveryCodeIsProvokedByACase) {
    std::set<FindingCode> provoked;
    for (const Provocation& provocation : allProvocations())
        provoked.insert(provocation.code);
    // Two of them are out of a case's reach: see allProvocations.
    EXPECT_EQ(provoked.size() + 2, static_cast<std::size_t>(lastFindingCode) + 1);
}

TEST(Findings, AreWeighedByWhatTheySpoil) {
    for (const Provocation& provocation : allProvocations()) {
        const Found found(provocation.beyond);
        ASSERT_TRUE(found.has(provocation.code)) << key(provocation.code);
        EXPECT_EQ(key(found.find(provocation.code)->severity),
                  key(severityAtItsLimit(provocation.code)))
            << key(provocation.code);
    }
}

TEST(Findings, AreToldOncePerCodeAndPlace) {
    for (const Provocation& provocation : allProvocations()) {
        const Found found(provocation.beyond);
        for (std::size_t i = 0; i < found.findings.size(); ++i)
            for (std::size_t j = i + 1; j < found.findings.size(); ++j)
                EXPECT_FALSE(found.findings[i].code == found.findings[j].code &&
                             found.findings[i].where == found.findings[j].where)
                    << key(found.findings[i].code);
    }
}

TEST(Findings, OfASoundCaseAreOnlyThatSolidFrontsMove) {
    const Found found(bank(3));
    ASSERT_EQ(found.findings.size(), 1U) << listed(found);
    EXPECT_EQ(found.findings[0].code, FindingCode::SlotForMovement);
}

TEST(Findings, StandGravestFirstAndThenInTheFrontsOrder) {
    Project project = bank(3);
    project.fronts.mounting.length = Length::inches(1, 16); // through every show face
    project.fronts.box.depth = Length::inches(30);          // too deep for the case
    const Found found(project);
    const auto indexOf = [&](const Finding& finding) {
        return static_cast<std::size_t>(found.plan.frontOf(*finding.where.opening) -
                                        found.plan.fronts.data());
    };
    ASSERT_EQ(found.count(FindingCode::ScrewThroughShowFace), 3U);
    ASSERT_EQ(found.count(FindingCode::BoxTooDeep), 3U);
    for (std::size_t i = 0; i < 3; ++i) {
        EXPECT_EQ(found.findings[i].code, FindingCode::ScrewThroughShowFace);
        EXPECT_EQ(indexOf(found.findings[i]), i);
        EXPECT_EQ(found.findings[3 + i].code, FindingCode::BoxTooDeep);
        EXPECT_EQ(indexOf(found.findings[3 + i]), i);
    }
    EXPECT_EQ(found.findings.back().severity, Severity::ToKnow);
}

/// Cases by chance, with screws, bolts and profiles that often do not do.
Project roughProject(std::uint64_t seed) {
    testing::Dice dice(seed * 7919);
    Project project = randomProject(seed);
    project.fronts.thickness = dice.sixtyFourths(16, 96);
    const auto family = static_cast<ProfileFamily>(dice.between(0, 5));
    project.fronts.profile = {
        family, dice.sixtyFourths(1, 200), dice.sixtyFourths(1, 64), {}, PerSide<bool>::all(true)};
    MountingSpec& mounting = project.fronts.mounting;
    mounting.recess = dice.sixtyFourths(0, 40);
    mounting.pattern = dice.between(0, 1) == 0 ? ScrewPattern::FourCorners : ScrewPattern::Six;
    if (dice.between(0, 1) == 0)
        mounting.length = dice.sixtyFourths(16, 120);
    if (dice.between(0, 1) == 0)
        mounting.fromBottom = dice.sixtyFourths(0, 200);
    if (dice.between(0, 1) == 0)
        mounting.fromSides = dice.sixtyFourths(0, 200);
    HardwareSpec& hardware = project.fronts.hardware;
    hardware.form = dice.between(0, 1) == 0 ? "knob-32" : "pull-96";
    hardware.way = static_cast<MountingWay>(dice.between(0, 2));
    hardware.placing = static_cast<Placing>(dice.between(0, 3));
    hardware.distance = dice.sixtyFourths(0, 300);
    hardware.twoPast = dice.sixtyFourths(200, 2000);
    hardware.twoAtPercent = dice.between(5, 50);
    if (dice.between(0, 1) == 0)
        hardware.boltLength = dice.sixtyFourths(16, 160);
    if (dice.between(0, 2) == 0)
        hardware.counterbore = dice.sixtyFourths(0, 64);
    return project;
}

TEST(Findings, OfCasesByChanceAllHaveAKeyAPlaceAndASentence) {
    std::set<FindingCode> seen;
    for (std::uint64_t seed = 1; seed <= 120; ++seed) {
        const Found found(roughProject(seed));
        for (const Finding& finding : found.findings) {
            seen.insert(finding.code);
            const FindingText text =
                describe(finding, found.project, found.plan, {Unit::Millimetre, 16});
            EXPECT_FALSE(text.place.empty());
            EXPECT_TRUE(text.sentence.english().ends_with('.')) << text.sentence;
            EXPECT_FALSE(text.reason.empty());
            EXPECT_FALSE(text.source.title.empty());
        }
    }
    EXPECT_GE(seen.size(), 24U); // chance finds most of what can go wrong
}

TEST(Findings, AreTheSameEachTime) {
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        const Planned planned(roughProject(seed)), again(roughProject(seed));
        EXPECT_EQ(judge(planned.project, planned.plan), judge(again.project, again.plan));
    }
}

TEST(Findings, CollideExactlyWhereThePlanSaysTheFrontsDo) {
    for (std::uint64_t seed = 200; seed < 240; ++seed) {
        const Found found(randomProject(seed));
        EXPECT_EQ(found.count(FindingCode::FrontsCollide), found.plan.collisions.size());
    }
}

TEST(Findings, OfCasesByChanceStandGravestFirst) {
    for (std::uint64_t seed = 1; seed <= 40; ++seed) {
        const Found found(roughProject(seed));
        EXPECT_TRUE(std::is_sorted(
            found.findings.begin(), found.findings.end(),
            [](const Finding& a, const Finding& b) { return a.severity < b.severity; }));
    }
}

TEST(FindingKeys, AreStableNamesInLowerCase) {
    EXPECT_EQ(key(FindingCode::ScrewThroughShowFace), "screw_through_show_face");
    EXPECT_EQ(key(FindingCode::AnchorCase), "anchor_case");
    EXPECT_EQ(key(Severity::WontWork), "wont_work");
    std::set<std::string_view> keys;
    for (int code = 0; code <= static_cast<int>(lastFindingCode); ++code)
        keys.insert(key(static_cast<FindingCode>(code)));
    EXPECT_EQ(keys.size(), static_cast<std::size_t>(lastFindingCode) + 1);
    for (const std::string_view name : keys)
        EXPECT_EQ(name.find_first_not_of("abcdefghijklmnopqrstuvwxyz_"), std::string_view::npos);
}

} // namespace
} // namespace frontwright
