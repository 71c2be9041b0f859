#include "core/drawings/season_elevation.h"

#include "core/drawings/lettering.h"
#include "core/drawings/sketch.h"
#include "core/plan/moving.h"
#include "tests/core/drawings/drawn.h"
#include "tests/core/plan/planned.h"
#include "tests/core/plan/seasons.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace frontwright {
namespace {

using testing::bank;
using testing::oakInAir;
using testing::Planned;
using testing::shapesOn;

/// Two fronts of oak, one above the other: cut at 8 %, between 6 and 12 % over the year.
Project oakBank() {
    Project project = bank(2);
    oakInAir(project, 8, 6, 12);
    return project;
}

SeasonElevationOptions wettest(int times) {
    SeasonElevationOptions options;
    options.style = {Unit::Inch, 64};
    options.moisture = 12;
    options.times = times;
    return options;
}

std::vector<std::string> textsOf(const Drawing& drawing) {
    std::vector<std::string> texts;
    for (const Mark& mark : drawing.marks)
        if (const auto* text = std::get_if<TextMark>(&mark.shape))
            texts.push_back(text->text);
    return texts;
}

TEST(SeasonElevation, NamesTheFrontsAndGivesNoSizesThatAreNotTrue) {
    const Planned planned{oakBank()};
    const auto texts = textsOf(seasonElevation(planned.project, planned.plan, wettest(10)));
    EXPECT_EQ(texts, (std::vector<std::string>{"A1", "A2", "changes drawn 10 times as large"}));
}

TEST(SeasonElevation, SaysOfTheTrueChangeThatItIsTrue) {
    const Planned planned{oakBank()};
    EXPECT_EQ(textsOf(seasonElevation(planned.project, planned.plan, wettest(1))).back(),
              "changes drawn as large as they are");
}

TEST(SeasonElevation, DrawsTheChangesSoManyTimesAsLarge) {
    const Planned planned{oakBank()};
    const auto heightAt = [&](int times) {
        const auto edges =
            shapesOn<PathMark>(seasonElevation(planned.project, planned.plan, wettest(times)),
                               Layer::FrontEdge, "front edge");
        BoxMm box;
        for (const PointMm& point : edges.at(0).second.points)
            box.extend(point);
        return box.sizes().y();
    };
    const double cut = planned.plan.fronts[0].rect.height().inMillimetres();
    EXPECT_GT(heightAt(1), cut);
    // Nanometres are rounded once for each edge.
    EXPECT_NEAR(heightAt(10) - cut, 10 * (heightAt(1) - cut), 2e-5);
}

TEST(SeasonElevation, StaysInItsRoomWithItsWords) {
    const Planned planned{oakBank()};
    for (const double width : {60.0, 80.0, 200.0})
        for (const double height : {40.0, 100.0, 300.0}) {
            SeasonElevationOptions options = wettest(1);
            options.width = width;
            options.height = height;
            const Drawing drawing = seasonElevation(planned.project, planned.plan, options);
            const PointMm size = drawing.extent.sizes() * drawing.paperScale;
            EXPECT_LE(size.x(), width + 1) << width << " × " << height;
            EXPECT_LE(size.y(), height + 1) << width << " × " << height;
        }
}

TEST(SeasonElevation, KeepsItsWordsOffTheCase) {
    const Planned planned{oakBank()};
    const Drawing drawing = seasonElevation(planned.project, planned.plan, wettest(50));
    const auto words = shapesOn<TextMark>(drawing, Layer::Note, "changes drawn");
    ASSERT_EQ(words.size(), 1U);
    const double top = words[0].second.at.y() + words[0].second.height / drawing.paperScale;
    for (const auto& [mark, path] : shapesOn<PathMark>(drawing, Layer::FrontEdge, "front edge"))
        for (const PointMm& point : path.points)
            EXPECT_LT(top, point.y());
}

} // namespace
} // namespace frontwright
