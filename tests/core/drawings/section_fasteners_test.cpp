#include "core/drawings/hatch.h"
#include "core/drawings/section_parts.h"
#include "tests/core/drawings/drawn_case.h"
#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::exactly;
using testing::inch;

using testing::DrawnCase;
using testing::shapesOn;

/// A case of two drawers whose subject can be asked for its fasteners.
struct Section {
    explicit Section(Project project) : drawn(std::move(project)) {}
    [[nodiscard]] SectionSubject subject() const {
        return {drawn.project, drawn.plan, drawn.plan.fronts[0], 0, options};
    }
    [[nodiscard]] const HardwarePlan& hardware() const { return *drawn.plan.fronts[0].hardware; }
    [[nodiscard]] Drawing drawing() const {
        return frontSection(drawn.project, drawn.plan, 0, options);
    }
    DrawnCase drawn;
    SectionOptions options;
};

Project withWay(MountingWay way, std::optional<WrittenLength> counterbore = {}) {
    Project project = testing::bank(2);
    project.fronts.hardware.way = way;
    project.fronts.hardware.counterbore = counterbore;
    return project;
}

// Wall 1/2 in, recess 1/8 in, screw 1 in: from 3/8 in to −5/8 in.
TEST(ScrewReach, RunsFromTheRecessByTheScrewsLength) {
    Project project = testing::bank(2);
    project.fronts.mounting.length = Length::inches(1);
    const Section section(project);
    const auto reach = screwReach(section.subject(), *section.subject().hole());
    ASSERT_TRUE(reach.has_value());
    EXPECT_NEAR(reach->head, 0.375 * inch, exactly);
    EXPECT_NEAR(reach->tip, -0.625 * inch, exactly);
}

TEST(ScrewReach, HasItsTipWhereThePenetrationEnds) {
    for (const std::int64_t sixtyFourths : {40, 48, 56, 64, 72, 80, 96}) {
        Project project = testing::bank(2);
        project.fronts.mounting.length = Length::fromSixtyFourths(sixtyFourths);
        const Section section(project);
        const MountingHole& hole = *section.subject().hole();
        const auto reach = screwReach(section.subject(), hole);
        EXPECT_NEAR(reach->tip, -hole.penetration.inMillimetres(), exactly);
        EXPECT_NEAR(reach->tip + hole.thickness.inMillimetres(), hole.tipCover.inMillimetres(),
                    exactly);
        EXPECT_NEAR(reach->head, 0.375 * inch, exactly);
    }
}

// Through wall 1/2 in and front 3/4 in: grip 1 1/4 in from the wall's inner face to the show face.
TEST(BoltReach, ThroughTheWallStartsAtItsInnerFace) {
    const Section section(withWay(MountingWay::ThroughWall));
    const BoltReach reach = boltReach(section.subject(), section.hardware());
    EXPECT_NEAR(reach.bored, 0.5 * inch, exactly);
    EXPECT_NEAR(reach.underHead, 0.5 * inch, exactly);
    EXPECT_NEAR(reach.underHead + 0.75 * inch, 1.25 * inch, exactly);
    EXPECT_NEAR(reach.underHead - reach.end, section.hardware().chosenWay().length->inMillimetres(),
                exactly);
}

TEST(BoltReach, GoesDeeperByItsCounterbore) {
    const Section section(withWay(MountingWay::ThroughWall, Length::inches(0, 16)));
    const BoltReach reach = boltReach(section.subject(), section.hardware());
    EXPECT_NEAR(reach.underHead, 0.25 * inch, exactly);
    EXPECT_NEAR(reach.bored - reach.underHead, 0.25 * inch, exactly);
}

TEST(BoltReach, InTheFrontOnlyStartsAtItsBack) {
    for (const MountingWay way : {MountingWay::FrontCounterbore, MountingWay::FrontAccessHole}) {
        const Section section(withWay(way));
        EXPECT_NEAR(boltReach(section.subject(), section.hardware()).bored, 0, exactly);
    }
}

TEST(BoltReach, IsTheGripFromUnderTheHeadToTheShowFace) {
    for (const MountingWay way : allMountingWays) {
        const Section section(withWay(way));
        const BoltReach reach = boltReach(section.subject(), section.hardware());
        EXPECT_NEAR(reach.underHead + section.subject().thickness(),
                    section.hardware().chosenWay().grip.inMillimetres(), exactly);
    }
}

TEST(FastenerBody, IsAsThickAsItsOutlineAtAnyPlace) {
    // A cone of radius 2 from x = 0 to its tip at x = −4, then a shank of 2 to x = 10; axis at 50.
    const FastenerBody body{{{-4, 50}, {0, 48}, {10, 48}, {10, 52}, {0, 52}}, 50};
    EXPECT_NEAR(body.halfHeightAt(5), 2, exactly);
    EXPECT_NEAR(body.halfHeightAt(-2), 1, exactly);
    EXPECT_NEAR(body.halfHeightAt(-4), 0, exactly);
    EXPECT_NEAR(body.halfHeightAt(-5), 0, exactly);
    EXPECT_NEAR(body.halfHeightAt(11), 0, exactly);
}

TEST(FastenerShapes, HaveABodyForEveryScrewOfTheColumnAndForTheBolt) {
    const Section section(testing::bank(2));
    // Four corners: two stand one above the other. One knob: one bolt.
    EXPECT_EQ(fastenerShapes(section.subject()).bodies.size(), 3U);
    Project plain = testing::bank(2);
    plain.fronts.hardware.form.clear();
    const Section noHandle(plain);
    EXPECT_EQ(fastenerShapes(noHandle.subject()).bodies.size(), 2U);
}

