#include "tests/core/findings/provoking.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::Found;
using testing::n64;
using testing::oneOpening;
using testing::um;

/// A case in millimetres: front 20 mm, wall 12 mm, opening 400 mm × 150 mm, overlays 6 mm; the knob
/// and the pull of the small catalogue, 6 mm of thread at least, 16 mm deep.
FindingText toldInMillimetres(FindingCode code, const std::function<void(FrontDefaults&)>& change) {
    Project project = oneOpening(um(400'000), um(150'000));
    project.style = {Unit::Millimetre, 16};
    project.fronts.thickness = um(20'000);
    project.fronts.box.wallThickness = um(12'000);
    project.fronts.fit = FrontFit::all({Fit::Overlay, um(6'000)});
    change(project.fronts);
    const Found found(project);
    EXPECT_TRUE(found.has(code)) << key(code);
    return found.has(code) ? describe(*found.find(code), found.project, found.plan, project.style)
                           : FindingText{};
}

TEST(WordingInMillimetres, OfAShortBoltAddsUpGripAndEngagement) {
    const FindingText text = toldInMillimetres(
        FindingCode::BoltTooShort, [](FrontDefaults& f) { f.hardware.boltLength = um(35'000); });
    EXPECT_EQ(text.place, "Front A1");
    EXPECT_EQ(text.sentence, "The bolt is 3 mm too short: 35 mm bolt, 32 mm of wood to go through, "
                             "at least 6 mm to hold in the handle.");
    EXPECT_EQ(text.reason, "least length = grip + least engagement = 32 mm + 6 mm = 38 mm; "
                           "the bolt is 35 mm");
}

TEST(WordingInMillimetres, OfABoltThatBottomsOutAddsUpGripAndThread) {
    const FindingText text = toldInMillimetres(
        FindingCode::BoltBottomsOut, [](FrontDefaults& f) { f.hardware.boltLength = um(50'000); });
    EXPECT_EQ(text.sentence,
              "The bolt bottoms out, 2 mm too long: 50 mm bolt, 32 mm of wood to go through, "
              "thread 16 mm deep; a shorter bolt or 2 mm of washers under its head cures it.");
    EXPECT_EQ(text.reason,
              "greatest length = grip + thread depth = 32 mm + 16 mm = 48 mm; the bolt is 50 mm");
}

TEST(WordingInMillimetres, OfNoBoltThatFitsTellsTheWindow) {
    const FindingText text = toldInMillimetres(FindingCode::NoBoltFits, [](FrontDefaults& f) {
        f.thickness = um(40'000); // the longest stocked is 50.8 mm
    });
    EXPECT_EQ(text.sentence, "No stocked bolt fits: it has to be from 58 mm to 68 mm long.");
    EXPECT_EQ(text.reason, "least = grip + least engagement = 52 mm + 6 mm = 58 mm; "
                           "greatest = grip + thread depth = 52 mm + 16 mm = 68 mm");
}

TEST(WordingInMillimetres, OfACounterboreRightThroughSaysSo) {
    const FindingText text =
        toldInMillimetres(FindingCode::CounterboreTooDeep, [](FrontDefaults& f) {
            f.hardware.way = MountingWay::FrontCounterbore;
            f.hardware.counterbore = um(20'000);
            f.hardware.boltLength = um(8'000);
        });
    EXPECT_EQ(text.severity, "Would ruin a part");
    EXPECT_EQ(text.sentence, "The counterbore goes right through: 20 mm deep in 20 mm of wood.");
}

TEST(WordingInMillimetres, OfABaseOffTheFieldMeasuresFromItsCentre) {
    const FindingText text = toldInMillimetres(FindingCode::BackplateOffField, [](FrontDefaults&
                                                                                      f) {
        f.profile = {ProfileFamily::Chamfer, um(30'000), um(5'000), {}, PerSide<bool>::all(true)};
        f.hardware.placing = Placing::FromTop;
        f.hardware.distance = um(35'000);
    });
    EXPECT_EQ(text.place, "Front A1, handle hole 1");
    EXPECT_EQ(text.sentence, "The handle's base reaches 5 mm past the field onto the top edge "
                             "profile and would rock: base 20 mm, field 102 mm that way.");
    EXPECT_EQ(text.reason, "past the field's top edge = base / 2 − centre to it = 20 mm / 2 − "
                           "5 mm = 5 mm; it must be 0 or less");
}

TEST(WordingInMillimetres, OfAHandleOffTheFrontTellsWhetherAHoleIsToo) {
    const auto placed = [](Length x) {
        return toldInMillimetres(FindingCode::HandleOffFront, [x](FrontDefaults& f) {
            f.hardware.placedAt = FrontPoint{x, um(80'000)};
        });
    };
    EXPECT_EQ(placed(um(6'000)).sentence,
              "The handle reaches 4 mm past the front's left edge: base 20 mm, front 412 mm that "
              "way.");
    EXPECT_EQ(placed(um(2'000)).sentence,
              "A handle hole lies off the front; the base reaches 8 mm past the front's left edge: "
              "base 20 mm, front 412 mm that way.");
    EXPECT_EQ(placed(um(2'000)).severity, "Would ruin a part");
}

TEST(WordingInMillimetres, OfAHoleIntoTheBottomOrASideNamesIt) {
    const auto placed = [](FrontPoint at) {
        return toldInMillimetres(FindingCode::AccessHoleOffWall, [at](FrontDefaults& f) {
            f.hardware.way = MountingWay::FrontAccessHole;
            f.hardware.accessDiameter = um(12'000);
            f.hardware.placedAt = at;
            f.box.clearanceBelow = um(2'000);
            f.box.sideClearance = um(1'000);
            f.box.grooveHeight = um(6'000);
            f.box.bottomThickness = um(6'000);
            f.box.sideThickness = um(12'000);
        });
    };
    // The wall's lower left corner lies 7 mm across and 8 mm up the front.
    EXPECT_EQ(placed({um(200'000), um(8'000 + 12'000 + 4'000)}).sentence,
              "The 12 mm hole through the box wall for the handle's bolt runs 2 mm into the "
              "bottom.");
    EXPECT_EQ(placed({um(7'000 + 12'000 + 5'000), um(80'000)}).sentence,
              "The 12 mm hole through the box wall for the handle's bolt runs 1 mm into the box's "
              "left side.");
    EXPECT_EQ(placed({um(7'000 + 12'000 + 5'000), um(80'000)}).reason,
              "past the free part of the wall = hole / 2 − centre to it = 12 mm / 2 − 5 mm = 1 mm; "
              "it must be 0 or less");
}

TEST(WordingInMillimetres, OfTwoHandlesThatOverlapTellsWhatTheyNeed) {
    const FindingText text = toldInMillimetres(FindingCode::HandlesCollide, [](FrontDefaults& f) {
        f.hardware.form = "pull-96";
        f.hardware.twoPast = um(300'000);
        f.hardware.twoAtPercent = 40; // a fifth of 412 mm apart
    });
    EXPECT_EQ(text.sentence, "The front's two handles overlap by 27.6 mm: their centres are only "
                             "82.4 mm apart.");
    EXPECT_EQ(text.reason, "least distance of centres = width of a handle's base = 110 mm; "
                           "they are 82.4 mm apart");
}

TEST(WordingInMillimetres, OfAScrewThatHoldsNothingSaysSo) {
    EXPECT_EQ(toldInMillimetres(FindingCode::PenetrationShort,
                                [](FrontDefaults& f) {
                                    f.mounting.recess = {};
                                    f.mounting.length = um(12'000);
                                })
                  .sentence,
              "The screw does not reach the front: 12 mm screw, 12 mm wall.");
}

TEST(WordingInMillimetres, OfAStockWithAHoleInItNamesTheNeighbours) {
    EXPECT_EQ(toldInMillimetres(FindingCode::NoScrewFits,
                                [](FrontDefaults& f) {
                                    f.mounting.recess = {};
                                    f.box.wallThickness = um(11'000);
                                    f.thickness = um(14'000);
                                })
                  .sentence, // 11 + 9.525 … 11 + 14 − 3.175; stocked are 19.05 mm and 22.225 mm
              "No stocked screw fits: it has to be from ≈ 20.5 mm to ≈ 21.8 mm long. The nearest "
              "are ≈ 19.1 mm and ≈ 22.2 mm.");
}

TEST(WordingInMillimetres, OfAScrewAtTheBoltTellsWhetherTheyMeet) {
    const auto besideKnob = [](Length apart) {
        return toldInMillimetres(FindingCode::HoleAtHardware, [apart](FrontDefaults& f) {
            f.mounting.pattern = ScrewPattern::ByHand;
            f.box.clearanceBelow = um(2'000);
            f.box.sideClearance = um(1'000);
            f.hardware.placedAt = FrontPoint{um(207'000), um(88'000)}; // 200, 80 up the wall
            f.mounting.placed = {{um(200'000) + apart, um(80'000)}};
        });
    };
    // Radii 2.38125 mm and 7.9375 mm, 6.35 mm of wood between.
    EXPECT_EQ(besideKnob(um(5'000)).severity, "Will not work");
    EXPECT_TRUE(besideKnob(um(5'000)).sentence.english().starts_with(
        "The screw hole runs ≈ 5.3 mm into what is drilled for "
        "handle hole 1"));
    EXPECT_EQ(besideKnob(um(12'000)).severity, "Outside good practice");
}

TEST(WordingInMillimetres, OfAnInsetFrontTooLargeForItsOpeningSaysWhere) {
    const auto gapAt = [](Length gap) {
        Project project = oneOpening(um(400'000), um(150'000));
        project.fronts.fit = FrontFit::all({Fit::Inset, um(2'000)});
        project.fronts.fit.right.amount = gap;
        const Found found(project);
        return describe(*found.find(FindingCode::GapTight), found.project, found.plan,
                        {Unit::Millimetre, 16});
    };
    EXPECT_EQ(gapAt(um(1'000)).place, "Front A1, right");
    EXPECT_EQ(gapAt(um(1'000)).sentence, "The gap at the right is only 1 mm, less than ≈ 1.6 mm.");
    EXPECT_EQ(gapAt({}).sentence, "The front touches its opening's right edge.");
    EXPECT_EQ(gapAt(um(-3'000)).sentence,
              "The front is 3 mm too large for its opening at the right.");
}

TEST(WordingInMillimetres, OfAFrontWithoutSizeSaysSo) {
    Project project = oneOpening(um(400'000), um(150'000));
    project.fronts.fit = FrontFit::all({Fit::Inset, um(75'000)});
    const Found found(project);
    EXPECT_EQ(describe(*found.find(FindingCode::FieldEmpty), found.project, found.plan,
                       {Unit::Millimetre, 16})
                  .sentence,
              "The front has no size: 250 mm × 0 mm.");
}

TEST(WordingInMillimetres, OfAFrontThatEndsShortOfItsOpeningSaysByHowMuch) {
    Project project = oneOpening(n64(640), n64(640));
    project.fronts.fit.bottom = {Fit::Gap, n64(104)}; // of a rail of 96/64
    const Found found(project);
    EXPECT_EQ(found.told(FindingCode::OverlayMissing).sentence,
              "The front ends 1/8 in short of its opening's bottom edge, which it should cover.");
}

TEST(WordingInMillimetres, OfUnevenGapsOverUnlikeRailsNamesTheRails) {
    using namespace testing;
    Split tree;
    tree.children = {share(opening()), share(opening()), share(opening())};
    tree.members = {{{}, n64(80)}, {{}, n64(96)}};
    const Found found(projectWith(std::make_shared<const Region>(Region{tree}), Length::inches(16),
                                  Length::inches(24)));
    EXPECT_EQ(found.told(FindingCode::GapsUneven).sentence,
              "The gaps down bank A differ by 1/4 in: 3/4 in here, 1 in at the widest; the rail is "
              "1 1/4 in at the one and 1 1/2 in at the other.");
}

} // namespace
} // namespace frontwright
