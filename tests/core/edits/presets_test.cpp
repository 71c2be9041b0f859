#include "core/edits/presets.h"

#include "tests/core/edits/edited.h"
#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::theCase;

using namespace frontwright::testing;

constexpr PresetKind hardware = PresetKind::Hardware;

EditTarget front(const Project& project, std::size_t index) {
    return {openingAt(project, index)};
}
HardwareSpec handle(std::string form) {
    HardwareSpec spec;
    spec.form = std::move(form);
    return spec;
}
const HardwareSpec& hardwareAt(const Project& project, std::size_t index) {
    const FrontChoices& choices = findOpening(project, openingAt(project, index))->choices;
    return choices.hardware ? *choices.hardware : project.fronts.hardware;
}
PresetOrigin originAt(const Project& project, std::size_t index) {
    return originOf(project, front(project, index), hardware);
}

/// A bank of four: the first two follow "Deep drawers", the third departs from it.
Project deepDrawers() {
    Project project = bank(4);
    project = edited(setHardware(project, front(project, 0), handle("pull-96")));
    project = edited(keepAsPreset(project, front(project, 0), hardware, "Deep drawers"));
    const std::vector<EditTarget> targets{front(project, 1), front(project, 2)};
    project = edited(usePreset(project, targets, hardware, "Deep drawers"));
    HardwareSpec other = handle("pull-96");
    other.twoAtPercent = 30;
    return edited(setHardware(project, front(project, 2), other));
}

TEST(APreset, IsMadeFromWhatHoldsForAFront) {
    Project project = bank(2);
    project = edited(keepAsPreset(project, front(project, 1), hardware, "Knobs"));
    EXPECT_EQ(findPreset(project.presets.hardware, "Knobs")->value, project.fronts.hardware);
    EXPECT_EQ(originAt(project, 1), (PresetOrigin{Origin::Preset, "Knobs"}));
    EXPECT_EQ(originAt(project, 0), (PresetOrigin{Origin::TheCase, ""}));
    project = edited(keepAsPreset(project, theCase, PresetKind::Box, "Dovetailed"));
    EXPECT_EQ(originOf(project, theCase, PresetKind::Box),
              (PresetOrigin{Origin::Preset, "Dovetailed"}));
    EXPECT_EQ(project.presets.box.front().value, project.fronts.box);
}

TEST(APreset, HasANameOfItsOwn) {
    const Project project = deepDrawers();
    EXPECT_EQ(refusal(keepAsPreset(project, theCase, hardware, "Deep drawers")),
              "there is already a preset \"Deep drawers\"; choose another name");
    EXPECT_EQ(refusal(keepAsPreset(project, theCase, hardware, "  ")),
              "a preset needs a name; write what it is for, such as Deep drawers");
    EXPECT_FALSE(keepAsPreset(project, theCase, hardware, "two\nlines").ok());
    EXPECT_FALSE(keepAsPreset(project, {OpeningId{99}}, hardware, "New").ok());
    EXPECT_TRUE(keepAsPreset(project, theCase, PresetKind::Box, "Deep drawers").ok())
        << "another kind's names do not matter";
}

TEST(APreset, IsUsedByManyFrontsInOneEdit) {
    const Project project = deepDrawers();
    EXPECT_EQ(originAt(project, 0), (PresetOrigin{Origin::Preset, "Deep drawers"}));
    EXPECT_EQ(originAt(project, 1), (PresetOrigin{Origin::Preset, "Deep drawers"}));
    EXPECT_EQ(originAt(project, 2), (PresetOrigin{Origin::Departs, "Deep drawers"}));
    EXPECT_EQ(originAt(project, 3), (PresetOrigin{Origin::TheCase, ""}));
    const std::vector<EditTarget> all{theCase, front(project, 3)};
    const Project used = edited(usePreset(project, all, hardware, "Deep drawers"));
    EXPECT_EQ(used.fronts.hardware.form, "pull-96");
    EXPECT_EQ(originAt(used, 3), (PresetOrigin{Origin::Preset, "Deep drawers"}));
    EXPECT_EQ(refusal(usePreset(project, all, hardware, "Shallow")),
              "there is no preset \"Shallow\"; choose a preset that is there");
}

