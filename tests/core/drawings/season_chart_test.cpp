#include "core/drawings/lettering.h"
#include "core/drawings/season_chart.h"

#include "tests/core/plan/planned.h"
#include "tests/core/plan/seasons.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace frontwright {
namespace {

using testing::bank;
using testing::oakInAir;
using testing::Planned;

Project oakBank() {
    Project project = bank(2);
    oakInAir(project, 8, 6, 12);
    return project;
}

SeasonChartOptions optionsFor(AirState today) {
    SeasonChartOptions options;
    options.style = {Unit::Inch, 64};
    options.today = today;
    return options;
}
AirState at20(int humidity) {
    return AirState::of(Temperature::celsius(20), Percent::whole(humidity));
}

std::vector<PointMm> curveOf(const Drawing& drawing) {
    for (const Mark& mark : drawing.marks)
        if (mark.layer == Layer::FrontEdge)
            return std::get<PathMark>(mark.shape).points;
    return {};
}
std::vector<std::string> textsOf(const Drawing& drawing) {
    std::vector<std::string> texts;
    for (const Mark& mark : drawing.marks)
        if (const auto* text = std::get_if<TextMark>(&mark.shape))
            texts.push_back(text->text);
    return texts;
}
bool says(const Drawing& drawing, const std::string& words) {
    const auto texts = textsOf(drawing);
    return std::find(texts.begin(), texts.end(), words) != texts.end();
}

TEST(SeasonCharts, FallWithHumidity) {
    const Planned planned{oakBank()};
    const auto chart = seasonChart(planned.project, planned.plan, optionsFor(at20(50)));
    ASSERT_TRUE(chart);
    const auto curve = curveOf(*chart);
    ASSERT_EQ(curve.size(), 51U);
    for (std::size_t i = 1; i < curve.size(); ++i) {
        EXPECT_GT(curve[i].x(), curve[i - 1].x());
        EXPECT_LT(curve[i].y(), curve[i - 1].y());
    }
}

TEST(SeasonCharts, PutTodaysPointOnTheCurve) {
    const Planned planned{oakBank()};
    for (const int humidity : {0, 30, 50, 100}) {
        const auto chart = seasonChart(planned.project, planned.plan, optionsFor(at20(humidity)));
        ASSERT_TRUE(chart);
        const auto curve = curveOf(*chart);
        for (const Mark& mark : chart->marks)
            if (const auto* circle = std::get_if<CircleMark>(&mark.shape)) {
                const PointMm on = curve[static_cast<std::size_t>(humidity / 2)];
                EXPECT_NEAR(circle->centre.x(), on.x(), 1e-9);
                EXPECT_NEAR(circle->centre.y(), on.y(), 1e-4);
            }
    }
}

TEST(SeasonCharts, SayTheGapOfToday) {
    // Air in which oak has the moisture at which it was cut: the gap as cut, 3/4 in.
    const Planned planned{oakBank()};
    const auto chart =
        seasonChart(planned.project, planned.plan, optionsFor(AirState::meter(Percent::whole(8))));
    ASSERT_TRUE(chart);
    EXPECT_TRUE(says(*chart, "today 3/4 in") || says(*chart, "today ≈ 3/4 in"));
    EXPECT_TRUE(says(*chart, "relative humidity at 20 °C"));
    EXPECT_TRUE(says(*chart, "1/16 in")); // the least gap
}

TEST(SeasonCharts, SayItClearOfCurveAndLevels) {
    const Planned planned{oakBank()};
    for (int humidity = 20; humidity <= 80; humidity += 5) {
        const auto chart = seasonChart(planned.project, planned.plan, optionsFor(at20(humidity)));
        ASSERT_TRUE(chart);
        BoxMm words;
        for (const Mark& mark : chart->marks)
            if (const auto* text = std::get_if<TextMark>(&mark.shape);
                text && text->text.starts_with("today"))
                words = textBox(*text, 1);
        ASSERT_FALSE(words.isEmpty());
        const auto curve = curveOf(*chart);
        for (std::size_t i = 1; i < curve.size(); ++i)
            EXPECT_FALSE(BoxMm(curve[i - 1]).extend(curve[i]).intersects(words)) << humidity;
        // A time of the year's line it may cross, where there is no way round it.
        for (const Mark& mark : chart->marks)
            if (const auto* line = std::get_if<LineMark>(&mark.shape);
                line && mark.layer != Layer::BoxEdge)
                EXPECT_FALSE(BoxMm(line->from).extend(line->to).intersects(words)) << humidity;
    }
}

TEST(SeasonCharts, NeedAirAndAGap) {
    const Planned noAir{bank(2)};
    EXPECT_FALSE(seasonChart(noAir.project, noAir.plan, optionsFor(at20(50))));
    Project single = testing::oneOpening(Length::inches(10), Length::inches(6));
    oakInAir(single, 8, 6, 12);
    const Planned noGap{single};
    EXPECT_FALSE(seasonChart(noGap.project, noGap.plan, optionsFor(at20(50))));
    const Planned sound{oakBank()};
    EXPECT_FALSE(seasonChart(sound.project, sound.plan, optionsFor(at20(101))));
}

} // namespace
} // namespace frontwright
