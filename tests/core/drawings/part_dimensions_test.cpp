#include "core/drawings/elevation.h"
#include "core/drawings/lettering.h"

#include "tests/core/drawings/drawn_case.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::DrawnCase;
using testing::shapesOn;
using Kind = PlacedPart::Kind;

std::vector<DimensionMark> ofPart(const Drawing& drawing) {
    std::vector<DimensionMark> marks;
    for (const auto& [mark, dimension] : shapesOn<DimensionMark>(drawing, Layer::PartDimension))
        marks.push_back(dimension);
    return marks;
}
ElevationOptions emphasising(const DrawnCase& drawn, const PlacedPart& part, double scale) {
    ElevationOptions options = drawn.at(scale);
    options.emphasised = part.opening;
    options.emphasisedPart = part;
    return options;
}
std::vector<PlacedPart> allParts(const FrontPlan& front) {
    std::vector<PlacedPart> parts = partsOn(front, Kind::MountingHole);
    for (const PlacedPart& handle : partsOn(front, Kind::Handle))
        parts.push_back(handle);
    return parts;
}
std::size_t countOf(const std::vector<DimensionMark>& marks, const std::string& word) {
    std::size_t count = 0;
    for (const DimensionMark& mark : marks)
        count += mark.text.find(word + " ") != std::string::npos ? 1 : 0;
    return count;
}

TEST(PartDimensions, TellTheDistancesOfTheHoleThatIsPlaced) {
    const DrawnCase drawn(testing::bank(2));
    const PlacedPart part{Kind::MountingHole, drawn.plan.fronts[0].opening, 0};
    const auto marks =
        ofPart(elevationDimensions(drawn.project, drawn.plan, emphasising(drawn, part, 0.3)));
    EXPECT_EQ(countOf(marks, "front"), 4U);
    EXPECT_EQ(countOf(marks, "wall"), 4U);
    EXPECT_EQ(countOf(marks, "bottom"), 1U);
    EXPECT_EQ(countOf(marks, "hole"), 2U);
}

TEST(PartDimensions, AreKeptFreeOfOtherFrontsLabels) {
    for (std::uint64_t seed = 40; seed < 46; ++seed) {
        const DrawnCase drawn(testing::randomProject(seed));
        for (const PlacedPart& part : allParts(drawn.plan.fronts.front())) {
            ElevationOptions options = emphasising(drawn, part, 0.2);
            options.keepFree = partReach(drawn.plan, options);
            ASSERT_TRUE(options.keepFree);
            const BoxMm free = toMm(*options.keepFree);
            for (std::uint32_t i = 1; i < drawn.plan.fronts.size(); ++i) {
                const Drawing front = frontElevation(drawn.project, drawn.plan, i, options);
                for (const auto& [mark, text] : shapesOn<TextMark>(front, Layer::Note))
                    EXPECT_FALSE(textBox(text, 0.2).intersects(free)) << text.text;
            }
        }
    }
}

TEST(PartDimensions, ReachNowhereWhereNoPartIsPlaced) {
    const DrawnCase drawn(testing::bank(2));
    EXPECT_EQ(partReach(drawn.plan, drawn.at(0.2)), std::nullopt);
}

TEST(PartDimensions, AreAsLongAsTheDistancesOfTheEdit) {
    for (std::uint64_t seed = 40; seed < 46; ++seed) {
        const DrawnCase drawn(testing::randomProject(seed));
        for (const FrontPlan& front : drawn.plan.fronts)
            for (const PlacedPart& part : allParts(front)) {
                std::size_t asked = 0;
                for (const PartDistance& distance : distancesOf(drawn.plan, part))
                    asked += distance.length.isZero() ? 0 : 1;
                const auto marks = ofPart(
                    elevationDimensions(drawn.project, drawn.plan, emphasising(drawn, part, 0.2)));
                EXPECT_EQ(marks.size(), asked);
                for (const DimensionMark& mark : marks)
                    if (mark.quantity)
                        EXPECT_NEAR(
                            (mark.to - mark.from).norm(),
                            valueOf(drawn.plan, *mark.quantity)->magnitude().inMillimetres(), 1e-9);
            }
    }
}

