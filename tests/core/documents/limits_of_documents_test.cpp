#include "core/documents/document.h"

#include "files.h"

using namespace frontwright;
using namespace frontwright::testing;

namespace {

std::string soundWith(const std::string& old, const std::string& by) {
    std::string text = contentOf(sourceFolder() / "tests/core/documents/sound.json");
    const std::size_t at = text.find(old);
    EXPECT_NE(at, std::string::npos) << old;
    return text.replace(at, old.size(), by);
}

/// A document whose divisions are that many equal columns.
std::string withColumns(std::size_t count) {
    std::string parts = "\"columns\": [{ \"share\": 1 }";
    std::string widths = "[\"1 in\"";
    for (std::size_t i = 1; i < count; ++i) {
        parts += ", { \"share\": 1 }";
        if (i > 1)
            widths += ", \"1 in\"";
    }
    return soundWith("\"rows\": [", parts + "], \"members\": " + widths + "], \"ignored\": [");
}

/// The sound document's own "members" would stand twice.
std::string withoutOldMembers(std::string text) {
    const std::string old = "\"members\": [\"1 1/4 in\", \"1 1/4 in\"],";
    return text.erase(text.rfind(old), old.size());
}

std::string errorOf(const std::string& bytes) {
    const Result<Project> read = readDocument(bytes);
    return read.ok() ? "" : read.error().sentence().english();
}

/// An unknown member of lists within lists; the innermost lies `depth` deep in the document.
std::string withDepth(std::size_t depth) {
    const std::size_t lists = depth - 1; // the document itself is one
    return soundWith("\"units\"", "\"future\": " + std::string(lists, '[') +
                                      std::string(lists, ']') + ", \"units\"");
}

} // namespace

TEST(LimitsOfDocuments, TenThousandOpeningsAreReadAndOneMoreIsNot) {
    const Result<Project> read = readDocument(withoutOldMembers(withColumns(10'000)));
    ASSERT_TRUE(read.ok()) << read.error().sentence();
    EXPECT_EQ(std::get<Split>(read.value().casework.divisions->content).children.size(), 10'000U);
    EXPECT_NE(errorOf(withoutOldMembers(withColumns(10'001))).find("more than 10000 openings"),
              std::string::npos);
}

TEST(LimitsOfDocuments, SixtyFourLevelsAreReadAndOneMoreIsNot) {
    EXPECT_EQ(errorOf(withDepth(64)), "");
    EXPECT_NE(errorOf(withDepth(65)).find("lists and objects lie more than 64 deep"),
              std::string::npos);
}

TEST(LimitsOfDocuments, DeepNestingOfAMillionBracketsIsRefusedAtOnce) {
    EXPECT_NE(errorOf(std::string(1'000'000, '[')).find("more than 64 deep"), std::string::npos);
}

TEST(LimitsOfDocuments, TextsOfTenThousandBytesAreReadAndOneMoreIsNot) {
    EXPECT_EQ(errorOf(soundWith("Broken", std::string(10'000, 'x'))), "");
    EXPECT_NE(errorOf(soundWith("Broken", std::string(10'001, 'x')))
                  .find("the text is longer than 10000 bytes"),
              std::string::npos);
}

TEST(LimitsOfDocuments, SixteenMebibytesAreReadAndOneByteMoreIsNot) {
    std::string text = contentOf(sourceFolder() / "tests/core/documents/sound.json");
    text.resize(std::size_t{16} * 1024 * 1024, ' ');
    EXPECT_EQ(errorOf(text), "");
    EXPECT_EQ(errorOf(text + ' '), "the file is larger than 16 MiB");
}
