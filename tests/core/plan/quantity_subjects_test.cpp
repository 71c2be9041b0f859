#include "core/plan/quantity.h"
#include "tests/core/plan/planned.h"
#include "tests/core/plan/seasons.h"

#include <gtest/gtest.h>

#include <set>
#include <string>

namespace frontwright {
namespace {

using enum QuantityKind;
using testing::bank;
using testing::oakInAir;
using testing::Planned;

TEST(Subjects, AreWhatAMakerLooksFor) {
    EXPECT_EQ(subjectOf(FrontHeight), Subject::Front);
    EXPECT_EQ(subjectOf(FieldWidth), Subject::Front);
    EXPECT_EQ(subjectOf(GapTop), Subject::Gaps);
    EXPECT_EQ(subjectOf(BoxSetback), Subject::Box);
    EXPECT_EQ(subjectOf(ScrewTipCover), Subject::Screws);
    EXPECT_EQ(subjectOf(HeadBearing), Subject::Screws);
    EXPECT_EQ(subjectOf(ScrewUltimate), Subject::Holding);
    EXPECT_EQ(subjectOf(BoltLength), Subject::Handle);
    EXPECT_EQ(subjectOf(RowDrill), Subject::Season);
    EXPECT_EQ(subjectOf(RunnerRating), Subject::Weight);
    EXPECT_EQ(subjectOf(CaseWeight), Subject::Weight);
    EXPECT_EQ(subjectOf(SpacerWidth), Subject::Blocks);
}

TEST(PlanParts, AreWhatANumberIsOf) {
    EXPECT_EQ(partOf(CaseWeight), PlanPart::Case);
    EXPECT_EQ(partOf(MoistureWettest), PlanPart::Case);
    EXPECT_EQ(partOf(SeasonReveal), PlanPart::Member);
    EXPECT_EQ(partOf(SeasonGapTop), PlanPart::Front);
    EXPECT_EQ(partOf(StorageVolume), PlanPart::Front);
    EXPECT_EQ(partOf(FillerBend), PlanPart::Filler);
    EXPECT_EQ(partOf(StopFromFarEdge), PlanPart::Stop);
    EXPECT_EQ(partOf(SpaceHeight), PlanPart::Space);
}

TEST(PlanParts, LeadToTheFrontThatTheNumberIsOf) {
    const Planned chest(bank(3));
    const Plan& plan = chest.plan;
    EXPECT_EQ(frontOf(plan, {FrontHeight, 2, 0}), &plan.fronts[2]);
    EXPECT_EQ(frontOf(plan, {SpacerWidth, 0, 0}), &plan.fronts[plan.spacers[0].lower]);
    EXPECT_EQ(frontOf(plan, {StopFromFarEdge, 0, 0}), &plan.fronts[plan.stops[0].front]);
    EXPECT_EQ(frontOf(plan, {CaseWeight, 0, 0}), nullptr);
    EXPECT_EQ(frontOf(plan, {MoistureDriest, 0, 0}), nullptr);
    EXPECT_EQ(frontOf(plan, {SeasonReveal, 0, 0}), nullptr);
    EXPECT_EQ(frontOf(plan, {FrontHeight, 3, 0}), nullptr);
}

TEST(Sides, AreThoseThatANumberStandsAt) {
    EXPECT_EQ(sideOf(OverlayLeft), Side::Left);
    EXPECT_EQ(sideOf(ToSurroundTop), Side::Top);
    EXPECT_EQ(sideOf(SeasonGapLeft), Side::Left);
    EXPECT_EQ(sideOf(SeasonOverlayRight), Side::Right);
    EXPECT_EQ(sideOf(FrontStep), std::nullopt);
    EXPECT_EQ(sideOf(FrontWidth), std::nullopt);
}

TEST(Subjects, HaveNamesOfTheirOwn) {
    std::set<std::string> names;
    for (int i = 0; i <= static_cast<int>(Subject::Board); ++i)
        names.emplace(nameOf(static_cast<Subject>(i)).english);
    EXPECT_EQ(names.size(), static_cast<std::size_t>(Subject::Board) + 1);
}

TEST(Subjects, HoldEveryNumberOfAFront) {
    Project project = bank(2);
    oakInAir(project, 8, 6, 12);
    const Planned planned(project);
    std::set<Subject> found;
    for (const Quantity quantity : quantitiesOfFront(planned.plan, 0))
        found.insert(subjectOf(quantity.kind));
    EXPECT_GE(found.size(), 8U);
    EXPECT_FALSE(found.contains(Subject::Case));
    EXPECT_FALSE(found.contains(Subject::Blocks));
}

} // namespace
} // namespace frontwright
