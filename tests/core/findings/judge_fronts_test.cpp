#include "tests/core/findings/provoking.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::bank;
using testing::banks;
using testing::Found;
using testing::n64;
using testing::oneOpening;
using testing::withChoices;

Project withOverlays(Project project, Length bottom, Length top) {
    project.fronts.fit.bottom = {Fit::Overlay, bottom};
    project.fronts.fit.top = {Fit::Overlay, top};
    return project;
}

TEST(GapFinding, OfFrontsThatTouchWillNotWorkAndOfAThinGapIsOutsidePractice) {
    const Found touching(withOverlays(bank(2), n64(40), n64(40)));
    ASSERT_TRUE(touching.has(FindingCode::GapTight));
    EXPECT_EQ(touching.find(FindingCode::GapTight)->severity, Severity::WontWork);
    EXPECT_FALSE(touching.has(FindingCode::FrontsCollide));
    const Found thin(withOverlays(bank(2), n64(40), n64(37)));
    EXPECT_EQ(thin.find(FindingCode::GapTight)->severity, Severity::OutsidePractice);
    EXPECT_EQ(thin.find(FindingCode::GapTight)->figures[0], n64(3));
    EXPECT_EQ(thin.find(FindingCode::GapTight)->figures[1], n64(4));
}

TEST(GapFinding, NamesBothFrontsInThePlansOrderAndTheMember) {
    const Found found(withOverlays(bank(2), n64(40), n64(40)));
    const Whereabouts& where = found.find(FindingCode::GapTight)->where;
    EXPECT_EQ(where.opening, found.front(0).opening);
    EXPECT_EQ(where.other, found.front(1).opening);
    EXPECT_EQ(where.side, Side::Bottom);
    EXPECT_EQ(where.member, found.beside(0, Side::Bottom).id);
}

TEST(GapFinding, OfAnInsetFrontIsToldSideBySide) {
    Project project = oneOpening(n64(640), n64(640));
    project.fronts.fit = FrontFit::all({Fit::Inset, n64(4)});
    EXPECT_FALSE(Found(project).has(FindingCode::GapTight)); // 1/16 in is the least
    project.fronts.fit.left.amount = n64(3);
    project.fronts.fit.top.amount = n64(0);
    const Found found(project);
    ASSERT_EQ(found.count(FindingCode::GapTight), 2U);
    EXPECT_EQ(found.findings[0].where.side, Side::Top); // touching is graver
    EXPECT_EQ(found.findings[0].severity, Severity::WontWork);
    EXPECT_EQ(found.find(FindingCode::GapTight), &found.findings[0]);
    EXPECT_EQ(found.findings[1].where.side, Side::Left);
}

TEST(GapFinding, ThatTheFrontsOverlapIsACollisionNotAGap) {
    const Found found(withOverlays(bank(3), n64(48), n64(48)));
    EXPECT_EQ(found.count(FindingCode::FrontsCollide), 2U);
    EXPECT_FALSE(found.has(FindingCode::GapTight));
    const Finding* collide = found.find(FindingCode::FrontsCollide);
    EXPECT_EQ(collide->figures[0], n64(13 * 64 + 32)); // the whole width
    EXPECT_EQ(collide->figures[1], n64(96 - 80));      // two overlays less the rail
}

TEST(UnevenGaps, AreToldOnceForTheirBankAtTheNarrowest) {
    const Project project = withChoices(banks(2, 3), 4, [](FrontChoices& choices) {
        choices.fit.bottom = SideFit{Fit::Overlay, n64(24)};
    });
    const Found found(project);
    ASSERT_EQ(found.count(FindingCode::GapsUneven), 1U);
    const Finding* uneven = found.find(FindingCode::GapsUneven);
    EXPECT_EQ(uneven->where.opening, found.front(4).opening);
    EXPECT_EQ(uneven->where.other, found.front(5).opening);
    EXPECT_EQ(uneven->figures, (std::array{n64(40), n64(48), n64(80), n64(80)}));
    EXPECT_EQ(uneven->severity, Severity::OutsidePractice);
}

TEST(UnevenGaps, OverRailsOfDifferentWidthAreOnlyToKnow) {
    using namespace testing;
    Split tree;
    tree.children = {share(opening()), share(opening()), share(opening())};
    tree.members = {{{}, n64(80)}, {{}, n64(96)}};
    const auto region = std::make_shared<const Region>(Region{tree});
    const Found found(projectWith(region, Length::inches(16), Length::inches(24)));
    ASSERT_TRUE(found.has(FindingCode::GapsUneven));
    EXPECT_EQ(found.find(FindingCode::GapsUneven)->severity, Severity::ToKnow);
}

