#include "core/words/phrase.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

static_assert(placesOf("no place, 100 % sure") == 0);
static_assert(placesOf("%1 of %2, again %1") == 2);
static_assert(placesOf("%2 without the first") == -1);

TEST(Phrase, ReadsInEnglishAsItWasWritten) {
    EXPECT_EQ(phrase("Only %1 of wood is left, less than %2", std::string("1/16 in"),
                     std::string("1/8 in"))
                  .english(),
              "Only 1/16 in of wood is left, less than 1/8 in");
    EXPECT_EQ(Phrase(text("Case width")).english(), "Case width");
}

TEST(Phrase, HoldsOtherPhrasesInItsPlaces) {
    const Phrase where = phrase("front %1", std::string("B3"));
    EXPECT_EQ(phrase("%1: %2", where, text("the screw is too long")),
              "front B3: the screw is too long");
}

TEST(Phrase, LeavesWhatTheMakerWroteAsItIs) {
    const std::string name = "100 %1 oak";
    EXPECT_EQ(Phrase(name), name);
    EXPECT_EQ(phrase("front %1", name), "front 100 %1 oak");
}

TEST(Phrase, IsEmptyWithoutWords) {
    EXPECT_TRUE(Phrase().empty());
    EXPECT_TRUE(Phrase(std::string()).empty());
    EXPECT_FALSE(Phrase(text("no handle")).empty());
}

TEST(Phrase, ListsWithAnAndBeforeTheLast) {
    const Phrase a(std::string("A1")), b(std::string("B2")), c(std::string("B3"));
    EXPECT_EQ(listed({}), "");
    EXPECT_EQ(listed({a}), "A1");
    EXPECT_EQ(listed({a, b}), "A1 and B2");
    EXPECT_EQ(listed({a, b, c}), "A1, B2 and B3");
}

TEST(Phrase, JoinsWithASpaceOnlyWhereBothSaySomething) {
    EXPECT_EQ(joined(text("One."), text("Two.")), "One. Two.");
    EXPECT_EQ(joined({}, text("Two.")), "Two.");
    EXPECT_EQ(joined(text("One."), {}), "One.");
}

} // namespace
} // namespace frontwright
