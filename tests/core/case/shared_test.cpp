#include "core/case/shared.h"

#include <gtest/gtest.h>

#include <string>

namespace frontwright {
namespace {

struct Counted {
    std::string text;
    static inline int comparisons = 0;
    friend bool operator==(const Counted& a, const Counted& b) {
        ++comparisons;
        return a.text == b.text;
    }
};

TEST(Shared, HoldsNothingUntilItIsGivenAValue) {
    Shared<std::string> none;
    EXPECT_FALSE(none.has_value());
    EXPECT_EQ(none, Shared<std::string>(std::nullopt));
    EXPECT_EQ(none, Shared<std::string>(std::optional<std::string>()));
    EXPECT_NE(none, Shared<std::string>(std::string("a pull")));
    Shared<std::string> some = std::optional<std::string>("a pull");
    ASSERT_TRUE(some.has_value());
    EXPECT_EQ(*some, "a pull");
    EXPECT_EQ(some->size(), 6U);
    some.reset();
    EXPECT_EQ(some, none);
}

TEST(Shared, ACopyIsTheSameValueInTheSamePlace) {
    const Shared<Counted> one = Counted{"a pull"};
    const Shared<Counted> copy = one, made = Counted{"a pull"}, other = Counted{"a knob"};
    EXPECT_EQ(&*copy, &*one);
    Counted::comparisons = 0;
    EXPECT_TRUE(copy == one);
    EXPECT_EQ(Counted::comparisons, 0);
    EXPECT_TRUE(made == one);
    EXPECT_FALSE(other == one);
    EXPECT_EQ(Counted::comparisons, 2);
}

TEST(Shared, OutlivesWhatItWasCopiedFrom) {
    Shared<std::string> kept;
    {
        const Shared<std::string> made = std::string("a knob of walnut, turned by hand");
        kept = made;
    }
    EXPECT_EQ(*kept, "a knob of walnut, turned by hand");
}

} // namespace
} // namespace frontwright
