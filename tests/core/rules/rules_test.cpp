#include "core/rules/rules.h"

#include "core/limits/limits.h"
#include "core/plan/quantity.h"
#include "tests/core/catalogue/program_catalogue.h"
#include "tests/core/words/untold.h"

#include <algorithm>
#include <map>
#include <set>

namespace frontwright {
namespace {

const std::vector<RuleRow>& rules() {
    static const std::vector<RuleRow> all = allRules(testing::programCatalogue());
    return all;
}

const RuleRow* row(const std::string& id) {
    const auto found = std::find_if(rules().begin(), rules().end(),
                                    [&](const RuleRow& rule) { return rule.id == id; });
    return found == rules().end() ? nullptr : &*found;
}

std::ptrdiff_t count(RuleKind kind) {
    return std::count_if(rules().begin(), rules().end(),
                         [kind](const RuleRow& rule) { return rule.kind == kind; });
}

TEST(Rules, SayEachOnceWhatWhereAndFromWhere) {
    std::set<std::string> ids;
    for (const RuleRow& rule : rules()) {
        EXPECT_TRUE(ids.insert(rule.id).second) << rule.id;
        EXPECT_FALSE(rule.rule.empty()) << rule.id;
        EXPECT_FALSE(rule.where.empty()) << rule.id;
        EXPECT_FALSE(rule.source.title.empty()) << rule.id;
    }
    EXPECT_TRUE(std::is_sorted(rules().begin(), rules().end(),
                               [](const RuleRow& a, const RuleRow& b) { return a.kind < b.kind; }));
}

TEST(Rules, TellWhatIsRecalledAsRecalled) {
    for (const RuleRow& rule : rules()) {
        const bool saysSo = rule.source.title.ends_with("from memory");
        if (saysSo && rule.kind == RuleKind::Equation)
            EXPECT_EQ(rule.source.kind, SourceKind::FromMemory) << rule.id;
        if (rule.source.title == "common practice, no source")
            EXPECT_EQ(rule.source.kind, SourceKind::CommonPractice) << rule.id;
    }
}

TEST(Rules, HoldEveryLimit) {
    // Limits is nothing but lengths: were one added, it would have to be listed.
    EXPECT_EQ(count(RuleKind::Limit),
              static_cast<std::ptrdiff_t>(sizeof(Limits) / sizeof(WrittenLength)));
    ASSERT_NE(row("limits.leastTipCover"), nullptr);
    EXPECT_EQ(row("limits.leastTipCover")->value, "1/8 in; in millimetres 3 mm");
    for (const RuleRow& rule : rules())
        if (rule.kind == RuleKind::Limit)
            EXPECT_NE(rule.where, "findings") << rule.id << " has no words of its own";
}

TEST(Rules, HoldEveryDefaultOfANewCase) {
    const std::map<std::string, std::string> some{
        {"fronts.thickness", "3/4 in; in millimetres 19 mm"},
        {"fronts.box.wallThickness", "1/2 in; in millimetres 12 mm"},
        {"fronts.mounting.screw", "wood-screw-8; in millimetres wood-screw-4mm"},
        {"fronts.hardware.twoPast", "24 in; in millimetres 600 mm"},
        {"case.frameThickness", "3/4 in; in millimetres 19 mm"}};
    for (const auto& [id, value] : some) {
        ASSERT_NE(row(id), nullptr) << id;
        EXPECT_EQ(row(id)->value, value) << id;
    }
    EXPECT_GT(count(RuleKind::Default), 25);
}

TEST(Rules, HoldEveryKindOfNumber) {
    for (int i = 0; i <= static_cast<int>(lastQuantityKind); ++i) {
        const std::string id = "number." + std::string(key(static_cast<QuantityKind>(i)));
        EXPECT_NE(row(id), nullptr) << id;
    }
}

TEST(Rules, HoldEveryEntryOfTheCatalogueWithItsSource) {
    const Catalogue catalogue = testing::programCatalogue();
    const auto expect = [](const std::string& kind, const auto& entries) {
        for (const auto& entry : entries) {
            const RuleRow* rule = row(kind + "." + entry.id);
            ASSERT_NE(rule, nullptr) << entry.id;
            EXPECT_EQ(rule->source, entry.source) << entry.id;
        }
    };
    expect("woodScrews", catalogue.woodScrews);
    expect("bolts", catalogue.bolts);
    expect("hardware", catalogue.hardware);
    expect("fittings", catalogue.fittings);
    expect("runners", catalogue.runners);
    for (const Species& wood : catalogue.species)
        EXPECT_NE(row("species." + wood.id), nullptr) << wood.id;
}

TEST(Rules, HoldTheEquationsThatFindingsGoBy) {
    for (const char* id :
         {"screw_withdrawal_ultimate", "screw_withdrawal_design", "pull_test", "lead_hole_dense",
          "lead_hole_medium", "screw_edge", "screw_end", "screw_row", "bolt_engagement",
          "load_household", "anchor_scope", "gravity_basis", "density"})
        EXPECT_NE(row("equation." + std::string(id)), nullptr) << id;
    EXPECT_EQ(row("equation.screw_edge")->source.kind, SourceKind::FromMemory);
}

// BIFMA X5.9 is of storage units, BHMA A156.9 of cabinet hardware; neither's loads were seen, so no
// rule may rest on them. The tip-over rule of 2022 (57 lb, 1.3 ft³) never took effect. ISO 2768's
// class c is printed in two ways: no rule rests on it, nor on the grading thickness 13/16 in of a
// 4/4 board.
TEST(RulesPage, LeavesOutWhatIsNotInForceOrWasNotSeen) {
    const std::string page = rulesPage(testing::programCatalogue());
    for (const char* trap : {"X5.9", "A156.9", "57 lb", "1.3 ft", "2768", "13/16"})
        EXPECT_EQ(page.find(trap), std::string::npos) << trap;
    EXPECT_NE(page.find("16 CFR part 1261 (ASTM F2057-23)"), std::string::npos);
}

// Mend by: frontwright rules > resources/rules.md
TEST(RulesPage, IsTheOneThatComesWithTheProgram) {
    std::ifstream file(FRONTWRIGHT_SOURCE_DIR "/resources/rules.md", std::ios::binary);
    ASSERT_TRUE(file.is_open());
    const std::string bytes((std::istreambuf_iterator<char>(file)),
                            std::istreambuf_iterator<char>());
    EXPECT_TRUE(bytes == rulesPage(testing::programCatalogue()))
        << "write it anew: frontwright rules > resources/rules.md";
}

// Keys of numbers and findings, works, standards, symbols and units are alike in every language.
TEST(Rules, HoldNoWordThatAnotherLanguageCouldNotTell) {
    for (const RuleRow& rule : rules()) {
        const std::set<std::string> alike{"bolt", "UNC", "B", "USC"};
        for (const Phrase& phrase : {rule.rule, rule.value, rule.where})
            EXPECT_EQ(testing::untold(phrase, alike), std::vector<std::string>())
                << rule.id << ": " << phrase;
    }
    EXPECT_FALSE(testing::untold(Phrase(std::string("forgotten word"))).empty());
}

TEST(Rules, WriteFiguresWithTheReadersMark) {
    const auto withComma = allRules(testing::programCatalogue(), DecimalMark::Comma);
    ASSERT_EQ(withComma.size(), rules().size());
    const auto limit = std::find_if(withComma.begin(), withComma.end(), [](const RuleRow& rule) {
        return rule.id == "limits.leastGap";
    });
    ASSERT_NE(limit, withComma.end());
    EXPECT_EQ(limit->value, "1/16 in; in millimetres 1,5 mm");
}

} // namespace
} // namespace frontwright
