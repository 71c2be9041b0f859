#include "tests/core/sheets/laid_sheets.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::lineOf;
using testing::says;
using testing::shopWith;
using testing::titled;

// Bank of two: bottom rail 1 1/2, opening 6, rail 1 1/4, opening 6, top rail 1 1/2; overlays 1/4.
TEST(StoryStick, ShowsEveryHeightFromTheLowerEdge) {
    const auto shop = shopWith(testing::bank(2));
    const Template& stick = titled(*shop, "Story stick, bank A");
    EXPECT_DOUBLE_EQ(stick.part.sizes().y(), 16.25 * 25.4);
    const auto height = [&](const char* name) { return lineOf(stick, name)->from.y() / 25.4; };
    EXPECT_DOUBLE_EQ(height("opening A2, low edge"), 1.5);
    EXPECT_DOUBLE_EQ(height("opening A2, high edge"), 7.5);
    EXPECT_DOUBLE_EQ(height("front A2, low edge"), 1.25);
    EXPECT_DOUBLE_EQ(height("front A2, high edge"), 7.75);
    EXPECT_DOUBLE_EQ(height("front A1, low edge"), 8.5);
    EXPECT_DOUBLE_EQ(height("front A1, high edge"), 15);
    EXPECT_TRUE(says(stick, "A2 7 3/4"));
    EXPECT_TRUE(says(stick, "gap 3/4"));
    EXPECT_DOUBLE_EQ(height("handle A2, row 1"), 4.5); // in the middle of 1 1/4 … 7 3/4
}

// Two columns of 13 in between stiles of 1 1/2, 2 and 1 1/2 in.
TEST(StoryStick, ShowsTheWidthsOfFrontsSideBySide) {
    const auto shop = shopWith(testing::banks(2, 1));
    const Template& stick = titled(*shop, "Story stick, widths of A and B");
    EXPECT_DOUBLE_EQ(stick.part.sizes().x(), 31 * 25.4);
    const auto place = [&](const char* name) { return lineOf(stick, name)->from.x() / 25.4; };
    EXPECT_DOUBLE_EQ(place("front A1, low edge"), 1.25);
    EXPECT_DOUBLE_EQ(place("front B1, low edge"), 16.25);
    EXPECT_DOUBLE_EQ(place("opening B1, high edge"), 29.5);
    EXPECT_TRUE(says(stick, "gap 1 1/2"));
}

// A stick begins at the lower edge of the member below its bank, wherever that lies in the case.
TEST(StoryStick, OfAnUpperBankBeginsAtTheRailBelowIt) {
    const Length rail = Length::inches(1, 16);
    const auto shop = shopWith(testing::projectWith(
        testing::rows({testing::fixed(Length::inches(6), testing::opening()),
                       testing::share(testing::columns(
                           {testing::share(testing::opening()), testing::share(testing::opening())},
                           Length::inches(2)))},
                      rail),
        Length::inches(36), Length::inches(30)));
    const Template& upper = titled(*shop, "Story stick, bank A");
    // Rail 1 1/4, opening 6, top rail 1 1/2.
    EXPECT_DOUBLE_EQ(upper.part.sizes().y(), 8.75 * 25.4);
    EXPECT_DOUBLE_EQ(lineOf(upper, "opening A1, low edge")->from.y(), 1.25 * 25.4);
    // 30 − 1 1/2 − 6 − 1 1/4: where the rail's lower edge lies in the case.
    EXPECT_TRUE(says(upper, "21 1/4 in above the case's lower edge"));
}

TEST(StoryStick, OfRowsThatDifferAreSeveral) {
    const auto shop = shopWith(testing::projectWith(
        testing::rows({testing::fixed(Length::inches(6), testing::opening()),
                       testing::share(testing::columns(
                           {testing::share(testing::opening()), testing::share(testing::opening())},
                           Length::inches(2)))},
                      Length::inches(1, 16)),
        Length::inches(36), Length::inches(30)));
    EXPECT_DOUBLE_EQ(titled(*shop, "Story stick, widths of A").part.sizes().x(), 36 * 25.4);
    const Template& lower = titled(*shop, "Story stick, widths of B and C");
    EXPECT_DOUBLE_EQ(lower.part.sizes().x(), 36 * 25.4);
    EXPECT_NE(lineOf(lower, "front C1, high edge"), nullptr);
}

Project withUses(Project project, std::vector<OpeningUse> uses) {
    return testing::withOpenings(std::move(project),
                                 [uses](Opening& leaf, std::size_t i) { leaf.use = uses.at(i); });
}

// Bank of three: openings at 1 1/2 … 7 1/2, 8 3/4 … 14 3/4 and 16 … 22.
TEST(StoryStick, ShowsASpacesEdgesAndSetsNoGapAcrossIt) {
    using enum OpeningUse;
    const auto shop = shopWith(withUses(testing::bank(3), {Drawer, OpenSpace, Drawer}));
    const Template& stick = titled(*shop, "Story stick, bank A");
    const auto height = [&](const char* name) { return lineOf(stick, name)->from.y() / 25.4; };
    ASSERT_NE(lineOf(stick, "opening A2, low edge"), nullptr);
    EXPECT_DOUBLE_EQ(height("opening A2, low edge"), 8.75);
    EXPECT_DOUBLE_EQ(height("opening A2, high edge"), 14.75);
    EXPECT_EQ(lineOf(stick, "front A2, low edge"), nullptr);
    EXPECT_FALSE(says(stick, "gap "));
    EXPECT_EQ(stick.parts.size(), 2U);
}

