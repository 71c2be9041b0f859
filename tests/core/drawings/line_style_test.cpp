#include "core/drawings/line_style.h"

#include <gtest/gtest.h>

#include <array>
#include <set>
#include <string>

namespace frontwright {
namespace {

// Every layer, in the order of the enumeration.
std::vector<Layer> allLayers() {
    std::vector<Layer> layers;
    for (int i = 0; i <= static_cast<int>(Layer::CheckBar); ++i)
        layers.push_back(static_cast<Layer>(i));
    return layers;
}

// ISO 128 line widths in mm; 0.13 from memory, the others as nationally adopted.
const std::set<double> isoWidths{0.13, 0.18, 0.25, 0.35, 0.5, 0.7, 1.0, 1.4, 2.0};

TEST(LineStyle, HasWidthsOfIso128AtAnyScale) {
    for (const Layer layer : allLayers())
        for (const double scale : {0.05, 0.1, 0.5, 1.0, 2.0})
            EXPECT_EQ(isoWidths.count(lineStyle(layer, scale).width), 1U) << key(layer);
}

TEST(LineStyle, DrawsVisibleOutlinesTwiceAsWideAsOtherLines) {
    // ISO 128-2 (from memory): wide to narrow 2:1; the series' steps of √2 are rounded.
    std::set<double> widths;
    for (const Layer layer : allLayers())
        widths.insert(lineStyle(layer).width);
    ASSERT_EQ(widths.size(), 2U);
    EXPECT_NEAR(*widths.rbegin() / *widths.begin(), 2, 0.06);
    EXPECT_EQ(lineStyle(Layer::FrontEdge).width, *widths.rbegin());
    EXPECT_EQ(lineStyle(Layer::CutEdge).width, *widths.rbegin());
    EXPECT_EQ(lineStyle(Layer::Dimension).width, *widths.begin());
    EXPECT_EQ(lineStyle(Layer::CutHatch).width, *widths.begin());
}

TEST(LineStyle, IsNoWiderThanAQuarterMillimetreAtFullScale) {
    for (const Layer layer : allLayers()) {
        EXPECT_LE(lineStyle(layer, 1.0).width, 0.25) << key(layer);
        EXPECT_GE(lineStyle(layer, 1.0).width, 0.15) << key(layer);
    }
}

TEST(LineStyle, DashesWhatIsHiddenAndChainsCentreLines) {
    const LineStyle hidden = lineStyle(Layer::OpeningEdge);
    ASSERT_EQ(hidden.dashes.size(), 2U);
    EXPECT_DOUBLE_EQ(hidden.dashes[0], 12 * hidden.width); // ISO 128-2, from memory
    EXPECT_DOUBLE_EQ(hidden.dashes[1], 3 * hidden.width);
    EXPECT_EQ(lineStyle(Layer::BoxEdge).dashes, hidden.dashes);
    const LineStyle centre = lineStyle(Layer::Centre);
    ASSERT_EQ(centre.dashes.size(), 4U);
    EXPECT_DOUBLE_EQ(centre.dashes[0], 24 * centre.width);
    EXPECT_DOUBLE_EQ(centre.dashes[2], 0.5 * centre.width);
    EXPECT_TRUE(lineStyle(Layer::FrontEdge).dashes.empty());
    EXPECT_TRUE(lineStyle(Layer::Dimension).dashes.empty());
}

TEST(LayerKey, IsDifferentForEveryLayer) {
    std::set<std::string_view> keys;
    for (const Layer layer : allLayers())
        keys.insert(key(layer));
    EXPECT_EQ(keys.size(), allLayers().size());
    EXPECT_EQ(key(Layer::FrontEdge), "front-edge");
    EXPECT_EQ(key(Layer::CheckBar), "check-bar");
}

} // namespace
} // namespace frontwright
