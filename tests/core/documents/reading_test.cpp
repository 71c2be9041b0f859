#include "core/documents/reading.h"

#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

using namespace frontwright;
using namespace frontwright::documents;

namespace {

using frontwright::testing::in;

/// One value read by itself: `value` where that went well, else the message.
template<class T>
struct ReadBack {
    T value{};
    std::string error;
};

template<class T>
ReadBack<T> read(const std::string& json) {
    const Result<JsonTree> tree = JsonTree::read(json);
    if (!tree.ok())
        return {{}, tree.error().sentence().english()};
    ReadState state(tree.value());
    ReadBack<T> back;
    readValue(Place{state, 0, nullptr, nullptr}, back.value);
    if (state.error)
        back.error = state.error->what.english();
    return back;
}

} // namespace

TEST(Reading, ALengthKeepsItsNotation) {
    EXPECT_EQ(read<WrittenLength>("\"12 5/8 in\"").value,
              WrittenLength(in(12, 40), Notation::InchFraction));
    EXPECT_EQ(read<WrittenLength>("\"12.625 in\"").value,
              WrittenLength(in(12, 40), Notation::InchDecimal));
    EXPECT_EQ(read<WrittenLength>("\"1 ft 2 1/2 in\"").value,
              WrittenLength(in(14, 32), Notation::FeetInches));
    EXPECT_EQ(read<WrittenLength>("\"32.1 cm\"").value,
              WrittenLength(Length::millimetres(321), Notation::Centimetre));
}

