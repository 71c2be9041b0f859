#include "core/plan/quantity.h"
#include "tests/core/plan/planned.h"
#include "tests/core/plan/seasons.h"

#include <gtest/gtest.h>

#include <set>
#include <string>

namespace frontwright {
namespace {

using enum QuantityKind;
using testing::bank;
using testing::oakInAir;
using testing::Planned;

TEST(Subjects, AreWhatAMakerLooksFor) {
    EXPECT_EQ(subjectOf(FrontHeight), Subject::Front);
    EXPECT_EQ(subjectOf(FieldWidth), Subject::Front);
    EXPECT_EQ(subjectOf(GapTop), Subject::Gaps);
    EXPECT_EQ(subjectOf(BoxSetback), Subject::Box);
    EXPECT_EQ(subjectOf(ScrewTipCover), Subject::Screws);
    EXPECT_EQ(subjectOf(HeadBearing), Subject::Screws);
    EXPECT_EQ(subjectOf(ScrewUltimate), Subject::Holding);
    EXPECT_EQ(subjectOf(BoltLength), Subject::Handle);
    EXPECT_EQ(subjectOf(RowDrill), Subject::Season);
    EXPECT_EQ(subjectOf(RunnerRating), Subject::Weight);
    EXPECT_EQ(subjectOf(CaseWeight), Subject::Weight);
    EXPECT_EQ(subjectOf(SpacerWidth), Subject::Blocks);
}

TEST(Subjects, HaveNamesOfTheirOwn) {
    std::set<std::string> names;
    for (int i = 0; i <= static_cast<int>(Subject::Blocks); ++i)
        names.emplace(nameOf(static_cast<Subject>(i)).english);
    EXPECT_EQ(names.size(), static_cast<std::size_t>(Subject::Blocks) + 1);
}

TEST(Subjects, HoldEveryNumberOfAFront) {
    Project project = bank(2);
    oakInAir(project, 8, 6, 12);
    const Planned planned(project);
    std::set<Subject> found;
    for (const Quantity quantity : quantitiesOfFront(planned.plan, 0))
        found.insert(subjectOf(quantity.kind));
    EXPECT_GE(found.size(), 8U);
    EXPECT_FALSE(found.contains(Subject::Case));
    EXPECT_FALSE(found.contains(Subject::Blocks));
}

} // namespace
} // namespace frontwright