TEST(FastenerShapes, ShowALyingPullsTwoBoltsAsOne) {
    Project project = testing::bank(2);
    project.fronts.hardware.form = "pull-96";
    const Section section(project);
    ASSERT_EQ(section.hardware().holes.size(), 2U);
    EXPECT_EQ(fastenerShapes(section.subject()).bodies.size(), 3U);
}

TEST(FastenerShapes, HaveTheirMiddleInTheWood) {
    for (const MountingWay way : allMountingWays) {
        const Section section(withWay(way));
        const FastenerShapes shapes = fastenerShapes(section.subject());
        for (const auto& outline : shapes.voids) {
            BoxMm box;
            for (const PointMm& p : outline)
                box.extend(p);
            EXPECT_GE(box.min().x(), -section.subject().thickness() - exactly);
            EXPECT_LE(box.max().x(), section.subject().wall() + exactly);
        }
        for (const FastenerBody& body : shapes.bodies) {
            EXPECT_GT(body.axis, 0);
            EXPECT_LT(body.axis, section.subject().height());
        }
    }
}

TEST(AccessHole, IsFreeOfHatchFromOneFaceOfTheWallToTheOther) {
    const Section section(withWay(MountingWay::FrontAccessHole));
    const Drawing drawing = section.drawing();
    const double axis = section.hardware().holes[0].y.inMillimetres();
    const double radius = section.hardware().accessDiameter.inMillimetres() / 2;
    const BoxMm hole(PointMm(1e-6, axis - radius + 1e-6),
                     PointMm(section.subject().wall() - 1e-6, axis + radius - 1e-6));
    for (const auto& [mark, hatch] : shapesOn<HatchMark>(drawing, Layer::CutHatch, "wall"))
        for (const LineMark& line : hatchLines(hatch, drawing.paperScale))
            for (double share = 0; share <= 1; share += 0.002)
                EXPECT_FALSE(hole.contains(PointMm(line.from + share * (line.to - line.from))));
}

TEST(AccessHole, IsAsWideAsThePlanHasIt) {
    const Section section(withWay(MountingWay::FrontAccessHole));
    const auto outline = shapesOn<PathMark>(section.drawing(), Layer::AccessHole);
    ASSERT_EQ(outline.size(), 1U);
    BoxMm box;
    for (const PointMm& p : outline[0].second.points)
        box.extend(p);
    EXPECT_NEAR(box.sizes().y(), section.hardware().accessDiameter.inMillimetres(), exactly);
    EXPECT_NEAR(box.sizes().x(), 0.5 * inch, exactly);
}

TEST(Counterbore, LiesUnderTheHeadFromTheBackOfTheFront) {
    const Section section(withWay(MountingWay::FrontCounterbore, Length::inches(0, 16)));
    const auto outline = shapesOn<PathMark>(section.drawing(), Layer::Counterbore);
    ASSERT_EQ(outline.size(), 1U);
    BoxMm box;
    for (const PointMm& p : outline[0].second.points)
        box.extend(p);
    EXPECT_NEAR(box.min().x(), -0.25 * inch, exactly);
    EXPECT_NEAR(box.max().x(), 0, exactly);
    EXPECT_NEAR(box.sizes().y(), section.hardware().counterboreDiameter.inMillimetres(), exactly);
}

TEST(CentreLine, RunsPastBothEndsOfEveryFastener) {
    // ISO 128: 2 to 5 mm past the outline, on paper.
    const Section section(testing::bank(2));
    const Drawing drawing = section.drawing();
    const auto lines = shapesOn<LineMark>(drawing, Layer::Centre);
    ASSERT_EQ(lines.size(), 3U);
    for (const auto& [mark, line] : lines) {
        EXPECT_DOUBLE_EQ(line.from.y(), line.to.y());
        const double pastWall =
            (std::max(line.from.x(), line.to.x()) - section.subject().wall()) * 0.5;
        EXPECT_GE(pastWall, 2);
        EXPECT_LE(pastWall, 5);
        EXPECT_LT(std::min(line.from.x(), line.to.x()), -section.subject().thickness());
    }
}

TEST(ThroughTheFace, IsRingedForEveryScrewOfTheColumn) {
    Project project = testing::bank(2);
    project.fronts.mounting.length = Length::inches(1, 32);
    const Section section(project);
    EXPECT_EQ(shapesOn<CircleMark>(section.drawing(), Layer::Fastener).size(), 2U);
}

TEST(ThroughTheFace, IsJudgedByTheLocalThickness) {
    // A broad cove takes 3/8 in off the front where the screws sit: 1 in screws, harmless in the
    // field, come out of it.
    Project project = testing::bank(2);
    project.fronts.mounting.length = Length::inches(1);
    const Section flat(project);
    EXPECT_TRUE(shapesOn<CircleMark>(flat.drawing(), Layer::Fastener).empty());
    project.fronts.profile.family = ProfileFamily::Cove;
    project.fronts.profile.width = Length::inches(2);
    project.fronts.profile.depth = Length::inches(0, 32);
    const Section coved(project);
    EXPECT_EQ(shapesOn<CircleMark>(coved.drawing(), Layer::Fastener).size(), 2U);
}

} // namespace
} // namespace frontwright
