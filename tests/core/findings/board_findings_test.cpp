#include "core/edits/boards.h"
#include "core/edits/divisions.h"
#include "core/findings/cause.h"
#include "core/reports/report.h"
#include "tests/core/findings/provoking.h"
#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

#include <map>

// A board in a whole case; what each fault comes from is worked in tests/core/boards.
namespace frontwright {
namespace {

using testing::sixteenths;

using namespace frontwright::testing;

constexpr OpeningId theBoard{firstFreeId};

Project deskWith(const std::function<void(BoardSpec&)>& change) {
    return withOpenings(boardOverDrawer(), [&](Opening& opening, std::size_t) {
        if (opening.board)
            change(*opening.board);
    });
}

const Finding* ofFault(const Found& found, BoardFault fault) {
    for (const Finding& finding : found.findings)
        if (finding.fault == fault)
            return &finding;
    return nullptr;
}

/// What provokes each fault in the desk's case, but for what a knot of two fasteners leaves out.
std::map<BoardFault, Project> provokedFaults() {
    using F = BoardFault;
    std::map<F, Project> all;
    const auto add = [&](F fault, const std::function<void(BoardSpec&)>& change) {
        all.emplace(fault, deskWith(change));
    };
    const auto to = [](std::int64_t n) { return WrittenLength(n64(n)); };
    // Furring 46, panel 48, all in 64ths: the tip comes out at 46 − 2 + 48 = 92.
    add(F::BradBlowsOut, [&](BoardSpec& s) { s.bradLength = to(92); });
    add(F::BradTipNear, [&](BoardSpec& s) { s.bradLength = to(85); });
    add(F::BradTooShort, [&](BoardSpec& s) { s.bradLength = to(67); });
    // With the strip of 48 and a recess of 8: 48 + 46 − 8 + 48 = 134.
    add(F::KeeperScrewBlowsOut, [&](BoardSpec& s) { s.keeper.screwLength = to(134); });
    add(F::KeeperScrewTipNear, [&](BoardSpec& s) { s.keeper.screwLength = to(127); });
    add(F::KeeperScrewTooShort, [&](BoardSpec& s) { s.keeper.screwLength = to(109); });
    // The opening is 1 in high, the board 3/4.
    add(F::DoesNotPass, [&](BoardSpec& s) { s.runnerRise = to(17); });
    add(F::DoesNotGoIn, [&](BoardSpec& s) { s.depth = to(20 * 64 + 49); });
    // The gap inside is 4 + 2.
    add(F::KeeperMisses, [&](BoardSpec& s) { s.keeper.width = to(6); });
    add(F::Jams, [&](BoardSpec& s) { s.pullOut = to(12 * 64); });
    add(F::TooFarOut, [&](BoardSpec& s) {
        s.pullOffCentre = to(0);
        s.pullOut = to(20 * 64);
    });
    add(F::FurringThin, [&](BoardSpec& s) { s.keeper.fastening = KeeperFastening::Down; });
    add(F::RunsHard, [&](BoardSpec& s) { s.depth = to(17 * 64); });
    add(F::NoFurring, [&](BoardSpec& s) {
        s.furred = Furred::No;
        s.keeper.width = to(2 * 64);
    });
    add(F::PieceLeftOut, [&](BoardSpec& s) {
        s.keeper.fasteners = {{Side::Left, to(13 * 64), to(64)}, {Side::Left, to(15 * 64), to(64)}};
    });
    return all;
}

TEST(BoardFindings, TellEveryFaultOfABoardWithItsPlace) {
    for (const auto& [fault, project] : provokedFaults()) {
        const Found found(project);
        const Finding* finding = ofFault(found, fault);
        ASSERT_NE(finding, nullptr) << key(fault);
        EXPECT_EQ(finding->code, FindingCode::OfBoard);
        EXPECT_EQ(finding->where.opening, theBoard);
        EXPECT_EQ(key(*finding), key(fault));
        const FindingText text = describe(*finding, found.project, found.plan, sixteenths);
        EXPECT_EQ(text.place.english(), "Pull-out board A1");
        EXPECT_TRUE(text.sentence.english().ends_with('.')) << text.sentence;
        EXPECT_NE(text.reason.english().find("What helps: "), std::string::npos) << text.reason;
        EXPECT_FALSE(numberOf(*finding, found.plan));
    }
}

TEST(BoardFindings, SayNothingOfANewBoard) {
    const Found found(boardOverDrawer());
    EXPECT_FALSE(found.has(FindingCode::OfBoard));
}

TEST(BoardFindings, WeighWhatRuinsAPartMost) {
    for (const auto& [fault, project] : provokedFaults())
        EXPECT_EQ(static_cast<int>(ofFault(Found(project), fault)->severity),
                  static_cast<int>(gravityOf(fault)))
            << key(fault);
}

TEST(BoardFindings, AreCuredByTheRemediesThatTheyOffer) {
    const std::map<BoardFault, std::string> first{
        {BoardFault::BradBlowsOut, "Use brads of 1 1/4 in beside board A1"},
        {BoardFault::BradTipNear, "Use brads of 1 1/4 in beside board A1"},
        {BoardFault::BradTooShort, "Use brads of 1 1/4 in beside board A1"},
        {BoardFault::DoesNotPass, "Let board A1 lie in the middle of its opening's height"},
        {BoardFault::DoesNotGoIn, "Make board A1 20 1/4 in deep"},
        {BoardFault::KeeperMisses, "Make the keeper strips over board A1 19/32 in wide"},
        {BoardFault::Jams, "Stop board A1 at 9 1/16 in"},
        {BoardFault::RunsHard, "Make board A1 20 1/4 in deep"},
        {BoardFault::NoFurring, "Fit furring beside board A1"},
    };
    for (const auto& [fault, project] : provokedFaults()) {
        const Found found(project);
        const auto offered = remedies(*ofFault(found, fault), found.project, found.catalogue,
                                      found.plan, sixteenths);
        if (first.contains(fault)) {
            ASSERT_FALSE(offered.empty()) << key(fault);
            EXPECT_EQ(offered.front().label.english(), first.at(fault));
        }
        for (const Remedy& remedy : offered)
            EXPECT_EQ(ofFault(Found(remedy.apply(found.project).value()), fault), nullptr)
                << remedy.label;
    }
}

TEST(BoardFindings, StopABoardWhereItIsSafe) {
    const Found found(provokedFaults().at(BoardFault::TooFarOut));
    const auto offered = remedies(*ofFault(found, BoardFault::TooFarOut), found.project,
                                  found.catalogue, found.plan, sixteenths);
    ASSERT_EQ(offered.size(), 1U);
    const Project cured = offered[0].apply(found.project).value();
    EXPECT_EQ(findOpening(cured, theBoard)->board->pullOut,
              WrittenLength(found.plan.boards[0].fitted.safe.pullOut));
}

TEST(BoardFindings, AreGoneWithTheirBoard) {
    const Found with(deskWith([](BoardSpec& s) { s.depth = n64(24 * 64); }));
    const Finding* finding = ofFault(with, BoardFault::DoesNotGoIn);
    ASSERT_NE(finding, nullptr);
    const Found without(bank(2));
    const FindingText text = describe(*finding, without.project, without.plan, sixteenths);
    EXPECT_NE(text.sentence.english().find("no longer"), std::string::npos);
    EXPECT_TRUE(
        remedies(*finding, without.project, without.catalogue, without.plan, sixteenths).empty());
    const Found mended(boardOverDrawer());
    EXPECT_NE(describe(*finding, mended.project, mended.plan, sixteenths)
                  .sentence.english()
                  .find("no longer"),
              std::string::npos);
}

TEST(BoardReports, TellABoardsNumbersAfterAllOthers) {
    const Found found(boardOverDrawer());
    const std::string text = planText(found.project, found.plan, sixteenths);
    EXPECT_NE(text.find("Pull-out board A1"), std::string::npos) << text;
    EXPECT_NE(text.find("18 in − 2 × 1/16 in = 17 7/8 in"), std::string::npos) << text;
    const std::string json = planJson(found.project, found.plan, sixteenths);
    EXPECT_NE(json.find("\"boards\": ["), std::string::npos);
    EXPECT_EQ(planJson(bank(1), Found(bank(1)).plan, sixteenths).find("\"boards\""),
              std::string::npos);
}

TEST(BoardReports, NameABoardsFaultByItsOwnKey) {
    const Found found(deskWith([](BoardSpec& s) { s.depth = n64(24 * 64); }));
    const std::string json = findingsJson(found.project, found.plan, found.findings, sixteenths);
    EXPECT_NE(json.find("\"code\": \"board_does_not_go_in\""), std::string::npos) << json;
}

} // namespace
} // namespace frontwright
