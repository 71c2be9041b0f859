#include "core/drawings/elevation_chains.h"

#include "tests/core/drawings/drawn_case.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

namespace frontwright {
namespace {

using namespace testing;

constexpr double scale = 1; // room for every text

/// What was laid at the near and at the far side.
struct Laid {
    std::vector<DimensionMark> nearSide;
    std::vector<DimensionMark> farSide;
};
std::vector<DimensionMark> dimensionsIn(const DimensionRows& rows) {
    return dimensionsOf({rows.marks(), {}, scale});
}
Laid laid(const DrawnCase& drawn, Axis axis) {
    const BoxMm box = toMm(drawn.plan.outline);
    const bool isWidths = axis == Axis::Widths;
    DimensionRows nearSide(isWidths ? Side::Bottom : Side::Left, 0, scale);
    DimensionRows farSide(isWidths ? Side::Top : Side::Right,
                          isWidths ? box.max().y() : box.max().x(), scale);
    addChains(drawn.plan, axis, drawn.project.style, nearSide, farSide);
    return {dimensionsIn(nearSide), dimensionsIn(farSide)};
}
std::vector<std::string> textsOf(const std::vector<DimensionMark>& marks) {
    std::vector<std::string> texts;
    for (const DimensionMark& mark : marks)
        texts.push_back(mark.text);
    return texts;
}
double lengthOf(const DimensionMark& mark) {
    return (mark.to - mark.from).norm();
}
double sumOf(const std::vector<DimensionMark>& marks) {
    double sum = 0;
    for (const DimensionMark& mark : marks)
        sum += lengthOf(mark);
    return sum;
}

// 3 + 2 × 13 + 2 = 31 in: stile, opening, divider, opening, stile.
TEST(Chain, OfOneRowOfOpeningsSumsToTheCase) {
    const DrawnCase drawn(banks(2, 1));
    const Laid widths = laid(drawn, Axis::Widths);
    EXPECT_EQ(textsOf(widths.nearSide),
              (std::vector<std::string>{"1 1/2", "13", "2", "13", "1 1/2"}));
    EXPECT_NEAR(sumOf(widths.nearSide), 31 * 25.4, 1e-9);
    EXPECT_TRUE(widths.farSide.empty());
}

TEST(Chain, OfEqualBanksIsGivenOnce) {
    const DrawnCase drawn(banks(3, 2));
    const Laid heights = laid(drawn, Axis::Heights);
    EXPECT_EQ(textsOf(heights.nearSide),
              (std::vector<std::string>{"1 1/2", "6", "1 1/4", "6", "1 1/2"}));
    EXPECT_TRUE(heights.farSide.empty());
}

TEST(Chain, AtTheFarSideIsWhole) {
    // Left bank of two, right bank of three: the right chain repeats the outer rails.
    const DrawnCase drawn(
        projectWith(columns({share(rows({share(opening()), share(opening())}, Length::inches(1))),
                             share(rows({share(opening()), share(opening()), share(opening())},
                                        Length::inches(1)))},
                            Length::inches(2)),
                    Length::inches(40), Length::inches(31)));
    const Laid heights = laid(drawn, Axis::Heights);
    EXPECT_EQ(heights.nearSide.size(), 5U);
    EXPECT_EQ(heights.farSide.size(), 7U);
    EXPECT_NEAR(sumOf(heights.nearSide), 31 * 25.4, 1e-9);
    EXPECT_NEAR(sumOf(heights.farSide), 31 * 25.4, 1e-9);
}

TEST(Chain, OfAnUpperRowLiesAboveTheCase) {
    // Two drawers over one wide one.
    const DrawnCase drawn(
        projectWith(rows({fixed(Length::inches(6),
                                columns({share(opening()), share(opening())}, Length::inches(2))),
                          share(opening())},
                         Length::inches(1)),
                    Length::inches(35), Length::inches(30)));
    const Laid widths = laid(drawn, Axis::Widths);
    EXPECT_EQ(textsOf(widths.nearSide), (std::vector<std::string>{"1 1/2", "32", "1 1/2"}));
    EXPECT_EQ(textsOf(widths.farSide),
              (std::vector<std::string>{"1 1/2", "15", "2", "15", "1 1/2"}));
    for (const DimensionMark& mark : widths.farSide)
        EXPECT_DOUBLE_EQ(mark.from.y(), 30 * 25.4);
}

TEST(Chain, OfAMiddleBankAddsOnlyWhatHasNotBeenSaid) {
    // Three banks: two rows, three rows, two rows as the first. Only the middle one's three
    // openings and two rails are new; both lie as near to the right as to the left.
    const auto two = [] { return rows({share(opening()), share(opening())}, Length::inches(1)); };
    const DrawnCase drawn(projectWith(
        columns(
            {share(two()),
             share(rows({share(opening()), share(opening()), share(opening())}, Length::inches(1))),
             share(two())},
            Length::inches(2)),
        Length::inches(61), Length::inches(31)));
    const Laid heights = laid(drawn, Axis::Heights);
    EXPECT_EQ(heights.nearSide.size(), 5U);
    EXPECT_EQ(heights.farSide.size(), 7U);
}

TEST(Chain, SaysEveryStretchOfRandomCasesOnceAtLeast) {
    for (std::uint64_t seed = 200; seed < 215; ++seed) {
        const DrawnCase drawn(randomProject(seed));
        for (const Axis axis : {Axis::Widths, Axis::Heights}) {
            const Laid both = laid(drawn, axis);
            std::set<std::pair<std::int64_t, std::int64_t>> said;
            for (const auto& marks : {both.nearSide, both.farSide})
                for (const DimensionMark& mark : marks) {
                    const bool isWidths = axis == Axis::Widths;
                    const double a = isWidths ? mark.from.x() : mark.from.y();
                    const double b = isWidths ? mark.to.x() : mark.to.y();
                    said.emplace(Length::nearestToMillimetres(std::min(a, b)).nanometres(),
                                 Length::nearestToMillimetres(std::max(a, b)).nanometres());
                }
            for (const FrontPlan& front : drawn.plan.fronts) {
                const Span span =
                    axis == Axis::Widths ? front.openingRect.across() : front.openingRect.upright();
                EXPECT_EQ(said.count({span.low.nanometres(), span.high.nanometres()}), 1U)
                    << "seed " << seed;
            }
        }
    }
}

TEST(Chain, NamesTheOpeningOrMemberThatEachStretchBelongsTo) {
    const DrawnCase drawn(banks(2, 2));
    DimensionRows below(Side::Bottom, 0, scale), above(Side::Top, 0, scale);
    addChains(drawn.plan, Axis::Widths, drawn.project.style, below, above);
    for (const Mark& mark : below.marks()) {
        EXPECT_NE(mark.part.opening.has_value(), mark.part.member.has_value());
        const auto& quantity = std::get<DimensionMark>(mark.shape).quantity;
        ASSERT_TRUE(quantity.has_value());
        if (mark.part.opening) {
            EXPECT_EQ(drawn.plan.fronts[quantity->item].opening, mark.part.opening);
        } else {
            EXPECT_EQ(drawn.plan.members[quantity->item].id, mark.part.member);
        }
    }
}

} // namespace
} // namespace frontwright
