#include "core/drawings/elevation.h"
#include "core/drawings/section.h"
#include "core/sheets/sheets.h"
#include "tests/core/drawings/drawn_case.h"
#include "tests/core/plan/faced.h"
#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

// Several fronts on one box, and fronts without one, as they are drawn.
namespace frontwright {
namespace {

using testing::exactly;
using testing::inch;

using testing::DrawnCase;
using testing::faced;
using testing::fixedFronts;
using testing::shapesOn;

std::size_t countOf(const Drawing& drawing, const std::string& name) {
    return static_cast<std::size_t>(std::ranges::count_if(
        drawing.marks, [&](const Mark& mark) { return mark.part.name == name; }));
}

BoxMm hatched(const Drawing& drawing, const std::string& name) {
    BoxMm box;
    for (const auto& [mark, hatch] : shapesOn<HatchMark>(drawing, Layer::CutHatch, name))
        for (const PointMm& p : hatch.outline)
            box.extend(p);
    return box;
}

ElevationOptions withBoxes() {
    ElevationOptions options;
    options.boxes = options.bottoms = Shown::Yes;
    return options;
}

TEST(TheElevationOfAFace, ShowsItsBoxOnce) {
    const DrawnCase two(testing::bank(2)), one(faced(testing::bank(2)));
    const Drawing apart = elevation(two.project, two.plan, withBoxes());
    const Drawing joined = elevation(one.project, one.plan, withBoxes());
    EXPECT_EQ(countOf(apart, "bottom"), 2 * countOf(joined, "bottom"));
    EXPECT_EQ(countOf(apart, "box edge"), 2 * countOf(joined, "box edge"));
}

TEST(TheElevationOfAFace, ShowsTheEndsOfItsFillerStrips) {
    const DrawnCase one(faced(testing::bank(2)));
    EXPECT_EQ(countOf(elevation(one.project, one.plan, {}), "filler strip end"), 2U);
    const DrawnCase two(testing::bank(2));
    EXPECT_EQ(countOf(elevation(two.project, two.plan, {}), "filler strip end"), 0U);
}

// A gap of 3/4 over a lower front whose edge lies at 1 1/2 − 1/4 + 6 1/2.
TEST(TheElevationOfAFace, WashesItsFillerStripsInTheGapWithTheCase) {
    const DrawnCase one(faced(testing::bank(2)));
    const Drawing ofCase = caseElevation(one.project, one.plan, {});
    const auto strips = shapesOn<ToneMark>(ofCase, Layer::Wash, "filler strip");
    ASSERT_EQ(strips.size(), 1U);
    BoxMm box;
    for (const PointMm& p : strips[0].second.points)
        box.extend(p);
    const FrontPlan &upper = one.plan.fronts[0], &lower = one.plan.fronts[1];
    EXPECT_NEAR(box.min().y(), lower.rect.top.inMillimetres(), exactly);
    EXPECT_NEAR(box.max().y(), upper.rect.bottom.inMillimetres(), exactly);
    EXPECT_NEAR(box.sizes().y(), 0.75 * inch, exactly);
    for (std::uint32_t i : {0U, 1U})
        EXPECT_EQ(countOf(frontElevation(one.project, one.plan, i, {}), "filler strip end"), 0U);
}

TEST(TheElevationOfAFace, ShowsNoOpeningsEdgeWhereNoneIs) {
    const DrawnCase two(testing::bank(2)), one(faced(testing::bank(2)));
    // Of eight edges the two at the rail that is not built are gone.
    EXPECT_EQ(countOf(elevation(two.project, two.plan, {}), "opening edge"), 8U);
    EXPECT_EQ(countOf(elevation(one.project, one.plan, {}), "opening edge"), 6U);
}

TEST(TheSectionOfAFace, ShowsTheWholeWallAndTheFillerStrip) {
    const DrawnCase drawn(faced(testing::bank(2)));
    const Drawing section = frontSection(drawn.project, drawn.plan, 1, {}); // the lower front
    const BoxMm wall = hatched(section, "wall");
    EXPECT_NEAR(wall.max().y() - wall.min().y(), 12.875 * inch, exactly);
    // 6 1/2 high, a gap of 3/4, 5/8 thick
    const BoxMm strip = hatched(section, "filler strip above");
    EXPECT_NEAR(strip.min().y(), 6.5 * inch, exactly);
    EXPECT_NEAR(strip.max().y(), 7.25 * inch, exactly);
    EXPECT_NEAR(strip.min().x(), -0.625 * inch, exactly);
    EXPECT_NEAR(strip.max().x(), 0, exactly);
    // The other front whole, for it is on the same wall
    const BoxMm above = hatched(section, "front above");
    EXPECT_NEAR(above.max().y(), (7.25 + 6.5) * inch, exactly);
    EXPECT_EQ(countOf(section, "member above"), 0U);
    EXPECT_GT(countOf(section, "member below"), 0U);
}

TEST(TheSectionOfAFixedFront, HasNoBoxButTheFrameThatItIsScrewedThrough) {
    const DrawnCase drawn(fixedFronts(testing::bank(1), Length::inches(1)));
    const Drawing section = frontSection(drawn.project, drawn.plan, 0, {});
    EXPECT_EQ(countOf(section, "wall"), 0U);
    EXPECT_EQ(countOf(section, "bottom"), 0U);
    const BoxMm member = hatched(section, "member below");
    EXPECT_NEAR(member.min().x(), 0, exactly);
    EXPECT_NEAR(member.max().x(), 0.75 * inch, exactly);
    EXPECT_GT(countOf(section, "screw 1"), 0U);
    const Drawing level = levelSection(drawn.project, drawn.plan, 0, {});
    EXPECT_EQ(countOf(level, "box side"), 0U);
}

// Screws of the lower row go into the bottom rail, which runs from stile to stile behind the front:
// over the opening of 13 in, from where the front laps over the left stile.
TEST(TheLevelSectionOfAFixedFront, ShowsTheRailThatItsScrewsGoInto) {
    const DrawnCase drawn(fixedFronts(testing::bank(1), Length::inches(1)));
    const FrontPlan& front = drawn.plan.fronts[0];
    const auto& holes = front.mounting.holes;
    const auto lowest =
        std::ranges::min_element(holes, {}, [](const MountingHole& hole) { return hole.at.y; });
    SectionOptions options;
    options.mountingHole = static_cast<std::uint32_t>(lowest - holes.begin());
    const Drawing level = levelSection(drawn.project, drawn.plan, 0, options);
    const BoxMm rail = hatched(level, "member along");
    const double left = front.overlay.left.inMillimetres();
    EXPECT_NEAR(rail.min().x(), left, exactly);
    EXPECT_NEAR(rail.max().x(), left + front.openingRect.width().inMillimetres(), exactly);
    EXPECT_NEAR(rail.min().y(), 0, exactly);
    EXPECT_NEAR(rail.max().y(), 0.75 * inch, exactly);
    const DimensionMark* at = testing::dimensionNamed(level, "hole at");
    ASSERT_NE(at, nullptr);
    EXPECT_NEAR(at->to.x() - at->from.x(), lowest->at.x.inMillimetres(), exactly);
}

TEST(TheLevelSectionOfAFixedFront, ShowsNoRailAtTheHeightOfItsOpening) {
    DrawnCase drawn(fixedFronts(testing::bank(1), Length::inches(1)));
    SectionOptions options;
    options.mountingHole = 99; // through the front's middle
    EXPECT_EQ(countOf(levelSection(drawn.project, drawn.plan, 0, options), "member along"), 0U);
}

Project insetBy(Project project, OpeningUse use) {
    project.fronts.fit = FrontFit::all({Fit::Inset, Length::inches(0, 8)});
    return testing::withOpenings(std::move(project),
                                 [&](Opening& leaf, std::size_t) { leaf.use = use; });
}

// A front of 3/4 in its opening lies flush with the frame: both begin 3/4 before the front's back.
TEST(TheSectionOfAnInsetFront, HasTheFrameFlushWithTheFrontWhateverItsUse) {
    for (const OpeningUse use : {OpeningUse::Drawer, OpeningUse::FixedFront, OpeningUse::Door}) {
        const DrawnCase drawn(insetBy(testing::bank(1), use));
        const Drawing section = frontSection(drawn.project, drawn.plan, 0, {});
        for (const char* member : {"member below", "member above"}) {
            EXPECT_NEAR(hatched(section, member).min().x(), -0.75 * inch, exactly) << member;
            EXPECT_NEAR(hatched(section, member).max().x(), 0, exactly) << member;
        }
        EXPECT_NEAR(hatched(section, "front").min().x(), -0.75 * inch, exactly);
    }
}

TEST(TheSectionOfAnInsetFront, MeasuresTheFrameWhereItIs) {
    const DrawnCase drawn(insetBy(testing::bank(1), OpeningUse::FixedFront));
    const Drawing section = frontSection(drawn.project, drawn.plan, 0, {});
    const DimensionMark* measured = testing::dimensionNamed(section, "frame");
    ASSERT_NE(measured, nullptr);
    EXPECT_NEAR(std::min(measured->from.x(), measured->to.x()), -0.75 * inch, exactly);
    EXPECT_NEAR(std::max(measured->from.x(), measured->to.x()), 0, exactly);
}

// The door lies in the frame, the drawer below it before the frame: as much farther out as the
// door is thick.
TEST(TheSectionOfAnInsetDoor, HasAnOverlayDrawerBesideItBeforeTheFrame) {
    const Length eighth = Length::inches(0, 8), quarter = Length::inches(0, 16);
    const DrawnCase drawn(
        testing::withOpenings(testing::bank(2), [&](Opening& leaf, std::size_t i) {
            leaf.use = i == 0 ? OpeningUse::Door : OpeningUse::Drawer;
            for (const Side side : allSides)
                leaf.choices.fit[side] =
                    i == 0 ? SideFit{Fit::Inset, eighth} : SideFit{Fit::Overlay, quarter};
        }));
    const BoxMm below = hatched(frontSection(drawn.project, drawn.plan, 0, {}), "front below");
    EXPECT_NEAR(below.min().x(), -1.5 * inch, exactly);
    EXPECT_NEAR(below.max().x(), -0.75 * inch, exactly);
}

TEST(TheDrawingsOfAFixedFront, KnowNoWallWhicheverWayIsChosen) {
    for (const MountingWay way : allMountingWays) {
        Project project = fixedFronts(testing::bank(1), Length::inches(1));
        project.fronts.hardware.way = way;
        const DrawnCase drawn(std::move(project));
        for (const Drawing& drawing :
             {frontSection(drawn.project, drawn.plan, 0, {}), drawn.elevation(0.5)}) {
            EXPECT_EQ(countOf(drawing, "access hole"), 0U);
            EXPECT_EQ(countOf(drawing, "handle hole 1 access hole"), 0U);
            EXPECT_EQ(countOf(drawing, "driver"), 0U);
        }
    }
}

TEST(TheSectionOfAFixedFront, SaysThatItsHandleIsBoltedInTheFrontOnly) {
    const auto says = [](Project project, const std::string& words) {
        const DrawnCase drawn(std::move(project));
        for (const std::string& line :
             testing::textsOn(frontSection(drawn.project, drawn.plan, 0, {}), Layer::Note))
            if (line.find(words) != std::string::npos)
                return true;
        return false;
    };
    Project project = fixedFronts(testing::bank(1), Length::inches(1));
    EXPECT_TRUE(says(project, "in the front only"));
    EXPECT_FALSE(says(project, "counterbore"));
    project.fronts.hardware.counterbore = Length::inches(0, 8);
    EXPECT_TRUE(says(project, "in the front only, head in a counterbore"));
}

std::vector<Template> frontsOf(const DrawnCase& drawn) {
    std::vector<Template> fronts = templates(drawn.project, drawn.plan, {});
    std::erase_if(fronts, [](const Template& t) { return t.kind != TemplateKind::Front; });
    return fronts;
}

TEST(TheTemplateOfAFixedFront, HasTheCounterboreAndTheOrderOfWorkOfAFrontAlone) {
    Project project = fixedFronts(testing::bank(1), Length::inches(1));
    const auto lastOf = [](const Template& part) { return part.parameters.back().english(); };
    const Template plain = frontsOf(DrawnCase(project)).at(0);
    EXPECT_EQ(countOf(plain.drawing, "counterbore 1"), 0U);
    EXPECT_EQ(lastOf(plain),
              "Drill the front, with scrap behind, and put the bolts in before it goes on.");
    project.fronts.hardware.counterbore = Length::inches(0, 8);
    const Template bored = frontsOf(DrawnCase(project)).at(0);
    EXPECT_EQ(countOf(bored.drawing, "counterbore 1"), 1U);
    EXPECT_EQ(lastOf(bored), "Drill and counterbore, and put the bolts in, before the front goes "
                             "on; scrap behind.");
}

std::vector<Template> wallsOf(const DrawnCase& drawn) {
    std::vector<Template> walls = templates(drawn.project, drawn.plan, {});
    std::erase_if(walls, [](const Template& t) { return t.kind != TemplateKind::BoxWall; });
    return walls;
}

TEST(TheWallTemplateOfAFace, ServesAllItsFrontsAndNamesThem) {
    const DrawnCase drawn(faced(testing::bank(2)));
    const std::vector<Template> walls = wallsOf(drawn);
    ASSERT_EQ(walls.size(), 1U);
    EXPECT_EQ(walls[0].title.english(), "Box wall A1 and A2");
    EXPECT_EQ(walls[0].parts.size(), 2U);
    std::set<std::string> holes;
    for (const Mark& mark : walls[0].drawing.marks)
        if (mark.part.name.find("mounting hole") != std::string::npos &&
            std::holds_alternative<CircleMark>(mark.shape))
            holes.insert(mark.part.name);
    EXPECT_EQ(holes.size(), 8U);
    EXPECT_EQ(countOf(walls[0].drawing, "A1 bolt hole 1") > 0, true);
    EXPECT_EQ(countOf(walls[0].drawing, "A2 bolt hole 1") > 0, true);
}

TEST(TheTemplateBehindAFixedFront, IsOfTheFrameAsSeenFromInside) {
    const DrawnCase drawn(fixedFronts(testing::bank(1), Length::inches(1)));
    const std::vector<Template> walls = wallsOf(drawn);
    ASSERT_EQ(walls.size(), 1U);
    EXPECT_EQ(walls[0].title.english(), "Frame behind A1");
    EXPECT_EQ(walls[0].parts.size(), 1U);
    EXPECT_GT(countOf(walls[0].drawing, "opening"), 0U);
    EXPECT_NEAR(walls[0].part.max().x(), 15 * inch, exactly);
}

TEST(TheTemplateBehindAFixedFront, IsNotThereWithoutScrews) {
    EXPECT_TRUE(wallsOf(DrawnCase(fixedFronts(testing::bank(1), Length::inches(0, 16)))).empty());
}

} // namespace
} // namespace frontwright
