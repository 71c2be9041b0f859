#include "tests/core/findings/provoking.h"

#include <gtest/gtest.h>

// Worked by hand on the small case: front 3/4 in + wall 1/2 in = 31.75 mm; the knob's base is 20 mm
// across, its thread holds from 6 mm on and is 16 mm deep; front 13 1/2 in × 6 1/2 in.
namespace frontwright {
namespace {

using testing::Found;
using testing::n64;
using testing::oneOpening;
using testing::um;

Found withHardware(const std::function<void(HardwareSpec&)>& change) {
    Project project = oneOpening(Length::inches(13), Length::inches(6));
    change(project.fronts.hardware);
    return Found(project);
}

TEST(BoltFinding, TellsWhatIsMissing) {
    const Found found = withHardware([](HardwareSpec& h) { h.boltLength = um(25'400); });
    const Finding* tooShort = found.find(FindingCode::BoltTooShort);
    ASSERT_NE(tooShort, nullptr);
    EXPECT_EQ(tooShort->figures[0], um(25'400));
    EXPECT_EQ(tooShort->figures[1], um(31'750));
    EXPECT_EQ(tooShort->figures[2], um(6'000));
    EXPECT_EQ(tooShort->figures[3], um(12'350));
}

TEST(BoltFinding, TellsWhatIsTooMuch) {
    const Found found = withHardware([](HardwareSpec& h) { h.boltLength = um(50'800); });
    const Finding* tooLong = found.find(FindingCode::BoltBottomsOut);
    ASSERT_NE(tooLong, nullptr);
    EXPECT_EQ(tooLong->figures[3], um(50'800 - 47'750));
}

TEST(BoltFinding, IsTooShortEvenWhereNoCounterboreCouldCureIt) {
    // 3/8 in against 3/4 in + 6 mm: the cure would leave less than 1/4 in of wood.
    const Found found = withHardware([](HardwareSpec& h) {
        h.way = MountingWay::FrontAccessHole;
        h.boltLength = n64(12);
    });
    EXPECT_TRUE(found.has(FindingCode::BoltTooShort));
    EXPECT_FALSE(found.has(FindingCode::CounterboreTooDeep));
}

TEST(BoltFinding, OfACounterboreRightThroughRuinsTheFront) {
    const auto severityOf = [](Length depth) {
        const Found found = withHardware([&](HardwareSpec& h) {
            h.way = MountingWay::FrontCounterbore;
            h.counterbore = depth;
            h.boltLength = um(12'000);
        });
        return found.find(FindingCode::CounterboreTooDeep)->severity;
    };
    EXPECT_EQ(severityOf(n64(48)), Severity::Ruins);
    EXPECT_EQ(severityOf(n64(47)), Severity::OutsidePractice);
}

TEST(HandleFinding, NamesTheEdgeThatTheBaseRocksOn) {
    Project project = oneOpening(Length::inches(13), Length::inches(6));
    project.fronts.profile = {ProfileFamily::Raised, n64(64), n64(16), n64(8),
                              PerSide<bool>::all(true)};
    const auto placed = [&](FrontPoint centre) {
        project.fronts.hardware.placedAt = centre;
        return Found(project);
    };
    // 1 in of profile; the base reaches 10 mm round its centre.
    const Found left = placed({um(25'400 + 9'000), n64(200)});
    const Finding* rocks = left.find(FindingCode::BackplateOffField);
    ASSERT_NE(rocks, nullptr);
    EXPECT_EQ(rocks->where.side, Side::Left);
    EXPECT_EQ(rocks->figures[0], um(1'000));
    EXPECT_EQ(rocks->figures[1], um(20'000));
    EXPECT_EQ(rocks->figures[2], n64(13 * 64 + 32 - 128));
    const Found low = placed({n64(400), um(25'400 + 8'000)});
    EXPECT_EQ(low.find(FindingCode::BackplateOffField)->where.side, Side::Bottom);
}

TEST(HandleFinding, OnTheSecondHandleNamesItsFirstHole) {
    const Found found = withHardware([](HardwareSpec& h) {
        h.form = "pull-96";
        h.twoPast = n64(640);
        h.twoAtPercent = 10; // 34.29 mm from the edge, but the pull reaches 55 mm
    });
    const Finding* off = found.find(FindingCode::HandleOffFront);
    ASSERT_NE(off, nullptr);
    EXPECT_EQ(off->where.side, Side::Left);
    EXPECT_EQ(off->where.handleHole, 0U);
    EXPECT_EQ(off->figures[0], um(55'000 - 34'290));
}

TEST(HandleFinding, WithAHoleOffTheFrontRuinsIt) {
    const auto severityOf = [](Length fromTop) {
        const Found found = withHardware([&](HardwareSpec& h) {
            h.placing = Placing::FromTop;
            h.distance = fromTop;
        });
        return found.find(FindingCode::HandleOffFront)->severity;
    };
    EXPECT_EQ(severityOf(n64(5)), Severity::Ruins); // the bolt hole's radius is 6/64
    EXPECT_EQ(severityOf(n64(6)), Severity::WontWork);
}

TEST(HandleFinding, IsEitherOffTheFrontOrOffTheFieldNotBoth) {
    Project project = oneOpening(Length::inches(13), Length::inches(6));
    project.fronts.profile = {
        ProfileFamily::Chamfer, n64(64), n64(16), {}, PerSide<bool>::all(true)};
    project.fronts.hardware.placing = Placing::FromTop;
    project.fronts.hardware.distance = um(5'000);
    const Found found(project);
    EXPECT_TRUE(found.has(FindingCode::HandleOffFront));
    EXPECT_FALSE(found.has(FindingCode::BackplateOffField));
}

TEST(WallHoleFinding, IntoTheBottomRuinsIt) {
    // The wall's lower edge lies 3/8 in up the front, the bottom's top 1/2 in above that.
    const auto placedAt = [](Length y) {
        return withHardware([&](HardwareSpec& h) { h.placedAt = FrontPoint{n64(400), y}; });
    };
    const Found in = placedAt(n64(24 + 32 + 5)), clear = placedAt(n64(24 + 32 + 6));
    ASSERT_TRUE(in.has(FindingCode::AccessHoleOffWall));
    EXPECT_EQ(in.find(FindingCode::AccessHoleOffWall)->severity, Severity::Ruins);
    EXPECT_EQ(in.find(FindingCode::AccessHoleOffWall)->where.side, Side::Bottom);
    EXPECT_EQ(in.find(FindingCode::AccessHoleOffWall)->figures[0], n64(1));
    EXPECT_FALSE(clear.has(FindingCode::AccessHoleOffWall));
}

TEST(WallHoleFinding, PastTheWallAltogetherWillNotWork) {
    // The wall ends 6 in up the front.
    const auto severityOf = [](Length y) {
        const Found found = withHardware([&](HardwareSpec& h) {
            h.placedAt = FrontPoint{n64(400), y};
        });
        return found.find(FindingCode::AccessHoleOffWall)->severity;
    };
    EXPECT_EQ(severityOf(n64(6 * 64)), Severity::Ruins); // half out of the wall's edge
    EXPECT_EQ(severityOf(n64(6 * 64 + 6)), Severity::WontWork);
}

TEST(WallHoleFinding, CountsTheAccessHoleWhereTheBoltIsReachedThroughOne) {
    const auto at = [](MountingWay way) {
        return withHardware([&](HardwareSpec& h) {
            h.way = way;
            h.placedAt = FrontPoint{n64(400), n64(24 + 32 + 10)};
            h.accessDiameter = n64(28); // 14/64 in radius reaches 4/64 into the bottom
        });
    };
    EXPECT_TRUE(at(MountingWay::FrontAccessHole).has(FindingCode::AccessHoleOffWall));
    EXPECT_FALSE(at(MountingWay::ThroughWall).has(FindingCode::AccessHoleOffWall));
    EXPECT_FALSE(at(MountingWay::FrontCounterbore).has(FindingCode::AccessHoleOffWall));
}

TEST(HandleFinding, OfTwoThatOverlapTellsByHowMuch) {
    const Found found = withHardware([](HardwareSpec& h) {
        h.form = "pull-96";
        h.twoPast = n64(640);
        h.twoAtPercent = 40; // centres 20 % of 342.9 mm = 68.58 mm apart
    });
    const Finding* collide = found.find(FindingCode::HandlesCollide);
    ASSERT_NE(collide, nullptr);
    EXPECT_EQ(collide->figures[0], um(110'000 - 68'580));
    EXPECT_EQ(collide->figures[1], um(68'580));
}

} // namespace
} // namespace frontwright