TEST(Fronts, HoldTheSameWhereverItComesFrom) {
    const Project project =
        edited(makeOwn(deepDrawers(), std::vector{front(bank(4), 1)}, hardware));
    const std::vector<EditTarget> same{front(project, 0), front(project, 1)};
    EXPECT_TRUE(holdTheSame(project, same, hardware)) << "one follows, the other has its own";
    const std::vector<EditTarget> other{front(project, 0), front(project, 2)};
    EXPECT_FALSE(holdTheSame(project, other, hardware));
    const std::vector<EditTarget> withCase{front(project, 3), theCase};
    EXPECT_TRUE(holdTheSame(project, withCase, hardware));
    EXPECT_TRUE(holdTheSame(project, other, PresetKind::Box));
}

TEST(ChangingAPreset, ChangesAllThatFollowAndNoOther) {
    const Project project = deepDrawers();
    const Project after = edited(changePreset(project, "Deep drawers", handle("ring-pull-50")));
    EXPECT_EQ(hardwareAt(after, 0).form, "ring-pull-50");
    EXPECT_EQ(hardwareAt(after, 1).form, "ring-pull-50");
    EXPECT_EQ(hardwareAt(after, 2), hardwareAt(project, 2)) << "departs, and keeps its value";
    EXPECT_EQ(hardwareAt(after, 3), project.fronts.hardware);
    EXPECT_EQ(originAt(after, 1), (PresetOrigin{Origin::Preset, "Deep drawers"}));
    EXPECT_EQ(originAt(after, 2), (PresetOrigin{Origin::Departs, "Deep drawers"}));
    const Project back = edited(changePreset(after, "Deep drawers", handle("pull-96")));
    EXPECT_EQ(back, project);
    EXPECT_FALSE(changePreset(project, "Shallow", handle("pull-96")).ok());
    HardwareSpec impossible = handle("pull-96");
    impossible.twoAtPercent = 60;
    EXPECT_FALSE(changePreset(project, "Deep drawers", impossible).ok());
}

TEST(ChangingAPreset, ReachesTheCaseAndAllThatFollowTheCase) {
    Project project = bank(3);
    project = edited(keepAsPreset(project, theCase, PresetKind::Mounting, "Plain"));
    MountingSpec six = project.fronts.mounting;
    six.pattern = ScrewPattern::Six;
    project = edited(changePreset(project, "Plain", six));
    EXPECT_EQ(project.fronts.mounting, six);
}

TEST(AFrontThatDeparts, GoesBackByOneEdit) {
    const Project project = deepDrawers();
    std::vector<EditTarget> all;
    for (std::size_t i = 0; i < 4; ++i)
        all.push_back(front(project, i));
    const Project back = edited(backToPreset(project, all, hardware));
    EXPECT_EQ(originAt(back, 2), (PresetOrigin{Origin::Preset, "Deep drawers"}));
    EXPECT_EQ(hardwareAt(back, 2), hardwareAt(back, 0));
    EXPECT_EQ(originAt(back, 3), (PresetOrigin{Origin::TheCase, ""})) << "departs from none";
    EXPECT_EQ(edited(backToPreset(back, all, hardware)), back);
}

TEST(AFrontThatDeparts, MayChangeItsPreset) {
    const Project project = deepDrawers();
    const Project after = edited(changePresetTo(project, front(project, 2), hardware));
    for (std::size_t i = 0; i < 3; ++i) {
        EXPECT_EQ(originAt(after, i), (PresetOrigin{Origin::Preset, "Deep drawers"})) << i;
        EXPECT_EQ(hardwareAt(after, i), hardwareAt(project, 2)) << i;
    }
    EXPECT_FALSE(changePresetTo(project, front(project, 0), hardware).ok());
    EXPECT_FALSE(changePresetTo(project, theCase, hardware).ok());
}

TEST(AFront, CanMakeWhatItFollowsItsOwn) {
    const Project project = deepDrawers();
    const std::vector<EditTarget> two{front(project, 1), front(project, 3)};
    const Project own = edited(makeOwn(project, two, hardware));
    EXPECT_EQ(originAt(own, 1), (PresetOrigin{Origin::Own, ""}));
    EXPECT_EQ(originAt(own, 3), (PresetOrigin{Origin::Own, ""}));
    EXPECT_EQ(hardwareAt(own, 3), project.fronts.hardware);
    const Project after = edited(changePreset(own, "Deep drawers", handle("knob-40")));
    EXPECT_EQ(hardwareAt(after, 1).form, "pull-96");
}

