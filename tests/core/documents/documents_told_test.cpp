#include "core/documents/document.h"
#include "core/documents/header.h"
#include "core/documents/json_tree.h"
#include "core/documents/reading.h"
#include "core/documents/upgrade.h"
#include "tests/core/words/untold.h"

#include "files.h"

#include <cctype>
#include <functional>

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

/// Names that a document may have, and what it may say of itself.
std::set<std::string> wordsOfDocuments() {
    auto words = wordsIn(contentOf(sourceFolder() / "resources/schema/case.schema.json"));
    for (const auto& file : sampleFiles())
        words.merge(wordsIn(contentOf(file)));
    for (const std::string word : {"expected", "found", "line", "column", "a", "the", "or", "and"})
        words.erase(word);
    return words;
}

Error refusalOf(const std::string& json) {
    const Result<Project> read = readDocument(json);
    EXPECT_FALSE(read.ok()) << json;
    return read.ok() ? Error{} : read.error();
}

std::string replaced(std::string text, std::string_view what, std::string_view by) {
    const std::size_t at = text.find(what);
    EXPECT_NE(at, std::string::npos) << what;
    return at == std::string::npos ? text : text.replace(at, what.size(), by);
}

} // namespace

TEST(WhatIsRefused, IsTold) {
    const auto known = wordsOfDocuments();
    for (const auto& file : filesBelow(sourceFolder() / "tests/core/documents/broken", ".json")) {
        const std::string json = contentOf(file);
        auto alike = wordsIn(json);
        alike.insert(known.begin(), known.end());
        alike.insert({"true", "u", "T"}); // signs that are quoted
        EXPECT_EQ(untold(refusalOf(json).sentence(), alike), Words{}) << file;
    }
}

TEST(WhatIsCutOff, IsTold) {
    const std::string sound = contentOf(sourceFolder() / "tests/core/documents/sound.json");
    const auto alike = wordsIn(sound);
    for (std::size_t length = 0; length < sound.size() / 2; ++length) {
        const Error error = refusalOf(sound.substr(0, length));
        ASSERT_EQ(untold(error.sentence(), alike), Words{}) << error.sentence();
    }
}

TEST(WhatCannotBeInAValue, IsTold) {
    const std::string value = R"({"1": VALUE})";
    const std::string wrong[]{"\"1\"", "1",      "[]", "{}",       "null",
                              "true",  "[1, 1]", "-1", "\"-1 in\""};
    const auto refuses = [&](const std::function<void(const Place&)>& read) {
        for (const std::string& text : wrong) {
            const std::string json = replaced(value, "VALUE", text);
            const Result<JsonTree> tree = JsonTree::read(json);
            ASSERT_TRUE(tree.ok());
            ReadState state(tree.value());
            read(Place{state, 1, nullptr, nullptr});
            if (state.error)
                EXPECT_EQ(untold(state.error->sentence(), {"true", "null"}), Words{})
                    << state.error->sentence();
        }
    };
    refuses([](const Place& at) {
        std::string it;
        readValue(at, it);
    });
    refuses([](const Place& at) {
        WrittenLength it;
        readValue(at, it);
    });
    refuses([](const Place& at) {
        Mass it;
        readValue(at, it);
    });
    refuses([](const Place& at) {
        Percent it;
        readValue(at, it);
    });
    refuses([](const Place& at) {
        Temperature it;
        readValue(at, it);
    });
    refuses([](const Place& at) {
        SideFit it;
        readValue(at, it);
    });
    refuses([](const Place& at) {
        CasePoint it;
        readValue(at, it);
    });
    refuses([](const Place& at) {
        std::int64_t it = 0;
        readMillionths(at, it);
    });
    refuses([](const Place& at) {
        std::int64_t it = 0;
        readWhole(at, it, {5, 7});
    });
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
