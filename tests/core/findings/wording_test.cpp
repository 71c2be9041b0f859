#include "tests/core/findings/provoking.h"

#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::sixteenths;

using testing::allProvocations;
using testing::bank;
using testing::Found;
using testing::n64;
using testing::oneOpening;
using testing::Provocation;
using testing::um;
using testing::withChoices;

/// As the first finding of that code says it.
FindingText told(const Project& project, FindingCode code) {
    const Found found(project);
    EXPECT_TRUE(found.has(code)) << key(code);
    return found.has(code) ? found.told(code) : FindingText{};
}
Project oneDrawer(const std::function<void(FrontDefaults&)>& change) {
    Project project = oneOpening(Length::inches(13), Length::inches(6));
    change(project.fronts);
    return project;
}

TEST(Wording, OfAScrewThroughTheShowFaceSaysByHowMuchAndFromWhat) {
    const Project project = oneDrawer([](FrontDefaults& fronts) {
        fronts.thickness = n64(42);
        fronts.mounting.recess = {};
        fronts.mounting.length = n64(80);
    });
    const FindingText text = told(project, FindingCode::ScrewThroughShowFace);
    EXPECT_EQ(text.severity, "Would ruin a part");
    EXPECT_EQ(text.place, "Front A1, screw hole 1");
    EXPECT_EQ(text.sentence, "The screw comes 3/32 in through the show face: 1 1/4 in screw, "
                             "1/2 in wall, 21/32 in front behind the hole.");
    EXPECT_EQ(text.reason, "tip cover = front behind the hole − (screw + recess − wall) = "
                           "21/32 in − (1 1/4 in + 0 in − 1/2 in) = −3/32 in; "
                           "it must be more than 0");
    EXPECT_EQ(text.source, (Source{SourceKind::CommonPractice, "common practice, no source"}));
}

TEST(Wording, OfAScrewSetDeepNamesTheRecess) {
    const Project project =
        oneDrawer([](FrontDefaults& fronts) { fronts.mounting.length = n64(72); });
    EXPECT_EQ(told(project, FindingCode::ScrewThroughShowFace).sentence,
              "The screw's tip is level with the show face: 1 1/8 in screw, set 1/8 in deep, "
              "1/2 in wall, 3/4 in front behind the hole.");
}

TEST(Wording, OfAHoleIntoTheBottomSaysHowDeep) {
    const Project project =
        oneDrawer([](FrontDefaults& fronts) { fronts.mounting.fromBottom = n64(32); });
    const FindingText text = told(project, FindingCode::HoleInBottom);
    EXPECT_EQ(text.severity, "Would ruin a part");
    EXPECT_EQ(text.sentence, "The screw hole goes 5/32 in into the bottom: hole 1/2 in above the "
                             "box's lower edge, bottom's top 1/2 in, radius of the head 5/32 in.");
    EXPECT_EQ(text.reason, "least height = bottom's top + head's radius + margin = 1/2 in + "
                           "5/32 in + 1/8 in = 25/32 in; the hole is at 1/2 in");
}

TEST(Wording, OfABlockedRecessToolSaysWhatMeetsWhat) {
    const Project project =
        oneDrawer([](FrontDefaults& fronts) { fronts.mounting.fromBottom = n64(48); });
    const FindingText text = told(project, FindingCode::RecessToolBlocked);
    EXPECT_EQ(text.severity, "Will not work");
    EXPECT_EQ(text.sentence, "The hole clears the bottom, but the tool for its recess meets it by "
                             "1/16 in: hole 3/4 in above the box's lower edge, bottom's top "
                             "1/2 in, radius of the tool 5/16 in.");
}

