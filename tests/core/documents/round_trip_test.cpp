#include "core/documents/document.h"

#include "files.h"
#include "random_project.h"

using namespace frontwright;
using namespace frontwright::testing;

namespace {

Project reread(const Project& project) {
    Result<Project> read = readDocument(writeDocument(project));
    if (!read.ok()) {
        ADD_FAILURE() << read.error().sentence() << '\n' << writeDocument(project);
        return project;
    }
    return std::move(read).value();
}

Project readOrFail(const std::string& bytes) {
    Result<Project> read = readDocument(bytes);
    if (!read.ok()) {
        ADD_FAILURE() << read.error().sentence();
        return {};
    }
    return std::move(read).value();
}

std::string replaced(std::string text, const std::string& old, const std::string& by) {
    const std::size_t at = text.find(old);
    EXPECT_NE(at, std::string::npos) << old;
    return text.replace(at, old.size(), by);
}

} // namespace

TEST(RoundTrip, EverySampleIsGivenBackByteForByte) {
    ASSERT_GE(sampleFiles().size(), 3U);
    for (const auto& file : sampleFiles()) {
        const std::string bytes = contentOf(file);
        EXPECT_EQ(writeDocument(readOrFail(bytes)), bytes) << file;
    }
}

TEST(RoundTrip, AProjectIsWhatItWasAfterSavingAndOpening) {
    for (unsigned seed = 1; seed <= 250; ++seed) {
        const Project project = RandomProject(seed).project();
        ASSERT_TRUE(reread(project) == project) << "seed " << seed;
    }
}

TEST(RoundTrip, TheSameProjectGivesTheSameBytes) {
    for (unsigned seed = 1; seed <= 100; ++seed) {
        const Project project = RandomProject(seed).project();
        const std::string bytes = writeDocument(project);
        ASSERT_EQ(writeDocument(reread(project)), bytes) << "seed " << seed;
        ASSERT_EQ(writeDocument(RandomProject(seed).project()), bytes) << "seed " << seed;
    }
}

TEST(RoundTrip, RandomProjectsDoHaveUnknownMembersEverywhere) {
    std::size_t inCase = 0;
    std::size_t inFronts = 0;
    std::size_t inOwn = 0;
    for (unsigned seed = 1; seed <= 100; ++seed) {
        const Project project = RandomProject(seed).project();
        inCase += project.casework.unknowns.size();
        inFronts += project.fronts.unknowns.size();
        inOwn += project.unknowns.size();
    }
    EXPECT_GT(inCase, 20U);
    EXPECT_GT(inFronts, 20U);
    EXPECT_GT(inOwn, 20U);
}

TEST(RoundTrip, SwitchingUnitsAThousandTimesLeavesTheBytes) {
    std::vector<std::string> documents{writeDocument(RandomProject(7).project())};
    for (const auto& file : sampleFiles())
        documents.push_back(contentOf(file));
    for (const std::string& bytes : documents) {
        Project project = readOrFail(bytes);
        const LengthStyle before = project.style;
        for (int i = 0; i < 1000; ++i) {
            project.style.unit = project.style.unit == Unit::Inch ? Unit::Millimetre : Unit::Inch;
            project.style.denominator = i % 2 == 0 ? 64 : 8;
            if (i % 50 == 0) // saved and opened now and then, too
                project = reread(project);
        }
        project.style.denominator = before.denominator;
        ASSERT_EQ(project.style, before);
        EXPECT_EQ(writeDocument(project), bytes);
    }
}

TEST(RoundTrip, SwitchingUnitsKeepsWhatTheMakerWrote) {
    const std::string bytes =
        contentOf(sourceFolder() / "samples/glaze-chest/glaze-chest.frontwright");
    Project project = readOrFail(bytes);
    project.style.unit = Unit::Millimetre;
    EXPECT_EQ(writeDocument(project), replaced(bytes, "\"units\": \"in\"", "\"units\": \"mm\""));
}

