#include "core/edits/banks.h"

#include "core/edits/presets.h"
#include "tests/core/edits/edited.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using namespace frontwright::testing;

/// A graduated bank of three on the left, two plain openings beside it: 10 in wide each.
Project oneDivided() {
    return rowOf({share(graduated(
                      rows({place(opening({}, "top")), place(opening()), place(opening())}, in(1)),
                      ArithmeticRun{in(1)})),
                  share(opening()), share(opening())},
                 in(32));
}

std::vector<OpeningId> openingsFrom(const Project& project, std::size_t first, std::size_t last) {
    std::vector<OpeningId> ids;
    for (std::size_t i = first; i <= last; ++i)
        ids.push_back(openingAt(project, i));
    return ids;
}

TEST(DivisionsOfABank, ArePastedIntoSeveralOpeningsAtOnce) {
    const Project project = oneDivided();
    const auto divisions = bankDivisions(project, openingAt(project, 1));
    ASSERT_TRUE(divisions.ok());
    const Project after =
        edited(pasteDivisions(project, divisions.value(), openingsFrom(project, 3, 4)));
    const Sizes sizes = heights(after);
    // 27 in inside, two rails: 25 in; a step of 1 in about 8 1/3 in, on the grid of 1/16 in.
    ASSERT_EQ(sizes.size(), 9U);
    for (std::size_t i = 0; i < 9; ++i)
        EXPECT_EQ(sizes[i], sizes[i % 3]) << i;
    EXPECT_EQ(sizes[1] - sizes[0], in(1));
    EXPECT_EQ(findOpening(after, openingAt(after, 6))->name, "top");
    EXPECT_NE(openingAt(after, 0), openingAt(after, 3));
}

TEST(DivisionsOfABank, ReplaceABankWhoseOpeningsAreAllNamed) {
    Project project = oneDivided();
    const auto divisions = bankDivisions(project, openingAt(project, 0));
    project = edited(splitOpening(project, openingAt(project, 3), Direction::Rows, 2, in(1)));
    const Project whole =
        edited(pasteDivisions(project, divisions.value(), openingsFrom(project, 3, 4)));
    EXPECT_EQ(heights(whole).size(), 7U) << "3 + 3 + 1";
    const Project part =
        edited(pasteDivisions(project, divisions.value(), openingsFrom(project, 4, 4)));
    EXPECT_EQ(heights(part).size(), 8U) << "3 + (1 + 3) + 1";
}

TEST(DivisionsOfABank, OntoItselfAreTheSameBankAgain) {
    const Project project = oneDivided();
    const auto divisions = bankDivisions(project, openingAt(project, 0));
    const Project after =
        edited(pasteDivisions(project, divisions.value(), openingsFrom(project, 0, 2)));
    EXPECT_EQ(heights(after), heights(project));
    EXPECT_EQ(widths(after), widths(project));
}

TEST(DivisionsOfABank, StayAsTheyWereCopied) {
    Project project = oneDivided();
    const auto divisions = bankDivisions(project, openingAt(project, 0));
    project = edited(joinOpenings(project, openingsFrom(project, 0, 1)));
    const Project after =
        edited(pasteDivisions(project, divisions.value(), openingsFrom(project, 2, 2)));
    EXPECT_EQ(heights(after).size(), 6U) << "2 + 3 + 1";
}

TEST(DivisionsOfABank, DropNamesOfPresetsThatAreGone) {
    Project project = oneDivided();
    project = edited(keepAsPreset(project, {openingAt(project, 0)}, PresetKind::Box, "Deep"));
    const auto divisions = bankDivisions(project, openingAt(project, 0));
    const auto pastedOrigin = [&](const Project& into) {
        const Project after =
            edited(pasteDivisions(into, divisions.value(), openingsFrom(into, 3, 3)));
        return originOf(after, {openingAt(after, 3)}, PresetKind::Box);
    };
    EXPECT_EQ(pastedOrigin(project), (PresetOrigin{Origin::Preset, "Deep"}));
    EXPECT_EQ(pastedOrigin(edited(removePreset(project, PresetKind::Box, "Deep"))),
              (PresetOrigin{Origin::Own, ""}));
}