TEST(PartDimensions, NeverLieUponAnotherFigure) {
    const DrawnCase drawn(testing::banks(2, 2));
    for (const double scale : {0.1, 0.15, 0.3, 0.6})
        for (const FrontPlan& front : drawn.plan.fronts)
            for (const PlacedPart& part : allParts(front)) {
                const Drawing drawing =
                    elevationDimensions(drawn.project, drawn.plan, emphasising(drawn, part, scale));
                EXPECT_TRUE(testing::overlapping(testing::textBoxes(drawing)).empty()) << scale;
            }
}

TEST(PartDimensions, TakeThePlaceOfTheFrontsOwnSize) {
    const DrawnCase drawn(testing::bank(2));
    const PlacedPart part{Kind::Handle, drawn.plan.fronts[0].opening, 0};
    ElevationOptions options = emphasising(drawn, part, 0.3);
    EXPECT_EQ(testing::dimensionNamed(elevationDimensions(drawn.project, drawn.plan, options),
                                      "front width"),
              nullptr);
    options.emphasisedPart.reset();
    EXPECT_NE(testing::dimensionNamed(elevationDimensions(drawn.project, drawn.plan, options),
                                      "front width"),
              nullptr);
}

TEST(PartDimensions, ComeWithTheLinesThatTheyAreMeasuredFrom) {
    const DrawnCase drawn(testing::bank(2));
    const PlacedPart part{Kind::MountingHole, drawn.plan.fronts[0].opening, 0};
    const ElevationOptions options = emphasising(drawn, part, 0.3);
    const Drawing own = frontElevation(drawn.project, drawn.plan, 0, options);
    EXPECT_FALSE(shapesOn<PathMark>(own, Layer::BoxEdge).empty());
    EXPECT_FALSE(shapesOn<LineMark>(own, Layer::BottomPanel).empty());
    EXPECT_FALSE(shapesOn<PathMark>(own, Layer::AllowedRegion).empty());
    const Drawing other = frontElevation(drawn.project, drawn.plan, 1, options);
    EXPECT_TRUE(shapesOn<PathMark>(other, Layer::BoxEdge).empty());
}

TEST(PartDimensions, AreGoneWithTheLayerOfDimensions) {
    const DrawnCase drawn(testing::bank(1));
    ElevationOptions options =
        emphasising(drawn, {Kind::Handle, drawn.plan.fronts[0].opening, 0}, 0.3);
    options.dimensions = Shown::No;
    EXPECT_TRUE(ofPart(elevation(drawn.project, drawn.plan, options)).empty());
}

// A pull as wide as the front nearly: a line for its width would run over its holes.
TEST(DimensionsOfTheEmphasisedFront, RunOverNoHoleAndNoHandle) {
    for (const double scale : {0.1, 0.2, 0.3, 0.5}) {
        const DrawnCase drawn(testing::bank(3));
        for (const FrontPlan& front : drawn.plan.fronts) {
            ElevationOptions options = drawn.at(scale);
            options.emphasised = front.opening;
            const Drawing dimensions = elevationDimensions(drawn.project, drawn.plan, options);
            const BoxMm rect = toMm(front.rect);
            for (const char* name : {"front width", "front height"}) {
                const auto* mark = testing::dimensionNamed(dimensions, name);
                if (mark == nullptr)
                    continue;
                const LineMark line = figureOf(*mark, scale).line;
                if (!rect.contains(line.from) || !rect.contains(line.to))
                    continue; // in the rows outside the case
                for (const MountingHole& hole : front.mounting.holes) {
                    const PointMm at = toMm(front.box.origin) + toMm(hole.at);
                    const double away = line.from.x() == line.to.x()
                                            ? std::abs(at.x() - line.from.x())
                                            : std::abs(at.y() - line.from.y());
                    EXPECT_GT(away, front.mounting.pilotHole.inMillimetres() / 2) << scale;
                }
            }
        }
    }
}

} // namespace
} // namespace frontwright