TEST(UnevenGaps, AreNotAGraduatedRunsDifferentHeights) {
    using namespace testing;
    const Found found(projectWith(
        rows({fixed(n64(4 * 64), opening()), fixed(n64(6 * 64), opening()), share(opening())},
             n64(80)),
        Length::inches(16), Length::inches(24)));
    EXPECT_FALSE(found.has(FindingCode::GapsUneven));
}

TEST(UnevenGaps, DoNotCountGapsBesideTheBank) {
    // Columns 2 in apart, rails 1 1/4 in: the gaps beside a front differ from those below it.
    EXPECT_FALSE(Found(banks(3, 3)).has(FindingCode::GapsUneven));
}

TEST(FrontFinding, PastTheCaseNamesTheSideAndHowFar) {
    Project project = oneOpening(n64(640), n64(640));
    project.fronts.fit.top = {Fit::Overlay, n64(100)};
    const Found found(project);
    const Finding* off = found.find(FindingCode::FrontOffCase);
    ASSERT_NE(off, nullptr);
    EXPECT_EQ(off->where.side, Side::Top);
    EXPECT_EQ(off->figures[0], n64(4));
}

TEST(FrontFinding, WithoutOverlayIsToldForEachSide) {
    Project project = oneOpening(n64(640), n64(640));
    project.fronts.fit.left = {Fit::Gap, n64(100)}; // of a stile of 96/64: 4/64 short
    project.fronts.fit.right = {Fit::Overlay, {}};
    const Found found(project);
    ASSERT_EQ(found.count(FindingCode::OverlayMissing), 2U);
    EXPECT_EQ(found.find(FindingCode::OverlayMissing)->where.side, Side::Left);
    EXPECT_EQ(found.find(FindingCode::OverlayMissing)->figures[0], -n64(4));
}

TEST(FrontFinding, ThatHasNoSizeIsAnEmptyField) {
    Project project = oneOpening(n64(640), n64(640));
    project.fronts.fit = FrontFit::all({Fit::Inset, n64(320)});
    EXPECT_TRUE(Found(project).has(FindingCode::FieldEmpty));
}

TEST(FrontFinding, WithAnEmptyFieldDoesNotTellOfTheBaseToo) {
    Project project = oneOpening(n64(640), n64(640));
    project.fronts.profile = {ProfileFamily::Cove, n64(400), n64(8), {}, PerSide<bool>::all(true)};
    const Found found(project);
    EXPECT_TRUE(found.has(FindingCode::FieldEmpty));
    EXPECT_FALSE(found.has(FindingCode::BackplateOffField));
}

TEST(BoxFinding, ThatHasNoRoomKeepsQuietAboutScrewsAndBottom) {
    Project project = oneOpening(n64(640), n64(640));
    project.fronts.box.sideClearance = n64(320);
    project.fronts.mounting.length = n64(96);
    const Found found(project);
    ASSERT_TRUE(found.has(FindingCode::BoxNoRoom));
    EXPECT_EQ(found.find(FindingCode::BoxNoRoom)->figures[0], Length{});
    EXPECT_FALSE(found.has(FindingCode::ScrewThroughShowFace));
    EXPECT_FALSE(found.has(FindingCode::BottomOutOfWall));
}

TEST(BoxFinding, TooTallForTheClearanceAskedForIsOutsidePractice) {
    Project project = oneOpening(n64(640), n64(640));
    project.fronts.box.clearanceAbove = n64(16);
    project.fronts.box.height = n64(640 - 8 - 16);
    EXPECT_FALSE(Found(project).has(FindingCode::BoxTooTall));
    project.fronts.box.height = n64(640 - 8 - 15);
    EXPECT_EQ(Found(project).find(FindingCode::BoxTooTall)->severity, Severity::OutsidePractice);
    project.fronts.box.height = n64(640 - 8 + 1);
    EXPECT_EQ(Found(project).find(FindingCode::BoxTooTall)->severity, Severity::WontWork);
}

TEST(BoxFinding, BehindAnInsetFrontLosesItsThicknessOfDepth) {
    Project project = oneOpening(n64(640), n64(640));
    project.fronts.fit = FrontFit::all({Fit::Inset, n64(8)});
    project.fronts.box.depth = Length::inches(20); // 3/4 in frame + 20 in − 3/4 in front
    EXPECT_FALSE(Found(project).has(FindingCode::BoxTooDeep));
    project.fronts.box.depth = Length::inches(20, 1);
    EXPECT_TRUE(Found(project).has(FindingCode::BoxTooDeep));
}

} // namespace
} // namespace frontwright
