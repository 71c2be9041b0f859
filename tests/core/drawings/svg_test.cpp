#include "core/drawings/elevation.h"
#include "core/drawings/lettering.h"
#include "core/drawings/plain_marks.h"
#include "core/drawings/sketch.h"
#include "tests/core/plan/small_case.h"

#include <gtest/gtest.h>

#include <regex>
#include <string>
#include <vector>

namespace frontwright {
namespace {

Drawing boxDrawing(double paperScale) {
    Sketch sketch(paperScale);
    sketch.rectangle(Layer::FrontEdge, BoxMm(PointMm(-20, 10), PointMm(180, 110)),
                     {std::nullopt, std::nullopt, "front edge"});
    return sketch.finished(0);
}

bool holds(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

/// Every element is closed in the order in which it was opened.
std::string firstUnclosed(const std::string& xml) {
    static const std::regex tag(R"(<(/?)([a-z]+)((?:[^">]|"[^"]*")*)(/?)>)");
    std::vector<std::string> open;
    for (std::sregex_iterator it(xml.begin(), xml.end(), tag), end; it != end; ++it) {
        const std::string name = (*it)[2];
        const std::string inside = (*it)[3];
        if ((*it)[1] == "/") {
            if (open.empty() || open.back() != name)
                return "/" + name;
            open.pop_back();
        } else if (inside.empty() || inside.back() != '/') {
            open.push_back(name);
        }
    }
    return open.empty() ? "" : open.back();
}

TEST(Svg, StatesItsSizeInMillimetresAndDrawsInThem) {
    const std::string full = svg(boxDrawing(1), "Front");
    EXPECT_TRUE(holds(full, R"(width="200mm" height="100mm" viewBox="0 0 200 100")"));
    const std::string tenth = svg(boxDrawing(0.1), "Front");
    EXPECT_TRUE(holds(tenth, R"(width="20mm" height="10mm" viewBox="0 0 20 10")"));
}

TEST(Svg, TurnsTheDrawingsUpIntoThePapersDown) {
    // From the extent's upper left corner: lower left lies at (0, 100).
    EXPECT_TRUE(holds(svg(boxDrawing(1), "Front"), R"(d="M0 100 L200 100 L200 0 L0 0 Z")"));
}

TEST(Svg, GroupsLayersFromBackToFront) {
    Sketch sketch(1);
    sketch.text(Layer::Note, {{0, 0}, "A2", 3.5, Anchor::Middle, 0}, {});
    sketch.circle(Layer::Hole, {0, 0}, 2, {});
    sketch.line(Layer::CaseOutline, {0, 0}, {1, 0}, {});
    const std::string text = svg(sketch.finished(0), "x");
    EXPECT_LT(text.find("id=\"case-outline\""), text.find("id=\"hole\""));
    EXPECT_LT(text.find("id=\"hole\""), text.find("id=\"note\""));
    EXPECT_FALSE(holds(text, "id=\"front-edge\""));
}

TEST(Svg, WritesNoMoreThanSixDecimalsAndNoNegativeZero) {
    Sketch sketch(1);
    sketch.line(Layer::FrontEdge, {0, 0}, {1.0 / 3, 2.0 / 3}, {});
    const std::string text = svg(sketch.finished(0), "x");
    EXPECT_TRUE(holds(text, "0.333333"));
    EXPECT_FALSE(holds(text, "0.3333333"));
    EXPECT_FALSE(holds(text, "-0 "));
    EXPECT_FALSE(std::regex_search(text, std::regex("[0-9]e[+-]?[0-9]")));
}

TEST(Svg, EscapesWhatAMakerMayWrite) {
    Sketch sketch(1);
    sketch.text(Layer::Note, {{0, 0}, "3/4\" <oak> & ash\x01", 3.5, Anchor::Start, 0},
                {std::nullopt, std::nullopt, "\"quoted\""});
    const std::string text = svg(sketch.finished(0), "A & B <1>");
    EXPECT_TRUE(holds(text, "3/4&quot; &lt;oak&gt; &amp; ash <"));
    EXPECT_TRUE(holds(text, "<title>A &amp; B &lt;1&gt;</title>"));
    EXPECT_TRUE(holds(text, "data-part=\"&quot;quoted&quot;\""));
}

TEST(Svg, TurnsTextThatReadsFromTheRight) {
    Sketch sketch(1);
    sketch.text(Layer::Dimension, {{5, 5}, "640", 2.5, Anchor::Middle, 90}, {});
    const std::string text = svg(sketch.finished(0), "x");
    EXPECT_TRUE(holds(text, "rotate(-90 "));
    EXPECT_TRUE(holds(text, "text-anchor=\"middle\""));
    EXPECT_TRUE(holds(text, "font-size=\"3.429355\"")); // 2.5 / 0.729
}

TEST(Svg, OfNothingIsStillADocument) {
    const std::string text = svg({}, "");
    EXPECT_EQ(firstUnclosed(text), "");
    EXPECT_TRUE(holds(text, "width=\"0mm\""));
    EXPECT_EQ(text.back(), '\n');
}

TEST(Svg, OfRandomCasesIsWellFormedAndTheSameEveryTime) {
    const Catalogue catalogue = testing::smallCatalogue();
    for (std::uint64_t seed = 1; seed <= 8; ++seed) {
        const Project project = testing::randomProject(seed);
        const auto plan = makePlan(project, catalogue);
        ASSERT_TRUE(plan.ok()) << plan.error().sentence();
        ElevationOptions options;
        options.style = project.style;
        const std::string once = svg(elevation(project, plan.value(), options), project.title);
        EXPECT_EQ(firstUnclosed(once), "");
        EXPECT_EQ(once.find('\r'), std::string::npos);
        EXPECT_EQ(once.back(), '\n');
        const auto again = makePlan(project, catalogue);
        EXPECT_EQ(once, svg(elevation(project, again.value(), options), project.title));
    }
}

} // namespace
} // namespace frontwright
