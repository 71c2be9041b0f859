#include "tests/core/findings/provoking.h"

#include <gtest/gtest.h>

// What a maker gets from a remedy, in numbers worked by hand on the small case.
namespace frontwright {
namespace {

using testing::bank;
using testing::Found;
using testing::n64;
using testing::oneOpening;
using testing::um;
using testing::withChoices;

/// The case after the remedy of that label for the first finding of that code.
Project cured(const Project& project, FindingCode code, const std::string& label) {
    const Found found(project);
    const Finding* finding = found.find(code);
    if (finding == nullptr) {
        ADD_FAILURE() << "not found: " << key(code);
        return project;
    }
    std::string offered;
    for (const Remedy& remedy :
         remedies(*finding, found.project, found.catalogue, found.plan, {Unit::Inch, 16})) {
        if (remedy.label == label)
            return remedy.apply(found.project).value();
        offered += "\n  " + remedy.label.english();
    }
    ADD_FAILURE() << "not offered: " << label << "; offered are" << offered;
    return project;
}
Project one(const std::function<void(Project&)>& change) {
    Project project = oneOpening(Length::inches(13), Length::inches(6));
    change(project);
    return project;
}

TEST(RemedyOutcome, OfADeeperRecessIsJustPenetrationEnough) {
    const Project project = one([](Project& p) {
        p.fronts.mounting.recess = {};
        p.fronts.mounting.length = n64(48);
    });
    // 3/4 in − 1/2 in = 1/4 in in the front; 1/8 in deeper makes it 3/8 in.
    const Found found(
        cured(project, FindingCode::PenetrationShort, "Set the screws of A1 1/8 in deep"));
    EXPECT_EQ(found.front(0).mounting.holes[0].penetration, n64(24));
}

TEST(RemedyOutcome, OfAShallowerRecessIsJustTipCoverEnough) {
    const Project project = one([](Project& p) {
        p.fronts.mounting.recess = n64(14);
        p.fronts.mounting.length = n64(64);
    });
    // 3/4 in − (1 in + r − 1/2 in) ≥ 1/8 in: r = 1/8 in.
    const Found found(
        cured(project, FindingCode::TipCoverThin, "Set the screws of A1 1/8 in deep"));
    EXPECT_EQ(found.front(0).mounting.holes[0].tipCover, n64(8));
}

TEST(RemedyOutcome, OfCuttingScrewsKeepsTheTipCover) {
    const Project project = one([](Project& p) {
        p.fronts.mounting.recess = n64(6);
        p.fronts.mounting.length = n64(80);
    });
    // Greatest length 32 − 6 + 48 − 8 = 66/64 in: 1 in on the grid.
    const Found found(
        cured(project, FindingCode::ScrewThroughShowFace, "Cut the screws of A1 to 1 in"));
    EXPECT_EQ(found.front(0).mounting.holes[0].tipCover, n64(10));
}

TEST(RemedyOutcome, OfASetRecessLeavesTheWallUnderTheHead) {
    const Project project = one([](Project& p) { p.fronts.mounting.recess = n64(20); });
    const Found found(
        cured(project, FindingCode::WallThinUnderHead, "Set the screws of A1 3/16 in deep"));
    EXPECT_FALSE(found.has(FindingCode::WallThinUnderHead));         // 32 − 12 − 6 = 14/64 in
    EXPECT_EQ(found.project.fronts.mounting.recess.length, n64(20)); // the case's is left alone
}

TEST(RemedyOutcome, OfMovingTheColumnsInClearsTheBoxSides) {
    const Project project = one([](Project& p) { p.fronts.mounting.fromSides = n64(40); });
    const Found found(cured(project, FindingCode::HoleAtBoxSide,
                            "Move the screws of A1 in to 13/16 in from the box's sides"));
    EXPECT_EQ(found.front(0).mounting.holes[0].at.x, n64(52)); // 1/2 in + 5/16 in
    EXPECT_EQ(found.front(0).mounting.holes[1].at.x, n64(12 * 64 + 56 - 52));
}

TEST(RemedyOutcome, OfMovingTheUpperRowDownClearsTheEdge) {
    const Project project = one([](Project& p) { p.fronts.mounting.fromTop = n64(10); });
    const Found found(cured(project, FindingCode::HoleAtTopEdge,
                            "Move the upper screw row of A1 down to 5/16 in below the edge"));
    EXPECT_EQ(found.front(0).mounting.holes.back().at.y, n64(5 * 64 + 40 - 20));
}

TEST(RemedyOutcome, OfAHoleBesideTheKnobIsOutsideItsReach) {
    const WallPoint knob{n64(6 * 64 + 28), n64(2 * 64 + 56)};
    const Project project = one([&](Project& p) {
        p.fronts.mounting.pattern = ScrewPattern::ByHand;
        p.fronts.mounting.placed = {{knob.x + n64(20), knob.y}};
    });
    const Found found(cured(project, FindingCode::HoleAtHardware,
                            "Move the screw hole of A1 to its nearest allowed place"));
    const WallPoint at = found.front(0).mounting.holes[0].at;
    EXPECT_FALSE(isWithin(at, knob, n64(42)));
    EXPECT_TRUE(isWithin(at, knob, n64(48))); // and no further than it must
}

TEST(RemedyOutcome, OfACounterboreHoldsByTheLeastEngagement) {
    const Project project = one([](Project& p) {
        p.fronts.thickness = um(20'000);
        p.fronts.box.wallThickness = um(12'000);
        p.fronts.hardware.boltLength = um(25'000);
    });
    // 32 mm + 6 mm − 25 mm = 13 mm deep at least; the grid is 1/16 in: 9/16 in is 14.2875 mm.
    const Found found(cured(project, FindingCode::BoltTooShort,
                            "Counterbore A1 9/16 in deep for ≈ 63/64 in bolts"));
    const WayPlan& way = found.front(0).hardware->chosenWay();
    EXPECT_EQ(way.verdict, BoltVerdict::Fits);
    EXPECT_EQ(way.counterbore, n64(36));
    EXPECT_GE(*way.length, way.grip + um(6'000));
}

TEST(RemedyOutcome, OfAnotherWayKeepsTheBolt) {
    const Project project = one([](Project& p) { p.fronts.hardware.boltLength = n64(64); });
    const Found found(
        cured(project, FindingCode::BoltTooShort,
              "Bolt the handle of A1 to the front alone, with an access hole in the wall"));
    EXPECT_EQ(found.front(0).hardware->chosen, MountingWay::FrontAccessHole);
    EXPECT_EQ(found.front(0).hardware->chosenWay().length, n64(64)); // 3/4 in + 6 mm at least
}

TEST(RemedyOutcome, OfStockIsTheShortestBoltThatFits) {
    const Project project = one([](Project& p) { p.fronts.hardware.boltLength = n64(128); });
    const Found found(cured(project, FindingCode::BoltBottomsOut, "Use 1 1/2 in bolts in A1"));
    EXPECT_EQ(found.front(0).hardware->chosenWay().length, n64(96));
}

TEST(RemedyOutcome, OfANarrowerProfileIsAFieldUnderTheBase) {
    const Project project = one([](Project& p) {
        p.fronts.profile = {ProfileFamily::Chamfer,
                            n64(192),
                            n64(8),
                            {},
                            PerSide<bool>::all(true)}; // 1/2 in of field is left for 20 mm
    });
    const Found found(cured(project, FindingCode::BackplateOffField,
                            "Make the edge profile of A1 2 13/16 in wide"));
    EXPECT_GE(found.front(0).field.height(), um(20'000));
    EXPECT_EQ(found.front(0).profile->depth.length, n64(8));
}

TEST(RemedyOutcome, OfOneHandleIsOneInTheMiddle) {
    const Project project = one([](Project& p) {
        p.fronts.hardware.form = "pull-96";
        p.fronts.hardware.twoPast = n64(640);
        p.fronts.hardware.twoAtPercent = 45;
    });
    const Found found(cured(project, FindingCode::HandlesCollide, "Use one handle on A1"));
    ASSERT_EQ(found.front(0).hardware->handles.size(), 1U);
    EXPECT_EQ(found.front(0).hardware->handles[0].centre.x, n64(6 * 64 + 48));
}

TEST(RemedyOutcome, OfAHandleBelowTheEdgeIsInTheWall) {
    const Project project = one([](Project& p) {
        p.fronts.hardware.placing = Placing::FromTop;
        p.fronts.hardware.distance = n64(28);
    });
    const Found found(cured(project, FindingCode::AccessHoleOffWall,
                            "Place the handle of A1 5/8 in below the top edge"));
    // The wall ends 1/2 in below the front's top edge.
    EXPECT_LE(toWall(found.front(0).box, found.front(0).hardware->holes[0]).y + n64(6),
              found.front(0).box.height);
}

TEST(RemedyOutcome, OfAnInsetGapIsTheLeastThereMayBe) {
    const Project project = one([](Project& p) {
        p.fronts.fit = FrontFit::all({Fit::Inset, n64(6)});
        p.fronts.fit.left.amount = n64(1);
    });
    const Found found(
        cured(project, FindingCode::GapTight, "Make the gap at the left of A1 1/16 in"));
    EXPECT_EQ(found.front(0).neighbours.left.gap, n64(4));
}

TEST(RemedyOutcome, OfAFrontPastTheCaseIsFlushWithIt) {
    const Project project = one([](Project& p) { p.fronts.fit.right = {Fit::Overlay, n64(110)}; });
    const Found found(
        cured(project, FindingCode::FrontOffCase, "Make the right overlay of A1 1 1/2 in"));
    EXPECT_EQ(found.front(0).rect.right, found.plan.outline.right);
}

TEST(RemedyOutcome, OfAMissingOverlayIsTheCasesWhereTheCaseHasOne) {
    const Project project = withChoices(bank(2), 1, [](FrontChoices& choices) {
        choices.fit.left = SideFit{Fit::Overlay, {}};
    });
    const Found found(
        cured(project, FindingCode::OverlayMissing, "Make the left overlay of A2 1/4 in"));
    EXPECT_EQ(found.front(1).overlay.left, n64(16));
}

TEST(RemedyOutcome, OfAShallowerProfileIsHalfTheThickness) {
    const Project project = one([](Project& p) {
        p.fronts.profile = {ProfileFamily::Raised, n64(32), n64(60), n64(40),
                            PerSide<bool>::all(true)};
    });
    const Found found(
        cured(project, FindingCode::ProfileTooDeep, "Make the edge profile of A1 3/8 in deep"));
    EXPECT_EQ(found.front(0).profile->depth.length, n64(24));
    EXPECT_LE(found.front(0).profile->step.length, n64(24)); // the step goes with it
}

TEST(RemedyOutcome, OfABottomOutOfTheWallIsAGrooveAtTheUsualHeight) {
    const Project project = one([](Project& p) { p.fronts.box.grooveHeight = n64(400); });
    const Found found(
        cured(project, FindingCode::BottomOutOfWall, "Groove the box of A1 1/2 in up"));
    EXPECT_EQ(found.front(0).box.bottomUnderside, n64(32));
}

TEST(RemedyOutcome, OfATallBoxIsTheHeightTheOpeningLeaves) {
    const Project project = one([](Project& p) { p.fronts.box.height = n64(400); });
    const Found found(cured(project, FindingCode::BoxTooTall,
                            "Make the box of A1 as tall as its opening allows"));
    EXPECT_EQ(found.front(0).box.height, n64(5 * 64 + 40)); // 6 in − 1/8 in − 1/4 in
}

} // namespace
} // namespace frontwright
