// Which number a finding judges, and where to go to change it.

#include "core/findings/cause.h"

#include "tests/core/findings/provoking.h"

#include <gtest/gtest.h>

#include <set>

namespace frontwright::testing {
namespace {

TEST(Causes, LeadToANumberThatThePlanTells) {
    using enum FindingCode;
    const std::set<FindingCode> judgeNone{
        WallThinUnderHead, SlotForMovement, MoistureBeyondRange, WoodUnknown, FixedFrontNoFrame,
        FillerBends,       OfBoard};
    for (const Provocation& provocation : allProvocations()) {
        const Found found(provocation.beyond);
        const Finding* finding = found.find(provocation.code);
        ASSERT_NE(finding, nullptr) << key(provocation.code);
        const auto number = numberOf(*finding, found.plan);
        if (judgeNone.contains(provocation.code)) {
            EXPECT_FALSE(number) << key(provocation.code);
            continue;
        }
        ASSERT_TRUE(number) << key(provocation.code);
        EXPECT_TRUE(derive(found.project, found.plan, *number, {Unit::Inch, 16}));
    }
}

/// 1/2 in wall − 1/8 in recess, 1 1/8 in screw: 3/4 in of a 3/4 in front; nothing is left.
TEST(Causes, TellTheVeryTipCoverThatIsJudged) {
    const Found found(allProvocations().front().beyond);
    const Finding* finding = found.find(FindingCode::ScrewThroughShowFace);
    ASSERT_NE(finding, nullptr);
    const auto number = numberOf(*finding, found.plan);
    ASSERT_TRUE(number);
    EXPECT_EQ(number->kind, QuantityKind::ScrewTipCover);
    EXPECT_EQ(number->index, *finding->where.mountingHole);
    EXPECT_EQ(valueOf(found.plan, *number), Length());
}

TEST(Causes, TellTheGapAtTheSideThatIsMeant) {
    for (const Provocation& provocation : allProvocations()) {
        if (provocation.code != FindingCode::OverlayMissing)
            continue;
        const Found found(provocation.beyond);
        const Finding& finding = *found.find(provocation.code);
        ASSERT_TRUE(finding.where.side);
        constexpr QuantityKind bySide[] = {QuantityKind::OverlayLeft, QuantityKind::OverlayRight,
                                           QuantityKind::OverlayBottom, QuantityKind::OverlayTop};
        const auto number = numberOf(finding, found.plan);
        ASSERT_TRUE(number);
        for (const Side side : allSides)
            if (side == *finding.where.side)
                EXPECT_EQ(number->kind, bySide[static_cast<int>(side)]);
    }
}

TEST(Causes, TellNoNumberOfAPartThatIsGone) {
    const Found found(allProvocations().front().beyond);
    Finding finding = *found.find(FindingCode::ScrewThroughShowFace);
    finding.where.opening = OpeningId{9999};
    EXPECT_FALSE(numberOf(finding, found.plan));
    finding.where.opening.reset();
    EXPECT_FALSE(numberOf(finding, found.plan));
}

TEST(Causes, LeadToTheDecisionThatMakesThem) {
    EXPECT_EQ(causeOf(FindingCode::TipCoverThin), InputPlace::Mounting);
    EXPECT_EQ(causeOf(FindingCode::BoltTooShort), InputPlace::Hardware);
    EXPECT_EQ(causeOf(FindingCode::GapTight), InputPlace::Fit);
    EXPECT_EQ(causeOf(FindingCode::GapCloses), InputPlace::Fit);
    EXPECT_EQ(causeOf(FindingCode::WoodUnknown), InputPlace::Stock);
    EXPECT_EQ(causeOf(FindingCode::MoistureBeyondRange), InputPlace::Air);
    EXPECT_EQ(causeOf(FindingCode::ProfileTooDeep), InputPlace::Profile);
    EXPECT_EQ(causeOf(FindingCode::BottomOutOfWall), InputPlace::Box);
    EXPECT_EQ(causeOf(FindingCode::AnchorCase), InputPlace::CaseSize);
    EXPECT_EQ(causeOf(FindingCode::OfBoard), InputPlace::Board);
}

} // namespace
} // namespace frontwright::testing
