#include "core/drawings/section.h"

#include "core/drawings/hatch.h"
#include "core/drawings/sketch.h"
#include "tests/core/drawings/drawn_case.h"
#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

#include <map>

namespace frontwright {
namespace {

using testing::exactly;
using testing::inch;

using testing::DrawnCase;
using testing::shapesOn;

BoxMm boxOfParts(const Drawing& drawing, Layer layer, const std::string& name) {
    BoxMm box;
    for (const auto& [mark, path] : shapesOn<PathMark>(drawing, layer, name))
        for (const PointMm& p : path.points)
            box.extend(p);
    return box;
}
BoxMm hatched(const Drawing& drawing, const std::string& name) {
    BoxMm box;
    for (const auto& [mark, hatch] : shapesOn<HatchMark>(drawing, Layer::CutHatch, name))
        for (const PointMm& p : hatch.outline)
            box.extend(p);
    return box;
}
Project withScrews(Length length) {
    Project project = testing::bank(2);
    project.fronts.mounting.length = length;
    return project;
}

// 3/4 in front on a 1/2 in wall: front −3/4 … 0, wall 0 … 1/2.
TEST(Section, HasTheFrontLeftOfTheWall) {
    const DrawnCase drawn(testing::bank(2));
    const Drawing drawing = drawn.section();
    const BoxMm front = hatched(drawing, "front"), wall = hatched(drawing, "wall");
    EXPECT_NEAR(front.min().x(), -0.75 * inch, exactly);
    EXPECT_NEAR(front.max().x(), 0, exactly);
    EXPECT_NEAR(front.min().y(), 0, exactly);
    EXPECT_NEAR(front.max().y(), drawn.plan.fronts[0].rect.height().inMillimetres(), exactly);
    EXPECT_NEAR(wall.min().x(), 0, exactly);
    EXPECT_NEAR(wall.max().x(), 0.5 * inch, exactly);
    EXPECT_NEAR(wall.min().y(), drawn.plan.fronts[0].box.wallOnFront.y.inMillimetres(), exactly);
}

// 1 in screw, head 1/8 in deep in a 1/2 in wall: head at 3/8, tip at 3/8 − 1 = −5/8 in.
TEST(Section, HasTheScrewFromItsRecessToItsTip) {
    const DrawnCase drawn(withScrews(Length::inches(1)));
    const FrontPlan& front = drawn.plan.fronts[0];
    const Drawing drawing = drawn.section();
    const BoxMm screw = boxOfParts(drawing, Layer::Fastener, "screw 1");
    EXPECT_NEAR(screw.max().x(), 0.375 * inch, exactly);
    EXPECT_NEAR(screw.min().x(), -0.625 * inch, exactly);
    EXPECT_NEAR(screw.center().y(),
                toFront(front.box, front.mounting.holes[0].at).y.inMillimetres(), exactly);
    EXPECT_NEAR(screw.sizes().y(), front.mounting.screw->headDiameter.inMillimetres(), exactly);
}

TEST(Section, DimensionsTheTipCoverAndThePenetration) {
    const DrawnCase drawn(withScrews(Length::inches(1)));
    const Drawing drawing = drawn.section();
    const auto* cover = testing::dimensionNamed(drawing, "tip cover");
    ASSERT_NE(cover, nullptr);
    EXPECT_EQ(cover->text, "tip cover 1/8");
    EXPECT_NEAR((cover->to - cover->from).norm(), 0.125 * inch, exactly);
    EXPECT_EQ(cover->quantity, (Quantity{QuantityKind::ScrewTipCover, 0, 0}));
    const auto* penetration = testing::dimensionNamed(drawing, "drill depth");
    ASSERT_NE(penetration, nullptr);
    EXPECT_EQ(penetration->text, "drill depth 5/8");
    EXPECT_TRUE(shapesOn<CircleMark>(drawing, Layer::Fastener).empty());
}

// 1 1/4 in from 3/8: the tip stands 1/8 in out of the show face.
TEST(Section, RingsAScrewThatComesThroughTheFace) {
    const DrawnCase drawn(withScrews(Length::inches(1, 16)));
    const Drawing drawing = drawn.section();
    const auto* through = testing::dimensionNamed(drawing, "through by");
    ASSERT_NE(through, nullptr);
    EXPECT_EQ(through->text, "through by 1/8");
    const auto rings = shapesOn<CircleMark>(drawing, Layer::Fastener);
    ASSERT_FALSE(rings.empty());
    EXPECT_EQ(rings[0].first.part.name, "screw 1 through the face");
    EXPECT_NEAR(rings[0].second.centre.x(), -0.875 * inch, exactly);
    // The face is not drawn through the screw that stands out of it.
    const double axis = rings[0].second.centre.y();
    for (const auto& [mark, path] : shapesOn<PathMark>(drawing, Layer::CutEdge, "front"))
        for (std::size_t i = 0; i + 1 < path.points.size(); ++i) {
            const PointMm& p = path.points[i];
            const PointMm& q = path.points[i + 1];
            const bool isCrossed =
                p.x() == q.x() && std::min(p.y(), q.y()) < axis && axis < std::max(p.y(), q.y());
            EXPECT_FALSE(isCrossed);
        }
}

TEST(Section, RunsNoExtensionLineThroughAFigureBelowTheScrew) {
    for (const Length length : {Length::inches(0, 48), Length::inches(1), Length::inches(1, 16)}) {
        const DrawnCase drawn(withScrews(length));
        const Drawing drawing = drawn.section();
        for (const std::string name :
             {"wall", "screw length", "drill depth", "tip cover", "through by", "thickness"}) {
            const auto* one = testing::dimensionNamed(drawing, name);
            if (one == nullptr)
                continue;
            const DimensionFigure figure = figureOf(*one, drawing.paperScale);
            const BoxMm text = textBox(figure.text, drawing.paperScale);
            for (const DimensionMark& other : testing::dimensionsOf(drawing))
                for (const LineMark& line : figureOf(other, drawing.paperScale).extensions)
                    EXPECT_FALSE(line.from.x() == line.to.x() && text.min().x() < line.from.x() &&
                                 line.from.x() < text.max().x() &&
                                 std::min(line.from.y(), line.to.y()) < text.min().y() &&
                                 text.max().y() < std::max(line.from.y(), line.to.y()))
                        << name;
        }
    }
}

TEST(Section, ShowsNoScrewWhereNoneFits) {
    Project project = testing::bank(2);
    project.fronts.thickness = Length::inches(0, 12); // 3/16 in: nothing fits
    const DrawnCase drawn(project);
    ASSERT_FALSE(drawn.plan.fronts[0].mounting.length.has_value());
    const Drawing drawing = drawn.section();
    EXPECT_TRUE(shapesOn<PathMark>(drawing, Layer::Fastener, "screw 1").empty());
    bool isSaid = false;
    for (const std::string& line : testing::textsOn(drawing, Layer::Note))
        isSaid = isSaid || line.find("no stocked length fits") != std::string::npos;
    EXPECT_TRUE(isSaid);
}

TEST(Section, ShowsTheBoltByTheWayThatIsChosen) {
    for (const MountingWay way : allMountingWays) {
        Project project = testing::bank(2);
        project.fronts.hardware.way = way;
        const DrawnCase drawn(project);
        const HardwarePlan& hardware = *drawn.plan.fronts[0].hardware;
        const WayPlan& chosen = hardware.chosenWay();
        const Drawing drawing = drawn.section();
        const BoxMm bolt = boxOfParts(drawing, Layer::Fastener, "bolt");
        const double bored = way == MountingWay::ThroughWall ? 0.5 * inch : 0;
        const double underHead = bored - chosen.counterbore.inMillimetres();
        EXPECT_NEAR(bolt.max().x(), underHead + hardware.bolt->headHeight.inMillimetres(), exactly);
        EXPECT_NEAR(bolt.min().x(),
                    underHead - chosen.length.value_or(chosen.leastLength).inMillimetres(),
                    exactly);
        EXPECT_EQ(shapesOn<PathMark>(drawing, Layer::AccessHole).empty(),
                  way != MountingWay::FrontAccessHole);
        EXPECT_EQ(shapesOn<PathMark>(drawing, Layer::Counterbore).empty(),
                  chosen.counterbore.isZero());
    }
}

TEST(Section, HasTheBottomInItsGroove) {
    const DrawnCase drawn(testing::bank(2));
    const BoxPlan& box = drawn.plan.fronts[0].box;
    const BoxMm bottom = hatched(drawn.section(), "bottom");
    const double foot = box.wallOnFront.y.inMillimetres();
    EXPECT_NEAR(bottom.min().y(), foot + box.bottomUnderside.inMillimetres(), exactly);
    EXPECT_NEAR(bottom.max().y(), foot + box.bottomTop.inMillimetres(), exactly);
    EXPECT_GT(bottom.min().x(), 0);
    EXPECT_LT(bottom.min().x(), 0.5 * inch);
}

TEST(Section, HasTheMembersBehindAnOverlayFront) {
    const DrawnCase drawn(testing::bank(2));
    const FrontPlan& front = drawn.plan.fronts[0];
    const Drawing drawing = drawn.section();
    const BoxMm below = hatched(drawing, "member below"), above = hatched(drawing, "member above");
    EXPECT_NEAR(below.min().x(), 0, exactly);
    EXPECT_NEAR(below.max().y(), front.overlay.bottom.inMillimetres(), exactly);
    EXPECT_NEAR(above.min().y(), (front.rect.height() - front.overlay.top).inMillimetres(),
                exactly);
    const auto* overlay = testing::dimensionNamed(drawing, "overlay");
    ASSERT_NE(overlay, nullptr);
    EXPECT_EQ(overlay->text, "overlay 1/4");
}

TEST(Section, ShowsTheGapToTheNextFront) {
    // Rail 1 1/4 in, overlays 1/4 in: the fronts stand 3/4 in apart.
    const DrawnCase drawn(testing::bank(2));
    const Drawing drawing = drawn.section(1);
    const auto* gap = testing::dimensionNamed(drawing, "gap");
    ASSERT_NE(gap, nullptr);
    EXPECT_EQ(gap->text, "gap 3/4");
    const BoxMm next = hatched(drawing, "front above");
    EXPECT_NEAR(next.min().y() - hatched(drawing, "front").max().y(), 0.75 * inch, exactly);
    EXPECT_NEAR(next.min().x(), -0.75 * inch, exactly);
    EXPECT_TRUE(hatched(drawing, "front below").isEmpty());
}

TEST(Section, HasTheMembersBesideAnInsetFront) {
    Project project = testing::bank(2);
    project.fronts.fit = FrontFit::all({Fit::Inset, Length::inches(0, 8)});
    const DrawnCase drawn(project);
    const BoxMm below = hatched(drawn.section(), "member below");
    EXPECT_NEAR(below.min().x(), -0.75 * inch, exactly); // flush with the show face
    EXPECT_NEAR(below.max().y(), -inch / 8, exactly);
}

TEST(Section, HatchesNeighboursAtDifferentAngles) {
    const DrawnCase drawn(testing::bank(2));
    std::map<std::string, double> angles;
    for (const auto& [mark, hatch] : shapesOn<HatchMark>(drawn.section(), Layer::CutHatch))
        angles[mark.part.name] = hatch.angle;
    EXPECT_NE(angles["front"], angles["wall"]);
    EXPECT_NE(angles["front"], angles["member below"]);
    EXPECT_NE(angles["wall"], angles["bottom"]);
}

TEST(Section, LeavesTheFastenersUnhatched) {
    const DrawnCase drawn(withScrews(Length::inches(1)));
    const FrontPlan& front = drawn.plan.fronts[0];
    const Drawing drawing = drawn.section();
    const double axis = toFront(front.box, front.mounting.holes[0].at).y.inMillimetres();
    const double radius = front.mounting.screw->shankDiameter.inMillimetres() / 2;
    const BoxMm shank(PointMm(-0.3 * inch, axis - 0.9 * radius),
                      PointMm(0.2 * inch, axis + 0.9 * radius));
    for (const auto& [mark, hatch] : shapesOn<HatchMark>(drawing, Layer::CutHatch))
        for (const LineMark& line : hatchLines(hatch, drawing.paperScale))
            for (double share = 0; share <= 1; share += 0.005)
                EXPECT_FALSE(shank.contains(PointMm(line.from + share * (line.to - line.from))))
                    << mark.part.name;
}

TEST(Section, FollowsTheFrontsProfile) {
    Project project = testing::bank(2);
    Profile profile;
    profile.width = Length::inches(1);
    profile.depth = Length::inches(0, 24);
    profile.step = Length::inches(0, 8);
    for (const ProfileFamily family :
         {ProfileFamily::Chamfer, ProfileFamily::Raised, ProfileFamily::Cove, ProfileFamily::Round,
          ProfileFamily::Eased, ProfileFamily::Square}) {
        profile.family = family;
        project.fronts.profile = profile;
        const DrawnCase drawn(project);
        const FrontPlan& front = drawn.plan.fronts[0];
        const FrontRect whole = FrontRect::atOrigin(front.rect.width(), front.rect.height());
        const Length x = toFront(front.box, front.mounting.holes[0].at).x;
        const auto hatch = shapesOn<HatchMark>(drawn.section(), Layer::CutHatch, "front");
        ASSERT_EQ(hatch.size(), 1U);
        for (const PointMm& p : hatch[0].second.outline) {
            if (p.x() == 0)
                continue;
            const Length y = Length::nearestToMillimetres(p.y());
            EXPECT_NEAR(-p.x(),
                        localThickness(profile, whole, front.thickness, {x, y}).inMillimetres(),
                        exactly);
        }
        EXPECT_NEAR(hatched(drawn.section(), "front").min().x(), -0.75 * inch, exactly);
    }
}

TEST(Section, NeverLetsTextsMeet) {
    for (const double scale : {1.0, 0.5, 0.2})
        for (std::uint64_t seed = 1; seed <= 12; ++seed) {
            const DrawnCase drawn(testing::randomProject(seed));
            for (std::uint32_t i = 0; i < drawn.plan.fronts.size(); ++i) {
                const Drawing drawing =
                    frontSection(drawn.project, drawn.plan, i, {drawn.project.style, scale, 0});
                EXPECT_TRUE(testing::overlapping(testing::allTextBoxes(drawing)).empty())
                    << "1:" << 1 / scale << " seed " << seed << " front " << i;
            }
        }
}

TEST(Section, CopesWithAHoleThatIsNotThere) {
    const DrawnCase drawn(testing::bank(2));
    const Drawing drawing = drawn.section(0, 99);
    EXPECT_EQ(testing::dimensionNamed(drawing, "tip cover"), nullptr);
    EXPECT_NE(testing::dimensionNamed(drawing, "wall"), nullptr);
    EXPECT_FALSE(drawing.extent.isEmpty());
}

TEST(Section, CopesWithAFrontThatHasNoHandle) {
    Project project = testing::bank(2);
    project.fronts.hardware.form.clear();
    const DrawnCase drawn(project);
    const Drawing drawing = drawn.section();
    EXPECT_TRUE(shapesOn<PathMark>(drawing, Layer::Handle).empty());
    EXPECT_EQ(testing::dimensionNamed(drawing, "grip"), nullptr);
}

TEST(Section, CopesWithTinyFronts) {
    const DrawnCase drawn(testing::oneOpening(Length::inches(1), Length::inches(0, 32)));
    const Drawing drawing = drawn.section();
    EXPECT_FALSE(drawing.extent.isEmpty());
    for (const Mark& mark : plain(drawing).labels.empty() ? drawing.marks : std::vector<Mark>{})
        ADD_FAILURE() << mark.part.name;
    for (const StrokeMark& stroke : plain(drawing).strokes)
        for (const PointMm& p : stroke.points)
            EXPECT_TRUE(p.allFinite());
}

TEST(Section, IsTheSameEveryTime) {
    const DrawnCase one(testing::randomProject(5)), other(testing::randomProject(5));
    EXPECT_EQ(svg(one.section(), "s"), svg(other.section(), "s"));
}

} // namespace
} // namespace frontwright