TEST(AFront, ThatFollowsTheCaseAgainForgetsItsPreset) {
    const Project project = deepDrawers();
    const std::vector<OpeningId> ids{openingAt(project, 0), openingAt(project, 2)};
    const Project after = edited(followCase(project, ids, hardware));
    EXPECT_EQ(findOpening(after, ids[0])->choices, FrontChoices{});
    EXPECT_EQ(originAt(after, 2), (PresetOrigin{Origin::TheCase, ""}));
    EXPECT_EQ(edited(clearChoice(project, ids[0], Choice::Hardware)),
              edited(followCase(project, std::span(ids).first(1), hardware)));
}

TEST(RenamingAPreset, TakesItsUsersAlong) {
    const Project project = deepDrawers();
    const Project after = edited(renamePreset(project, hardware, "Deep drawers", "Below"));
    EXPECT_EQ(presetNames(after.presets, hardware), std::vector<std::string>{"Below"});
    EXPECT_EQ(originAt(after, 0), (PresetOrigin{Origin::Preset, "Below"}));
    EXPECT_EQ(originAt(after, 2), (PresetOrigin{Origin::Departs, "Below"}));
    EXPECT_EQ(edited(renamePreset(after, hardware, "Below", "Deep drawers")), project);
    EXPECT_EQ(edited(renamePreset(project, hardware, "Deep drawers", "Deep drawers")), project);
    EXPECT_FALSE(renamePreset(project, hardware, "Shallow", "Below").ok());
    const Project two = edited(keepAsPreset(project, theCase, hardware, "Knobs"));
    EXPECT_FALSE(renamePreset(two, hardware, "Knobs", "Deep drawers").ok());
}

TEST(RemovingAPreset, LeavesItsUsersTheirValues) {
    const Project project = deepDrawers();
    const Project after = edited(removePreset(project, hardware, "Deep drawers"));
    EXPECT_TRUE(after.presets.hardware.empty());
    for (std::size_t i = 0; i < 3; ++i) {
        EXPECT_EQ(hardwareAt(after, i), hardwareAt(project, i)) << i;
        EXPECT_EQ(originAt(after, i), (PresetOrigin{Origin::Own, ""})) << i;
    }
    EXPECT_FALSE(removePreset(after, hardware, "Deep drawers").ok());
}

/// Every name that a front or the case bears stands for a preset, and followers have its value.
bool isConsistent(const Project& project) {
    bool consistent = true;
    const auto check = [&](const PresetOrigin& origin, PresetKind kind) {
        consistent = consistent &&
                     (origin.preset.empty() || hasPreset(project.presets, kind, origin.preset));
    };
    for (const PresetKind kind : allPresetKinds) {
        check(originOf(project, theCase, kind), kind);
        for (const PlacedOpening& opening : layoutOf(project).openings)
            check(originOf(project, {opening.id}, kind), kind);
    }
    return consistent;
}

Result<Project> anyPresetEdit(const Project& project, Dice& dice) {
    const PresetKind kind = allPresetKinds[static_cast<std::size_t>(dice.between(0, 3))];
    const auto anyTarget = [&] {
        const auto i = dice.between(0, 6);
        return i == 6 ? theCase : front(project, static_cast<std::size_t>(i));
    };
    const std::vector<EditTarget> targets{anyTarget(), anyTarget()};
    const std::string name = "preset " + std::to_string(dice.between(1, 3));
    switch (dice.between(0, 8)) {
    case 0:
    case 1:
        return keepAsPreset(project, targets[0], kind, name);
    case 2:
    case 3:
        return usePreset(project, targets, kind, name);
    case 4:
        return setHardware(project, targets[0],
                           handle("form " + std::to_string(dice.between(1, 3))));
    case 5:
        return backToPreset(project, targets, kind);
    case 6:
        return renamePreset(project, kind, name, "preset " + std::to_string(dice.between(1, 3)));
    case 7:
        return removePreset(project, kind, name);
    default:
        return changePreset(project, name, handle("form " + std::to_string(dice.between(1, 3))));
    }
}

TEST(EveryPresetEdit, LeavesNamesThatStandForPresets) {
    std::size_t done = 0;
    for (std::uint64_t seed = 1; seed <= 60; ++seed) {
        Dice dice(seed);
        Project project = banks(2, 3);
        for (int step = 0; step < 40; ++step) {
            const Project before = project;
            auto next = anyPresetEdit(project, dice);
            ASSERT_EQ(project, before);
            if (!next.ok())
                continue;
            ++done;
            project = std::move(next).value();
            ASSERT_TRUE(isConsistent(project)) << seed << ' ' << step;
            ASSERT_TRUE(sameLayout(project, before));
        }
    }
    EXPECT_GT(done, 600U);
}

} // namespace
} // namespace frontwright