TEST(DivisionsOfABank, AreRefusedWhereThereAreNoneOrNoRoom) {
    const Project project = oneDivided();
    const auto none = bankDivisions(project, openingAt(project, 3));
    ASSERT_FALSE(none.ok());
    EXPECT_EQ(none.error().sentence(),
              "the opening does not stand in a bank; choose one between rails");
    const Project low = bankOf({fixed(in(20), opening()), share(opening())}, in(30));
    const auto tall = bankDivisions(low, openingAt(low, 0));
    EXPECT_FALSE(pasteDivisions(low, tall.value(), openingsFrom(low, 1, 1)).ok())
        << "20 in do not go into 9 in";
    const std::vector<OpeningId> lost{OpeningId{99}};
    EXPECT_FALSE(pasteDivisions(low, tall.value(), lost).ok());
}

TEST(ABank, IsRepeatedSideBySideInItsPlace) {
    const Project project = bankOf({fixed(in(4), opening({}, "pens")), share(opening())}, in(20));
    const Project after = edited(repeatBank(project, openingAt(project, 1), 3, in(1, 32)));
    // 27 in inside less two stiles of 1 1/2 in: 8 in for each bank.
    EXPECT_EQ(widths(after), Sizes(6, in(8)));
    EXPECT_EQ(heights(after), (Sizes{in(4), in(15), in(4), in(15), in(4), in(15)}));
    EXPECT_EQ(openingAt(after, 0), openingAt(project, 0)) << "the first keeps its ids";
    EXPECT_EQ(findOpening(after, openingAt(after, 4))->name, "pens");
}

TEST(ABank, IsRepeatedBesideOthersThatKeepTheirSizes) {
    const Project project = oneDivided();
    const Project after = edited(repeatBank(project, openingAt(project, 2), 2, in(1)));
    const Sizes sizes = widths(after);
    ASSERT_EQ(sizes.size(), 8U);
    EXPECT_EQ(sizes[0] + in(1) + sizes[3], widths(project)[0]);
    EXPECT_EQ(sizes[6], widths(project)[3]);
    EXPECT_EQ(sizes[7], widths(project)[4]);
}

TEST(ABank, IsNotRepeatedWhereThereIsNoneOrNoRoom) {
    const Project project = oneDivided();
    EXPECT_FALSE(repeatBank(project, openingAt(project, 3), 2, in(1)).ok());
    EXPECT_FALSE(repeatBank(project, openingAt(project, 0), 1, in(1)).ok());
    EXPECT_FALSE(repeatBank(project, openingAt(project, 0), 12, in(1)).ok());
}

TEST(RepeatedBanks, LayOutWithDistinctIds) {
    std::size_t done = 0;
    for (std::uint64_t seed = 1; seed <= 100; ++seed) {
        Dice dice(seed);
        const Project project = anyProject(seed);
        const auto last = static_cast<std::int64_t>(layoutOf(project).openings.size()) - 1;
        const OpeningId id = openingAt(project, static_cast<std::size_t>(dice.between(0, last)));
        const auto after = repeatBank(project, id, 2, in(1));
        if (!after.ok())
            continue;
        ++done;
        std::vector<std::int32_t> ids;
        for (const PlacedOpening& opening : layoutOf(after.value()).openings)
            ids.push_back(opening.id.number);
        for (const PlacedMember& member : layoutOf(after.value()).members)
            ids.push_back(member.id.number);
        std::ranges::sort(ids);
        ASSERT_EQ(std::ranges::adjacent_find(ids), ids.end()) << seed;
        ASSERT_LT(ids.back(), after.value().nextId) << seed;
    }
    EXPECT_GT(done, 30U);
}

} // namespace
} // namespace frontwright
