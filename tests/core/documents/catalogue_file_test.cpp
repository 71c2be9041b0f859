#include "core/documents/document.h"

#include <gtest/gtest.h>

using namespace frontwright;

namespace {

std::string catalogueText(const std::string& lists) {
    return R"({"format": "frontwright-catalogue", "version": "1.0", )" + lists + "}";
}

const std::string screw = R"({"id": "wood-screw-8", "name": "No. 8 flat-head wood screw",
    "shankDiameter": "0.164 in", "headDiameter": "0.332 in", "headHeight": "0.1 in",
    "clearanceHole": "11/64 in", "pilotHole": "1/8 in",
    "lengths": ["3/4 in", "1 in", "1 1/4 in"],
    "source": {"kind": "from-memory", "title": "ASME B18.6.1"}})";

const std::string pull = R"({"id": "pull-96", "name": "Pull, 96 mm", "kind": "pull",
    "holes": [["-48 mm", "0 mm"], ["48 mm", "0 mm"]],
    "footprint": {"shape": "rectangle", "width": "106 mm", "height": "10 mm"},
    "projection": "30 mm", "bolt": "bolt-m4", "threadDepth": "10 mm", "leastEngagement": "5 mm",
    "suppliedBolt": "25 mm", "source": {"kind": "common-practice", "title": ""}})";

std::string whatIsWrongWith(const std::string& lists) {
    const Result<Catalogue> read = readCatalogue(catalogueText(lists), "screws.json");
    return read.ok() ? "" : read.error().sentence().english();
}

} // namespace

TEST(CatalogueFile, GivesAScrewWithItsDrillsAndStockedLengths) {
    const auto read =
        readCatalogue(catalogueText("\"woodScrews\": [" + screw + "]"), "screws.json");
    ASSERT_TRUE(read.ok()) << read.error().sentence();
    ASSERT_EQ(read.value().woodScrews.size(), 1U);
    const WoodScrew& s = read.value().woodScrews[0];
    EXPECT_EQ(s.id, "wood-screw-8");
    EXPECT_EQ(s.shankDiameter, Length::fromMicrometres(4'165) + Length::fromNanometres(600));
    EXPECT_EQ(s.clearanceHole, Length::inches(0, 11));
    EXPECT_EQ(s.pilotHole, Length::inches(0, 8));
    EXPECT_EQ(s.lengths,
              (std::vector{Length::inches(0, 48), Length::inches(1), Length::inches(1, 16)}));
    EXPECT_EQ(s.source, (Source{SourceKind::FromMemory, "ASME B18.6.1"}));
}

TEST(CatalogueFile, GivesAPullWithItsHolesAboutItsCentre) {
    const auto read = readCatalogue(catalogueText("\"hardware\": [" + pull + "]"), "pulls.json");
    ASSERT_TRUE(read.ok()) << read.error().sentence();
    const HardwareForm& form = read.value().hardware.at(0);
    EXPECT_EQ(form.kind, HardwareKind::Pull);
    EXPECT_EQ(form.holes.at(0), (FrontPoint{Length::millimetres(-48), {}}));
    EXPECT_EQ(form.holes.at(1), (FrontPoint{Length::millimetres(48), {}}));
    EXPECT_EQ(form.footprint.shape, FootprintShape::Rectangle);
    EXPECT_EQ(form.suppliedBolt, Length::millimetres(25));
}

TEST(CatalogueFile, GivesALockWithItsKeyHoleAndItsMortises) {
    const auto read = readCatalogue(catalogueText(R"("fittings": [{"id": "lock", "name": "Lock",
        "kind": "lock", "bearsOn": "back",
        "footprint": {"shape": "rectangle", "width": "50 mm", "height": "40 mm"},
        "projection": "0 mm", "plate": "2 mm", "screw": "wood-screw-3mm",
        "screws": [["-22 mm", "-8 mm"], ["22 mm", "-8 mm"]],
        "bores": [{"at": ["0 mm", "0 mm"], "diameter": "8 mm", "from": "show"}],
        "mortises": [{"from": "top-edge", "depth": "2 mm",
            "place": {"lowerLeft": ["-25 mm", "0 mm"], "upperRight": ["25 mm", "12 mm"]}}],
        "belowTop": "20 mm",
        "source": {"kind": "common-practice", "title": ""}}])"),
                                    "fittings.json");
    ASSERT_TRUE(read.ok()) << read.error().sentence();
    const FittingForm& lock = read.value().fittings.at(0);
    EXPECT_EQ(lock.kind, FittingKind::Lock);
    EXPECT_EQ(lock.bearsOn, FrontFace::Back);
    EXPECT_EQ(lock.belowTop, Length::millimetres(20));
    EXPECT_FALSE(lock.bores.at(0).depth.has_value()); // right through
    EXPECT_EQ(lock.mortises.at(0).place.width(), Length::millimetres(50));
    EXPECT_EQ(lock.mortises.at(0).from, FrontFace::TopEdge);
}

