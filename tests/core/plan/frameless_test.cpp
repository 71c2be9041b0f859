// A case without a face frame: fronts cover the panels' edges by gap.

#include "core/plan/member_words.h"
#include "tests/core/plan/frameless_case.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::columns;
using testing::framelessBanks;
using testing::framelessWith;
using testing::mm;
using testing::opening;
using testing::Planned;
using testing::share;
using testing::tenths;

TEST(FramelessFronts, CoverTheOuterPanelsFullyButForTheGap) {
    const Planned one(framelessWith(opening(), mm(600), mm(720)));
    // 18 − 3 on each side; 600 − 2 · 3 and 720 − 2 · 3
    for (const Side side : allSides)
        EXPECT_EQ(one.front(0).overlay[side], mm(15));
    EXPECT_EQ(one.front(0).rect.width(), mm(594));
    EXPECT_EQ(one.front(0).rect.height(), mm(714));
}

TEST(FramelessFronts, CoverHalfOfASharedPanelEach) {
    const Planned pair(
        framelessWith(columns({share(opening()), share(opening())}, mm(18)), mm(900), mm(720)));
    // (18 − 3)/2 = 7.5 on the divider; opening 423: front 15 + 423 + 7.5 = 445.5
    EXPECT_EQ(pair.front(0).overlay.right, tenths(75));
    EXPECT_EQ(pair.front(1).overlay.left, tenths(75));
    EXPECT_EQ(pair.front(0).rect.width(), tenths(4455));
    EXPECT_EQ(pair.front(0).neighbours.right.gap, mm(3));
}

TEST(FramelessFronts, MayBeLaidOverTheJointOfTwoCasesByHalfAGap) {
    Project project = framelessWith(opening(), mm(600), mm(720));
    project.fronts.fit.left.amount = project.fronts.fit.right.amount = tenths(15);
    const Planned one(std::move(project));
    EXPECT_EQ(one.front(0).overlay.left, tenths(165)); // 18 − 1.5
    EXPECT_EQ(one.front(0).rect.width(), mm(597));     // 600 − 2 · 1.5
}

TEST(FramelessFronts, StandApartByTheGapWhereNoShelfLiesBetweenDrawers) {
    const Planned banks(framelessBanks());
    // Openings of 228 meet; each front stays back by half of 3 mm.
    EXPECT_EQ(banks.front(0).openingRect.height(), mm(228));
    EXPECT_EQ(banks.front(0).overlay.bottom, tenths(-15));
    EXPECT_EQ(banks.front(0).rect.height(), tenths(2415)); // 15 + 228 − 1.5
    EXPECT_EQ(banks.front(1).rect.height(), mm(225));      // 228 − 2 · 1.5
    EXPECT_EQ(banks.front(0).neighbours.bottom.gap, mm(3));
    EXPECT_EQ(brokenInvariant(banks.plan), "");
}

TEST(FramelessFronts, AndTheirGapsSumToTheCase) {
    for (const Length shelf : {Length{}, mm(18)}) {
        const Planned banks(framelessBanks(shelf));
        Length heights = 2 * mm(3) + 2 * mm(3); // two gaps between, one above and one below
        for (const std::size_t i : {0, 1, 2})
            heights += banks.front(i).rect.height();
        EXPECT_EQ(heights, mm(720));
        const Length widths = banks.front(0).rect.width() + banks.front(3).rect.width();
        EXPECT_EQ(widths + 3 * mm(3), mm(900));
    }
}

TEST(FramelessBoxes, AreSetBackFromThePanelsFrontEdge) {
    const Planned one(framelessWith(opening(), mm(600), mm(720)));
    EXPECT_EQ(one.front(0).box.setback, Length{}); // the wall is flush with the panels' edges
    Project inset = framelessWith(opening(), mm(600), mm(720));
    inset.fronts.fit = FrontFit::all({Fit::Inset, mm(2)});
    inset.fronts.thickness = mm(18);
    const Planned behind(std::move(inset));
    EXPECT_EQ(behind.front(0).box.setback, mm(18));
}

TEST(FramelessCases, HaveNoFrameToBeDeepInFrontOfTheCase) {
    Case casework = framelessBanks().casework;
    EXPECT_EQ(thicknessOfFrame(casework), Length{});
    EXPECT_EQ(depthOfMembers(casework), mm(500));
    casework.construction = Construction::FaceFrame;
    EXPECT_EQ(thicknessOfFrame(casework), Length::inches(0, 48));
    EXPECT_EQ(depthOfMembers(casework), Length::inches(0, 48));
}

TEST(FramelessCases, WeighTheirPanelsInsteadOfAFrame) {
    const auto frameWeight = [](Project project) {
        Catalogue catalogue = testing::smallCatalogue();
        for (Species& species : catalogue.species)
            species.gravity = SpecificGravity{500, GravityBasis::At12Percent};
        const Planned planned(std::move(project), catalogue);
        Mass fronts;
        for (const FrontPlan& front : planned.plan.fronts)
            fronts += front.load.front.value_or(Mass{}) + front.load.box.value_or(Mass{});
        return planned.plan.load.empty.inKilograms() - fronts.inKilograms();
    };
    Project frameless = framelessWith(opening(), mm(600), mm(720));
    Project framed = frameless;
    framed.casework.construction = Construction::FaceFrame;
    framed.casework.frameThickness = mm(20);
    // The same members, 500 deep instead of 20.
    EXPECT_NEAR(frameWeight(frameless) / frameWeight(framed), 25.0, 0.01);
}

TEST(MembersOfAFramelessCase, AreCalledPanelsDividersAndShelves) {
    const Planned banks(framelessBanks(mm(18)));
    const auto name = [&](std::uint32_t i) { return nameOfMember(banks.plan, i).english(); };
    EXPECT_EQ(name(0), "Left side panel");
    EXPECT_EQ(name(1), "Right side panel");
    EXPECT_EQ(name(2), "Bottom panel");
    EXPECT_EQ(name(3), "Top panel");
    std::vector<std::string> others;
    for (std::uint32_t i = 4; i < banks.plan.members.size(); ++i)
        others.push_back(name(i));
    EXPECT_EQ(others,
              (std::vector<std::string>{"Divider 1", "Shelf 2", "Shelf 3", "Shelf 4", "Shelf 5"}));
}

TEST(MembersOfAFaceFrame, AreCalledStilesAndRails) {
    const Planned bank(testing::bank(2));
    EXPECT_EQ(nameOfMember(bank.plan, 0).english(), "Left stile");
    EXPECT_EQ(nameOfMember(bank.plan, 4).english(), "Rail 1");
}

TEST(ANewFramelessCase, HasPanelsAndAGapInItsUnit) {
    const Project metric = newProject(Unit::Millimetre, Construction::Frameless);
    EXPECT_EQ(metric.casework.construction, Construction::Frameless);
    EXPECT_EQ(metric.casework.frame.left.length, mm(18));
    EXPECT_EQ(metric.fronts.fit.left, (SideFit{Fit::Gap, mm(3)}));
    const Project inches = newProject(Unit::Inch, Construction::Frameless);
    EXPECT_EQ(inches.casework.frame.top.length, Length::inches(0, 48));
    EXPECT_EQ(inches.fronts.fit.top, (SideFit{Fit::Gap, Length::inches(0, 8)}));
}

} // namespace
} // namespace frontwright
