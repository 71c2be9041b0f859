#include "core/documents/level.h"

#include <gtest/gtest.h>

using namespace frontwright::documents;

TEST(UnknownKey, IsAJsonPointerBelowTheValueThatKeepsIt) {
    const Level own{nullptr, "own"};
    const Level screw{&own, "no/8~"};
    EXPECT_EQ(unknownKey(nullptr, "future"), "future");
    EXPECT_EQ(unknownKey(&screw, "a/b"), "own/no~18~0/a~1b");
    EXPECT_EQ(keyPrefix(&screw), "own/no~18~0/");
    EXPECT_EQ(keyPrefix(nullptr), "");
}

TEST(UnknownKey, GivesTheNameBack) {
    for (const std::string name : {"", "a", "a/b", "~", "~1", "~01", "a~b/c~~//", "ü"})
        EXPECT_EQ(nameOfKey(unknownKey(nullptr, name)), name);
}
