#include "core/documents/document.h"

#include "files.h"

using namespace frontwright;
using namespace frontwright::testing;

// Each broken document has its message beside it, in a .txt of the same name.
TEST(BrokenDocuments, AreRefusedWithTheMessageBesideThem) {
    const auto files = filesBelow(sourceFolder() / "tests/core/documents/broken", ".json");
    ASSERT_GE(files.size(), 30U);
    for (const auto& file : files) {
        auto message = file;
        message.replace_extension(".txt");
        const Result<Project> read = readDocument(contentOf(file));
        ASSERT_FALSE(read.ok()) << file;
        EXPECT_EQ(read.error().sentence().english() + '\n', contentOf(message)) << file;
    }
}

TEST(BrokenDocuments, AreAllBuiltFromOneThatIsSound) {
    const Result<Project> read =
        readDocument(contentOf(sourceFolder() / "tests/core/documents/sound.json"));
    EXPECT_TRUE(read.ok()) << read.error().sentence();
}

// No document that is cut off anywhere is taken for a whole one.
TEST(BrokenDocuments, CutAnywhereAreRefused) {
    const std::string sound = contentOf(sourceFolder() / "tests/core/documents/sound.json");
    const std::size_t whole = sound.find_last_of('}');
    for (std::size_t length = 0; length <= whole; ++length)
        ASSERT_FALSE(readDocument(std::string_view(sound).substr(0, length)).ok()) << length;
}

// Whatever single byte is changed: the reader says yes or no, and what it reads can be saved.
TEST(BrokenDocuments, WithOneByteChangedAreReadOrRefused) {
    const std::string sound = contentOf(sourceFolder() / "tests/core/documents/sound.json");
    for (std::size_t i = 0; i < sound.size(); ++i) {
        for (const char c : {'\0', '"', '\\', '9', '-', '{', ']', ',', '\x80'}) {
            std::string changed = sound;
            changed[i] = c;
            const Result<Project> read = readDocument(changed);
            if (!read.ok())
                continue;
            const Result<Project> again = readDocument(writeDocument(read.value()));
            ASSERT_TRUE(again.ok() && again.value() == read.value()) << i << ' ' << changed;
        }
    }
}
