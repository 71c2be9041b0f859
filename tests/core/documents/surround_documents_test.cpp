// How a document says what stands round a case and where its panels are bored.

#include "core/documents/document.h"
#include "tests/core/plan/round_case.h"

#include <gtest/gtest.h>

namespace frontwright::testing {
namespace {

bool says(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

TEST(ADocument, SaysWhatStandsRoundTheCase) {
    const std::string text = writeDocument(roundedWith(framelessBanks()));
    EXPECT_TRUE(says(text, "\"construction\": \"frameless\""));
    EXPECT_TRUE(says(text, "\"kind\": \"wall\""));
    EXPECT_TRUE(says(text, "\"kind\": \"overhanging-top\""));
    EXPECT_TRUE(says(text, "\"systemHoles\""));
    const auto read = readDocument(text);
    ASSERT_TRUE(read.ok()) << read.error().sentence();
    EXPECT_EQ(kindOf(read.value().casework.surroundings.top), SurroundKind::OverhangingTop);
    EXPECT_EQ(read.value().casework.systemHoles->pitch.length, mm(32));
    EXPECT_EQ(writeDocument(read.value()), text);
}

TEST(ADocument, WithoutThemDoesNotNameThem) {
    const std::string text = writeDocument(bank(2));
    EXPECT_FALSE(says(text, "surroundings"));
    EXPECT_FALSE(says(text, "systemHoles"));
}

TEST(ADocument, RefusesWhatCannotStandThere) {
    std::string text = writeDocument(roundedWith(framelessBanks()));
    const auto at = text.find("overhanging-top");
    text.replace(at, std::string("overhanging-top").size(), "legs");
    const auto read = readDocument(text);
    ASSERT_FALSE(read.ok());
}

} // namespace
} // namespace frontwright::testing
