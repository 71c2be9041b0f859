#include "finished.h"

#include <gtest/gtest.h>

#include <algorithm>

using namespace frontwright::testing;

namespace {

/// What every refusal has to be: exit code 2, one line on stderr, nothing else anywhere.
void expectRefused(const std::vector<std::string>& arguments, const std::string& word) {
    const Folder folder;
    const Outcome outcome = ran(folder, arguments);
    EXPECT_EQ(outcome.code, 2) << outcome.err;
    EXPECT_EQ(outcome.out, "");
    EXPECT_EQ(std::count(outcome.err.begin(), outcome.err.end(), '\n'), 1) << outcome.err;
    EXPECT_EQ(outcome.err.empty() ? ' ' : outcome.err.back(), '\n');
    EXPECT_NE(outcome.err.find(word), std::string::npos) << outcome.err;
    EXPECT_TRUE(folder.names().empty()) << folder.names().front();
}

/// All that a command can be, for a case file that cannot be used.
void expectRefusedByAll(const std::string& file, const std::string& word) {
    expectRefused({"check", file}, word);
    expectRefused({"check", file, "--json"}, word);
    expectRefused({"plan", file}, word);
    expectRefused({"templates", file, "-o", "a.pdf", "--svg", "sheets", "--marks", "a.json"}, word);
    expectRefused({"picture", file, "-o", "a.svg"}, word);
    expectRefused({"picture", file, "-o", "a.png"}, word);
    expectRefused({"picture", file, "--window", "-o", "a.png"}, word);
}

std::string replaced(std::string text, const std::string& old, const std::string& by) {
    const std::size_t at = text.find(old);
    EXPECT_NE(at, std::string::npos) << old;
    return at == std::string::npos ? text : text.replace(at, old.size(), by);
}

} // namespace

TEST(Outcome, IsOneWhereAPartWouldBeSpoiled) {
    const Folder folder;
    const Outcome outcome = ran(folder, {"check", sample("first-try")});
    EXPECT_EQ(outcome.code, 1);
    EXPECT_EQ(outcome.err, "");
    EXPECT_NE(outcome.out.find("The screw comes 5/16 in through the show face"), std::string::npos);
    EXPECT_EQ(ran(folder, {"check", sample("first-try"), "--json"}).code, 1);
}

TEST(Outcome, IsNoughtWhereNothingIsSpoiled) {
    const Folder folder;
    const Outcome outcome = ran(folder, {"check", sample("plan-chest")});
    EXPECT_EQ(outcome.code, 0) << outcome.out;
    EXPECT_EQ(outcome.err, "");
    EXPECT_EQ(outcome.out.find("Would ruin"), std::string::npos);
}

TEST(Outcome, OfCheckAgreesWithTheSeveritiesItLists) {
    const Folder folder;
    ASSERT_GE(samplePaths().size(), 3U);
    for (const std::string& file : samplePaths()) {
        const Outcome outcome = ran(folder, {"check", file, "--json"});
        const bool grave = outcome.out.find("\"severity\": \"ruins\"") != std::string::npos ||
                           outcome.out.find("\"severity\": \"wont_work\"") != std::string::npos;
        EXPECT_EQ(outcome.code, grave ? 1 : 0) << file;
        EXPECT_EQ(outcome.err, "") << file;
    }
}

TEST(Outcome, OfHelpAndVersionIsNought) {
    const Folder folder;
    const Outcome help = ran(folder, {"--help"});
    EXPECT_EQ(help.code, 0);
    EXPECT_NE(help.out.find("frontwright templates FILE"), std::string::npos);
    const Outcome version = ran(folder, {"--version"});
    EXPECT_EQ(version.code, 0);
    EXPECT_EQ(version.out, "frontwright " FRONTWRIGHT_VERSION "\n");
}