TEST(RoundTrip, OpeningsAndMembersAreNumberedAsTheyStand) {
    const Project project =
        readOrFail(contentOf(sourceFolder() / "tests/core/documents/sound.json"));
    const auto& split = std::get<Split>(project.casework.divisions->content);
    std::vector<std::int32_t> numbers;
    for (std::size_t i = 0; i < split.children.size(); ++i) {
        numbers.push_back(std::get<Opening>(split.children[i].region->content).id.number);
        if (i < split.members.size())
            numbers.push_back(split.members[i].id.number);
    }
    EXPECT_EQ(numbers, (std::vector<std::int32_t>{5, 6, 7, 8, 9}));
    EXPECT_EQ(project.nextId, 10);
}

TEST(RoundTrip, ANewerMinorVersionIsKeptWithItsMembers) {
    const std::string plain =
        contentOf(sourceFolder() / "samples/plan-chest/plan-chest.frontwright");
    std::string newer = replaced(plain, "\"version\": \"1.0\"", "\"version\": \"1.7\"");
    newer = replaced(newer, "\"name\": \"Proofs\"", "\"name\": \"Proofs\", \"lock\": \"brass\"");
    EXPECT_EQ(writeDocument(readOrFail(newer)), newer);
}

TEST(RoundTrip, AnUnknownMemberComesAfterTheKnownOnesLaidOutLikeThem) {
    const std::string plain =
        contentOf(sourceFolder() / "samples/plan-chest/plan-chest.frontwright");
    const std::string future = replaced(
        plain, "\"family\": \"eased\",",
        "\"future\" : [ 1,2 , \"\\u00fc, x\" ],\n\"parts\":{\"a\":{}},\"family\": \"eased\",");
    const std::string expected =
        replaced(plain,
                 "\"profile\": { \"family\": \"eased\", \"width\": \"2 mm\", "
                 "\"depth\": \"2 mm\" }",
                 "\"profile\": {\n"
                 "      \"family\": \"eased\",\n"
                 "      \"width\": \"2 mm\",\n"
                 "      \"depth\": \"2 mm\",\n"
                 "      \"future\": [1, 2, \"\\u00fc, x\"],\n"
                 "      \"parts\": {\n"
                 "        \"a\": {}\n"
                 "      }\n"
                 "    }");
    EXPECT_EQ(writeDocument(readOrFail(future)), expected);
}

TEST(RoundTrip, AnUnknownMemberGoesWithTheChoiceItStoodIn) {
    Project project = readOrFail(contentOf(sourceFolder() / "tests/core/documents/sound.json"));
    Opening opening = std::get<Opening>(
        std::get<Split>(project.casework.divisions->content).children[0].region->content);
    opening.choices.profile = project.fronts.profile;
    opening.unknowns = {{"profile/future", "1"}};
    project.casework.divisions = std::make_shared<Region>(Region{opening});
    EXPECT_NE(writeDocument(project).find("\"future\": 1"), std::string::npos);
    opening.choices.profile.reset();
    project.casework.divisions = std::make_shared<Region>(Region{opening});
    EXPECT_EQ(writeDocument(project).find("\"future\""), std::string::npos);
}

TEST(RoundTrip, AFractionThatIsNoNumberOf64thsIsGivenBackAsADecimal) {
    const std::string sound = contentOf(sourceFolder() / "tests/core/documents/sound.json");
    const Project tenth = readOrFail(replaced(sound, "\"18 in\"", "\"1 1/10 in\""));
    EXPECT_EQ(tenth.casework.depth.length, Length::fromMicrometres(27'940));
    const std::string bytes = writeDocument(tenth);
    EXPECT_NE(bytes.find("\"depth\": \"1.1 in\""), std::string::npos) << bytes;
    EXPECT_TRUE(readOrFail(bytes) == tenth);
}

TEST(RoundTrip, AMemberIsNeverWrittenTwice) {
    Project project = readOrFail(contentOf(sourceFolder() / "tests/core/documents/sound.json"));
    project.unknowns = {{"title", "\"older\""}, {"future", "1"}};
    const Project back = reread(project);
    EXPECT_EQ(back.title, project.title);
    EXPECT_EQ(back.unknowns, (Unknowns{{"future", "1"}}));
}
