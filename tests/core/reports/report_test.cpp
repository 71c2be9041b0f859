#include "core/reports/report.h"

#include "tests/core/plan/planned.h"

#include <gtest/gtest.h>

#include <rapidjson/document.h>

using namespace frontwright;
using namespace frontwright::testing;

namespace {

constexpr LengthStyle inchStyle{Unit::Inch, 16};
constexpr LengthStyle metricStyle{Unit::Millimetre, 16};

rapidjson::Document planOf(const Planned& planned, LengthStyle style = inchStyle) {
    rapidjson::Document document;
    const std::string text = planJson(planned.project, planned.plan, style);
    document.Parse(text.data(), text.size());
    EXPECT_FALSE(document.HasParseError()) << text;
    return document;
}

const rapidjson::Value& item(const rapidjson::Document& plan, const std::string& title) {
    for (const auto& candidate : plan["items"].GetArray())
        if (candidate["title"].GetString() == title)
            return candidate;
    throw std::runtime_error("no item " + title);
}

const rapidjson::Value& number(const rapidjson::Value& of, const std::string& key,
                               unsigned index = 0) {
    for (const auto& candidate : of["numbers"].GetArray())
        if (candidate["key"].GetString() == key &&
            (!candidate.HasMember("index") || candidate["index"].GetUint() == index))
            return candidate;
    throw std::runtime_error("no number " + key);
}

/// One opening 13 in × 6 in, screwed with screws that are level with the show face:
/// 1 1/8 in − (1/2 in − 1/8 in) = 3/4 in, all of the front.
Project screwedThrough() {
    Project project = bank(1);
    project.fronts.mounting.length = Length::inches(1, 8);
    return project;
}

std::string inEnglish(const Project& project, const Plan& plan, const std::vector<Finding>& found,
                      LengthStyle style) {
    return findingsText(project, plan, found, style);
}

std::string findings(const Planned& planned,
                     std::string (*form)(const Project&, const Plan&, const std::vector<Finding>&,
                                         LengthStyle)) {
    return form(planned.project, planned.plan, judge(planned.project, planned.plan), inchStyle);
}

bool contains(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

} // namespace

TEST(PlanJson, BeginsWithFormatVersionAndTheCase) {
    const Planned planned(bank(2));
    // 3 in + 13 in wide; 3 in + 2 × 6 in + 1 1/4 in high: 406.4 mm × 412.75 mm.
    const std::string expected = R"({
  "format": "frontwright-plan",
  "version": "1.2",
  "title": "Small case",
  "items": [
    {
      "kind": "case",
      "title": "Case",
      "numbers": [
        {
          "key": "case_width",
          "name": "Case width",
          "mm": 406.4,
          "shown": "16 in",
          "formula": "as given",
          "figures": "16 in",
          "source": "as the maker decided"
        },
)";
    const std::string text = planJson(planned.project, planned.plan, inchStyle);
    EXPECT_EQ(text.substr(0, expected.size()), expected);
    EXPECT_EQ(text.substr(text.size() - 4), "]\n}\n");
}

TEST(PlanJson, GivesAFrontItsPlacesInMillimetres) {
    const Planned planned(bank(2));
    const auto plan = planOf(planned);
    const auto& front = item(plan, "Front A1");
    EXPECT_STREQ(front["kind"].GetString(), "front");
    // Opening from 1 1/2 in, and from 1 1/2 + 6 + 1 1/4 = 8 3/4 in up; 13 in × 6 in.
    EXPECT_DOUBLE_EQ(front["opening"]["left"].GetDouble(), 38.1);
    EXPECT_DOUBLE_EQ(front["opening"]["bottom"].GetDouble(), 222.25);
    EXPECT_DOUBLE_EQ(front["opening"]["right"].GetDouble(), 368.3);
    EXPECT_DOUBLE_EQ(front["opening"]["top"].GetDouble(), 374.65);
    // 1/4 in further on every side.
    EXPECT_DOUBLE_EQ(front["rect"]["left"].GetDouble(), 31.75);
    EXPECT_DOUBLE_EQ(front["rect"]["bottom"].GetDouble(), 215.9);
    EXPECT_DOUBLE_EQ(front["rect"]["right"].GetDouble(), 374.65);
    EXPECT_DOUBLE_EQ(front["rect"]["top"].GetDouble(), 381.0);
}

TEST(PlanJson, GivesEveryNumberItsFormulaAndFigures) {
    const Planned planned(bank(2));
    const auto plan = planOf(planned);
    const auto& width = number(item(plan, "Front A2"), "front_width");
    EXPECT_DOUBLE_EQ(width["mm"].GetDouble(), 342.9);
    EXPECT_STREQ(width["shown"].GetString(), "13 1/2 in");
    EXPECT_STREQ(width["figures"].GetString(), "13 in + 1/4 in + 1/4 in = 13 1/2 in");
    EXPECT_FALSE(width.HasMember("index"));
    const auto& cover = number(item(plan, "Front A2"), "screw_tip_cover", 2);
    EXPECT_STREQ(cover["which"].GetString(), "screw hole 3");
    EXPECT_STREQ(cover["figures"].GetString(), "3/4 in − 5/8 in = 1/8 in");
    EXPECT_DOUBLE_EQ(cover["mm"].GetDouble(), 3.175);
    EXPECT_STREQ(
        number(item(plan, "Spacer between A2 and A1"), "spacer_width")["shown"].GetString(),
        "3/4 in");
    const auto& stop = item(plan, "Stop, bottom of A2");
    EXPECT_STREQ(number(stop, "stop_from_far_edge")["shown"].GetString(), "1 1/4 in");
    EXPECT_STREQ(number(stop, "stop_from_opening")["shown"].GetString(), "1/4 in");
}

TEST(PlanJson, ShowsInTheStyleAskedForAndKeepsTheMillimetres) {
    const Planned planned(bank(2));
    const auto plan = planOf(planned, metricStyle);
    const auto& width = number(item(plan, "Front A1"), "front_width");
    EXPECT_STREQ(width["shown"].GetString(), "342.9 mm");
    EXPECT_DOUBLE_EQ(width["mm"].GetDouble(), 342.9);
}

TEST(PlanText, ListsEachNumberWithItsFigures) {
    const Planned planned(bank(2));
    const std::string text = planText(planned.project, planned.plan, inchStyle);
    EXPECT_EQ(text.substr(0, 18), "Small case\n\nCase\n ");
    EXPECT_TRUE(contains(text, "\nFront A1\n  Opening width "));
    EXPECT_TRUE(contains(text, "13 in + 1/4 in + 1/4 in = 13 1/2 in\n"));
    EXPECT_TRUE(contains(text, "  Tip cover, screw hole 4 "));
    EXPECT_EQ(text.back(), '\n');
}

TEST(PlanText, PutsAllFiguresIntoOneColumn) {
    const Planned planned(bank(2));
    const std::string text = planText(planned.project, planned.plan, inchStyle);
    std::size_t lines = 0;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t end = text.find('\n', at);
        const std::string line = text.substr(at, end - at);
        at = end + 1;
        if (line.substr(0, 2) != "  ")
            continue;
        // The value stands behind 2 + 53 columns: all names here are ASCII.
        ASSERT_GT(line.size(), 55U) << line;
        EXPECT_EQ(line[54], ' ') << line;
        EXPECT_NE(line[55], ' ') << line;
        ++lines;
    }
    EXPECT_GT(lines, 100U);
}

TEST(PlanText, OfACaseWithoutATitleBeginsWithTheCase) {
    Project project = bank(1);
    project.title.clear();
    const Planned planned(project);
    EXPECT_EQ(planText(planned.project, planned.plan, inchStyle).substr(0, 6), "\nCase\n");
}

TEST(FindingsText, SaysSoWhereThereIsNothing) {
    const Planned planned(bank(1));
    EXPECT_EQ(findingsText(planned.project, planned.plan, {}, inchStyle), "Nothing to heed.\n");
}

TEST(FindingsText, IsOneParagraphEachGravestFirst) {
    const std::string text = findings(Planned(screwedThrough()), inEnglish);
    const std::string first =
        "Would ruin a part: Front A1, screw hole 1\n"
        "  The screw's tip is level with the show face: 1 1/8 in screw, set 1/8 in deep, 1/2 in "
        "wall, 3/4 in front behind the hole.\n"
        "  Why: tip cover = front behind the hole − (screw + recess − wall) = 3/4 in − (1 1/8 in + "
        "1/8 in − 1/2 in) = 0 in; it must be more than 0\n"
        "  Rule: common practice, no source\n"
        "\n"
        "To know: Front A1\n";
    EXPECT_EQ(text.substr(0, first.size()), first);
    EXPECT_FALSE(text.ends_with("\n\n"));
}

TEST(FindingsJson, OfNothingIsAnEmptyList) {
    const Planned planned(bank(1));
    EXPECT_EQ(findingsJson(planned.project, planned.plan, {}, inchStyle),
              "{\n  \"format\": \"frontwright-findings\",\n  \"version\": \"1.0\",\n"
              "  \"title\": \"Small case\",\n  \"findings\": []\n}\n");
}

TEST(FindingsJson, NamesCodeSeverityPlaceAndReason) {
    const std::string expected = R"({
  "format": "frontwright-findings",
  "version": "1.0",
  "title": "Small case",
  "findings": [
    {
      "code": "screw_through_show_face",
      "severity": "ruins",
      "where": "Front A1, screw hole 1",
      "sentence": "The screw's tip is level with the show face: 1 1/8 in screw, set 1/8 in deep, 1/2 in wall, 3/4 in front behind the hole.",
      "reason": "tip cover = front behind the hole − (screw + recess − wall) = 3/4 in − (1 1/8 in + 1/8 in − 1/2 in) = 0 in; it must be more than 0",
      "source": "common practice, no source"
    },
)";
    EXPECT_EQ(findings(Planned(screwedThrough()), findingsJson).substr(0, expected.size()),
              expected);
}

TEST(Reports, OfTheSameCaseAreTheSameBytes) {
    for (std::uint64_t seed = 1; seed <= 10; ++seed) {
        const Planned first(randomProject(seed)), second(randomProject(seed));
        EXPECT_EQ(planJson(first.project, first.plan, inchStyle),
                  planJson(second.project, second.plan, inchStyle));
        EXPECT_EQ(planText(first.project, first.plan, metricStyle),
                  planText(second.project, second.plan, metricStyle));
        EXPECT_EQ(findings(first, findingsJson), findings(second, findingsJson));
        EXPECT_EQ(findings(first, inEnglish), findings(second, inEnglish));
    }
}
