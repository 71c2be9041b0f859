#include "core/sheets/sheets.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

TEST(MarksAsJson, NamesEveryPageAndMarkInMillimetres) {
    Page page;
    page.width = 210;
    page.height = 297.5;
    page.label = std::string("Front A2 \u00b7 page 1 of 1");
    page.marks = {{"hole", "Front A2 / hole 1", 10.1234567, -0.0000001}};
    EXPECT_EQ(marksJson(std::vector<Page>{page}), R"({
  "unit": "mm",
  "pages": [
    {
      "number": 1,
      "label": "Front A2 · page 1 of 1",
      "width": 210,
      "height": 297.5,
      "marks": [
        {"kind": "hole", "part": "Front A2 / hole 1", "x": 10.123457, "y": 0}
      ]
    }
  ]
}
)");
}

TEST(MarksAsJson, PagesAreNumberedFromOne) {
    const std::string text = marksJson(std::vector<Page>(2));
    EXPECT_LT(text.find("\"number\": 1"), text.find("\"number\": 2"));
    EXPECT_NE(text.find("\"marks\": []"), std::string::npos);
}

TEST(MarksAsJson, OfNoPagesIsStillJson) {
    EXPECT_EQ(marksJson({}), "{\n  \"unit\": \"mm\",\n  \"pages\": []\n}\n");
}

TEST(MarksAsJson, EscapesWhatAMakerMayName) {
    Page page;
    page.label = std::string("6\" drawer \\ \n");
    const std::string text = marksJson(std::vector<Page>{page});
    EXPECT_NE(text.find(R"("6\" drawer \\ \u000a")"), std::string::npos) << text;
}

} // namespace
} // namespace frontwright
