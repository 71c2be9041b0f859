#include "core/documents/document.h"

#include "files.h"

using namespace frontwright;
using namespace frontwright::testing;

namespace {

Project sample(const std::string& name) {
    const auto file = sourceFolder() / "samples" / name / (name + ".frontwright");
    Result<Project> read = readDocument(contentOf(file));
    if (!read.ok()) {
        ADD_FAILURE() << read.error().sentence();
        return {};
    }
    return std::move(read).value();
}

WrittenLength writtenIn(std::int64_t whole, std::int64_t sixtyFourths = 0) {
    return {Length::inches(whole, sixtyFourths), Notation::InchFraction};
}
WrittenLength writtenMm(std::int64_t whole) {
    return {Length::millimetres(whole), Notation::Millimetre};
}

const Split& split(const RegionPtr& region) {
    return std::get<Split>(region->content);
}
const Opening& opening(const RegionPtr& region) {
    return std::get<Opening>(region->content);
}

} // namespace

TEST(Document, GivesTheCaseAsTheMakerWroteIt) {
    const Project p = sample("glaze-chest");
    EXPECT_EQ(p.title, "Glaze chest");
    EXPECT_EQ(p.style, (LengthStyle{Unit::Inch, 16}));
    EXPECT_EQ(p.casework.width, writtenIn(44));
    EXPECT_EQ(p.casework.height, writtenIn(36));
    EXPECT_EQ(p.casework.frame.left, writtenIn(1, 48));
    EXPECT_EQ(p.casework.frame.bottom, writtenIn(2, 16));
    EXPECT_EQ(p.casework.grid, writtenIn(0, 4));
    EXPECT_EQ(p.limits.leastOpening, writtenMm(60));
}

TEST(Document, GivesRowsTopToBottomWithTheirRules) {
    const Project p = sample("glaze-chest");
    const Split& rows = split(p.casework.divisions);
    EXPECT_EQ(rows.direction, Direction::Rows);
    ASSERT_EQ(rows.children.size(), 2U);
    EXPECT_EQ(rows.children[0].rule, SizeRule(FixedSize{writtenIn(5)}));
    EXPECT_EQ(rows.children[1].rule, SizeRule(Share{1}));
    EXPECT_EQ(rows.members.at(0).width, writtenIn(1, 16));
    EXPECT_EQ(rows.remainderChild, 1U);
    const Split& banks = split(rows.children[1].region);
    EXPECT_EQ(banks.direction, Direction::Columns);
    const Split& left = split(banks.children.at(0).region);
    EXPECT_EQ(left.children.size(), 4U);
    EXPECT_EQ(left.children[0].rule, SizeRule(GraduatedPlace{}));
    EXPECT_EQ(left.graduation, Graduation(ArithmeticRun{writtenIn(1)}));
    EXPECT_EQ(opening(left.children[0].region).name, "Stains");
}

TEST(Document, GivesTheFrontsAndWhatAnOpeningDecidesForItself) {
    const Project p = sample("glaze-chest");
    EXPECT_EQ(p.fronts.fit, FrontFit::all({Fit::Overlay, writtenIn(0, 16)}));
    EXPECT_EQ(p.fronts.profile.family, ProfileFamily::Raised);
    EXPECT_EQ(p.fronts.profile.step, writtenIn(0, 8));
    EXPECT_EQ(p.fronts.profile.sides, PerSide<bool>::all(true));
    EXPECT_EQ(p.fronts.box.runner, "side-mounted");
    EXPECT_FALSE(p.fronts.box.sideClearance);
    EXPECT_EQ(p.fronts.mounting.pattern, ScrewPattern::FourCorners);
    EXPECT_EQ(p.fronts.hardware.twoPast, writtenIn(30));
    EXPECT_EQ(p.fronts.hardware.twoAtPercent, 25);
    const Split& right =
        split(split(split(p.casework.divisions).children[1].region).children[1].region);
    const FrontChoices& tiles = opening(right.children[1].region).choices;
    ASSERT_TRUE(tiles.hardware);
    EXPECT_EQ(tiles.hardware->form, "cup-3in");
    EXPECT_EQ(tiles.hardware->boltLength, writtenIn(1));
    EXPECT_FALSE(tiles.mounting);
    EXPECT_EQ(tiles.fit, FrontChoices{}.fit);
}

TEST(Document, GivesMillimetresAndInsets) {
    const Project p = sample("plan-chest");
    EXPECT_EQ(p.style.unit, Unit::Millimetre);
    EXPECT_EQ(p.casework.width, writtenMm(1160));
    EXPECT_EQ(p.fronts.fit, FrontFit::all({Fit::Inset, writtenMm(2)}));
    EXPECT_EQ(split(p.casework.divisions).children.size(), 8U);
}

TEST(Document, WritesAnOverrideOfOneSideAlone) {
    Project p = sample("plan-chest");
    Opening own;
    own.choices.fit.top = SideFit{Fit::Gap, writtenMm(3)};
    own.choices.profile = Profile{ProfileFamily::Square, {}, {}, {}, {true, false, false, true}};
    p.casework.divisions = std::make_shared<Region>(Region{own});
    const std::string text = writeDocument(p);
    EXPECT_NE(text.find("\"fit\": { \"top\": \"gap 3 mm\" }"), std::string::npos) << text;
    EXPECT_NE(text.find("\"sides\": [\"left\", \"top\"]"), std::string::npos) << text;
    const Result<Project> back = readDocument(text);
    ASSERT_TRUE(back.ok()) << back.error().sentence();
    EXPECT_EQ(opening(back.value().casework.divisions).choices, own.choices);
}

TEST(Document, WritesPlacesOfHolesInTheDocumentsUnitWhereThatIsExact) {
    Project p = sample("plan-chest");
    p.fronts.mounting.placed = {{Length::inches(1), -Length::millimetres(2)}};
    EXPECT_NE(writeDocument(p).find("\"placed\": [[\"25.4 mm\", \"-2 mm\"]]"), std::string::npos);
    p.style.unit = Unit::Inch;
    EXPECT_NE(writeDocument(p).find("\"placed\": [[\"1 in\", \"-2 mm\"]]"), std::string::npos);
}

TEST(Document, WritesTheMakersOwnEntries) {
    Project p = sample("plan-chest");
    EXPECT_EQ(writeDocument(p).find("\"own\""), std::string::npos);
    p.own.species = {{"elm", "Wych elm"}};
    EXPECT_NE(writeDocument(p).find("\"own\": {\n"
                                    "    \"species\": [\n"
                                    "      { \"id\": \"elm\", \"name\": \"Wych elm\" }\n"
                                    "    ]\n"
                                    "  }\n"
                                    "}\n"),
              std::string::npos)
        << writeDocument(p);
}

TEST(Document, ANewCaseCanBeSavedAndOpened) {
    for (const Unit unit : {Unit::Inch, Unit::Millimetre}) {
        const std::string bytes = writeDocument(newProject(unit));
        const Result<Project> read = readDocument(bytes);
        ASSERT_TRUE(read.ok()) << read.error().sentence();
        EXPECT_EQ(writeDocument(read.value()), bytes);
    }
}

TEST(Document, EndsWithALineFeedAndHasNoOtherControlCharacter) {
    Project p = sample("glaze-chest");
    p.title = "a\r\nb\t\x02";
    const std::string bytes = writeDocument(p);
    EXPECT_EQ(bytes.back(), '\n');
    for (const char c : bytes)
        ASSERT_TRUE(c == '\n' || static_cast<unsigned char>(c) >= 0x20);
}
