#include "tests/core/case/laid_out.h"
#include "tests/core/words/untold.h"

#include <gtest/gtest.h>

#include <set>

namespace frontwright {
namespace {

using testing::columns;
using testing::fixed;
using testing::in;
using testing::opening;
using testing::place;
using testing::projectWith;
using testing::rows;
using testing::share;

RegionPtr deep(int levels) {
    RegionPtr region = opening();
    for (int level = 0; level < levels; ++level)
        region = level % 2 == 0 ? rows({fixed(in(0, 4), opening()), share(region)}, in(0, 4))
                                : columns({fixed(in(0, 4), opening()), share(region)}, in(0, 4));
    return region;
}

/// Cases that cannot be laid out, each for a reason of its own.
std::vector<Project> impossibleCases() {
    const auto tight = rows({fixed(in(30), opening()), fixed(in(10), opening())}, in(1));
    const auto loose = rows({fixed(in(2), opening()), fixed(in(1), opening())}, in(1));
    std::vector<Project> cases{
        projectWith(tight, in(36), in(34)),
        projectWith(loose, in(36), in(34)),
        projectWith(columns({share(opening()), share(tight)}, in(1)), in(36), in(34)),
        projectWith(rows({fixed(in(40), opening()), share(opening()), share(opening())}, in(1)),
                    in(36), in(34)),
        projectWith(columns({place(opening()), share(opening())}, in(50)), in(36), in(34)),
        projectWith(columns({share(opening()), share(opening()), share(opening())}, in(50)), in(36),
                    in(34)),
        projectWith(rows({share(opening(), 0), share(opening())}, in(1)), in(36), in(34)),
        projectWith(opening(), in(2), in(34)),
        projectWith(opening(), in(20), in(3)),
        projectWith(deep(deepestDivisions + 1), in(36), in(34)),
    };
    cases.push_back(projectWith(opening(), in(36), in(34)));
    cases.back().casework.frame.top = -in(1);
    cases.push_back(cases.front());
    cases.back().casework.grid = Length::millimetres(1);
    return cases;
}

TEST(ACaseWithoutRoom, IsToldWithNoWordLeftInEnglish) {
    std::set<std::string> sentences;
    for (const Project& project : impossibleCases()) {
        const auto layout = layOut(project.casework);
        ASSERT_FALSE(layout.ok());
        const Phrase sentence = layout.error().sentence();
        EXPECT_EQ(testing::untold(sentence), std::vector<std::string>{}) << sentence;
        sentences.insert(sentence.english());
    }
    EXPECT_EQ(sentences.size(), impossibleCases().size());
}

} // namespace
} // namespace frontwright
