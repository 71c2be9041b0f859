#include "tests/core/findings/provoking.h"

#include <gtest/gtest.h>

// Worked by hand on the small case: wall 1/2 in, recess 1/8 in, front 3/4 in, bottom's top 1/2 in,
// head's radius 5/32 in, tool's radius 5/16 in; box 12 7/8 in × 5 5/8 in.
namespace frontwright {
namespace {

using testing::bank;
using testing::Found;
using testing::n64;
using testing::oneOpening;

using Figures = std::array<Length, 4>;

Found withMounting(const std::function<void(MountingSpec&)>& change) {
    Project project = oneOpening(Length::inches(13), Length::inches(6));
    change(project.fronts.mounting);
    return Found(project);
}
Found withHole(WallPoint at, const std::function<void(Project&)>& change = {}) {
    Project project = oneOpening(Length::inches(13), Length::inches(6));
    project.fronts.mounting.pattern = ScrewPattern::ByHand;
    project.fronts.mounting.placed = {at};
    if (change)
        change(project);
    return Found(project);
}

TEST(ScrewFinding, TellsTheFourLengthsThatMakeTheTipCover) {
    const Found found = withMounting([](MountingSpec& m) { m.length = n64(80); });
    const Finding* through = found.find(FindingCode::ScrewThroughShowFace);
    ASSERT_NE(through, nullptr);
    EXPECT_EQ(through->figures, (Figures{n64(80), n64(8), n64(32), n64(48)}));
    EXPECT_EQ(through->where.opening, found.front(0).opening);
    EXPECT_EQ(through->where.mountingHole, 0U);
    EXPECT_FALSE(found.has(FindingCode::TipCoverThin));
}

TEST(ScrewFinding, NamesTheHoleBehindTheThinnestPlace) {
    // A chamfer 2 in wide and 1/2 in deep: 1/2 in from the edge the front is 3/8 in thick.
    const Found found = withHole({n64(6 * 64), n64(3 * 64)}, [](Project& p) {
        p.fronts.profile = {
            ProfileFamily::Chamfer, n64(128), n64(32), {}, PerSide<bool>::all(true)};
        p.fronts.mounting.length = n64(64);
        p.fronts.mounting.placed.push_back({n64(12), n64(3 * 64)});
    });
    const Finding* through = found.find(FindingCode::ScrewThroughShowFace);
    ASSERT_NE(through, nullptr);
    EXPECT_EQ(through->where.mountingHole, 1U);
    EXPECT_EQ(through->figures[3], n64(24));
}

TEST(ScrewFinding, ThatDoesNotReachTheFrontWillNotWork) {
    const auto severityOf = [](Length length) {
        const Found found = withMounting([&](MountingSpec& m) { m.length = length; });
        return found.find(FindingCode::PenetrationShort)->severity;
    };
    EXPECT_EQ(severityOf(n64(24)), Severity::WontWork); // 3/8 + 1/8 − 1/2 = 0
    EXPECT_EQ(severityOf(n64(25)), Severity::OutsidePractice);
}

TEST(ScrewFinding, NamesTheNearestStockedLengthsWhereNoneFits) {
    Project project = oneOpening(Length::inches(13), Length::inches(6));
    project.fronts.box.wallThickness = n64(30);
    project.fronts.thickness = n64(35);
    // From 30 − 8 + 24 = 46 to 30 − 8 + 35 − 8 = 49 sixty-fourths: 3/4 in, so that it fits.
    EXPECT_FALSE(Found(project).has(FindingCode::NoScrewFits));
    project.fronts.box.wallThickness = n64(33);
    const Found found(project); // 49 … 52: between 3/4 in and 7/8 in
    const Finding* none = found.find(FindingCode::NoScrewFits);
    ASSERT_NE(none, nullptr);
    EXPECT_EQ(none->figures, (Figures{n64(49), n64(52), n64(48), n64(56)}));
    EXPECT_FALSE(found.has(FindingCode::PenetrationShort));
}

TEST(ScrewFinding, WeighsTheWallUnderItsHeadByWhetherAnyIsLeft) {
    const auto severityOf = [](Length recess) {
        const Found found = withMounting([&](MountingSpec& m) { m.recess = recess; });
        return found.find(FindingCode::WallThinUnderHead)->severity;
    };
    EXPECT_EQ(severityOf(n64(26)), Severity::WontWork); // 32 − 26 − 6 = 0
    EXPECT_EQ(severityOf(n64(25)), Severity::OutsidePractice);
}

TEST(ScrewHoleFinding, InTheBottomRuinsItAndInTheMarginIsOutsidePractice) {
    const auto bottom = [](Length height) {
        return withMounting([&](MountingSpec& m) {
            m.fromBottom = height;
            m.toolDiameter = n64(20); // no wider than the head
        });
    };
    const Found in = bottom(n64(32)), near = bottom(n64(49)), clear = bottom(n64(50));
    ASSERT_TRUE(in.has(FindingCode::HoleInBottom));
    EXPECT_EQ(in.find(FindingCode::HoleInBottom)->severity, Severity::Ruins);
    EXPECT_EQ(in.find(FindingCode::HoleInBottom)->figures,
              (Figures{n64(32), n64(32), n64(10), n64(8)}));
    ASSERT_TRUE(near.has(FindingCode::HoleInBottom));
    EXPECT_EQ(near.find(FindingCode::HoleInBottom)->severity, Severity::OutsidePractice);
    EXPECT_FALSE(clear.has(FindingCode::HoleInBottom));
}

// Common practice, no source: with the bottom's top at 1/2 in and a 3/4 in tool, 1/2 in drills into
// the bottom, at 3/4 in the hole clears but its recess cannot be cut, at 1 in all is well.
TEST(ScrewHoleFinding, FollowsTheHoleUpTheWall) {
    const auto at = [](Length height) {
        return withMounting([&](MountingSpec& m) {
            m.fromBottom = height;
            m.toolDiameter = n64(48);
        });
    };
    EXPECT_TRUE(at(n64(32)).has(FindingCode::HoleInBottom));
    const Found blocked = at(n64(48));
    EXPECT_FALSE(blocked.has(FindingCode::HoleInBottom));
    ASSERT_TRUE(blocked.has(FindingCode::RecessToolBlocked));
    EXPECT_EQ(blocked.find(FindingCode::RecessToolBlocked)->figures,
              (Figures{n64(48), n64(32), n64(24), n64(56)}));
    const Found well = at(n64(64));
    EXPECT_FALSE(well.has(FindingCode::HoleInBottom));
    EXPECT_FALSE(well.has(FindingCode::RecessToolBlocked));
}

TEST(ScrewHoleFinding, IsToldOnceForAFrontHoweverManyHolesShareIt) {
    const Found found = withMounting([](MountingSpec& m) { m.fromBottom = n64(32); });
    EXPECT_EQ(found.count(FindingCode::HoleInBottom), 1U);
    EXPECT_EQ(found.find(FindingCode::HoleInBottom)->where.mountingHole, 0U);
}

TEST(ScrewHoleFinding, NamesTheSideOfTheBoxThatIsInTheWay) {
    const Found found = withHole({n64(12 * 64 + 56 - 40), n64(128)});
    const Finding* atSide = found.find(FindingCode::HoleAtBoxSide);
    ASSERT_NE(atSide, nullptr);
    EXPECT_EQ(atSide->where.side, Side::Right);
    EXPECT_EQ(atSide->figures[0], n64(40)); // from the right side, not from the left
}

TEST(ScrewHoleFinding, ThatBreaksOutOfTheTopEdgeRuinsTheBox) {
    const auto severityOf = [](Length fromTop) {
        const Found found = withMounting([&](MountingSpec& m) { m.fromTop = fromTop; });
        return found.find(FindingCode::HoleAtTopEdge)->severity;
    };
    EXPECT_EQ(severityOf(n64(9)), Severity::Ruins); // head's radius 10/64
    EXPECT_EQ(severityOf(n64(10)), Severity::OutsidePractice);
}

TEST(ScrewHoleFinding, ThatRunsIntoTheBoltWillNotWork) {
    // The knob's hole: 6 7/16 in across, 2 7/8 in up. Radii 3/32 in and 5/16 in: 26/64 apart meet.
    const WallPoint knob{n64(6 * 64 + 28), n64(2 * 64 + 56)};
    const auto severityOf = [&](Length apart) {
        const Found found = withHole({knob.x + apart, knob.y});
        const Finding* finding = found.find(FindingCode::HoleAtHardware);
        EXPECT_EQ(finding->where.handleHole, 0U);
        EXPECT_EQ(finding->figures, (Figures{apart, n64(42), n64(16), {}}));
        return finding->severity;
    };
    EXPECT_EQ(severityOf(n64(25)), Severity::WontWork);
    EXPECT_EQ(severityOf(n64(26)), Severity::OutsidePractice);
}

TEST(ScrewHoleFinding, BehindAThinRimYieldsToTheScrewThatComesThrough) {
    const auto behindRim = [](std::optional<WrittenLength> length) {
        return withHole({n64(52), n64(160)}, [&](Project& p) {
            p.fronts.profile = {
                ProfileFamily::Chamfer, n64(256), n64(40), {}, PerSide<bool>::all(true)};
            p.fronts.mounting.length = length;
        });
    };
    const Found through = behindRim(WrittenLength(n64(80)));
    EXPECT_TRUE(through.has(FindingCode::ScrewThroughShowFace));
    EXPECT_FALSE(through.has(FindingCode::HoleOffFront));
    const Found unscrewed = behindRim(std::nullopt);
    ASSERT_TRUE(unscrewed.has(FindingCode::HoleOffFront));
    EXPECT_EQ(unscrewed.find(FindingCode::HoleOffFront)->severity, Severity::OutsidePractice);
    EXPECT_TRUE(unscrewed.has(FindingCode::NoScrewFits));
}

TEST(MovementFinding, IsToldOnceForTheFrontWhoseRowsAreFurthestApart) {
    using namespace testing;
    const Found found(projectWith(rows({fixed(Length::inches(5), opening()),
                                        fixed(Length::inches(9), opening()), share(opening())},
                                       Length::inches(1, 16)),
                                  Length::inches(16), Length::inches(24)));
    ASSERT_EQ(found.count(FindingCode::SlotForMovement), 1U);
    EXPECT_EQ(found.find(FindingCode::SlotForMovement)->where.opening, found.front(1).opening);
}

/// Fronts of 5 1/2, 9 1/2 and more inches, the screw rows as far apart as their boxes let them.
Found chestOfThree() {
    using namespace testing;
    return Found(projectWith(rows({fixed(Length::inches(5), opening()),
                                   fixed(Length::inches(9), opening()), share(opening())},
                                  Length::inches(1, 16)),
                             Length::inches(16), Length::inches(24)));
}

TEST(MovementFinding, NamesAllFrontsThatMoveTooMuch) {
    const Found found = chestOfThree();
    // A third front is 24 − 3 − 2 × 1 1/4 − 5 − 9 = 4 1/2 in of opening; all rows are more than 3
    // in apart but the lowest opening's.
    const std::string sentence = found.told(FindingCode::SlotForMovement).sentence.english();
    EXPECT_NE(sentence.find("It is the same with A1."), std::string::npos) << sentence;
}

TEST(MovementFinding, NamesNoDoor) {
    Project project = bank(2);
    project.fronts.mounting.fromBottom = n64(64);
    project.fronts.mounting.fromTop = n64(64);
    ASSERT_TRUE(Found(project).has(FindingCode::SlotForMovement));
    project = testing::withOpenings(std::move(project), [](Opening& opening, std::size_t i) {
        opening.use = i == 0 ? OpeningUse::Door : OpeningUse::Drawer;
    });
    const std::string sentence =
        Found(project).told(FindingCode::SlotForMovement).sentence.english();
    EXPECT_EQ(sentence.find("It is the same"), std::string::npos) << sentence;
}

TEST(MovementFinding, IsCuredByLargerHolesInAllFronts) {
    const Found found = chestOfThree();
    const Finding& finding = *found.find(FindingCode::SlotForMovement);
    const auto offered =
        remedies(finding, found.project, found.catalogue, found.plan, found.project.style);
    ASSERT_FALSE(offered.empty());
    const auto cured = offered.front().apply(found.project);
    ASSERT_TRUE(cured.ok());
    EXPECT_FALSE(Found(cured.value()).has(FindingCode::SlotForMovement)) << offered.front().label;
}

TEST(MovementFinding, NamesFrontsThatDecideForThemselvesInOneRemedy) {
    Project project = bank(3);
    const MountingSpec own = project.fronts.mounting;
    project =
        withChoices(std::move(project), 1, [&](FrontChoices& choices) { choices.mounting = own; });
    const Found found(project);
    const Finding& finding = *found.find(FindingCode::SlotForMovement);
    bool isOffered = false;
    for (const Remedy& remedy :
         remedies(finding, found.project, found.catalogue, found.plan, found.project.style))
        isOffered = isOffered || remedy.label.english().starts_with(
                                     "Drill all clearance holes of A1, A2 and A3 ");
    EXPECT_TRUE(isOffered);
}

// Opening 9 in, front 9 1/2: a quarter is 2 3/8 in = 152/64.
Found tallFrontWithRows(Length apart, Length height = Length::inches(9)) {
    Project project = testing::oneOpening(Length::inches(13), height);
    project.fronts.mounting.fromBottom = n64(64);
    const Length box = Found(project).front(0).box.height;
    project.fronts.mounting.fromTop = box - n64(64) - apart;
    return Found(project);
}

TEST(ScrewRows, AreToldToBeTooNearOnATallFront) {
    ASSERT_TRUE(tallFrontWithRows(n64(151)).has(FindingCode::ScrewRowsNear));
    EXPECT_FALSE(tallFrontWithRows(n64(152)).has(FindingCode::ScrewRowsNear));
    EXPECT_EQ(
        tallFrontWithRows(n64(151)).told(FindingCode::ScrewRowsNear).sentence,
        "The front is 9 1/2 in high, and its rows of screws stand only 2 23/64 in apart, less "
        "than 2 3/8 in: solid wood can cup and tilt on them.");
}

TEST(ScrewRows, MayStandNearOnALowFrontAndOnBoardThatDoesNotMove) {
    EXPECT_FALSE(tallFrontWithRows(n64(64), Length::inches(7)).has(FindingCode::ScrewRowsNear));
    Project project = tallFrontWithRows(n64(64)).project;
    ASSERT_TRUE(Found(project).has(FindingCode::ScrewRowsNear));
    project.fronts.stock.build = Build::Stable;
    EXPECT_FALSE(Found(project).has(FindingCode::ScrewRowsNear));
}

TEST(MovementFinding, IsNotToldOfFrontsThatAreNotSolidWood) {
    Project project = bank(2);
    project.fronts.stock.species.clear();
    EXPECT_FALSE(Found(project).has(FindingCode::SlotForMovement));
}

} // namespace
} // namespace frontwright
