#include "finished.h"

#include <gtest/gtest.h>

#include <rapidjson/document.h>

#include <algorithm>

using namespace frontwright::testing;

namespace {

rapidjson::Document parsed(const std::string& text) {
    rapidjson::Document document;
    document.Parse(text.data(), text.size());
    EXPECT_FALSE(document.HasParseError()) << text.substr(0, 200);
    return document;
}

void templatesInto(const Folder& folder, const std::string& file) {
    const Outcome outcome = ran(folder, {"templates", file, "-o", "sheets.pdf", "--svg", "sheets",
                                         "--marks", "marks.json"});
    EXPECT_EQ(outcome.code, 0) << outcome.err;
    EXPECT_EQ(outcome.out + outcome.err, "");
}

std::size_t svgsAmong(const std::vector<std::string>& names) {
    return static_cast<std::size_t>(std::count_if(
        names.begin(), names.end(), [](const auto& n) { return n.ends_with(".svg"); }));
}

} // namespace

TEST(Templates, AreTheSameBytesTwice) {
    const Folder first, second;
    templatesInto(first, sample("first-try"));
    templatesInto(second, sample("first-try"));
    const auto names = first.names();
    EXPECT_EQ(names, second.names());
    ASSERT_GT(svgsAmong(names), 2U);
    for (const std::string& name : names)
        if (name != "sheets")
            EXPECT_TRUE(bytesOf(first.path(name)) == bytesOf(second.path(name))) << name;
}

TEST(Templates, ComeAsPdfSheetsAndMarks) {
    const Folder folder;
    templatesInto(folder, sample("first-try"));
    const auto names = folder.names();
    EXPECT_EQ(names.size(), 3 + svgsAmong(names)); // the PDF, the marks and the folder
    const std::string pdf = bytesOf(folder.path("sheets.pdf"));
    EXPECT_EQ(pdf.substr(0, 5), "%PDF-");
    EXPECT_TRUE(parsed(bytesOf(folder.path("marks.json"))).IsObject());
    for (const std::string& name : names)
        if (name.ends_with(".svg")) {
            EXPECT_EQ(bytesOf(folder.path(name)).find("<?xml") == 0 ||
                          bytesOf(folder.path(name)).find("<svg") == 0,
                      true)
                << name;
        }
}

TEST(Templates, SheetsAreNumberedFromOne) {
    const Folder folder;
    templatesInto(folder, sample("first-try"));
    std::size_t number = 0;
    for (const std::string& name : folder.names())
        if (name.ends_with(".svg")) {
            std::string digits = std::to_string(++number);
            digits.insert(0, 3 - digits.size(), '0');
            EXPECT_EQ(name.substr(0, 11), "sheets/" + digits + "-");
        }
    EXPECT_GT(number, 0U);
}

TEST(Templates, TakeTheOldSheetsPlace) {
    const Folder folder;
    const std::string pdf = folder.with("sheets.pdf", "old");
    EXPECT_EQ(ran(folder, {"templates", sample("first-try"), "-o", "sheets.pdf"}).code, 0);
    EXPECT_EQ(bytesOf(pdf).substr(0, 5), "%PDF-");
    EXPECT_EQ(folder.names(), std::vector<std::string>{"sheets.pdf"});
}

TEST(Templates, FollowPaperOrientationAndOverlap) {
    const Folder folder;
    const auto marks = [&](std::vector<std::string> options) {
        options.insert(options.begin(),
                       {"templates", sample("first-try"), "--marks", "marks.json"});
        const Outcome outcome = ran(folder, options);
        EXPECT_EQ(outcome.code, 0) << outcome.err;
        return bytesOf(folder.path("marks.json"));
    };
    const std::string letter = marks({});
    EXPECT_EQ(letter, marks({"--paper", "letter"})); // the sample is in inches
    EXPECT_NE(letter, marks({"--paper", "A4"}));
    EXPECT_NE(letter, marks({"--upright"}));
    EXPECT_NE(letter, marks({"--landscape"}));
    EXPECT_NE(letter, marks({"--paper", "17 x 22 in"}));
    EXPECT_NE(letter, marks({"--overlap", "1 in"}));
    EXPECT_EQ(letter, marks({"--overlap", "10 mm"}));
}

