#include "core/results/result.h"

#include <gtest/gtest.h>

#include <memory>

namespace frontwright {
namespace {

TEST(Error, ReadsAsOneSentenceWithPlaceAndRemedy) {
    const Error error{text("position 5"), text("expected a number, found \"x\""),
                      text("write a number there")};
    EXPECT_EQ(error.sentence(), "position 5: expected a number, found \"x\"; write a number there");
}

TEST(Error, LeavesOutWhatIsEmpty) {
    EXPECT_EQ((Error{Phrase(), text("no room"), Phrase()}).sentence(), "no room");
    EXPECT_EQ((Error{text("case"), text("no room"), Phrase()}).sentence(), "case: no room");
    EXPECT_EQ((Error{Phrase(), text("no room"), text("widen the case")}).sentence(),
              "no room; widen the case");
}

TEST(Result, HoldsItsValue) {
    const Result<int> result = 7;
    ASSERT_TRUE(result.ok());
    EXPECT_EQ(result.value(), 7);
}

TEST(Result, HoldsItsError) {
    const Result<int> result = Error{text("line 1"), text("no number"), Phrase()};
    ASSERT_FALSE(result.ok());
    EXPECT_EQ(result.error().place, "line 1");
}

TEST(Result, GivesUpAValueThatCannotBeCopied) {
    Result<std::unique_ptr<int>> result = std::make_unique<int>(3);
    const std::unique_ptr<int> taken = std::move(result).value();
    EXPECT_EQ(*taken, 3);
}

} // namespace
} // namespace frontwright
