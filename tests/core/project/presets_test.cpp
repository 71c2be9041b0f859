#include "core/project/presets.h"

#include <gtest/gtest.h>

#include <set>

namespace frontwright {
namespace {

const HardwareSpec knob = [] {
    HardwareSpec spec;
    spec.form = "knob-32";
    return spec;
}();
const HardwareSpec pull = [] {
    HardwareSpec spec;
    spec.form = "pull-96";
    return spec;
}();

Presets deepDrawers() {
    Presets presets;
    presets.hardware.push_back({"Deep drawers", pull, {}});
    presets.hardware.push_back({"Small drawers", knob, {}});
    presets.box.push_back({"Dovetailed", {}, {}});
    return presets;
}

TEST(Presets, AreKnownByKindAndName) {
    const Presets presets = deepDrawers();
    EXPECT_EQ(presetNames(presets, PresetKind::Hardware),
              (std::vector<std::string>{"Deep drawers", "Small drawers"}));
    EXPECT_EQ(presetNames(presets, PresetKind::Box), std::vector<std::string>{"Dovetailed"});
    EXPECT_TRUE(presetNames(presets, PresetKind::Profile).empty());
    EXPECT_TRUE(hasPreset(presets, PresetKind::Hardware, "Deep drawers"));
    EXPECT_FALSE(hasPreset(presets, PresetKind::Mounting, "Deep drawers"));
    EXPECT_FALSE(hasPreset(presets, PresetKind::Hardware, "deep drawers"));
    EXPECT_EQ(findPreset(presets.hardware, "Small drawers")->value, knob);
    EXPECT_EQ(findPreset(presets.hardware, ""), nullptr);
}

TEST(AnOpening, FollowsTheCaseAPresetOrNothing) {
    const Presets presets = deepDrawers();
    FrontChoices choices;
    const auto origin = [&] { return originOf(presets, choices, PresetKind::Hardware); };
    EXPECT_EQ(origin(), (PresetOrigin{Origin::TheCase, ""}));
    choices.hardware = pull;
    EXPECT_EQ(origin(), (PresetOrigin{Origin::Own, ""})) << "the same value, but not from it";
    setPresetName(choices, PresetKind::Hardware, "Deep drawers");
    EXPECT_EQ(origin(), (PresetOrigin{Origin::Preset, "Deep drawers"}));
    choices.hardware->twoAtPercent = 30;
    EXPECT_EQ(origin(), (PresetOrigin{Origin::Departs, "Deep drawers"}));
    EXPECT_EQ(originOf(presets, choices, PresetKind::Box), (PresetOrigin{Origin::TheCase, ""}));
}

TEST(TheCase, FollowsAPresetOrNothing) {
    const Presets presets = deepDrawers();
    FrontDefaults fronts;
    EXPECT_EQ(originOf(presets, fronts, PresetKind::Hardware), (PresetOrigin{Origin::Own, ""}));
    fronts.presets.hardware = "Small drawers";
    EXPECT_EQ(originOf(presets, fronts, PresetKind::Hardware),
              (PresetOrigin{Origin::Departs, "Small drawers"}));
    fronts.hardware = knob;
    EXPECT_EQ(originOf(presets, fronts, PresetKind::Hardware),
              (PresetOrigin{Origin::Preset, "Small drawers"}));
}

TEST(PresetNames, OfAnOpeningAreKeptOnlyWhereThereIsOne) {
    FrontChoices choices;
    setPresetName(choices, PresetKind::Profile, "");
    EXPECT_EQ(choices, FrontChoices{});
    setPresetName(choices, PresetKind::Profile, "Ogee");
    setPresetName(choices, PresetKind::Mounting, "Six");
    EXPECT_EQ(presetName(choices, PresetKind::Profile), "Ogee");
    EXPECT_EQ(presetName(choices, PresetKind::Mounting), "Six");
    EXPECT_EQ(presetName(choices, PresetKind::Hardware), "");
    setPresetName(choices, PresetKind::Profile, "");
    EXPECT_EQ(presetName(choices, PresetKind::Mounting), "Six");
    setPresetName(choices, PresetKind::Mounting, "");
    EXPECT_EQ(choices, FrontChoices{});
}

TEST(PresetNames, StandApartForEveryKind) {
    PresetNames names;
    EXPECT_TRUE(names.isEmpty());
    std::set<const std::string*> places;
    for (const PresetKind kind : allPresetKinds)
        places.insert(&names[kind]);
    EXPECT_EQ(places.size(), allPresetKinds.size());
    names[PresetKind::Box] = "Dovetailed";
    EXPECT_EQ(names.box, "Dovetailed");
    EXPECT_FALSE(names.isEmpty());
}

} // namespace
} // namespace frontwright
