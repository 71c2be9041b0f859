#include "core/drawings/elevation.h"

#include "core/lengths/format.h"
#include "tests/core/drawings/drawn_case.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

namespace frontwright {
namespace {

using testing::DrawnCase;

std::vector<std::string> textsNamed(const Drawing& drawing, const std::string& name) {
    std::vector<std::string> texts;
    for (const auto& [mark, dimension] :
         testing::shapesOn<DimensionMark>(drawing, Layer::Dimension, name))
        texts.push_back(dimension.text);
    return texts;
}

// Two banks of 13 in openings, stiles 1 1/2 in and 2 in: 31 in over all.
TEST(ElevationDimensions, GiveTheChainOfColumnsAndTheWholeWidth) {
    const DrawnCase drawn(testing::banks(2, 2));
    const Drawing drawing = drawn.elevation(0.2);
    EXPECT_EQ(textsNamed(drawing, "opening width"), (std::vector<std::string>{"13", "13"}));
    EXPECT_EQ(textsNamed(drawing, "case width"), std::vector<std::string>{"31"});
    const auto members = textsNamed(drawing, "member width");
    EXPECT_EQ(std::count(members.begin(), members.end(), "2"), 1);
}

// Rows of 6 in, rails 1 1/2 in outside and 1 1/4 in between: 16 1/4 in.
TEST(ElevationDimensions, GiveTheChainOfABankOnceWhereBanksAreEqual) {
    const DrawnCase drawn(testing::banks(2, 2));
    const Drawing drawing = drawn.elevation(0.2);
    EXPECT_EQ(textsNamed(drawing, "opening height"), (std::vector<std::string>{"6", "6"}));
    EXPECT_EQ(textsNamed(drawing, "case height"), std::vector<std::string>{"16 1/4"});
}

TEST(ElevationDimensions, GiveABankThatDiffersAtTheOtherSide) {
    using namespace testing;
    const DrawnCase drawn(
        projectWith(columns({share(rows({share(opening()), share(opening())}, Length::inches(1))),
                             share(rows({share(opening()), share(opening()), share(opening())},
                                        Length::inches(1)))},
                            Length::inches(2)),
                    Length::inches(40), Length::inches(30)));
    int left = 0, right = 0;
    for (const auto& [mark, dimension] :
         shapesOn<DimensionMark>(drawn.elevation(0.2), Layer::Dimension, "opening height"))
        (dimension.from.x() == 0 ? left : right) += 1;
    EXPECT_EQ(left, 2);
    EXPECT_EQ(right, 3);
}

TEST(ElevationDimensions, CarryTheQuantityThatTheyShow) {
    const DrawnCase drawn(testing::randomProject(3));
    int count = 0;
    for (const DimensionMark& dimension : testing::dimensionsOf(drawn.elevation(0.2))) {
        ASSERT_TRUE(dimension.quantity.has_value());
        const auto value = valueOf(drawn.plan, *dimension.quantity);
        ASSERT_TRUE(value.has_value());
        EXPECT_NEAR((dimension.to - dimension.from).norm(), value->inMillimetres(), 1e-9);
        const std::string figure = shownBare(*value, drawn.project.style);
        EXPECT_TRUE(dimension.text == figure || dimension.text.starts_with(figure + " ("));
        ++count;
    }
    EXPECT_GT(count, 4);
}

TEST(ElevationDimensions, LeaveNoSizeOfAnOpeningUnsaid) {
    for (std::uint64_t seed = 1; seed <= 12; ++seed) {
        const DrawnCase drawn(testing::randomProject(seed));
        std::set<std::string> said;
        for (const DimensionMark& dimension : testing::dimensionsOf(drawn.elevation(0.5))) {
            said.insert(dimension.text.substr(0, dimension.text.find(" (")));
        }
        for (const FrontPlan& front : drawn.plan.fronts) {
            EXPECT_TRUE(said.count(shownBare(front.openingRect.width(), drawn.project.style)));
            EXPECT_TRUE(said.count(shownBare(front.openingRect.height(), drawn.project.style)));
        }
    }
}

TEST(ElevationDimensions, NeverMeetAnotherTextOrAFront) {
    for (const double scale : {0.5, 0.2, 0.1, 0.05, 0.02})
        for (std::uint64_t seed = 1; seed <= 20; ++seed) {
            const DrawnCase drawn(testing::randomProject(seed));
            const Drawing drawing = drawn.elevation(scale);
            const auto all = testing::allTextBoxes(drawing);
            EXPECT_TRUE(testing::overlapping(all).empty()) << "1:" << 1 / scale << " " << seed;
            const BoxMm casework = toMm(drawn.plan.outline);
            for (const BoxMm& box : testing::textBoxes(drawing)) {
                EXPECT_FALSE(testing::haveCommonArea(box, casework));
                for (const FrontPlan& front : drawn.plan.fronts)
                    EXPECT_FALSE(testing::haveCommonArea(box, toMm(front.rect)))
                        << "1:" << 1 / scale << " " << seed;
            }
        }
}

TEST(ElevationDimensions, SayWhereTheScaleLeavesNoRoomForAll) {
    using namespace testing;
    // Ten banks, each divided in its own way, at 1:50.
    std::vector<Child> banks;
    for (std::int64_t i = 0; i < 10; ++i) {
        std::vector<Child> drawers;
        for (std::int64_t j = 0; j < 8; ++j)
            drawers.push_back(share(opening(), 20 + (i * 7 + j * 3) % 11));
        banks.push_back(share(rows(drawers, Length::inches(1)), 20 + i));
    }
    const DrawnCase drawn(
        projectWith(columns(banks, Length::inches(2)), Length::inches(200), Length::inches(60)));
    const auto isSaid = [&](double scale) {
        const auto notes = textsOn(drawn.elevation(scale), Layer::Note);
        return std::find(notes.begin(), notes.end(), "Not all dimensions fit at this scale") !=
               notes.end();
    };
    EXPECT_TRUE(isSaid(0.02));
    EXPECT_FALSE(isSaid(1));
    EXPECT_TRUE(overlapping(allTextBoxes(drawn.elevation(0.02))).empty());
}

TEST(ElevationDimensions, CopeWithACaseSmallerThanItsFigures) {
    const DrawnCase drawn(testing::oneOpening(Length::inches(4), Length::inches(2)));
    for (const double scale : {0.1, 0.05, 0.02, 0.01}) {
        const Drawing drawing = drawn.elevation(scale);
        EXPECT_TRUE(testing::overlapping(testing::allTextBoxes(drawing)).empty()) << scale;
    }
}

TEST(EmphasisedFront, IsDimensionedInsideWhereThereIsRoom) {
    const DrawnCase drawn(testing::bank(3));
    ElevationOptions options = drawn.at(0.5);
    options.emphasised = drawn.plan.fronts[1].opening;
    const Drawing drawing = elevation(drawn.project, drawn.plan, options);
    const BoxMm front = toMm(drawn.plan.fronts[1].rect);
    for (const std::string name : {"front width", "front height"}) {
        const auto marks = testing::shapesOn<DimensionMark>(drawing, Layer::Dimension, name);
        ASSERT_EQ(marks.size(), 1U);
        EXPECT_EQ(marks[0].first.part.opening, options.emphasised);
        EXPECT_TRUE(front.contains(textBox(figureOf(marks[0].second, 0.5).text, 0.5)));
    }
    EXPECT_TRUE(testing::overlapping(testing::allTextBoxes(drawing)).empty());
}

TEST(EmphasisedFront, HasNoFigureOnTheLinesOfADoorsSwing) {
    const DrawnCase drawn(
        testing::withOpenings(testing::oneOpening(Length::inches(15), Length::inches(30)),
                              [](Opening& leaf, std::size_t) { leaf.use = OpeningUse::Door; }));
    for (const double scale : {0.1, 0.15, 0.3, 0.5}) {
        ElevationOptions options = drawn.at(scale);
        options.emphasised = drawn.plan.fronts[0].opening;
        const Drawing drawing = elevation(drawn.project, drawn.plan, options);
        const auto swing = testing::shapesOn<LineMark>(drawing, Layer::OpeningEdge, "swing");
        ASSERT_EQ(swing.size(), 2U);
        for (const BoxMm& text : testing::allTextBoxes(drawing))
            for (const auto& [mark, line] : swing)
                for (int i = 0; i <= 1000; ++i) {
                    const PointMm at = line.from + i / 1000.0 * (line.to - line.from);
                    ASSERT_FALSE((text.min().array() < at.array()).all() &&
                                 (at.array() < text.max().array()).all())
                        << "at " << scale;
                }
    }
}

TEST(EmphasisedFront, IsDimensionedOutsideTheCaseWhereItIsTooSmall) {
    const DrawnCase drawn(testing::bank(3));
    ElevationOptions options = drawn.at(0.05);
    options.emphasised = drawn.plan.fronts[1].opening;
    const Drawing drawing = elevation(drawn.project, drawn.plan, options);
    for (const std::string name : {"front width", "front height"}) {
        const auto* mark = testing::dimensionNamed(drawing, name);
        ASSERT_NE(mark, nullptr);
        EXPECT_FALSE(testing::haveCommonArea(textBox(figureOf(*mark, 0.05).text, 0.05),
                                             toMm(drawn.plan.outline)));
    }
    EXPECT_TRUE(testing::overlapping(testing::allTextBoxes(drawing)).empty());
}

TEST(EmphasisedFront, SaysItsSizeOnlyOnce) {
    const DrawnCase drawn(testing::bank(3));
    ElevationOptions options = drawn.at(0.5);
    options.emphasised = drawn.plan.fronts[1].opening;
    const Drawing label = frontElevation(drawn.project, drawn.plan, 1, options);
    EXPECT_EQ(testing::textsOn(label, Layer::Note), std::vector<std::string>{"A2"});
}

TEST(EmphasisedFront, NeverMakesTextsMeet) {
    for (const double scale : {0.5, 0.2, 0.1, 0.05})
        for (std::uint64_t seed = 70; seed < 78; ++seed) {
            const DrawnCase drawn(testing::randomProject(seed));
            for (const FrontPlan& front : drawn.plan.fronts) {
                ElevationOptions options = drawn.at(scale);
                options.emphasised = front.opening;
                const Drawing drawing = elevation(drawn.project, drawn.plan, options);
                EXPECT_TRUE(testing::overlapping(testing::allTextBoxes(drawing)).empty());
                EXPECT_NE(testing::dimensionNamed(drawing, "front width"), nullptr);
            }
        }
}

} // namespace
} // namespace frontwright
