// Several fronts on one box: what is wrong with the box is told once, and nothing is told of
// members that are not there.

#include "tests/core/findings/provoking.h"
#include "tests/core/plan/faced.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::bank;
using testing::banks;
using testing::faced;
using testing::Found;
using testing::n64;

Project onHiddenRunners(Project project, Length sideClearance) {
    project.fronts.box.runner = "hidden";
    project.fronts.box.sideClearance = sideClearance;
    return project;
}

TEST(FrontsOnOneBox, TellOfTheirRunnersOnce) {
    const Found apart(onHiddenRunners(bank(3), n64(19)));
    ASSERT_EQ(apart.count(FindingCode::SideClearanceOff), 3U);
    const Found together(onHiddenRunners(faced(bank(3)), n64(19)));
    EXPECT_EQ(together.count(FindingCode::SideClearanceOff), 1U);
    EXPECT_EQ(together.find(FindingCode::SideClearanceOff)->where.opening,
              together.front(0).opening);
}

TEST(FrontsOnOneBox, OfTooThinWoodDoNotMissTheWall) {
    Project project = faced(bank(2));
    project.fronts.thickness = n64(20);
    const Found found(project);
    EXPECT_FALSE(found.has(FindingCode::FrontMissesWall));
    EXPECT_TRUE(found.has(FindingCode::NoScrewFits) || found.has(FindingCode::HoleOffFront));
}

TEST(FrontsOnOneBox, FindTheirWallInAHigherBox) {
    Project project = faced(bank(2));
    project.fronts.box.height = Length::inches(7);
    const Found found(project);
    ASSERT_TRUE(found.has(FindingCode::FrontMissesWall));
    const auto offered = remedies(*found.find(FindingCode::FrontMissesWall), found.project,
                                  found.catalogue, found.plan, found.project.style);
    const auto higher = std::find_if(offered.begin(), offered.end(), [](const Remedy& remedy) {
        return remedy.label == "Make the box of A1 as tall as its opening allows" ||
               remedy.label == "Make the box of A2 as tall as its opening allows";
    });
    ASSERT_NE(higher, offered.end());
    const auto cured = higher->apply(found.project);
    ASSERT_TRUE(cured.ok());
    EXPECT_FALSE(Found(cured.value()).has(FindingCode::FrontMissesWall));
}

TEST(FrontsOnOneBox, LackNoOverlayWhereNoMemberIs) {
    Project project = bank(2);
    project.fronts.fit.bottom = {Fit::Overlay, n64(0)};
    const Found apart(project);
    const Found together(faced(project));
    EXPECT_EQ(apart.count(FindingCode::OverlayMissing), 2U);
    EXPECT_EQ(together.count(FindingCode::OverlayMissing), 1U) << "at the case's bottom only";
}

TEST(FrontsOnOneBox, MeasureATallBoxByTheOpeningBehindThemAll) {
    Project project = faced(bank(2));
    const Length behind = Found(project).plan.faces.at(0).rect.height();
    project.fronts.box.height = behind + n64(1);
    const Found found(project);
    ASSERT_TRUE(found.has(FindingCode::BoxTooTall));
    EXPECT_EQ(found.find(FindingCode::BoxTooTall)->figures[1], behind);
    EXPECT_EQ(found.count(FindingCode::BoxTooTall), 1U);
}

TEST(AFixedFront, OfTooThinWoodIsNotToldThatItLacksOverlay) {
    Project project = testing::fixedFronts(bank(1), n64(96));
    ASSERT_FALSE(Found(project).has(FindingCode::FixedFrontNoRoom));
    project.fronts.thickness = n64(20);
    EXPECT_FALSE(Found(project).has(FindingCode::FixedFrontNoRoom));
}

} // namespace
} // namespace frontwright
