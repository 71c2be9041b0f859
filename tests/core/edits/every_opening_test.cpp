#include "core/edits/every_opening.h"

#include "tests/core/edits/edited.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using namespace frontwright::testing;

TEST(EveryOpening, IsHandedOverOnceInReadingOrder) {
    const Project project = banks(3, 4);
    std::vector<OpeningId> seen;
    const Project same =
        withEveryOpening(project, [&](const Opening& opening) -> std::optional<Opening> {
            seen.push_back(opening.id);
            return std::nullopt;
        });
    ASSERT_EQ(seen.size(), 12U);
    for (std::size_t i = 0; i < seen.size(); ++i)
        EXPECT_EQ(seen[i], openingAt(project, i));
    EXPECT_EQ(same.casework.divisions, project.casework.divisions) << "nothing is copied";
}

TEST(EveryOpening, ThatIsNotChangedStaysShared) {
    const Project project = banks(2, 3);
    const OpeningId changed = openingAt(project, 1);
    const Project after =
        withEveryOpening(project, [&](const Opening& opening) -> std::optional<Opening> {
            if (opening.id != changed)
                return std::nullopt;
            Opening named = opening;
            named.name = "pens";
            named.id = OpeningId{77};
            return named;
        });
    EXPECT_EQ(findOpening(after, changed)->name, "pens") << "ids stay";
    EXPECT_NE(childRegion(after.casework.divisions, 0), childRegion(project.casework.divisions, 0));
    EXPECT_EQ(childRegion(after.casework.divisions, 1), childRegion(project.casework.divisions, 1));
}

TEST(Choices, OfManyOpeningsAreChangedEachOnce) {
    const Project project = banks(2, 3);
    const std::vector<OpeningId> ids{openingAt(project, 4), openingAt(project, 0),
                                     openingAt(project, 4)};
    int calls = 0;
    const Project after = edited(changeChoices(project, ids, [&](FrontChoices& choices) {
        ++calls;
        choices.thickness = in(1);
    }));
    EXPECT_EQ(calls, 2);
    for (std::size_t i = 0; i < 6; ++i)
        EXPECT_EQ(findOpening(after, openingAt(project, i))->choices.thickness.has_value(),
                  i == 0 || i == 4);
}

TEST(Choices, OfAnOpeningThatIsNotThereAreRefused) {
    const std::vector<OpeningId> ids{OpeningId{999}};
    EXPECT_EQ(refusal(changeChoices(bank(2), ids, [](FrontChoices&) {})),
              "there is no such opening in the case");
    EXPECT_EQ(edited(changeChoices(bank(2), {}, [](FrontChoices&) { FAIL(); })), bank(2));
}

} // namespace
} // namespace frontwright
