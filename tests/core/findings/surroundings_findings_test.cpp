// Walls, neighbouring cases, tops, mouldings and plinths as limits of what fronts cover.

#include "tests/core/findings/provoking.h"
#include "tests/core/plan/frameless_case.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::Found;
using testing::framelessBanks;
using testing::framelessWith;
using testing::mm;
using testing::opening;
using testing::tenths;
using enum FindingCode;

Project with(const std::function<void(Project&)>& change) {
    Project project = framelessBanks();
    change(project);
    return project;
}

TEST(AFrontBesideAWall, MayLieInsideItsOwnGap) {
    // 3 mm inside the edge, the case against the wall: the 3 mm that are wanted.
    EXPECT_FALSE(Found(with([](Project& p) {
                     p.casework.surroundings.left = Wall{{}, mm(3)};
                 })).has(FrontAtWall));
}

TEST(AFrontBesideAWall, ScrapesWhereItCoversThePanelFully) {
    const Found found(with([](Project& p) {
        p.fronts.fit.left = {Fit::Overlay, mm(18)};
        p.casework.surroundings.left = Wall{{}, mm(3)};
    }));
    ASSERT_TRUE(found.has(FrontAtWall));
    EXPECT_EQ(found.find(FrontAtWall)->severity, Severity::WontWork);
    EXPECT_EQ(found.count(FrontAtWall), 3U); // bank A; B does not stand at the wall
    EXPECT_EQ(found.told(FrontAtWall).sentence,
              "The front touches the wall: it scrapes on every pull.");
}

TEST(AFrontBesideAWall, IsCuredForItsWholeBankAtOnce) {
    const Found found(with([](Project& p) { p.casework.surroundings.left = Wall{{}, mm(5)}; }));
    const auto cures = remedies(*found.find(FrontAtWall), found.project, found.catalogue,
                                found.plan, {Unit::Millimetre, 16});
    ASSERT_FALSE(cures.empty());
    EXPECT_EQ(cures.front().label, "Keep the fronts at the case's left side 5 mm inside its edge");
    const Found cured(cures.front().apply(found.project).value());
    EXPECT_FALSE(cured.has(FrontAtWall));
    for (const std::size_t i : {0, 1, 2})
        EXPECT_EQ(cured.front(i).overlay.left, mm(13)); // 18 − 5
}

TEST(FrontsOfTwoCases, ShareTheGapBetweenThem) {
    const auto beside = [](Length own) {
        return with([own](Project& p) {
            p.fronts.fit.right.amount = own;
            p.casework.surroundings.right = NeighbouringCase{{}, tenths(15), mm(3)};
        });
    };
    EXPECT_FALSE(Found(beside(tenths(15))).has(FrontAtNeighbour)); // 1.5 + 1.5
    const Found near(beside(mm(1)));                               // 1 + 1.5 = 2.5
    ASSERT_TRUE(near.has(FrontAtNeighbour));
    EXPECT_EQ(near.find(FrontAtNeighbour)->figures[0], tenths(25));
    EXPECT_EQ(near.find(FrontAtNeighbour)->severity, Severity::OutsidePractice);
}

TEST(AFrontUnderATop, StaysClearOfItsLip) {
    const auto under = [](Length lip) {
        return with([lip](Project& p) {
            p.casework.surroundings.top = OverhangingTop{mm(30), mm(25), mm(10), lip, mm(3)};
        });
    };
    EXPECT_FALSE(Found(under({})).has(FrontAtTrim)); // 3 mm below the top's underside
    const Found into(under(mm(10)));                 // a lip of 10 mm reaches 7 mm over the front
    ASSERT_TRUE(into.has(FrontAtTrim));
    EXPECT_EQ(into.find(FrontAtTrim)->severity, Severity::WontWork);
    EXPECT_EQ(into.told(FrontAtTrim).sentence,
              "The front reaches ≈ 9/32 in up behind the overhanging top's lip.");
    EXPECT_EQ(into.count(FrontAtTrim), 2U); // A1 and B1
    const auto cures = remedies(*into.find(FrontAtTrim), into.project, into.catalogue, into.plan,
                                {Unit::Millimetre, 16});
    ASSERT_FALSE(cures.empty());
    // 10 + 3 inside the edge leave 5 mm of cover.
    EXPECT_EQ(cures.front().label, "Keep the fronts at the case's top 13 mm inside its edge");
}

TEST(AMoulding, ThatCoversThePanelLeavesNothingToCover) {
    const Found found(with([](Project& p) {
        p.casework.surroundings.top = Moulding{mm(20), mm(12), mm(3)};
    }));
    ASSERT_TRUE(found.has(FrontAtTrim));
    // 23 mm inside the edge of an 18 mm panel would show the opening: the maker has to decide.
    EXPECT_TRUE(remedies(*found.find(FrontAtTrim), found.project, found.catalogue, found.plan,
                         {Unit::Millimetre, 16})
                    .empty());
}

TEST(APlinth, LimitsTheFrontsOnlyByItsMoulding) {
    const auto on = [](Length lip) {
        return with([lip](Project& p) {
            p.casework.surroundings.bottom = Plinth{mm(100), mm(50), lip, mm(3)};
        });
    };
    EXPECT_FALSE(Found(on({})).has(FrontAtTrim));
    EXPECT_TRUE(Found(on(mm(5))).has(FrontAtTrim));
}

TEST(StepsOfABank, AreCuredToWholePitches) {
    const Found found(with([](Project& p) { p.casework.systemHoles = usualSystemHoles(mm(18)); }));
    // A3 steps by 15 + 228 − 1.5 + 3 = 244.5, to which 8 · 32 = 256 is nearest; A2 by 228, 7 · 32 =
    // 224. Told once for each bank, where it is furthest off.
    EXPECT_EQ(found.count(StepOffPitch), 2U);
    EXPECT_EQ(found.find(StepOffPitch)->figures[0], tenths(2445));
    EXPECT_EQ(found.find(StepOffPitch)->figures[2], mm(256));
    const auto cures = remedies(*found.find(StepOffPitch), found.project, found.catalogue,
                                found.plan, {Unit::Millimetre, 16});
    ASSERT_FALSE(cures.empty());
    const Found cured(cures.front().apply(found.project).value());
    EXPECT_EQ(cured.count(StepOffPitch), 1U); // bank B is another
    EXPECT_EQ(*cured.front(1).step, mm(224));
    EXPECT_EQ(*cured.front(2).step, mm(256));
    EXPECT_EQ(cured.front(0).rect.top, mm(717)); // what is left goes to the uppermost
}

TEST(FrontsWithNoShelfBetween, AreNotBlamedForNotCoveringIt) {
    EXPECT_FALSE(Found(framelessBanks()).has(OverlayMissing));
    EXPECT_TRUE(Found(with([](Project& p) {
                    p.fronts.fit.left = {Fit::Gap, mm(19)}; // past the side panel of 18 mm
                })).has(OverlayMissing));
}

TEST(TheCautionToAnchorACase, CountsPlinthAndTop) {
    Project project = framelessWith(opening(), mm(600), mm(600));
    EXPECT_FALSE(Found(project).has(AnchorCase));
    project.casework.surroundings.bottom = Plinth{mm(100), mm(50), {}, {}};
    EXPECT_TRUE(Found(project).has(AnchorCase)); // 700 mm, of 686 mm or 27 in
}

} // namespace
} // namespace frontwright
