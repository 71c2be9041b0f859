#include "core/edits/divisions.h"
#include "core/edits/member_width.h"
#include "tests/core/edits/edited.h"
#include "tests/core/plan/frameless_case.h"

#include <gtest/gtest.h>

namespace frontwright::testing {
namespace {

Length usual(const Project& project, Direction direction) {
    const Planned planned(project);
    return usualMemberWidth(planned.project, planned.plan, direction);
}

TEST(ANewMember, IsAsWideAsTheFirstOfItsKind) {
    const Project project = banks(2, 2); // rails 1 1/4 in, stiles 2 in
    EXPECT_EQ(usual(project, Direction::Rows), Length::inches(1, 16));
    EXPECT_EQ(usual(project, Direction::Columns), Length::inches(2));
}

TEST(ANewMember, IsAsWideAsWhatTheCaseHasElse) {
    EXPECT_EQ(usual(bank(2), Direction::Columns), Length::inches(1, 16)) << "its rails";
    EXPECT_EQ(usual(bank(1), Direction::Columns), Length::inches(1, 32)) << "its frame";
}

TEST(ANewMember, IsNoShelfBetweenDrawersOfAFramelessCase) {
    Project one = framelessWith(opening(), mm(600), mm(700));
    EXPECT_EQ(usual(one, Direction::Rows), Length{});
    EXPECT_EQ(usual(one, Direction::Columns), mm(18)) << "a divider is as thick as the sides";
    const Project shelved =
        edited(splitOpening(one, openingAt(one, 0), Direction::Rows, 2, mm(16)));
    EXPECT_EQ(usual(shelved, Direction::Rows), mm(16)) << "until there is one";
}

} // namespace
} // namespace frontwright::testing
