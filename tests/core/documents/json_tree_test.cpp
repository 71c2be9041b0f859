#include "core/documents/json_tree.h"

#include <gtest/gtest.h>

using namespace frontwright;
using namespace frontwright::documents;

namespace {

std::string errorOf(std::string_view text, const JsonLimits& limits = {}) {
    const Result<JsonTree> tree = JsonTree::read(text, limits);
    return tree.ok() ? "" : tree.error().sentence().english();
}

} // namespace

TEST(JsonTree, KeepsKindNameTextAndPlaceOfEachValue) {
    const std::string_view text = R"({"a": [1.50, "x\u00fc"], "b\n": {"c": null}, "d": true})";
    const Result<JsonTree> read = JsonTree::read(text);
    ASSERT_TRUE(read.ok()) << read.error().sentence();
    const JsonTree& tree = read.value();
    EXPECT_EQ(tree.kind(0), JsonKind::Object);
    EXPECT_EQ(tree.childCount(0), 3U);
    EXPECT_EQ(tree.raw(0), text);
    EXPECT_EQ(tree.name(1), "a");
    EXPECT_EQ(tree.kind(1), JsonKind::Array);
    EXPECT_EQ(tree.raw(1), R"([1.50, "x\u00fc"])");
    EXPECT_EQ(tree.text(2), "1.50");
    EXPECT_EQ(tree.text(3), "xü");
    EXPECT_EQ(tree.raw(3), R"("x\u00fc")");
    EXPECT_EQ(tree.next(1), 4U);
    EXPECT_EQ(tree.name(4), "b\n");
    EXPECT_EQ(tree.name(5), "c");
    EXPECT_EQ(tree.kind(5), JsonKind::Null);
    EXPECT_EQ(tree.raw(5), "null");
    EXPECT_EQ(tree.kind(6), JsonKind::True);
    EXPECT_EQ(tree.raw(6), "true");
    EXPECT_EQ(tree.next(0), 7U);
}

TEST(JsonTree, PathLeadsThroughNamesAndPlaces) {
    const Result<JsonTree> read =
        JsonTree::read(R"({"case": {"rows": [{}, {"x": [[], [false]]}], "y": 1}})");
    ASSERT_TRUE(read.ok());
    const JsonTree& tree = read.value();
    EXPECT_EQ(tree.pathTo(0), "");
    EXPECT_EQ(tree.pathTo(1), "case");
    EXPECT_EQ(tree.pathTo(3), "case.rows[0]");
    EXPECT_EQ(tree.pathTo(7), "case.rows[1].x[1]");
    EXPECT_EQ(tree.pathTo(8), "case.rows[1].x[1][0]");
    EXPECT_EQ(tree.pathTo(9), "case.y");
    EXPECT_EQ(tree.errorAt(8, text("x")).place, "line 1, column 36 (case.rows[1].x[1][0])");
}

TEST(JsonTree, TakesEverythingThatRfc8259Allows) {
    for (const std::string_view good :
         {"0", "-0", "1e5", "1E+5", "1.25e-3", "\"\"", "[]", "{}", " \t\r\n[ ] ", "\"\\u0000\"",
          "\"\\ud83d\\ude00\"", "\"\x7F\"", R"("\"\\\/\b\f\n\r\t")", "{\"\": 1}",
          "123456789012345678901234567890"})
        EXPECT_EQ(errorOf(good), "") << good;
}

TEST(JsonTree, RefusesWhatRfc8259DoesNotAllow) {
    for (const std::string_view bad : {"",
                                       "-",
                                       "+1",
                                       ".5",
                                       "1.",
                                       "01",
                                       "1e",
                                       "0x10",
                                       "NaN",
                                       "Infinity",
                                       "nul",
                                       "TRUE",
                                       "'a'",
                                       "\"a",
                                       "\"\\x41\"",
                                       "\"\t\"",
                                       "[1,]",
                                       "[,1]",
                                       "[1 2]",
                                       "{1: 2}",
                                       "{\"a\"}",
                                       "{\"a\": }",
                                       "{\"a\": 1,}",
                                       "[",
                                       "{",
                                       "]",
                                       "[1]]",
                                       "1 2",
                                       "/* */ 1",
                                       "1e400",
                                       "\"\\ud800\\u0041\""})
        EXPECT_NE(errorOf(bad), "") << bad;
}

TEST(JsonTree, HoldsToItsLimits) {
    const JsonLimits small{20, 2, 3};
    EXPECT_EQ(errorOf("[[\"abc\"]]", small), "");
    EXPECT_EQ(errorOf("[[[]]]", small),
              "line 1, column 3 ([0]): lists and objects lie more than 2 deep");
    EXPECT_EQ(errorOf("[\"abcd\"]", small), "line 1, column 2: the text is longer than 3 bytes");
    EXPECT_NE(errorOf(std::string(21, ' '), small), "");
}

TEST(JsonTree, CountsAMemberTwiceOnlyWithinOneObject) {
    EXPECT_EQ(errorOf(R"([{"a": {"a": 1}}, {"a": 1}])"), "");
    EXPECT_EQ(errorOf(R"({"a": 1, "b": {}, "a": 2})"),
              "line 1, column 19: the member \"a\" stands twice; take one of them out");
}

TEST(JsonTree, FindsAMemberTwiceAmongManyAndNamesTheSecond) {
    std::string text = "{";
    for (int i = 0; i < 1000; ++i)
        text += "\"m" + std::to_string(i) + "\": 0, ";
    EXPECT_EQ(errorOf(text + "\"last\": 1}"), "");
    const std::string column = std::to_string(text.size() + 1);
    EXPECT_EQ(errorOf(text + "\"m500\": 1}"),
              "line 1, column " + column +
                  ": the member \"m500\" stands twice; take one of them out");
}