TEST(Picture, IsTheSameBytesTwiceInBothForms) {
    const Folder folder;
    for (const std::string ending : {".svg", ".png"}) {
        for (const std::string name : {"a", "b"})
            EXPECT_EQ(ran(folder, {"picture", sample("glaze-chest"), "-o", name + ending}).code, 0);
        const std::string bytes = bytesOf(folder.path("a" + ending));
        EXPECT_GT(bytes.size(), 1'000U);
        EXPECT_TRUE(bytes == bytesOf(folder.path("b" + ending))) << ending;
    }
    EXPECT_EQ(bytesOf(folder.path("a.png")).substr(1, 3), "PNG");
}

TEST(Picture, OfTheWindowNeedsNoDisplay) {
    const Folder folder;
    const Outcome outcome =
        ran(folder, {"picture", sample("glaze-chest"), "--window", "-o", "window.png"});
    EXPECT_EQ(outcome.code, 0) << outcome.err;
    EXPECT_EQ(outcome.err, "");
    EXPECT_EQ(bytesOf(folder.path("window.png")).substr(1, 3), "PNG");
    EXPECT_EQ(folder.names(), std::vector<std::string>{"window.png"});
}

TEST(Reports, AreTheSameBytesTwice) {
    const Folder folder;
    for (const std::string& file : samplePaths())
        for (const std::string command : {"plan", "check"})
            for (const std::string form : {"", "--json"}) {
                std::vector<std::string> arguments{command, file};
                if (!form.empty())
                    arguments.push_back(form);
                const std::string out = ran(folder, arguments).out;
                EXPECT_GT(out.size(), 10U);
                EXPECT_EQ(out.back(), '\n');
                EXPECT_TRUE(out == ran(folder, arguments).out) << command << ' ' << file;
            }
    EXPECT_TRUE(folder.names().empty());
}

TEST(Reports, AreTheSameInAnyLocale) {
    const Folder folder;
    const std::string plain = ran(folder, {"plan", sample("plan-chest"), "--json"}).out;
    ::setenv("LC_ALL", "de_DE.UTF-8", 1);
    const std::string german = ran(folder, {"plan", sample("plan-chest"), "--json"}).out;
    ::unsetenv("LC_ALL");
    EXPECT_TRUE(plain == german);
}

TEST(Reports, OfAPlanAreJsonWithEveryFront) {
    const Folder folder;
    for (const std::string& file : samplePaths()) {
        const Outcome outcome = ran(folder, {"plan", file, "--json"});
        EXPECT_EQ(outcome.code, 0) << outcome.err;
        const auto plan = parsed(outcome.out);
        ASSERT_TRUE(plan.IsObject());
        EXPECT_STREQ(plan["format"].GetString(), "frontwright-plan");
        int fronts = 0;
        for (const auto& item : plan["items"].GetArray())
            fronts += std::string(item["kind"].GetString()) == "front" ? 1 : 0;
        EXPECT_GT(fronts, 3) << file;
    }
}

TEST(Reports, ReadTheFileAndLeaveItAlone) {
    const Folder folder;
    const std::string whole = bytesOf(sample("first-try"));
    const std::string file = folder.with("my chest's case.frontwright", whole);
    EXPECT_EQ(ran(folder, {"plan", file}).code, 0);
    EXPECT_EQ(ran(folder, {"check", file}).code, 1);
    EXPECT_EQ(bytesOf(file), whole);
    EXPECT_EQ(folder.names(), std::vector<std::string>{"my chest's case.frontwright"});
}
