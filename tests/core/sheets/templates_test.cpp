#include "core/sheets/part_templates.h"
#include "tests/core/sheets/laid_sheets.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

namespace frontwright {
namespace {

using testing::circleOf;
using testing::lineOf;
using testing::says;
using testing::shopWith;
using testing::titled;

/// Opening 12 5/8 in × 6 in with 1/4 in overlays: a front of 13 1/8 in × 6 1/2 in.
Project oneDrawer() {
    return testing::oneOpening(Length::inches(12, 40), Length::inches(6));
}
Project withWay(MountingWay way) {
    Project project = oneDrawer();
    project.fronts.hardware.form = "pull-96";
    project.fronts.hardware.way = way;
    return project;
}
std::size_t count(const std::vector<Template>& all, TemplateKind kind) {
    return static_cast<std::size_t>(std::count_if(
        all.begin(), all.end(), [&](const Template& part) { return part.kind == kind; }));
}

TEST(FrontTemplate, IsAsLargeAsTheFront) {
    const auto shop = shopWith(oneDrawer());
    const Template& part = titled(*shop, "Front A1");
    EXPECT_DOUBLE_EQ(part.part.sizes().x(), 333.375); // 13 1/8 in
    EXPECT_DOUBLE_EQ(part.part.sizes().y(), 165.1);   // 6 1/2 in
    EXPECT_TRUE(says(part, "13 1/8 in wide, 6 1/2 in high, 3/4 in thick"));
}

// A knob of 32 mm has one hole, for a No. 8 bolt: 3/16 in, 4.7625 mm.
TEST(FrontTemplate, ShowsTheKnobsHoleAtItsTrueDiameter) {
    const auto shop = shopWith(oneDrawer());
    const Template& part = titled(*shop, "Front A1");
    const CircleMark* hole = circleOf(part, "hole 1");
    ASSERT_NE(hole, nullptr);
    EXPECT_NEAR(hole->centre.x(), 333.375 / 2, 1e-9);
    EXPECT_NEAR(hole->centre.y(), 165.1 / 2, 1e-9);
    EXPECT_NEAR(hole->radius, 4.7625 / 2, 1e-9);
    EXPECT_TRUE(says(part, "1: drill \u00d83/16 in"));
    EXPECT_TRUE(says(part, "through, show face"));
    EXPECT_EQ(part.face, "Read from the show face");
}

TEST(FrontTemplate, ShowsNoMountingHoles) {
    const auto shop = shopWith(oneDrawer());
    for (const Mark& mark : titled(*shop, "Front A1").drawing.marks)
        EXPECT_EQ(mark.part.name.find("mounting"), std::string::npos);
}

TEST(FrontTemplate, ShowsWhereTheFieldBegins) {
    Project project = oneDrawer();
    EXPECT_FALSE(says(titled(*shopWith(project), "Front A1"), "field begins"));
    project.fronts.profile.family = ProfileFamily::Chamfer;
    project.fronts.profile.width = Length::inches(1);
    project.fronts.profile.depth = Length::inches(0, 16);
    const auto shop = shopWith(project);
    const Template& part = titled(*shop, "Front A1");
    EXPECT_TRUE(says(part, "field begins"));
    const auto field = std::find_if(part.drawing.marks.begin(), part.drawing.marks.end(),
                                    [](const Mark& m) { return m.layer == Layer::ProfileLine; });
    ASSERT_NE(field, part.drawing.marks.end());
    EXPECT_EQ(std::get<PathMark>(field->shape).points.front(), PointMm(25.4, 25.4));
}

TEST(FrontTemplate, CounterboresTheBackOnlyWhereTheHeadLiesInTheFront) {
    const auto bored = shopWith(withWay(MountingWay::FrontCounterbore));
    const CircleMark* bore = circleOf(titled(*bored, "Front A1"), "counterbore 1");
    ASSERT_NE(bore, nullptr);
    EXPECT_EQ(bore->centre, circleOf(titled(*bored, "Front A1"), "hole 1")->centre);
    EXPECT_TRUE(says(titled(*bored, "Front A1"), "deep, from the back"));
    const auto through = shopWith(withWay(MountingWay::ThroughWall));
    EXPECT_EQ(circleOf(titled(*through, "Front A1"), "counterbore 1"), nullptr);
}

TEST(WallTemplate, HasTheHolesOfTheChosenWay) {
    const auto through = shopWith(withWay(MountingWay::ThroughWall));
    EXPECT_NE(circleOf(titled(*through, "Box wall A1"), "bolt hole 2"), nullptr);
    const auto access = shopWith(withWay(MountingWay::FrontAccessHole));
    const CircleMark* hole = circleOf(titled(*access, "Box wall A1"), "access hole 1");
    ASSERT_NE(hole, nullptr);
    EXPECT_DOUBLE_EQ(hole->radius * 2,
                     access->plan.fronts[0].hardware->accessDiameter.inMillimetres());
    const auto bored = shopWith(withWay(MountingWay::FrontCounterbore));
    EXPECT_EQ(circleOf(titled(*bored, "Box wall A1"), "bolt hole 1"), nullptr);
    EXPECT_EQ(circleOf(titled(*bored, "Box wall A1"), "access hole 1"), nullptr);
}

TEST(OrderOfWork, FollowsFromTheWay) {
    EXPECT_TRUE(says(titled(*shopWith(withWay(MountingWay::ThroughWall)), "Front A1"),
                     "Fasten the front to its box first"));
    for (MountingWay way : {MountingWay::FrontCounterbore, MountingWay::FrontAccessHole})
        EXPECT_TRUE(says(titled(*shopWith(withWay(way)), "Front A1"), "before"));
}

Project withOddHoles(std::vector<WallPoint> holes) {
    Project project = withWay(MountingWay::ThroughWall);
    project.fronts.mounting.pattern = ScrewPattern::ByHand;
    project.fronts.mounting.placed = std::move(holes);
    return project;
}

// Box of a 12 5/8 in opening with 1/16 in at each side: 12 1/2 in wide, 317.5 mm. A hole 1 in from
// the left as seen from the front is 11 1/2 in from the left as seen from inside.
TEST(WallTemplate, IsMirroredAndSaysSo) {
    const auto shop = shopWith(withOddHoles({{Length::inches(1), Length::inches(2)}}));
    const Template& part = titled(*shop, "Box wall A1");
    EXPECT_DOUBLE_EQ(part.part.sizes().x(), 317.5);
    EXPECT_NEAR(circleOf(part, "mounting hole 1")->centre.x(), 11.5 * 25.4, 1e-9);
    EXPECT_NEAR(circleOf(part, "mounting hole 1")->centre.y(), 2 * 25.4, 1e-9);
    EXPECT_NE(part.face.english().find("from inside the box"), std::string::npos);
    EXPECT_NE(part.face.english().find("left and right are exchanged"), std::string::npos);
}

TEST(WallTemplateLaw, LaidOnTheFrontsTemplateMirroredTheBoltHolesCoincide) {
    for (std::uint64_t seed = 0; seed < 40; ++seed) {
        testing::Dice dice(seed);
        Project project = withOddHoles({{dice.sixtyFourths(32, 600), dice.sixtyFourths(80, 300)},
                                        {dice.sixtyFourths(32, 600), dice.sixtyFourths(80, 300)}});
        project.fronts.fit.left.amount = dice.sixtyFourths(4, 60);
        project.fronts.fit.right.amount = dice.sixtyFourths(4, 60);
        const auto shop = shopWith(std::move(project));
        const FrontPlan& front = shop->plan.fronts[0];
        const Template& wall = titled(*shop, "Box wall A1");
        const double width = front.box.width.inMillimetres();
        const PointMm corner = toMm(front.box.wallOnFront);
        for (const char* number : {"1", "2"}) {
            const PointMm inside = circleOf(wall, std::string("bolt hole ") + number)->centre;
            const PointMm onFront =
                circleOf(titled(*shop, "Front A1"), std::string("hole ") + number)->centre;
            EXPECT_TRUE(
                (corner + PointMm(width - inside.x(), inside.y())).isApprox(onFront, 1e-12));
            const auto index = static_cast<std::size_t>(number[0] - '1');
            const PointMm screw = circleOf(wall, std::string("mounting hole ") + number)->centre;
            const PointMm planned = toMm(front.mounting.holes[index].at);
            EXPECT_TRUE(PointMm(width - screw.x(), screw.y()).isApprox(planned, 1e-12));
        }
    }
}

TEST(WallTemplate, ShowsTheBottomAndTheLeastHeight) {
    const auto shop = shopWith(oneDrawer());
    const Template& part = titled(*shop, "Box wall A1");
    // Groove 1/4 in, panel 1/4 in: its top is at 1/2 in.
    EXPECT_DOUBLE_EQ(lineOf(part, "bottom panel's top")->from.y(), 12.7);
    EXPECT_DOUBLE_EQ(lineOf(part, "least height of a screw")->from.y(),
                     shop->plan.fronts[0].mounting.leastHeight.inMillimetres());
    EXPECT_TRUE(says(part, "bottom panel's top 1/2 in"));
    EXPECT_TRUE(says(part, "no screw below"));
}

TEST(IdenticalFronts, ShareOneTemplateThatSaysHowManyAndWhich) {
    const auto shop = shopWith(testing::banks(2, 3));
    EXPECT_EQ(count(shop->templates, TemplateKind::Front), 1U);
    EXPECT_EQ(count(shop->templates, TemplateKind::BoxWall), 1U);
    const Template& part = titled(*shop, "Front A1");
    EXPECT_EQ(part.parts.size(), 6U);
    EXPECT_TRUE(says(part, "Serves 6 fronts, A1, A2, A3, B1, B2 and B3"));
}

TEST(IdenticalFronts, OneOfAnotherKindGetsItsOwn) {
    Project project = testing::withChoices(testing::banks(1, 3), 1, [](FrontChoices& choices) {
        HardwareSpec other;
        other.form = "pull-96";
        choices.hardware = other;
    });
    const auto shop = shopWith(std::move(project));
    EXPECT_EQ(count(shop->templates, TemplateKind::Front), 2U);
    EXPECT_TRUE(says(titled(*shop, "Front A1"), "Serves 2 fronts, A1 and A3"));
    EXPECT_TRUE(says(titled(*shop, "Front A2"), "Serves one front, A2"));
}

TEST(IdenticalFronts, EveryFrontAndWallIsServedOnce) {
    for (std::uint64_t seed = 0; seed < 20; ++seed) {
        const auto shop = shopWith(testing::randomProject(seed));
        for (TemplateKind kind : {TemplateKind::Front, TemplateKind::BoxWall}) {
            std::multiset<OpeningId> served;
            for (const Template& part : shop->templates)
                if (part.kind == kind)
                    served.insert(part.parts.begin(), part.parts.end());
            for (const FrontPlan& front : shop->plan.fronts) {
                const bool exists =
                    kind == TemplateKind::Front
                        ? front.rect.width() > Length{} && front.rect.height() > Length{}
                        : front.box.width > Length{} && front.box.height > Length{};
                EXPECT_EQ(served.count(front.opening), exists ? 1U : 0U) << seed;
            }
        }
    }
}

TEST(Templates, ComeAsFrontsWallsAndSticks) {
    const auto shop = shopWith(testing::banks(2, 2));
    EXPECT_TRUE(
        std::is_sorted(shop->templates.begin(), shop->templates.end(),
                       [](const Template& a, const Template& b) { return a.kind < b.kind; }));
    EXPECT_EQ(count(shop->templates, TemplateKind::StoryStick), 3U); // banks A, B and the widths
}

TEST(Templates, NameEachOfTheirMarksOnce) {
    for (std::uint64_t seed = 0; seed < 10; ++seed) {
        const auto shop = shopWith(testing::randomProject(seed));
        std::set<std::string> names;
        for (const Template& part : shop->templates)
            for (const Mark& mark : part.drawing.marks)
                if (!mark.part.name.empty()) {
                    EXPECT_TRUE(names.insert(part.title.english() + " / " + mark.part.name).second)
                        << part.title << " / " << mark.part.name;
                }
    }
}

TEST(DrillSizes, AreExact) {
    const Project project = oneDrawer();
    const Plan plan;
    const TemplateSource inches{project, plan, {Unit::Inch, 16}};
    const TemplateSource metric{project, plan, {Unit::Millimetre, 16}};
    EXPECT_EQ(drill(inches, Length::fromSixtyFourths(11)), "\u00d811/64 in");
    EXPECT_EQ(drill(inches, Length::fromNanometres(196 * 25'400)), "\u00d80.196 in (No. 9)");
    EXPECT_EQ(drill(inches, Length::fromNanometres(1495 * 2'540)), "\u00d80.1495 in (No. 25)");
    EXPECT_EQ(drill(inches, Length::fromMicrometres(4500)), "\u00d84.5 mm");
    EXPECT_EQ(drill(inches, Length::fromNanometres(1005 * 25'400)), "\u00d81.005 in");
    EXPECT_EQ(drill(metric, Length::fromMicrometres(4500)), "\u00d84.5 mm");
}

} // namespace
} // namespace frontwright
