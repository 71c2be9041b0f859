#include "core/documents/decimal.h"

#include <gtest/gtest.h>

using namespace frontwright::documents;

TEST(Millionths, AreReadExactly) {
    EXPECT_EQ(millionthsFrom("1.25"), 1'250'000);
    EXPECT_EQ(millionthsFrom("1"), 1'000'000);
    EXPECT_EQ(millionthsFrom("0.000001"), 1);
    EXPECT_EQ(millionthsFrom("1.100000"), 1'100'000);
    EXPECT_EQ(millionthsFrom("999999999.999999"), 999'999'999'999'999);
}

TEST(Millionths, AreNotGuessed) {
    for (const char* text :
         {"", ".", "1.", ".5", "-1", "1e2", "1.2345678", "1,5", "1.2.3", "x", "1.-5", "1234567890"})
        EXPECT_EQ(millionthsFrom(text), std::nullopt) << text;
}

TEST(Millionths, AreWrittenWithNoMoreDecimalsThanItTakes) {
    EXPECT_EQ(textOfMillionths(1'250'000), "1.25");
    EXPECT_EQ(textOfMillionths(100'000'000), "100");
    EXPECT_EQ(textOfMillionths(10'000), "0.01");
    EXPECT_EQ(textOfMillionths(1), "0.000001");
}

TEST(Millionths, AreReadBackAsTheyWereWritten) {
    for (std::int64_t n = 0; n < 3'000'000; n += 997)
        ASSERT_EQ(millionthsFrom(textOfMillionths(n)), n);
}
