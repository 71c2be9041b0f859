#include "core/reports/json_writer.h"

#include <gtest/gtest.h>

using namespace frontwright;

namespace {

std::string millimetres(Length length) {
    JsonWriter json;
    json.millimetres(length);
    return json.finish();
}

std::string asText(std::string_view value) {
    JsonWriter json;
    json.text(value);
    return json.finish();
}

} // namespace

TEST(JsonWriter, IndentsByTwoAndEndsWithANewline) {
    JsonWriter json;
    json.beginObject();
    json.key("b");
    json.number(-3);
    json.key("a");
    json.beginArray();
    json.text("x");
    json.beginObject();
    json.endObject();
    json.endArray();
    json.endObject();
    EXPECT_EQ(json.finish(), "{\n  \"b\": -3,\n  \"a\": [\n    \"x\",\n    {}\n  ]\n}\n");
}

TEST(JsonWriter, WritesMillimetresExactly) {
    EXPECT_EQ(millimetres(Length::millimetres(320)), "320\n");
    EXPECT_EQ(millimetres(Length()), "0\n");
    // 1 in = 25.4 mm and 1/64 in = 0.396875 mm, by definition of the inch.
    EXPECT_EQ(millimetres(Length::inches(1)), "25.4\n");
    EXPECT_EQ(millimetres(Length::fromSixtyFourths(1)), "0.396875\n");
    EXPECT_EQ(millimetres(Length::inches(12, 40)), "320.675\n");
    EXPECT_EQ(millimetres(Length::fromNanometres(1)), "0.000001\n");
    EXPECT_EQ(millimetres(Length::fromNanometres(10'000'010)), "10.00001\n");
}

TEST(JsonWriter, WritesNegativeMillimetresWithOneSign) {
    EXPECT_EQ(millimetres(-Length::fromSixtyFourths(1)), "-0.396875\n");
    EXPECT_EQ(millimetres(Length::millimetres(-7)), "-7\n");
    EXPECT_EQ(millimetres(Length::fromMicrometres(-1'500)), "-1.5\n");
}

TEST(JsonWriter, LosesNoNanometreOfALongLength) {
    // 9 007 199 254 740 993 = 2^53 + 1 has no double.
    EXPECT_EQ(millimetres(Length::fromNanometres(9'007'199'254'740'993)), "9007199254.740993\n");
}

TEST(JsonWriter, EscapesWhatJsonForbidsAndKeepsTheRest) {
    EXPECT_EQ(asText("a \"b\" \\ c\n"), "\"a \\\"b\\\" \\\\ c\\n\"\n");
    EXPECT_EQ(asText(std::string_view("\x01", 1)), "\"\\u0001\"\n");
    EXPECT_EQ(asText("≈ 3/64 in − 1"), "\"≈ 3/64 in − 1\"\n");
    EXPECT_EQ(asText(""), "\"\"\n");
}
