#include "core/documents/writing.h"

#include "core/documents/front_forms.h"

#include <gtest/gtest.h>

using namespace frontwright;
using namespace frontwright::documents;

namespace {

template<class T>
std::string json(const T& value, Unit unit = Unit::Inch) {
    std::string text;
    const Presets none;
    const WriteState state{unit, none};
    writeValue(Target{text, state, nullptr, nullptr}, value);
    return text;
}

WrittenLength inch(std::int64_t whole) {
    return {Length::inches(whole), Notation::InchFraction};
}

} // namespace

TEST(Writing, ALengthIsAsItWasWrittenWhateverTheUnit) {
    for (const Unit unit : {Unit::Inch, Unit::Millimetre}) {
        EXPECT_EQ(json(inch(12), unit), "\"12 in\"");
        EXPECT_EQ(json(WrittenLength(Length::millimetres(321), Notation::Centimetre), unit),
                  "\"32.1 cm\"");
    }
}

TEST(Writing, AComputedLengthIsInTheDocumentsUnitWhereThatIsExact) {
    EXPECT_EQ(json(Length::inches(1)), "\"1 in\"");
    EXPECT_EQ(json(Length::inches(1), Unit::Millimetre), "\"25.4 mm\"");
    EXPECT_EQ(json(Length::millimetres(3)), "\"3 mm\"");
}

TEST(Writing, SidesAreAllWhereTheyAreAlike) {
    EXPECT_EQ(json(PerSide<WrittenLength>::all(inch(1))), R"({"all":"1 in"})");
    EXPECT_EQ(json(PerSide<WrittenLength>{inch(1), inch(1), inch(1), inch(2)}),
              R"({"left":"1 in","right":"1 in","bottom":"1 in","top":"2 in"})");
    // One inch and 25.4 mm are the same length, but not the same writing.
    const WrittenLength metric(Length::inches(1), Notation::Millimetre);
    EXPECT_EQ(json(PerSide<WrittenLength>{inch(1), inch(1), inch(1), metric}),
              R"({"left":"1 in","right":"1 in","bottom":"1 in","top":"25.4 mm"})");
}

TEST(Writing, AnOpeningsSidesAreThoseItHas) {
    PerSide<Rare<SideFit>> sides;
    EXPECT_EQ(json(sides), "{}");
    sides.bottom = SideFit{Fit::Gap, inch(1)};
    EXPECT_EQ(json(sides), R"({"bottom":"gap 1 in"})");
    sides = PerSide<Rare<SideFit>>::all(sides.bottom);
    EXPECT_EQ(json(sides), R"({"all":"gap 1 in"})");
}

TEST(Writing, ProfiledSidesAreAList) {
    EXPECT_EQ(json(PerSide<bool>::all(false)), "[]");
    EXPECT_EQ(json(PerSide<bool>{true, false, false, true}), R"(["left","top"])");
}

TEST(Writing, ASquareProfileSaysNoMore) {
    EXPECT_EQ(json(Profile{}), R"({"family":"square"})");
    // What it would ignore is still the maker's.
    EXPECT_EQ(json(Profile{ProfileFamily::Square, inch(1), {}, {}, PerSide<bool>::all(true)}),
              R"({"family":"square","width":"1 in"})");
}

TEST(Writing, AProfileSaysWhatItsFamilyNeeds) {
    EXPECT_EQ(json(Profile{ProfileFamily::Raised, inch(2), inch(1), {}, PerSide<bool>::all(true)}),
              R"({"family":"raised","width":"2 in","depth":"1 in","step":"0 in"})");
}

TEST(Writing, HardwareLeavesOutWhatIsNotDecided) {
    EXPECT_EQ(json(HardwareSpec{}),
              R"({"form":"","placing":"centred-on-front","way":"through-wall"})");
    HardwareSpec h;
    h.form = "knob-32";
    h.placing = Placing::FromTop;
    h.distance = inch(2);
    h.twoPast = inch(30);
    h.twoAtPercent = 20;
    EXPECT_EQ(json(h), R"({"form":"knob-32","placing":"from-top","distance":"2 in",)"
                       R"("twoPast":"30 in","twoAtPercent":20,"way":"through-wall"})");
}

TEST(Writing, KeptMembersGoBackIntoTheirObjects) {
    const Unknowns kept{{"inner/later", "1"}, {"a~1b", "[2]"}, {"other/later", "3"}};
    std::string text;
    const Presets none;
    const WriteState state{Unit::Inch, none};
    Writing outer({text, state, &kept, nullptr});
    const Level level{nullptr, "inner"};
    Writing inner(outer.begin("inner", &level));
    inner.required("known", std::int64_t{0});
    inner.finish();
    outer.finish();
    EXPECT_EQ(text, R"({"inner":{"known":0,"later":1},"a/b":[2]})");
}

TEST(Writing, ADefaultIsWrittenWhereSomethingIsKeptBelowIt) {
    const Unknowns kept{{"placed/x", "1"}};
    std::string text;
    const Presets none;
    const WriteState state{Unit::Inch, none};
    Writing object({text, state, &kept, nullptr});
    object.defaulted("name", std::string(), std::string());
    object.defaulted("placed", std::vector<WallPoint>{}, {});
    object.finish();
    EXPECT_EQ(text, R"({"placed":[]})");
}
