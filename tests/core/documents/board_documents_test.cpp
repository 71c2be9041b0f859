#include "core/documents/document.h"
#include "core/edits/boards.h"
#include "core/edits/divisions.h"
#include "tests/core/plan/board_case.h"

#include <gtest/gtest.h>

#include <string>

namespace frontwright {
namespace {

using namespace frontwright::testing;

constexpr OpeningId theBoard{firstFreeId};

bool holds(const std::string& text, std::string_view part) {
    return text.find(part) != std::string::npos;
}

/// The desk with the first occurrence of `old` in its document replaced.
Result<Project> readWith(std::string_view old, std::string_view now) {
    std::string text = writeDocument(boardOverDrawer());
    const std::size_t at = text.find(old);
    EXPECT_NE(at, std::string::npos) << old << " in\n" << text;
    return readDocument(text.replace(at, old.size(), now));
}

TEST(BoardDocuments, LeaveOutWhatIsUsual) {
    const std::string text = writeDocument(boardOverDrawer());
    EXPECT_TRUE(holds(text, "\"use\": \"board\"")) << text;
    EXPECT_TRUE(holds(text, "\"depth\": \"20 1/4 in\"")) << text;
    EXPECT_TRUE(holds(text, "\"bradLength\": \"1 1/4 in\"")) << text;
    EXPECT_FALSE(holds(text, "\"sidePlay\"")) << text;
    EXPECT_FALSE(holds(text, "\"fasteners\"")) << text;
}

TEST(BoardDocuments, KeepEveryDecision) {
    const Project desk = boardOverDrawer();
    BoardSpec spec = *findOpening(desk, theBoard)->board;
    spec.furred = Furred::No;
    spec.pullOut = Length::inches(6);
    spec.load = Force::fromMicronewtons(100'500'000);
    spec.keeper.fastening = KeeperFastening::Down;
    spec.keeper.fasteners = {{Side::Right, Length::inches(4), Length::inches(1)}};
    const std::string text = writeDocument(setBoard(desk, theBoard, spec).value());
    EXPECT_TRUE(holds(text, "\"load\": 100.5")) << text;
    EXPECT_TRUE(holds(text, "\"furred\": \"no\"")) << text;
    EXPECT_TRUE(holds(text, "\"fasteners\": [\"right 4 in reach 1 in\"]")) << text;
    const BoardSpec read = *findOpening(readDocument(text).value(), theBoard)->board;
    EXPECT_EQ(read.load, spec.load);
    EXPECT_EQ(read.furred, Furred::No);
    EXPECT_EQ(read.keeper.fastening, KeeperFastening::Down);
    ASSERT_EQ(read.keeper.fasteners.size(), 1U);
    EXPECT_EQ(read.keeper.fasteners[0].side, Side::Right);
    EXPECT_EQ(read.keeper.fasteners[0].depth.length, Length::inches(4));
    EXPECT_EQ(writeDocument(readDocument(text).value()), text);
}

TEST(BoardDocuments, RefuseAnOpeningForABoardWithoutOne) {
    const auto read = readWith("\"board\": {", "\"plank\": {");
    ASSERT_FALSE(read.ok());
    EXPECT_TRUE(holds(read.error().sentence().english(), "\"board\""))
        << read.error().sentence().english();
}

TEST(BoardDocuments, RefuseWhatCannotBe) {
    EXPECT_FALSE(readWith("\"depth\": \"20 1/4 in\"", "\"depth\": \"0 in\"").ok());
    EXPECT_FALSE(readWith("\"depth\": \"20 1/4 in\"", "\"load\": -1").ok());
    EXPECT_FALSE(readWith("\"bradLength\": \"1 1/4 in\"", "\"furred\": \"perhaps\"").ok());
    EXPECT_TRUE(readWith("\"bradLength\": \"1 1/4 in\"", "\"furred\": \"yes\"").ok());
    for (const char* fastener : {"left 4 in", "top 4 in reach 1 in", "left 4 reach 1 in",
                                 "left 4 in reach", "left -1 in reach 1 in", "left reach 1 in"})
        EXPECT_FALSE(readWith("\"screw\": \"wood-screw-8\"",
                              "\"fasteners\": [\"" + std::string(fastener) + "\"]")
                         .ok())
            << fastener;
}

} // namespace
} // namespace frontwright
