#include "core/sheets/sheets.h"
#include "tests/core/plan/board_case.h"
#include "tests/core/plan/planned.h"

#include <gtest/gtest.h>

namespace frontwright::testing {
namespace {

std::vector<Template> keepersOf(const Planned& desk) {
    std::vector<Template> keepers;
    for (Template& part : templates(desk.project, desk.plan, {Unit::Inch, 16}))
        if (part.kind == TemplateKind::KeeperStrip)
            keepers.push_back(std::move(part));
    return keepers;
}

Project withFastener(Side side) {
    return withOpenings(boardOverDrawer(), [&](Opening& opening, std::size_t) {
        if (opening.board)
            opening.board->keeper.fasteners = {{side, Length::inches(8), Length::inches(1)}};
    });
}

bool tells(const Template& part, const std::string& sentence) {
    for (const Phrase& parameter : part.parameters)
        if (parameter.english() == sentence)
            return true;
    return false;
}

TEST(KeeperTemplates, ServeBothSidesWhereTheyAreAlike) {
    const auto keepers = keepersOf(Planned(boardOverDrawer()));
    ASSERT_EQ(keepers.size(), 1U);
    EXPECT_EQ(keepers[0].title.english(), "Keeper strips of board A1");
    // 20 in behind the frame, 3/4 in high
    EXPECT_NEAR(keepers[0].part.sizes().x(), 508, 1e-6);
    EXPECT_NEAR(keepers[0].part.sizes().y(), 19.05, 1e-6);
}

TEST(KeeperTemplates, AreTwoWhereAFastenerInterruptsOneSide) {
    const auto keepers = keepersOf(Planned(withFastener(Side::Right)));
    ASSERT_EQ(keepers.size(), 2U);
    EXPECT_EQ(keepers[0].title.english(), "Keeper strip of board A1, left");
    EXPECT_EQ(keepers[1].title.english(), "Keeper strip of board A1, right");
}

TEST(KeeperTemplates, NameEachPieceAndItsDrillAtItsFirstScrew) {
    // The strip runs from 3/4 to 20 3/4; free are 1/2 in and 1/8 in on both sides of the fastener's
    // middle at 8: pieces of 7 3/8 - 3/4 and 20 3/4 - 8 5/8. The tests' screw clears in 3/16 in.
    const auto keepers = keepersOf(Planned(withFastener(Side::Left)));
    std::vector<std::vector<std::string>> words;
    for (const TemplateLabel& label : keepers[0].labels)
        if (!label.lines.empty())
            words.push_back(label.lines);
    const std::vector<std::vector<std::string>> expected{
        {"piece 1: 6 5/8 in", "drill Ø3/16 in, through", "head sunk 1/8 in"},
        {"piece 2: 12 1/8 in", "drill Ø3/16 in, through", "head sunk 1/8 in"}};
    EXPECT_EQ(words, expected);
}

TEST(KeeperTemplates, ListWhatIsCut) {
    // From 3/4 to 7 3/8 is 6 5/8: screws 1 in from the ends and, 4 5/8 apart, one between
    const auto keepers = keepersOf(Planned(withFastener(Side::Left)));
    EXPECT_TRUE(tells(keepers[0],
                     "Keeper piece 1: 6 5/8 in long, begins 3/4 in behind the frame's face; screws "
                     "1 in, 3 5/16 in and 5 5/8 in from its front end."));
    EXPECT_TRUE(tells(keepers[0], "Runner: 20 in long, 3/4 in high."));
    EXPECT_TRUE(tells(keepers[0], "Furring: 20 in long, 23/32 in thick."))
        << keepers[0].parameters[3].english();
    EXPECT_TRUE(tells(keepers[0], "Board: 17 7/8 in wide, 20 1/4 in deep, 3/4 in thick."));
    EXPECT_TRUE(tells(keepers[1], "Keeper piece 1: 20 in long, begins 3/4 in behind the frame's "
                                 "face; screws 1 in, ≈ 4 19/32 in, ≈ 8 13/64 in, "
                                 "≈ 11 51/64 in, ≈ 15 13/32 in and 19 in from its front end."))
        << keepers[1].parameters[0].english();
}

TEST(KeeperTemplates, LieOnPages) {
    const Planned desk(withFastener(Side::Left));
    const auto keepers = keepersOf(desk);
    SheetOptions options;
    options.paper = paperNamed("A4").value();
    const auto laid = pages(desk.project, desk.plan, keepers, options);
    ASSERT_TRUE(laid.ok()) << laid.error().sentence().english();
    EXPECT_GE(laid.value().size(), 2U);
}

TEST(KeeperTemplates, AreNotThereWithoutABoard) {
    EXPECT_TRUE(keepersOf(Planned(bank(2))).empty());
}

} // namespace
} // namespace frontwright::testing
