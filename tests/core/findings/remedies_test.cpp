#include "tests/core/findings/provoking.h"

#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

#include <set>

namespace frontwright {
namespace {

using testing::sixteenths;

using testing::allProvocations;
using testing::bank;
using testing::Found;
using testing::n64;
using testing::oneOpening;
using testing::Provocation;
using testing::smallCatalogue;
using testing::um;
using testing::withChoices;

std::vector<Remedy> remediesOf(const Found& found, const Finding& finding) {
    return remedies(finding, found.project, found.catalogue, found.plan, sixteenths);
}
std::vector<std::string> labelsOf(const Found& found, FindingCode code) {
    std::vector<std::string> labels;
    if (const Finding* finding = found.find(code))
        for (const Remedy& remedy : remediesOf(found, *finding))
            labels.push_back(remedy.label.english());
    return labels;
}
bool offers(const Found& found, FindingCode code, const std::string& label) {
    const auto labels = labelsOf(found, code);
    return std::find(labels.begin(), labels.end(), label) != labels.end();
}

Project applied(const Found& found, FindingCode code, const std::string& label) {
    for (const Remedy& remedy : remediesOf(found, *found.find(code)))
        if (remedy.label == label)
            return remedy.apply(found.project).value();
    ADD_FAILURE() << "not offered: " << label;
    return found.project;
}

std::size_t countAt(const std::vector<Finding>& findings, const Finding& like) {
    return static_cast<std::size_t>(
        std::count_if(findings.begin(), findings.end(), [&](const Finding& f) {
            return f.code == like.code && f.where.opening == like.where.opening &&
                   f.where.other == like.where.other;
        }));
}

/// What the law asks of one remedy.
void expectCured(const Found& found, const Finding& finding, const Remedy& remedy) {
    const auto changed = remedy.apply(found.project);
    ASSERT_TRUE(changed.ok()) << remedy.label << ": " << changed.error().sentence();
    const Found after(changed.value(), found.catalogue);
    EXPECT_LT(countAt(after.findings, finding), countAt(found.findings, finding)) << remedy.label;
    for (const Finding& now : after.findings)
        if (now.severity < finding.severity && now.where.opening == finding.where.opening) {
            EXPECT_EQ(countAt(found.findings, now), countAt(after.findings, now))
                << remedy.label << " brings " << key(now.code);
        }
}

TEST(Remedies, CureWhatTheyAreForAndBringNothingGraver) {
    std::size_t tried = 0;
    for (const Provocation& provocation : allProvocations()) {
        const Found found(provocation.beyond);
        for (const Finding& finding : found.findings)
            for (const Remedy& remedy : remediesOf(found, finding)) {
                expectCured(found, finding, remedy);
                ++tried;
            }
    }
    EXPECT_GT(tried, 150U);
}

TEST(Remedies, CureWhatIsFoundInCasesByChance) {
    std::size_t tried = 0;
    for (std::uint64_t seed = 300; seed < 312; ++seed) {
        const Found found(testing::randomProject(seed));
        std::set<FindingCode> done; // one of each code is enough
        for (const Finding& finding : found.findings)
            if (done.insert(finding.code).second)
                for (const Remedy& remedy : remediesOf(found, finding)) {
                    expectCured(found, finding, remedy);
                    ++tried;
                }
    }
    EXPECT_GT(tried, 20U);
}

TEST(Remedies, AreOfferedForAllButWhatTheMakerHasToDecide) {
    for (const Provocation& provocation : allProvocations()) {
        const bool isMakers = provocation.code == FindingCode::MoistureBeyondRange ||
                              provocation.code == FindingCode::WoodUnknown ||
                              provocation.code == FindingCode::AnchorCase ||
                              provocation.code == FindingCode::RunnerOverloaded;
        EXPECT_EQ(labelsOf(Found(provocation.beyond), provocation.code).empty(), isMakers)
            << key(provocation.code);
    }
}

TEST(Remedies, AreFewAndDifferInTheirLabels) {
    for (const Provocation& provocation : allProvocations()) {
        const auto labels = labelsOf(Found(provocation.beyond), provocation.code);
        EXPECT_LE(labels.size(), 5U);
        EXPECT_EQ(std::set<std::string>(labels.begin(), labels.end()).size(), labels.size())
            << key(provocation.code);
        for (const std::string& label : labels)
            EXPECT_EQ(label.find('%'), std::string::npos) << label;
    }
}

TEST(Remedies, DoNotTouchTheProjectTheyAreFoundIn) {
    for (const Provocation& provocation : allProvocations()) {
        const Found found(provocation.beyond);
        for (const Finding& finding : found.findings)
            remediesOf(found, finding);
        EXPECT_EQ(found.project, provocation.beyond);
    }
}

TEST(ScrewRemedies, OfferStockedLengthsTheLongestFirstThenTheRecess) {
    Project project = oneOpening(Length::inches(13), Length::inches(6));
    project.fronts.mounting.length = n64(72);
    EXPECT_EQ(
        labelsOf(Found(project), FindingCode::ScrewThroughShowFace),
        (std::vector<std::string>{"Use 1 in screws in A1", "Use 7/8 in screws in A1",
                                  "Set the screws of A1 flush", "Cut the screws of A1 to 1 in"}));
}

TEST(ScrewRemedies, OfferTheSameForTheWholeCaseWhereTheFrontFollowsIt) {
    Project project = bank(3);
    project.fronts.mounting.length = n64(72);
    const Found found(project);
    const Found cured(
        applied(found, FindingCode::ScrewThroughShowFace, "Use 1 in screws in the whole case"));
    EXPECT_FALSE(cured.has(FindingCode::ScrewThroughShowFace));
    EXPECT_EQ(cured.project.fronts.mounting.length, WrittenLength(n64(64)));
}

TEST(ScrewRemedies, LeaveTheCaseAloneWhereTheFrontDecidesForItself) {
    const Project project = withChoices(bank(3), 1, [&](FrontChoices& choices) {
        choices.mounting = testing::smallDefaults().mounting;
        choices.mounting->length = n64(72);
    });
    const Found found(project);
    for (const std::string& label : labelsOf(found, FindingCode::ScrewThroughShowFace))
        EXPECT_EQ(label.find("whole case"), std::string::npos) << label;
    const Project cured =
        applied(found, FindingCode::ScrewThroughShowFace, "Use 1 in screws in A2");
    EXPECT_EQ(cured.fronts, project.fronts);
}

TEST(ScrewRemedies, OfferAThickerFrontWhereNoLengthCouldEverFit) {
    Project project = oneOpening(Length::inches(13), Length::inches(6));
    project.fronts.thickness = n64(28);
    EXPECT_EQ(labelsOf(Found(project), FindingCode::NoScrewFits),
              (std::vector<std::string>{"Make the front of A1 1/2 in thick"}));
}

TEST(HoleRemedies, MoveTheLowerRowJustHighEnough) {
    Project project = oneOpening(Length::inches(13), Length::inches(6));
    project.fronts.mounting.fromBottom = n64(32);
    const Found found(project);
    const Found cured(
        applied(found, FindingCode::HoleInBottom, "Move the lower screw row of A1 up to 13/16 in"));
    EXPECT_EQ(cured.front(0).mounting.holes.front().at.y, n64(52)); // 1/2 in + 5/16 in
}

TEST(HoleRemedies, OfferASmallerTool) {
    Project project = oneOpening(Length::inches(13), Length::inches(6));
    project.fronts.mounting.fromBottom = n64(50);
    // The hole is 18/64 above the bottom's top: a 9/16 in tool clears it.
    EXPECT_TRUE(offers(Found(project), FindingCode::RecessToolBlocked,
                       "Cut the recesses of A1 with a tool of at most 9/16 in"));
}

TEST(HoleRemedies, MoveAHolePlacedByHandAndNoOther) {
    Project project = oneOpening(Length::inches(13), Length::inches(6));
    project.fronts.mounting.pattern = ScrewPattern::ByHand;
    project.fronts.mounting.placed = {{n64(100), n64(40)}, {n64(600), n64(200)}};
    const Found found(project);
    const Found cured(applied(found, FindingCode::HoleInBottom,
                              "Move the screw hole of A1 to its nearest allowed place"));
    ASSERT_EQ(cured.front(0).mounting.holes.size(), 2U);
    EXPECT_EQ(cured.front(0).mounting.holes[0].at, (WallPoint{n64(100), n64(52)}));
    EXPECT_EQ(cured.front(0).mounting.holes[1].at, (WallPoint{n64(600), n64(200)}));
}

TEST(BoltRemedies, OfferCounterboreStockAndTheOtherWays) {
    Project project = oneOpening(Length::inches(13), Length::inches(6));
    project.fronts.hardware.boltLength = n64(80);
    const Found found(project);
    // 1 1/4 in + 6 mm − 1 1/4 in: 6 mm deep at least, 1/4 in on the grid.
    EXPECT_TRUE(
        offers(found, FindingCode::BoltTooShort, "Counterbore A1 1/4 in deep for 1 1/4 in bolts"));
    EXPECT_TRUE(offers(found, FindingCode::BoltTooShort, "Use 1 1/2 in bolts in A1"));
    EXPECT_TRUE(
        offers(found, FindingCode::BoltTooShort,
               "Bolt the handle of A1 to the front alone, with an access hole in the wall"));
}

TEST(BoltRemedies, NeverSinkAHeadSoThatTooLittleWoodIsLeft) {
    Project project = oneOpening(Length::inches(13), Length::inches(6));
    project.fronts.hardware.way = MountingWay::FrontAccessHole;
    project.fronts.hardware.boltLength = n64(16); // only a 3/4 in deep counterbore would do
    for (const std::string& label : labelsOf(Found(project), FindingCode::BoltTooShort))
        EXPECT_FALSE(label.starts_with("Counterbore")) << label;
}

TEST(HandleRemedies, PlaceTheHandleElsewhereOrNarrowTheProfile) {
    Project project = oneOpening(Length::inches(13), Length::inches(6));
    project.fronts.profile = {
        ProfileFamily::Chamfer, n64(64), n64(16), {}, PerSide<bool>::all(true)};
    project.fronts.hardware.placing = Placing::FromTop;
    project.fronts.hardware.distance = n64(80);
    const Found found(project);
    EXPECT_TRUE(
        offers(found, FindingCode::BackplateOffField, "Centre the handle of A1 in the field"));
    // Profile 1 in + base's radius 10 mm = 1.394 in.
    EXPECT_TRUE(offers(found, FindingCode::BackplateOffField,
                       "Place the handle of A1 1 7/16 in below the top edge"));
    EXPECT_TRUE(
        offers(found, FindingCode::BackplateOffField, "Make the edge profile of A1 13/16 in wide"));
}

TEST(GapRemedies, MakeOverlaysSmallerOrSetTheGap) {
    Project project = bank(2);
    project.fronts.fit.bottom = project.fronts.fit.top = {Fit::Overlay, n64(48)};
    const Found found(project);
    // (1 1/4 in − 1/16 in) / 2 = 19/32 in, 9/16 in on the grid.
    const Found cured(
        applied(found, FindingCode::FrontsCollide, "Make the overlays between A1 and A2 9/16 in"));
    EXPECT_EQ(cured.plan.spacers.front().width, n64(80 - 72));
    const Found gap(
        applied(found, FindingCode::FrontsCollide, "Leave a gap of 1/16 in between A1 and A2"));
    EXPECT_EQ(gap.plan.spacers.front().width, n64(4));
}

TEST(GapRemedies, EvenTheGapsOfABankToItsCommonest) {
    const Project project = withChoices(bank(4), 1, [](FrontChoices& choices) {
        choices.fit.bottom = SideFit{Fit::Overlay, n64(20)};
    });
    const Found found(project);
    const auto labels = labelsOf(found, FindingCode::GapsUneven);
    ASSERT_GE(labels.size(), 2U);
    EXPECT_EQ(labels[0], "Let the gaps of bank A follow the case");
    EXPECT_EQ(labels[1], "Make all gaps of bank A 3/4 in");
    const Found cured(applied(found, FindingCode::GapsUneven, labels[1]));
    for (const Spacer& spacer : cured.plan.spacers)
        EXPECT_EQ(spacer.width, n64(48));
}

TEST(BoxRemedies, GiveTheBoxWhatTheCaseLeaves) {
    Project project = oneOpening(Length::inches(13), Length::inches(6));
    project.fronts.box.depth = Length::inches(24);
    const Found found(project);
    const Found cured(applied(found, FindingCode::BoxTooDeep, "Make the box of A1 20 3/4 in deep"));
    EXPECT_EQ(cured.front(0).box.depth, Length::inches(20, 48));
}

TEST(Remedies, SpeakMillimetresToAMakerWhoWorksInThem) {
    Project project = oneOpening(um(400'000), um(150'000));
    project.style = {Unit::Millimetre, 16};
    project.fronts.thickness = um(20'000);
    project.fronts.box.wallThickness = um(12'000);
    project.fronts.mounting.recess = um(2'000);
    project.fronts.mounting.length = um(40'000);
    const Found found(project);
    const auto offered = remedies(*found.find(FindingCode::ScrewThroughShowFace), found.project,
                                  found.catalogue, found.plan, project.style);
    ASSERT_FALSE(offered.empty());
    const bool cuts = std::any_of(offered.begin(), offered.end(), [](const Remedy& remedy) {
        return remedy.label == "Cut the screws of A1 to 26 mm"; // 12 − 2 + 20 − 3.175 = 26.8
    });
    EXPECT_TRUE(cuts);
}

} // namespace
} // namespace frontwright
