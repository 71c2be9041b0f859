#include "core/documents/json_layout.h"

#include <gtest/gtest.h>

using frontwright::documents::layOutJson;

TEST(JsonLayout, PutsPlainValuesOnOneLine) {
    EXPECT_EQ(layOutJson(R"({"a":1,"b":"x"})"), "{ \"a\": 1, \"b\": \"x\" }\n");
    EXPECT_EQ(layOutJson(R"([["1 in","2 in"],[]])"), "[[\"1 in\", \"2 in\"], []]\n");
    EXPECT_EQ(layOutJson(" {  } "), "{}\n");
    EXPECT_EQ(layOutJson("null"), "null\n");
}

TEST(JsonLayout, GivesObjectsWithinALineEach) {
    EXPECT_EQ(layOutJson(R"({"rows":[{"share":1},{"share":2}],"n":[]})"), "{\n"
                                                                          "  \"rows\": [\n"
                                                                          "    { \"share\": 1 },\n"
                                                                          "    { \"share\": 2 }\n"
                                                                          "  ],\n"
                                                                          "  \"n\": []\n"
                                                                          "}\n");
}

TEST(JsonLayout, BreaksALineOfMoreThanAHundredColumns) {
    const std::string fits(100 - 2 - 1 - 2, 'x'); // less brackets, comma, quotes
    EXPECT_EQ(layOutJson("[\"" + fits + "\"]"), "[\"" + fits + "\"]\n");
    EXPECT_EQ(layOutJson("[\"" + fits + "x\"]"), "[\n  \"" + fits + "x\"\n]\n");
}

TEST(JsonLayout, IsItsOwnLayout) {
    const std::string text = layOutJson(R"({"a":{"b":[{"c":[1,2,{"d":{}}]}]},"e":"f\u00fc\"g"})");
    EXPECT_EQ(layOutJson(text), text);
}
