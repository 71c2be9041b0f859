#include "core/documents/document.h"
#include "core/documents/header.h"
#include "core/documents/json_tree.h"
#include "core/documents/upgrade.h"
#include "tests/core/words/untold.h"

#include "files.h"

#include <cctype>

// Whatever is refused can be told in every language: what is left are words of the document.

using namespace frontwright;
using namespace frontwright::documents;
using namespace frontwright::testing;

namespace {

using Words = std::vector<std::string>;

std::set<std::string> wordsIn(const std::string& text) {
    std::set<std::string> words;
    std::string word;
    for (const char c : text + ' ') {
        if (std::isalpha(static_cast<unsigned char>(c)) != 0) {
            word += c;
        } else if (!word.empty()) {
            words.insert(word);
            word.clear();
        }
    }
    return words;
}

Error refusalOf(const std::string& json) {
    const Result<Project> read = readDocument(json);
    EXPECT_FALSE(read.ok()) << json;
    return read.ok() ? Error{} : read.error();
}

} // namespace

TEST(WhatIsCutOff, IsTold) {
    const std::string sound = contentOf(sourceFolder() / "tests/core/documents/sound.json");
    const auto alike = wordsIn(sound);
    for (std::size_t length = 0; length < sound.size() / 2; ++length) {
        const Error error = refusalOf(sound.substr(0, length));
        ASSERT_EQ(untold(error.sentence(), alike), Words{}) << error.sentence();
    }
}

TEST(AFileOfAnotherKindOrVersion, IsTold) {
    const std::set<std::string> alike{"version", "format", "frontwright", "case", "x", "MiB"};
    for (const char* const json :
         {R"([])", R"({})", R"({"format": 1})", R"({"format": "frontwright-case"})",
          R"({"format": "frontwright-case", "version": "99.0"})"})
        EXPECT_EQ(untold(refusalOf(json).sentence(), alike), Words{}) << json;
    JsonLimits small;
    small.bytes = 1;
    EXPECT_EQ(untold(JsonTree::read("{  }", small).error().sentence(), alike), Words{});
    EXPECT_EQ(untold(upgraded("{}", {0, 1}, {1, 0}, {}).error().sentence()), Words{});
    EXPECT_EQ(
        untold(readCatalogue("{}", "1").error().sentence(), {"format", "frontwright", "catalogue"}),
        Words{});
}