TEST(CatalogueFile, RefusesAMortiseWithoutASize) {
    const std::string text = R"("fittings": [{"id": "pull", "name": "Pull", "kind": "edge-pull",
        "footprint": {"shape": "rectangle", "width": "50 mm", "height": "40 mm"},
        "projection": "0 mm", "plate": "2 mm", "screw": "", "screws": [],
        "mortises": [{"from": "show", "depth": "2 mm",
            "place": {"lowerLeft": ["5 mm", "0 mm"], "upperRight": ["-5 mm", "12 mm"]}}],
        "source": {"kind": "common-practice", "title": ""}}])";
    EXPECT_NE(whatIsWrongWith(text).find("a corner right of and above the other"),
              std::string::npos);
}

TEST(CatalogueFile, MayHoldANoteAndSeveralLists) {
    const auto read = readCatalogue(
        catalogueText(R"("note": "generic", "species": [{"id": "oak", "name": "White oak"}],
            "runners": [{"id": "wooden", "name": "Wooden", "sideClearance": "1/16 in",
            "clearanceBelow": "0 in", "clearanceAbove": "1/8 in",
            "source": {"kind": "common-practice", "title": "common practice, no source"}}])"),
        "x.json");
    ASSERT_TRUE(read.ok()) << read.error().sentence();
    EXPECT_EQ(read.value().species.at(0), (Species{"oak", "White oak"}));
    EXPECT_EQ(read.value().runners.at(0).sideClearance, Length::inches(0, 4));
}

TEST(CatalogueFile, ErrorNamesTheFileThePlaceAndTheMember) {
    EXPECT_EQ(
        whatIsWrongWith("\n\"species\": [{\"id\": \"oak\"}]"),
        "screws.json, line 2, column 13 (species[0]): expected a member \"name\", found none");
}

TEST(CatalogueFile, RefusesAMemberItDoesNotKnow) {
    EXPECT_EQ(whatIsWrongWith("\n\"species\": [{\"id\": \"oak\", \"name\": \"Oak\", \"nmae\": 1}]"),
              "screws.json, line 2, column 50 (species[0].nmae): unknown member \"nmae\"");
}

TEST(CatalogueFile, RefusesTwoEntriesOfOneId) {
    EXPECT_EQ(whatIsWrongWith("\n\"woodScrews\": [" + screw + ", " + screw + "]"),
              "screws.json, line 2, column 15 (woodScrews): expected entries of different ids, "
              "found a list [ ]");
}

TEST(CatalogueFile, RefusesLengthsThatDoNotAscend) {
    std::string shuffled = screw;
    shuffled.replace(shuffled.find("\"1 in\""), 6, "\"2 in\"");
    EXPECT_EQ(whatIsWrongWith("\"woodScrews\": [" + shuffled + "]"),
              "screws.json, line 4, column 16 (woodScrews[0].lengths): expected lengths in "
              "ascending order, found a list [ ]");
}

TEST(CatalogueFile, IsNotACaseDocument) {
    const auto read =
        readCatalogue(R"({"format": "frontwright-case", "version": "1.0"})", "a.json");
    ASSERT_FALSE(read.ok());
    EXPECT_EQ(read.error().sentence(),
              "a.json, line 1, column 12 (format): expected \"format\": \"frontwright-catalogue\", "
              "found \"frontwright-case\"");
}
