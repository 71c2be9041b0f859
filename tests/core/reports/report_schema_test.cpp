#include "core/documents/document.h"
#include "core/reports/report.h"
#include "tests/core/documents/files.h"
#include "tests/core/plan/planned.h"

#include <rapidjson/document.h>
#include <rapidjson/schema.h>
#include <rapidjson/stringbuffer.h>

#include <set>

using namespace frontwright;
using namespace frontwright::testing;

namespace {

rapidjson::Document parsed(const std::string& text) {
    rapidjson::Document document;
    document.Parse(text.data(), text.size());
    EXPECT_FALSE(document.HasParseError()) << text.substr(0, 200);
    return document;
}

/// One of resources/schema.
class Schema {
public:
    explicit Schema(const std::string& name)
        : m_text(parsed(contentOf(sourceFolder() / "resources/schema" / (name + ".schema.json")))),
          m_schema(m_text) {}

    [[nodiscard]] const rapidjson::Document& text() const { return m_text; }
    /// Empty where the text is valid; else which rule it breaks, and where.
    [[nodiscard]] std::string brokenRule(const std::string& text) const {
        rapidjson::SchemaValidator validator(m_schema);
        if (parsed(text).Accept(validator))
            return {};
        rapidjson::StringBuffer where;
        validator.GetInvalidDocumentPointer().StringifyUriFragment(where);
        return std::string(validator.GetInvalidSchemaKeyword()) + " at " + where.GetString();
    }

private:
    rapidjson::Document m_text;
    rapidjson::SchemaDocument m_schema;
};

Catalogue builtIn() {
    Catalogue all;
    for (const auto& file : filesBelow(sourceFolder() / "resources/catalogue", ".json")) {
        const auto part = readCatalogue(contentOf(file), file.filename().string());
        EXPECT_TRUE(part.ok()) << file;
        if (part.ok())
            all = merged(all, part.value());
    }
    return all;
}

Planned sampleOf(const std::filesystem::path& file) {
    auto project = readDocument(contentOf(file));
    if (!project.ok())
        throw std::runtime_error(project.error().sentence().english());
    const Catalogue all = merged(builtIn(), project.value().own);
    return Planned(std::move(project).value(), all);
}

std::string planOf(const Planned& planned) {
    return planJson(planned.project, planned.plan, planned.project.style);
}
std::string findingsOf(const Planned& planned) {
    return findingsJson(planned.project, planned.plan, judge(planned.project, planned.plan),
                        planned.project.style);
}

std::string replaced(std::string text, const std::string& old, const std::string& by) {
    const std::size_t at = text.find(old);
    EXPECT_NE(at, std::string::npos) << old;
    return at == std::string::npos ? text : text.replace(at, old.size(), by);
}

std::set<std::string> wordsOf(const rapidjson::Value& list) {
    std::set<std::string> words;
    for (const auto& word : list.GetArray())
        words.insert(word.GetString());
    return words;
}

} // namespace

TEST(ReportSchema, AcceptsThePlansAndFindingsOfEverySample) {
    const Schema plan("plan"), findings("findings");
    ASSERT_GE(sampleFiles().size(), 4U);
    for (const auto& file : sampleFiles()) {
        const Planned planned = sampleOf(file);
        EXPECT_EQ(plan.brokenRule(planOf(planned)), "") << file;
        EXPECT_EQ(findings.brokenRule(findingsOf(planned)), "") << file;
    }
}

TEST(ReportSchema, AcceptsCasesByChance) {
    const Schema plan("plan"), findings("findings");
    for (std::uint64_t seed = 1; seed <= 15; ++seed) {
        const Planned planned(randomProject(seed));
        ASSERT_EQ(plan.brokenRule(planOf(planned)), "") << "seed " << seed;
        ASSERT_EQ(findings.brokenRule(findingsOf(planned)), "") << "seed " << seed;
    }
}

TEST(ReportSchema, RefusesWhatNoReportSays) {
    const Schema plan("plan"), findings("findings");
    const Planned planned(bank(2));
    const std::string p = planOf(planned), f = findingsOf(planned);
    for (const auto& [old, by] : std::vector<std::pair<std::string, std::string>>{
             {"frontwright-plan", "frontwright-case"},
             {"\"1.2\"", "\"2.0\""},
             {"\"case_width\"", "\"case_girth\""},
             {"406.4", "\"406.4\""},
             {"\"shown\"", "\"text\""},
             {"\"index\": 0", "\"index\": -1"},
             {"\"kind\": \"front\"", "\"kind\": \"member\""}})
        EXPECT_NE(plan.brokenRule(replaced(p, old, by)), "") << by;
    EXPECT_EQ(findings.brokenRule(replaced(f, "to_know", "grave")).substr(0, 4), "enum");
    EXPECT_NE(findings.brokenRule(replaced(f, "\"where\"", "\"place\"")), "");
    EXPECT_NE(findings.brokenRule(p), "");
    EXPECT_NE(plan.brokenRule(f), "");
}

TEST(ReportSchema, ListsEveryKeyOfANumber) {
    const Schema plan("plan");
    std::set<std::string> keys;
    for (int kind = 0; kind <= static_cast<int>(lastQuantityKind); ++kind)
        keys.insert(std::string(key(static_cast<QuantityKind>(kind))));
    EXPECT_EQ(wordsOf(plan.text()["definitions"]["number"]["properties"]["key"]["enum"]), keys);
}

TEST(ReportSchema, ListsEveryCodeAndSeverityOfAFinding) {
    const Schema findings("findings");
    const auto& members = findings.text()["properties"]["findings"]["items"]["properties"];
    std::set<std::string> codes, severities;
    for (int code = 0; code <= static_cast<int>(lastFindingCode); ++code)
        codes.insert(std::string(key(static_cast<FindingCode>(code))));
    codes.erase(std::string(key(FindingCode::OfBoard)));
    for (std::size_t fault = 0; fault < boardFaultCount; ++fault)
        codes.insert(std::string(key(static_cast<BoardFault>(fault))));
    for (int severity = 0; severity <= static_cast<int>(Severity::ToKnow); ++severity)
        severities.insert(std::string(key(static_cast<Severity>(severity))));
    EXPECT_EQ(wordsOf(members["code"]["enum"]), codes);
    EXPECT_EQ(wordsOf(members["severity"]["enum"]), severities);
}
