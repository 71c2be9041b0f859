#include "core/documents/document.h"

#include "files.h"
#include "random_project.h"

#include <rapidjson/document.h>
#include <rapidjson/schema.h>
#include <rapidjson/stringbuffer.h>

#include <set>
#include <string>

using namespace frontwright;
using namespace frontwright::testing;

namespace {

class CaseSchema : public ::testing::Test {
protected:
    CaseSchema() : m_schema(parsed(contentOf(schemaFile()))) {}

    static std::filesystem::path schemaFile() {
        return sourceFolder() / "resources/schema/case.schema.json";
    }
    static rapidjson::Document parsed(const std::string& text) {
        rapidjson::Document document;
        document.Parse(text.data(), text.size());
        EXPECT_FALSE(document.HasParseError()) << text;
        return document;
    }
    /// Empty where the text is valid; else which rule it breaks, and where.
    std::string brokenRule(const std::string& text) {
        rapidjson::SchemaValidator validator(m_schema);
        if (parsed(text).Accept(validator))
            return {};
        rapidjson::StringBuffer where;
        validator.GetInvalidDocumentPointer().StringifyUriFragment(where);
        return std::string(validator.GetInvalidSchemaKeyword()) + " at " + where.GetString();
    }
    static std::string soundWith(const std::string& old, const std::string& by) {
        std::string text = contentOf(sourceFolder() / "tests/core/documents/sound.json");
        const std::size_t at = text.find(old);
        EXPECT_NE(at, std::string::npos) << old;
        return text.replace(at, old.size(), by);
    }

private:
    rapidjson::SchemaDocument m_schema;
};

/// Broken in a way that a schema cannot tell: bytes, members twice, what a length's text amounts
/// to, what has to agree with something else.
bool isBeyondASchema(const std::string& name) {
    const std::vector<std::string> names{"byte_order_mark",
                                         "divisions_with_a_size",
                                         "graduated_without_graduation",
                                         "grid_of_nothing",
                                         "handle_from_top_without_distance",
                                         "latin_1_letter_in_title",
                                         "limit_is_negative",
                                         "member_twice",
                                         "member_twice_among_many",
                                         "member_width_negative",
                                         "members_too_few",
                                         "members_too_many",
                                         "name_too_long",
                                         "overlong_utf_8",
                                         "own_species_twice",
                                         "preset_of_another_kind",
                                         "preset_twice",
                                         "preset_unknown",
                                         "profile_step_too_high",
                                         "ratio_of_seven_decimals",
                                         "remainder_out_of_range",
                                         "too_deep",
                                         "unknown_member_twice",
                                         "unknown_number_out_of_range",
                                         "width_is_a_sum",
                                         "width_is_negative",
                                         "width_of_a_third",
                                         "width_of_miles",
                                         "width_of_nothing",
                                         "zero_byte_after_the_end"};
    return std::find(names.begin(), names.end(), name) != names.end();
}

} // namespace

TEST_F(CaseSchema, AcceptsEverySample) {
    for (const auto& file : sampleFiles())
        EXPECT_EQ(brokenRule(contentOf(file)), "") << file;
}

TEST_F(CaseSchema, AcceptsWhateverIsWritten) {
    for (unsigned seed = 1; seed <= 60; ++seed) {
        const std::string text = writeDocument(RandomProject(seed).project());
        ASSERT_EQ(brokenRule(text), "") << "seed " << seed << '\n' << text;
    }
}

TEST_F(CaseSchema, RefusesWhatTheReaderRefuses) {
    int judged = 0;
    for (const auto& file : filesBelow(sourceFolder() / "tests/core/documents/broken", ".json")) {
        const std::string text = contentOf(file);
        rapidjson::Document document;
        document.Parse(text.data(), text.size());
        const bool isJson = !document.HasParseError() && text.find('\\') == std::string::npos;
        if (isJson) {
            EXPECT_EQ(brokenRule(text).empty(), isBeyondASchema(file.stem().string())) << file;
            ++judged;
        }
    }
    EXPECT_GE(judged, 30);
}

TEST_F(CaseSchema, NamesTheRuleAndThePlace) {
    EXPECT_EQ(brokenRule(soundWith("\"share\": 1 }", "\"share\": 0 }")).substr(0, 7), "minimum");
    EXPECT_EQ(brokenRule(soundWith("\"units\": \"in\"", "\"units\": \"ell\"")), "enum at #/units");
    EXPECT_EQ(brokenRule(soundWith("\"depth\": \"18 in\",", "")), "required at #/case");
}

TEST_F(CaseSchema, DescribesEveryMember) {
    const rapidjson::Document schema = parsed(contentOf(schemaFile()));
    const auto& properties = schema["properties"];
    for (const char* name : {"presets", "case", "fronts", "limits", "own"}) {
        ASSERT_TRUE(properties.HasMember(name));
        EXPECT_TRUE(properties[name].HasMember("description")) << name;
        for (const auto& member : properties[name]["properties"].GetObject()) {
            const bool isDescribed =
                member.value.HasMember("description") || member.value.HasMember("$ref");
            EXPECT_TRUE(isDescribed) << name << '.' << member.name.GetString();
        }
    }
}

TEST_F(CaseSchema, ForbidsEveryMemberBesideAPreset) {
    const rapidjson::Document schema = parsed(contentOf(schemaFile()));
    const auto& definitions = schema["definitions"];
    for (const std::string kind : {"profile", "box", "mounting", "hardware"}) {
        std::set<std::string> forbidden;
        for (const auto& rule :
             definitions[(kind + "Decision").c_str()]["anyOf"][0]["not"]["anyOf"].GetArray())
            forbidden.insert(rule["required"][0].GetString());
        std::set<std::string> members{"departsFrom"};
        for (const auto& member : definitions[kind.c_str()]["properties"].GetObject())
            members.insert(member.name.GetString());
        EXPECT_EQ(forbidden, members) << kind;
    }
}