TEST(Reading, AFractionThatEndsAsADecimalOnlyIsKeptAsOne) {
    EXPECT_EQ(read<WrittenLength>("\"1/10 in\"").value,
              WrittenLength(Length::fromMicrometres(2'540), Notation::InchDecimal));
}

TEST(Reading, ALengthIsNotNegativeButAPointMayBe) {
    EXPECT_EQ(read<WrittenLength>("\"-1 in\"").error,
              "expected a length that is not negative, found \"-1 in\"");
    EXPECT_EQ(read<Length>("\"0 in\"").value, Length{});
    EXPECT_EQ(read<FrontPoint>(R"(["-1 in", "1/2 in"])").value, (FrontPoint{-in(1), in(0, 32)}));
}

TEST(Reading, APointIsTwoLengths) {
    for (const char* json : {"[]", R"(["1 in"])", R"(["1 in", "2 in", "3 in"])", "\"1 in\""})
        EXPECT_NE(read<WallPoint>(json).error.find("expected a point such as"), std::string::npos)
            << json;
    EXPECT_NE(read<WallPoint>(R"(["1 in", 2])").error.find("found 2"), std::string::npos);
}

TEST(Reading, AFitIsAWordAndAnAmount) {
    EXPECT_EQ(read<SideFit>("\"gap 1/8 in\"").value,
              (SideFit{Fit::Gap, {in(0, 8), Notation::InchFraction}}));
    EXPECT_EQ(read<SideFit>("\"inset 2 mm\"").value,
              (SideFit{Fit::Inset, {Length::millimetres(2), Notation::Millimetre}}));
    EXPECT_EQ(read<SideFit>("\"overlay -1 mm\"").value.amount.length, Length::millimetres(-1));
    for (const char* json :
         {"\"\"", "\"gap\"", "\"gap \"", "\"Gap 1 in\"", "\"1 in\"", "1", "null"})
        EXPECT_NE(read<SideFit>(json).error.find("expected a fit such as"), std::string::npos)
            << json;
}

TEST(Reading, SidesAreAllOrEach) {
    const auto all = read<PerSide<WrittenLength>>(R"({"all": "1 in"})");
    EXPECT_EQ(all.value, PerSide<WrittenLength>::all({in(1), Notation::InchFraction}));
    const auto each = read<PerSide<WrittenLength>>(
        R"({"top": "4 in", "left": "1 in", "bottom": "3 in", "right": "2 in"})");
    EXPECT_EQ(each.error, "");
    EXPECT_EQ(each.value.left.length, in(1));
    EXPECT_EQ(each.value.right.length, in(2));
    EXPECT_EQ(each.value.bottom.length, in(3));
    EXPECT_EQ(each.value.top.length, in(4));
    EXPECT_EQ(read<PerSide<WrittenLength>>(R"({"left": "1 in"})").error,
              "expected a member \"right\", found none");
}

TEST(Reading, AnOpeningsSidesMayBeSomeOnly) {
    const auto some = read<PerSide<Rare<SideFit>>>(R"({"top": "gap 1 mm"})");
    EXPECT_EQ(some.error, "");
    EXPECT_TRUE(some.value.top);
    EXPECT_FALSE(some.value.left);
    EXPECT_EQ(read<PerSide<Rare<SideFit>>>("{}").value, PerSide<Rare<SideFit>>{});
}

TEST(Reading, ProfiledSidesAreAList) {
    EXPECT_EQ(read<PerSide<bool>>(R"(["top", "left"])").value,
              (PerSide<bool>{true, false, false, true}));
    EXPECT_EQ(read<PerSide<bool>>("[]").value, PerSide<bool>::all(false));
    EXPECT_NE(read<PerSide<bool>>(R"(["top", "top"])").error, "");
}

TEST(Reading, AWordIsOneOfAFew) {
    EXPECT_EQ(read<Placing>("\"optical-centre\"").value, Placing::OpticalCentre);
    EXPECT_EQ(read<Unit>("\"Mm\"").error, "expected \"in\" or \"mm\", found \"Mm\"");
    EXPECT_EQ(read<Construction>("1").error, "expected \"face-frame\" or \"frameless\", found 1");
}

TEST(Reading, AWholeNumberLiesInItsRange) {
    const auto whole = [](const std::string& json) {
        const Result<JsonTree> tree = JsonTree::read(json);
        ReadState state(tree.value());
        std::int64_t number = -1;
        readWhole({state, 0, nullptr, nullptr}, number, {2, 1000});
        return state.error ? -1 : number;
    };
    EXPECT_EQ(whole("2"), 2);
    EXPECT_EQ(whole("1000"), 1000);
    for (const char* json :
         {"1", "1001", "-2", "2.0", "2e2", "99999999999999999999", "\"2\"", "[2]"})
        EXPECT_EQ(whole(json), -1) << json;
}

TEST(Reading, WhatIsFoundIsShownShortly) {
    const std::string longText = "\"" + std::string(100, 'x') + "\"";
    EXPECT_EQ(read<Unit>(longText).error,
              "expected \"in\" or \"mm\", found \"" + std::string(39, 'x') + "…");
}

TEST(Reading, TheFirstErrorStays) {
    const Result<JsonTree> tree = JsonTree::read(R"(["a", "b"])");
    ReadState state(tree.value());
    Place{state, 1, nullptr, nullptr}.failExpecting(text("x"));
    Place{state, 2, nullptr, nullptr}.failExpecting(text("y"));
    EXPECT_EQ(state.error->sentence(), "line 1, column 2 ([0]): expected x, found \"a\"");
}

TEST(Reading, WhatNobodyAsksForIsKeptInItsOrder) {
    const Result<JsonTree> tree = JsonTree::read(R"({"z": [ 1 ], "known": 1, "a/b": {"c" : 2}})");
    ReadState state(tree.value());
    Unknowns unknowns;
    const Level level{nullptr, "box"};
    Reading object({state, 0, &unknowns, &level});
    EXPECT_NE(object.take("known"), noNode);
    EXPECT_EQ(object.take("known"), noNode);
    EXPECT_EQ(object.take("unheard"), noNode);
    object.finish();
    EXPECT_EQ(unknowns, (Unknowns{{"box/z", "[1]"}, {"box/a~1b", "{\"c\":2}"}}));
}

TEST(Reading, WhatNobodyAsksForIsRefusedWhereNobodyKeepsIt) {
    const Result<JsonTree> tree = JsonTree::read(R"({"slip": 1})");
    ReadState state(tree.value());
    Reading object({state, 0, nullptr, nullptr});
    object.finish();
    EXPECT_EQ(state.error->what, "unknown member \"slip\"");
}
