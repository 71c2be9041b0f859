#include "core/drawings/elevation.h"

#include "tests/core/drawings/drawn_case.h"
#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::exactly;

using testing::DrawnCase;
using testing::shapesOn;

double lengthOf(const LineMark& line) {
    return (line.to - line.from).norm();
}
double totalLength(const Drawing& drawing, Layer layer, const std::string& name) {
    double sum = 0;
    for (const auto& [mark, line] : shapesOn<LineMark>(drawing, layer, name))
        sum += lengthOf(line);
    return sum;
}

/// The part of an upright or level line strictly inside a rectangle.
double insideLength(const LineMark& line, const BoxMm& rect) {
    const int along = line.from.x() == line.to.x() ? 1 : 0, across = 1 - along;
    if (line.from[across] <= rect.min()[across] + exactly ||
        rect.max()[across] - exactly <= line.from[across])
        return 0;
    const double low = std::max(std::min(line.from[along], line.to[along]), rect.min()[along]);
    const double high = std::min(std::max(line.from[along], line.to[along]), rect.max()[along]);
    return std::max(0.0, high - low);
}

TEST(MemberEnds, OfACaseWithoutFrontsBesideThemAreWhole) {
    // One inset opening: both rails end at both stiles, 1 1/2 in each, and no front hides them.
    Project project = testing::bank(1);
    project.fronts.fit = FrontFit::all({Fit::Inset, Length::inches(0, 8)});
    const DrawnCase drawn(project);
    EXPECT_NEAR(totalLength(drawn.elevation(), Layer::MemberEdge, "member end"), 4 * 1.5 * 25.4,
                exactly);
}

TEST(MemberEnds, AreHiddenByWhatOverlaysThem) {
    // Overlays of 1/4 in hide 1/4 in of each of the four joints.
    const DrawnCase drawn(testing::bank(1));
    EXPECT_NEAR(totalLength(drawn.elevation(), Layer::MemberEdge, "member end"), 4 * 1.25 * 25.4,
                exactly);
}

TEST(MemberEnds, AreNeverDrawnOnAFrontBesideTheirMember) {
    for (std::uint64_t seed = 500; seed < 520; ++seed) {
        const DrawnCase drawn(testing::randomProject(seed));
        const Drawing drawing = caseElevation(drawn.project, drawn.plan, drawn.at(0.1));
        for (const auto& [mark, line] :
             shapesOn<LineMark>(drawing, Layer::MemberEdge, "member end"))
            for (const FrontPlan& front : drawn.plan.fronts)
                for (const Side side : allSides)
                    if (drawn.plan.members[front.neighbours[side].member].id == mark.part.member) {
                        EXPECT_NEAR(insideLength(line, toMm(front.rect)), 0, 1e-6);
                    }
    }
}

TEST(MemberEnds, LieOnTheirMembersEdges) {
    for (std::uint64_t seed = 520; seed < 530; ++seed) {
        const DrawnCase drawn(testing::randomProject(seed));
        for (const auto& [mark, line] : shapesOn<LineMark>(
                 caseElevation(drawn.project, drawn.plan, drawn.at(0.1)), Layer::MemberEdge)) {
            ASSERT_TRUE(mark.part.member.has_value());
            const MemberPlan* member = drawn.plan.memberOf(*mark.part.member);
            ASSERT_NE(member, nullptr);
            const BoxMm rect = toMm(member->rect);
            const bool isUpright = line.from.x() == line.to.x();
            const int across = isUpright ? 0 : 1;
            const double at = line.from[across];
            EXPECT_TRUE(std::abs(at - rect.min()[across]) < exactly ||
                        std::abs(at - rect.max()[across]) < exactly);
        }
    }
}

TEST(OpeningEdges, SeenAndHiddenMakeUpTheWholeOpening) {
    for (std::uint64_t seed = 540; seed < 560; ++seed) {
        const DrawnCase drawn(testing::randomProject(seed));
        for (std::uint32_t i = 0; i < drawn.plan.fronts.size(); ++i) {
            const FrontPlan& front = drawn.plan.fronts[i];
            // At full scale every edge that is not the front's own is drawn.
            const Drawing drawing = frontElevation(drawn.project, drawn.plan, i, drawn.at(1000));
            double expected = 0;
            for (const Side side : allSides)
                if (!front.overlay[side].isZero())
                    expected += isLeftOrRight(side) ? front.openingRect.height().inMillimetres()
                                                    : front.openingRect.width().inMillimetres();
            EXPECT_NEAR(totalLength(drawing, Layer::OpeningEdge, "opening edge") +
                            totalLength(drawing, Layer::MemberEdge, "opening edge"),
                        expected, 1e-6);
        }
    }
}

TEST(OpeningEdges, AreDashedOnlyBehindTheirFront) {
    for (std::uint64_t seed = 560; seed < 570; ++seed) {
        const DrawnCase drawn(testing::randomProject(seed));
        for (std::uint32_t i = 0; i < drawn.plan.fronts.size(); ++i) {
            const Drawing drawing = frontElevation(drawn.project, drawn.plan, i, drawn.at(1));
            const BoxMm front = toMm(drawn.plan.fronts[i].rect);
            for (const auto& [mark, line] : shapesOn<LineMark>(drawing, Layer::OpeningEdge))
                EXPECT_NEAR(insideLength(line, front), lengthOf(line), 1e-6);
            for (const auto& [mark, line] : shapesOn<LineMark>(drawing, Layer::MemberEdge))
                EXPECT_NEAR(insideLength(line, front), 0, 1e-6);
        }
    }
}

} // namespace
} // namespace frontwright
