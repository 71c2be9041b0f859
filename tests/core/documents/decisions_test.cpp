#include "core/documents/document.h"

#include "files.h"

#include "core/edits/presets.h"
#include "tests/core/edits/edited.h"

#include <gtest/gtest.h>

#include <array>

namespace frontwright {
namespace {

using namespace frontwright::testing;

Project read(const std::string& text) {
    return edited(readDocument(text));
}

/// The small sound document with presets, and two of three fronts that come from one.
std::string withPresets() {
    std::string text = contentOf(sourceFolder() / "tests/core/documents/sound.json");
    const auto replace = [&](std::string_view old, std::string_view by) {
        const std::size_t at = text.find(old);
        ASSERT_NE(at, std::string::npos) << old;
        text.replace(at, old.size(), by);
    };
    replace(R"("case": {)", R"("presets": {
    "hardware": [{ "name": "Deep drawers", "form": "pull-96", "twoPast": "20 in" }]
  },
  "case": {)");
    replace(R"({ "share": 1 })", R"({ "share": 1, "hardware": { "preset": "Deep drawers" } })");
    replace(R"("name": "Middle")",
            R"("hardware": { "departsFrom": "Deep drawers", "form": "knob-32" })");
    return text;
}

PresetOrigin originAt(const Project& project, std::size_t index) {
    return originOf(project, {openingAt(project, index)}, PresetKind::Hardware);
}

TEST(APresetInADocument, GivesItsValueToWhomNamesIt) {
    const Project project = read(withPresets());
    EXPECT_EQ(originAt(project, 0), (PresetOrigin{Origin::Preset, "Deep drawers"}));
    EXPECT_EQ(originAt(project, 1), (PresetOrigin{Origin::Departs, "Deep drawers"}));
    EXPECT_EQ(originAt(project, 2), (PresetOrigin{Origin::TheCase, ""}));
    const auto& hardware = findOpening(project, openingAt(project, 0))->choices.hardware;
    EXPECT_EQ(hardware->form, "pull-96");
    EXPECT_EQ(hardware->twoPast->length, in(20));
    EXPECT_EQ(findOpening(project, openingAt(project, 1))->choices.hardware->form, "knob-32");
}

TEST(APresetInADocument, ChangedByHandReachesAllThatFollow) {
    std::string text = withPresets();
    const std::size_t at = text.find("pull-96");
    text.replace(at, 7, "ring-pull-50");
    const Project project = read(text);
    EXPECT_EQ(originAt(project, 0), (PresetOrigin{Origin::Preset, "Deep drawers"}));
    EXPECT_EQ(findOpening(project, openingAt(project, 0))->choices.hardware->form, "ring-pull-50");
    EXPECT_EQ(findOpening(project, openingAt(project, 1))->choices.hardware->form, "knob-32");
}

TEST(APresetInADocument, IsNamedAndNotCopiedByWhoFollows) {
    const std::string written = writeDocument(read(withPresets()));
    EXPECT_NE(written.find(R"("preset": "Deep drawers")"), std::string::npos) << written;
    EXPECT_NE(written.find(R"("departsFrom": "Deep drawers")"), std::string::npos);
    std::size_t copies = 0;
    for (std::size_t at = 0; (at = written.find("pull-96", at)) != std::string::npos; ++at)
        ++copies;
    EXPECT_EQ(copies, 1U);
    EXPECT_EQ(read(written), read(withPresets()));
}

TEST(ADocument, OfEveryKindOfPresetIsWhatItWasAfterSavingAndOpening) {
    Project project = read(withPresets());
    for (const PresetKind kind : allPresetKinds)
        for (const std::size_t i : {std::size_t{0}, std::size_t{2}})
            project = edited(keepAsPreset(project, {openingAt(project, i)}, kind,
                                          "from front " + std::to_string(i)));
    const std::array<EditTarget, 1> theCase{};
    project = edited(usePreset(project, theCase, PresetKind::Box, "from front 2"));
    EXPECT_EQ(read(writeDocument(project)), project);
}

TEST(ADocument, WithoutPresetsSaysNothingOfThem) {
    const std::string text = contentOf(sourceFolder() / "tests/core/documents/sound.json");
    EXPECT_EQ(writeDocument(read(text)).find("preset"), std::string::npos);
}

TEST(ADocument, KeepsUnknownMembersOfPresetsAndOfWhoFollows) {
    std::string text = withPresets();
    text.replace(text.find(R"({ "preset": "Deep drawers" })"), 28,
                 R"({ "preset": "Deep drawers", "tint": [1] })");
    text.replace(text.find(R"("twoPast")"), 9, R"("shade": {}, "twoPast")");
    const std::string written = writeDocument(read(text));
    EXPECT_NE(written.find(R"("tint": [1])"), std::string::npos) << written;
    EXPECT_NE(written.find(R"("shade": {})"), std::string::npos) << written;
}

} // namespace
} // namespace frontwright
