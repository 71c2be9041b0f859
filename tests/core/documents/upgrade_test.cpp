#include "core/documents/upgrade.h"

#include <gtest/gtest.h>

#include <array>

using namespace frontwright;
using namespace frontwright::documents;

namespace {

// Versions that never were, to try the way from one to the next.
const std::array<UpgradeStep, 3> steps{{
    {{1, 0}, {1, 1}, [](std::string_view t) { return Result<std::string>(std::string(t) + "a"); }},
    {{1, 1}, {2, 0}, [](std::string_view t) { return Result<std::string>(std::string(t) + "b"); }},
    {{2, 2},
     {2, 3},
     [](std::string_view) {
         return Result<std::string>(Error{text("case"), text("is not what it was"), {}});
     }},
}};

} // namespace

TEST(Upgrade, TakesOneStepAfterTheOther) {
    EXPECT_EQ(upgraded("x", {1, 0}, {2, 0}, steps).value(), "xab");
    EXPECT_EQ(upgraded("x", {1, 1}, {2, 0}, steps).value(), "xb");
    EXPECT_EQ(upgraded("x", {2, 0}, {2, 0}, steps).value(), "x");
}

TEST(Upgrade, AMinorVersionWithoutAStepNeedsNone) {
    EXPECT_EQ(upgraded("x", {1, 0}, {2, 1}, steps).value(), "xab");
}

TEST(Upgrade, StopsAtAStepThatFails) {
    EXPECT_EQ(upgraded("x", {2, 2}, {2, 3}, steps).error().sentence(), "case: is not what it was");
}

TEST(Upgrade, AMajorVersionWithoutAWayIsRefusedWithBothVersions) {
    const std::string sentence = upgraded("x", {0, 9}, {2, 0}, steps).error().sentence().english();
    EXPECT_NE(sentence.find("0.9"), std::string::npos);
    EXPECT_NE(sentence.find("2.0"), std::string::npos);
}

TEST(Upgrade, EveryStepOfOursLeadsOn) {
    for (const UpgradeStep& step : caseUpgrades())
        EXPECT_LT(step.from, step.to);
}

TEST(Version, IsTwoWholeNumbers) {
    EXPECT_EQ(versionFrom("1.0"), (Version{1, 0}));
    EXPECT_EQ(versionFrom("12.345"), (Version{12, 345}));
    for (const char* text :
         {"", "1", "1.", ".1", "-1.0", "1.-1", "01.0", "1.0.0", "1.x", "1.1234567"})
        EXPECT_EQ(versionFrom(text), std::nullopt) << text;
    EXPECT_EQ(textOf({1, 0}), "1.0");
}
