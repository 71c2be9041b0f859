#include "core/documents/json_text.h"

#include <gtest/gtest.h>

using namespace frontwright::documents;

namespace {

std::string quoted(std::string_view text) {
    std::string json;
    appendQuoted(json, text);
    return json;
}

} // namespace

TEST(LineAndColumn, CountFromOneInCharacters) {
    const std::string_view text = "ab\ncö木x\n\nz";
    EXPECT_EQ(lineAndColumn(text, 0), (LineAndColumn{1, 1}));
    EXPECT_EQ(lineAndColumn(text, 2), (LineAndColumn{1, 3})); // the line's end belongs to the line
    EXPECT_EQ(lineAndColumn(text, 3), (LineAndColumn{2, 1}));
    EXPECT_EQ(lineAndColumn(text, text.find('x')), (LineAndColumn{2, 4}));
    EXPECT_EQ(lineAndColumn(text, text.size()), (LineAndColumn{4, 2}));
}

// The boundaries of RFC 3629, section 4: each first and last sequence, and its neighbours.
TEST(Utf8, IsWhatRfc3629Says) {
    for (const std::string_view good :
         {"", "a", "\x7F", "\xC2\x80", "\xDF\xBF", "\xE0\xA0\x80", "\xED\x9F\xBF", "\xEE\x80\x80",
          "\xEF\xBF\xBF", "\xF0\x90\x80\x80", "\xF4\x8F\xBF\xBF"})
        EXPECT_EQ(firstBadUtf8(good), std::nullopt) << good;
    for (const std::string_view bad :
         {"\x80", "\xBF", "\xC0\x80", "\xC1\xBF", "\xC2", "\xC2\x41", "\xE0\x9F\xBF", "\xE0\xA0",
          "\xED\xA0\x80", "\xED\xBF\xBF", "\xF0\x8F\xBF\xBF", "\xF0\x90\x80", "\xF4\x90\x80\x80",
          "\xF5\x80\x80\x80", "\xFF"})
        EXPECT_EQ(firstBadUtf8(bad), 0U) << bad;
}

TEST(Utf8, ABadByteIsFoundWhereverItStands) {
    for (std::size_t i = 0; i < 40; ++i) {
        std::string text(40, 'x');
        text[i] = '\xFC';
        EXPECT_EQ(firstBadUtf8(text), i);
    }
}

TEST(Quoted, EscapesOnlyWhatMustBe) {
    EXPECT_EQ(quoted("3/4″ \"Größe\" \\"), R"("3/4″ \"Größe\" \\")");
    EXPECT_EQ(quoted("a\n\t\x01\x1F\x7F"), "\"a\\n\\t\\u0001\\u001f\x7F\"");
    EXPECT_EQ(quoted(std::string_view("\0", 1)), "\"\\u0000\"");
}

TEST(Quoted, ReplacesWhatIsNotUtf8) {
    EXPECT_EQ(quoted("a\xFC"
                     "b\xE0"),
              "\"a\xEF\xBF\xBD"
              "b\xEF\xBF\xBD\"");
}

TEST(WithoutWhiteSpace, KeepsTheTextsWhole) {
    EXPECT_EQ(withoutWhiteSpace(" { \"a b\" : [ 1 ,\n\t\"\\\" x\" ] }\r\n"),
              "{\"a b\":[1,\"\\\" x\"]}");
}

TEST(EndOfScalar, IsBehindItsLastByte) {
    EXPECT_EQ(endOfScalar("[\"a\\\\\", 1]", 1), 6U);
    EXPECT_EQ(endOfScalar("[\"a\\\"]\"]", 1), 7U);
    EXPECT_EQ(endOfScalar("[-1.5e3]", 1), 7U);
    EXPECT_EQ(endOfScalar("true", 0), 4U);
}

TEST(CharacterAt, IsShownOrNamed) {
    EXPECT_EQ(characterAt("aö", 1), "'ö'");
    EXPECT_EQ(characterAt("a", 1), "the end of the file");
    EXPECT_EQ(characterAt("a\n", 1), "the end of the line");
    EXPECT_EQ(characterAt("a\x01", 1), "a control character");
}

TEST(Shortened, CutsBetweenCharacters) {
    EXPECT_EQ(shortened("abc", 3), "abc");
    EXPECT_EQ(shortened("abcd", 3), "abc…");
    EXPECT_EQ(shortened("abö", 3), "ab…");
}