TEST(Refusal, OfACommandLineIsOneSentence) {
    expectRefused({"check"}, "a case file is wanted");
    expectRefused({"check", sample("first-try"), "--xml"}, "--xml is not an option here");
    expectRefused({"templates", sample("first-try")}, "templates wants");
    expectRefused({"templates", sample("first-try"), "-o"}, "-o wants a value");
    expectRefused({"picture", sample("first-try"), "-o", "a.gif"}, "OUT.svg");
    expectRefused({"templates", sample("first-try"), "-o", "a.pdf", "--paper", "Foolscap"},
                  "Foolscap");
    expectRefused({"templates", sample("first-try"), "-o", "a.pdf", "--overlap", "-3 mm"},
                  "verlap");
}

TEST(Refusal, OfAWindowWithoutADisplaySaysWhatCanBeDone) {
    expectRefused({}, "there is no display");
    expectRefused({sample("first-try")}, "there is no display");
}

TEST(Refusal, OfAFileThatIsNotThere) {
    expectRefusedByAll("/nowhere/chest.frontwright", "there is no such file");
}

TEST(Refusal, OfAFolder) {
    expectRefusedByAll(FRONTWRIGHT_SOURCE_DIR "/samples", "is not a regular file");
}

TEST(Refusal, OfABrokenFileNamesItAndThePlaceInIt) {
    const Folder folder;
    const std::string whole = bytesOf(sample("first-try"));
    const std::string file = folder.with("half.frontwright", whole.substr(0, whole.size() / 2));
    expectRefusedByAll(file, "half.frontwright, line ");
    expectRefusedByAll(folder.with("empty.frontwright", ""), "empty.frontwright");
    expectRefusedByAll(folder.with("noise.frontwright", "\xff\xfe\x01\x02"), "noise.frontwright");
}

TEST(Refusal, OfANewerVersionNamesBoth) {
    const Folder folder;
    const std::string text =
        replaced(bytesOf(sample("first-try")), "\"version\": \"1.0\"", "\"version\": \"7.0\"");
    expectRefusedByAll(folder.with("newer.frontwright", text), "7.0");
}

TEST(Refusal, OfACaseWithoutRoomNamesTheFile) {
    const Folder folder;
    const std::string text =
        replaced(bytesOf(sample("first-try")), "\"width\": \"44 in\"", "\"width\": \"1 in\"");
    expectRefusedByAll(folder.with("narrow.frontwright", text), "narrow.frontwright");
}

TEST(Refusal, OfOneOutputWritesNoneOfTheOthers) {
    expectRefused({"templates", sample("plan-chest"), "-o", "a.pdf", "--marks", "no/where.json"},
                  "no/where.json");
    expectRefused({"templates", sample("plan-chest"), "--svg", "sheets", "--marks",
                   FRONTWRIGHT_SOURCE_DIR "/samples"},
                  "is not a regular file");
    expectRefused({"picture", sample("plan-chest"), "-o", "no/where.svg"}, "no/where.svg");
    expectRefused({"picture", sample("plan-chest"), "--window", "-o", "no/where.png"},
                  "no/where.png");
}

TEST(Refusal, OfAnOutputKeepsWhatWasThere) {
    const Folder folder;
    const std::string old = folder.with("a.pdf", "the maker's own");
    const Outcome outcome =
        ran(folder, {"templates", sample("plan-chest"), "-o", "a.pdf", "--marks", "no/where.json"});
    EXPECT_EQ(outcome.code, 2);
    EXPECT_EQ(bytesOf(old), "the maker's own");
    EXPECT_EQ(folder.names(), std::vector<std::string>{"a.pdf"});
}

TEST(Refusal, OfTemplatesOverTheCaseItselfKeepsTheCase) {
    const Folder folder;
    const std::string whole = bytesOf(sample("plan-chest"));
    const std::string file = folder.with("chest.frontwright", whole);
    // The same file by another name.
    const Outcome outcome = ran(folder, {"templates", "chest.frontwright", "-o", file});
    EXPECT_EQ(outcome.code, 2);
    EXPECT_NE(outcome.err, "");
    EXPECT_EQ(bytesOf(file), whole);
}