TEST(StoryStick, ReachesOverSpacesAtABanksEnds) {
    using enum OpeningUse;
    const auto shop = shopWith(withUses(testing::bank(3), {OpenSpace, Drawer, OpenSpace}));
    const Template& stick = titled(*shop, "Story stick, bank A");
    EXPECT_DOUBLE_EQ(stick.part.sizes().y(), 23.5 * 25.4);
    EXPECT_TRUE(says(stick, "the member below the bank, 0 in above"));
    EXPECT_DOUBLE_EQ(lineOf(stick, "front A2, low edge")->from.y() / 25.4, 8.5);
}

// Three columns of 13 in, the middle one open: from 16 1/2 to 29 1/2.
TEST(StoryStick, ShowsTheEdgesOfABankOfSpacesAmongTheWidths) {
    using enum OpeningUse;
    const auto shop = shopWith(withUses(testing::banks(3, 1), {Drawer, OpenSpace, Drawer}));
    const Template& stick = titled(*shop, "Story stick, widths of A, B and C");
    ASSERT_NE(lineOf(stick, "opening B1, low edge"), nullptr);
    EXPECT_DOUBLE_EQ(lineOf(stick, "opening B1, low edge")->from.x() / 25.4, 16.5);
    EXPECT_DOUBLE_EQ(lineOf(stick, "opening B1, high edge")->from.x() / 25.4, 29.5);
    EXPECT_FALSE(says(stick, "gap "));
}

TEST(StoryStick, IsNotMadeWhereThereIsNoFront) {
    using enum OpeningUse;
    const auto shop = shopWith(withUses(testing::bank(2), {OpenSpace, OpenSpace}));
    EXPECT_TRUE(shop->templates.empty());
}

// Box in its opening: 1/8 in clearance below; screws at the plan's own heights above its edge.
TEST(StoryStick, ShowsTheRowsOfScrews) {
    const auto shop = shopWith(testing::bank(1));
    const Template& stick = titled(*shop, "Story stick, bank A");
    const FrontPlan& front = shop->plan.fronts[0];
    const double lowest = (front.box.origin.y + front.mounting.holes.front().at.y).inMillimetres();
    ASSERT_NE(lineOf(stick, "screws A1, row 1"), nullptr);
    EXPECT_NEAR(lineOf(stick, "screws A1, row 1")->from.y(), lowest, 1e-9);
    EXPECT_NE(lineOf(stick, "screws A1, row 2"), nullptr);
    EXPECT_EQ(lineOf(stick, "screws A1, row 3"), nullptr);
}

TEST(StoryStick, NamesItsLanes) {
    const auto shop = shopWith(testing::bank(2));
    for (const char* lane : {"openings", "fronts", "gaps", "holes"})
        EXPECT_TRUE(says(titled(*shop, "Story stick, bank A"), lane)) << lane;
}

TEST(StoryStick, SaysItsUnitAndWhichEndIsWhich) {
    Project project = testing::bank(2);
    EXPECT_TRUE(says(titled(*shopWith(project), "Story stick, bank A"), "Figures in inches"));
    project.style.unit = Unit::Millimetre;
    const auto metric = shopWith(project);
    EXPECT_TRUE(says(titled(*metric, "Story stick, bank A"), "Figures in mm"));
    EXPECT_EQ(titled(*metric, "Story stick, bank A").up, "the bank's upper end is up");
    EXPECT_TRUE(says(titled(*metric, "Story stick, widths of A"), "at the left"));
}

TEST(StoryStick, KeepsAFractionWithItsInches) {
    const auto shop = shopWith(testing::banks(2, 3));
    for (const Template& part : shop->templates)
        if (part.kind == TemplateKind::StoryStick)
            for (const TemplateLabel& label : part.labels)
                for (const std::string& line : label.lines) {
                    const bool isLoneFraction =
                        line.find('/') != std::string::npos && line.find(' ') == std::string::npos;
                    EXPECT_FALSE(isLoneFraction) << line;
                }
}

// Every edge of every front and opening of a bank, at its own height above the stick's low end.
TEST(StoryStickLaw, EdgesLieWhereThePlanSays) {
    for (std::uint64_t seed = 0; seed < 12; ++seed) {
        const auto shop = shopWith(testing::randomProject(seed));
        for (const Template& stick : shop->templates) {
            if (stick.kind != TemplateKind::StoryStick ||
                stick.title.english().find("bank") == std::string::npos)
                continue;
            double low = 1e9;
            for (OpeningId id : stick.parts) {
                const auto& front = *shop->plan.frontOf(id);
                const auto& below = shop->plan.members[front.neighbours.bottom.member];
                low = std::min(low, below.rect.bottom.inMillimetres());
            }
            for (OpeningId id : stick.parts) {
                const FrontPlan& front = *shop->plan.frontOf(id);
                const std::string name = label(shop->project, front);
                const auto height = [&](const std::string& edge) {
                    return lineOf(stick, edge)->from.y() + low;
                };
                EXPECT_NEAR(height("front " + name + ", high edge"), front.rect.top.inMillimetres(),
                            1e-6);
                EXPECT_NEAR(height("opening " + name + ", low edge"),
                            front.openingRect.bottom.inMillimetres(), 1e-6);
            }
        }
    }
}

} // namespace
} // namespace frontwright