TEST(Wording, OfAShortBoltSaysHowMuchIsMissing) {
    const Project project = oneDrawer([](FrontDefaults& fronts) {
        fronts.thickness = um(19'000);
        fronts.box.wallThickness = um(12'000);
        fronts.hardware.boltLength = um(30'000);
    });
    const Found found(project);
    const FindingText text = describe(*found.find(FindingCode::BoltTooShort), found.project,
                                      found.plan, {Unit::Millimetre, 16});
    EXPECT_EQ(text.sentence, "The bolt is 7 mm too short: 30 mm bolt, 31 mm of wood to go through, "
                             "at least 6 mm to hold in the handle.");
    EXPECT_EQ(text.reason, "least length = grip + least engagement = 31 mm + 6 mm = 37 mm; "
                           "the bolt is 30 mm");
}

TEST(Wording, OfABoltThatBottomsOutSaysWhatWashersCureIt) {
    const Project project =
        oneDrawer([](FrontDefaults& fronts) { fronts.hardware.boltLength = um(50'750); });
    const Found found(project);
    EXPECT_EQ(describe(*found.find(FindingCode::BoltBottomsOut), found.project, found.plan,
                       {Unit::Millimetre, 16})
                  .sentence,
              "The bolt bottoms out, 3 mm too long: ≈ 50.8 mm bolt, ≈ 31.8 mm of wood to go "
              "through, thread 16 mm deep; a shorter bolt or 3 mm of washers under its head cures "
              "it.");
}

TEST(Wording, OfABaseOffTheFieldSaysOnWhichEdgeItRocks) {
    const Project project = oneDrawer([](FrontDefaults& fronts) {
        fronts.profile = {ProfileFamily::Raised, n64(48), n64(16), n64(8),
                          PerSide<bool>::all(true)};
        fronts.hardware.placing = Placing::FromTop;
        fronts.hardware.distance = n64(48) + um(10'000) - n64(8);
    });
    const FindingText text = told(project, FindingCode::BackplateOffField);
    EXPECT_EQ(text.place, "Front A1, handle hole 1");
    EXPECT_EQ(text.sentence, "The handle's base reaches 1/8 in past the field onto the top edge "
                             "profile and would rock: base ≈ 25/32 in, field 5 in that way.");
}

TEST(Wording, OfFrontsThatTouchNamesBoth) {
    Project project = withChoices(bank(2), 0, [](FrontChoices& choices) {
        choices.fit.bottom = SideFit{Fit::Overlay, n64(64)};
    });
    const FindingText text = told(project, FindingCode::GapTight);
    EXPECT_EQ(text.place, "Fronts A1 and A2");
    EXPECT_EQ(text.sentence, "The fronts touch: there is no gap between them.");
    EXPECT_EQ(text.reason,
              "gap = member − overlay − overlay = 1 1/4 in − 1 in − 1/4 in = 0 in; at least "
              "1/16 in");
}

TEST(Wording, OfATallCaseClaimsNoTestAndNamesThePublishedScope) {
    const Project project = oneOpening(Length::inches(13), Length::inches(45));
    const FindingText text = told(project, FindingCode::AnchorCase);
    EXPECT_EQ(text.severity, "To know");
    EXPECT_EQ(text.place, "The case");
    EXPECT_EQ(
        text.sentence,
        "The case is 48 in tall (weight not known, 4.6 ft³ of storage): anchor it to the wall, and "
        "follow the local codes.");
    EXPECT_EQ(text.source.kind, SourceKind::Published);
    EXPECT_NE(text.source.title.find("16 CFR part 1261"), std::string::npos);
    EXPECT_NE(text.reason.english().find("nothing has been tested"), std::string::npos);
}

TEST(Wording, CallsALimitThatTheMakerChangedTheMakers) {
    Project project = oneDrawer([](FrontDefaults& fronts) { fronts.mounting.length = n64(64); });
    project.limits.leastTipCover = n64(12);
    const FindingText text = told(project, FindingCode::TipCoverThin);
    EXPECT_EQ(text.sentence, "Only 1/8 in of wood is left before the screw's tip, less than "
                             "3/16 in: 1 in screw, set 1/8 in deep, 1/2 in wall, 3/4 in front "
                             "behind the hole.");
    EXPECT_EQ(text.source, (Source{SourceKind::Maker, "the maker's limit"}));
}

TEST(Wording, NamesTheFrontAsTheMakerDoes) {
    using namespace testing;
    Project project = projectWith(opening({}, "Glazes"), Length::inches(16), Length::inches(9));
    project.fronts.mounting.length = n64(72);
    EXPECT_EQ(told(project, FindingCode::ScrewThroughShowFace).place, "Front Glazes, screw hole 1");
}

TEST(Wording, SaysASmallDifferenceRatherThanNothing) {
    const Project project =
        oneDrawer([](FrontDefaults& fronts) { fronts.mounting.length = n64(72) + um(10); });
    EXPECT_TRUE(told(project, FindingCode::ScrewThroughShowFace)
                    .sentence.english()
                    .starts_with("The screw comes less than 1/64 in through"));
}

TEST(Wording, OfEveryFindingIsOnePlainSentenceWithANumberInIt) {
    for (const Provocation& provocation : allProvocations()) {
        const Found found(provocation.beyond);
        const FindingText text = found.told(provocation.code);
        EXPECT_TRUE(std::isupper(static_cast<unsigned char>(text.sentence.english().front())))
            << text.sentence;
        EXPECT_TRUE(text.sentence.english().ends_with('.')) << text.sentence;
        EXPECT_EQ(text.sentence.english().find("  "), std::string::npos) << text.sentence;
        EXPECT_EQ(text.reason.english().find("= ≈"), std::string::npos) << text.reason;
        // What has nothing to count says why in words.
        if (provocation.code != FindingCode::FixedFrontNoFrame &&
            provocation.code != FindingCode::HoleOffMember) {
            EXPECT_NE(text.reason.english().find_first_of("0123456789"), std::string::npos)
                << text.reason;
        }
        EXPECT_FALSE(text.source.title.empty());
    }
}

/// A finding from elsewhere, about a front that this plan does not have.
TEST(Wording, OfAFindingAboutAFrontThatIsGoneStillReads) {
    const Found found(bank(1));
    for (int code = 0; code <= static_cast<int>(lastFindingCode); ++code) {
        Finding stray;
        stray.code = static_cast<FindingCode>(code);
        stray.where.opening = OpeningId{999};
        const FindingText text = describe(stray, found.project, found.plan, sixteenths);
        EXPECT_EQ(text.place, "The case");
        EXPECT_TRUE(text.sentence.english().ends_with('.'));
        EXPECT_TRUE(
            remedies(stray, found.project, found.catalogue, found.plan, sixteenths).empty());
    }
}

} // namespace
} // namespace frontwright
