#include "core/sheets/paper.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

struct Sheet {
    const char* name;
    double width;
    double height;
};

void expectSheet(const Sheet& sheet) {
    const Result<Paper> paper = paperNamed(sheet.name);
    ASSERT_TRUE(paper.ok()) << sheet.name;
    EXPECT_EQ(paper.value().width, Length::nearestToMillimetres(sheet.width)) << sheet.name;
    EXPECT_EQ(paper.value().height, Length::nearestToMillimetres(sheet.height)) << sheet.name;
}

// ISO 216, trimmed sizes; from memory. A1 is 594 mm wide, not 595, A5 148 mm, not 149: half a
// millimetre is dropped, never rounded up.
TEST(PaperSizes, AreThoseOfIso216) {
    for (const Sheet& sheet : {Sheet{"A0", 841, 1189}, Sheet{"A1", 594, 841}, Sheet{"A2", 420, 594},
                               Sheet{"A3", 297, 420}, Sheet{"A4", 210, 297}, Sheet{"A5", 148, 210}})
        expectSheet(sheet);
}

// ASME Y14.1 and the office sizes, in inches; from memory.
TEST(PaperSizes, AreThoseOfAsmeY141) {
    for (const Sheet& sheet : {Sheet{"ANSI A", 215.9, 279.4}, Sheet{"ANSI B", 279.4, 431.8},
                               Sheet{"ANSI C", 431.8, 558.8}, Sheet{"ANSI D", 558.8, 863.6},
                               Sheet{"ANSI E", 863.6, 1117.6}, Sheet{"Letter", 215.9, 279.4},
                               Sheet{"Legal", 215.9, 355.6}, Sheet{"Tabloid", 279.4, 431.8}})
        expectSheet(sheet);
}

TEST(PaperSizes, EachSizeIsHalfOfTheNextWithTheHalfMillimetreDropped) {
    for (int i = 0; i < 5; ++i) {
        const Paper large = paperNamed("A" + std::to_string(i)).value();
        const Paper half = paperNamed("A" + std::to_string(i + 1)).value();
        EXPECT_EQ(half.height, large.width);
        const std::int64_t whole = large.height.nanometres() / 1'000'000;
        EXPECT_EQ(half.width, Length::millimetres(whole / 2));
    }
}

TEST(PaperSizes, AreUprightAndNoneIsARoll) {
    for (const Paper& paper : knownPapers()) {
        EXPECT_LT(paper.width, paper.height) << paper.name;
        EXPECT_FALSE(paper.isRoll()) << paper.name;
    }
}

TEST(PaperNames, AreFoundInUpperAndLowerCase) {
    EXPECT_EQ(paperNamed("a4").value(), paperNamed(" A4 ").value());
    EXPECT_EQ(paperNamed("LETTER").value().name, "Letter");
    EXPECT_EQ(paperNamed("ansi c").value().name, "ANSI C");
}

TEST(PaperNames, ARollIsNamedByItsWidth) {
    const Paper metric = paperNamed("roll 610 mm").value();
    EXPECT_TRUE(metric.isRoll());
    EXPECT_EQ(metric.width, Length::millimetres(610));
    EXPECT_EQ(metric.name, "Roll 610 mm");
    EXPECT_EQ(paperNamed("Roll 24 in").value().width, Length::inches(24));
}

TEST(PaperNames, ARollWithoutAUnitIsRefused) {
    const Error error = paperNamed("roll 610").error();
    EXPECT_NE(error.sentence().english().find("610"), std::string::npos);
    EXPECT_NE(error.remedy.english().find("roll 610 mm"), std::string::npos);
    EXPECT_FALSE(paperNamed("roll 0 mm").ok());
    EXPECT_FALSE(paperNamed("roll -5 mm").ok());
}

TEST(PaperNames, AnUnknownOneIsRefusedWithTheKnownOnes) {
    const Error error = paperNamed("B9").error();
    EXPECT_EQ(error.place, "paper");
    EXPECT_NE(error.what.english().find("B9"), std::string::npos);
    for (const Paper& paper : knownPapers())
        EXPECT_NE(error.remedy.english().find(paper.name), std::string::npos) << paper.name;
    EXPECT_FALSE(paperNamed("").ok());
    EXPECT_FALSE(paperNamed("roll").ok());
}

// Sizes from memory, as the architects' series is usually told.
TEST(Papers, KnowTheArchitectsSeries) {
    EXPECT_EQ(paperNamed("arch d").value().width, Length::inches(24));
    EXPECT_EQ(paperNamed("ARCH E").value().height, Length::inches(48));
    EXPECT_EQ(paperNamed("ARCH A").value().width, Length::inches(9));
}

TEST(Papers, OfAGivenSizeAreMadeUpright) {
    const Paper paper = sheetOf(Length::millimetres(400), Length::millimetres(300)).value();
    EXPECT_EQ(paper.width, Length::millimetres(300));
    EXPECT_EQ(paper.height, Length::millimetres(400));
    EXPECT_EQ(paper.name, "300 \u00d7 400 mm");
    EXPECT_EQ(paperNamed("400 x 300 mm").value(), paper);
    EXPECT_EQ(paperNamed("17X22 in").value().name, "ANSI C");
    EXPECT_FALSE(sheetOf({}, Length::millimetres(300)).ok());
    EXPECT_FALSE(paperNamed("300 x").ok());
    EXPECT_FALSE(paperNamed("300 x 400").ok()); // no unit: not guessed
}

// Drivers tell papers in whole points: 595 × 842 pt is A4.
TEST(Papers, NearAKnownOneAreThatOne) {
    const auto points = [](double pt) { return Length::nearestToMillimetres(pt * 25.4 / 72); };
    EXPECT_EQ(sheetOf(points(595), points(842)).value().name, "A4");
    EXPECT_EQ(sheetOf(points(792), points(612)).value().name, "Letter");
    EXPECT_NE(sheetOf(Length::millimetres(215), Length::millimetres(279)).value().name, "Letter");
}

TEST(Rolls, AreMadeFromTheirWidth) {
    EXPECT_EQ(rollOf(Length::millimetres(610)).value().name, "Roll 610 mm");
    EXPECT_TRUE(rollOf(Length::inches(36)).value().isRoll());
    EXPECT_FALSE(rollOf({}).ok());
}

} // namespace
} // namespace frontwright
