#include "core/edits/own_entries.h"

#include "tests/core/plan/small_case.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::smallCatalogue;

Project empty() {
    return newProject(Unit::Inch);
}

template<class Entry>
std::string refusal(const Entry& entry) {
    const Result<Project> kept = keepOwn(empty(), entry);
    return kept.ok() ? std::string() : kept.error().what.english();
}

TEST(OwnEntries, AreAddedChangedAndRemoved) {
    WoodScrew screw = smallCatalogue().woodScrews.front();
    const Result<Project> added = keepOwn(empty(), screw);
    ASSERT_TRUE(added.ok());
    EXPECT_EQ(added.value().own.woodScrews, std::vector{screw});
    screw.name = "Mine";
    const Result<Project> changed = keepOwn(added.value(), screw);
    ASSERT_TRUE(changed.ok());
    EXPECT_EQ(changed.value().own.woodScrews, std::vector{screw});
    const Result<Project> removed = removeOwn(changed.value(), EntryKind::WoodScrew, screw.id);
    ASSERT_TRUE(removed.ok());
    EXPECT_EQ(removed.value(), empty());
}

TEST(OwnEntries, OfEveryKindGoIntoTheirOwnList) {
    const Catalogue small = smallCatalogue();
    Result<Project> project = empty();
    project = keepOwn(project.value(), small.bolts.front());
    project = keepOwn(project.value(), small.hardware.front());
    project = keepOwn(project.value(), small.runners.front());
    project = keepOwn(project.value(), small.species.front());
    ASSERT_TRUE(project.ok());
    const Catalogue& own = project.value().own;
    EXPECT_EQ(own.bolts.size() + own.hardware.size() + own.runners.size() + own.species.size(), 4U);
    const std::pair<EntryKind, std::string> all[]{{EntryKind::Bolt, own.bolts[0].id},
                                                  {EntryKind::Hardware, own.hardware[0].id},
                                                  {EntryKind::Runner, own.runners[0].id},
                                                  {EntryKind::Species, own.species[0].id}};
    for (const auto& [kind, id] : all) {
        project = removeOwn(project.value(), kind, id);
        ASSERT_TRUE(project.ok()) << id;
    }
    EXPECT_EQ(project.value(), empty());
}

TEST(OwnEntries, RefuseWhatCannotBe) {
    WoodScrew screw = smallCatalogue().woodScrews.front();
    screw.id.clear();
    EXPECT_EQ(refusal(screw), "the id is missing");
    screw = smallCatalogue().woodScrews.front();
    screw.headDiameter = Length{};
    EXPECT_EQ(refusal(screw), "the head's diameter must be more than 0");
    screw = smallCatalogue().woodScrews.front();
    std::swap(screw.lengths[0], screw.lengths[1]);
    EXPECT_EQ(refusal(screw), "stocked lengths must ascend, each of them once");
    screw = smallCatalogue().woodScrews.front();
    screw.rootDiameter = screw.shankDiameter * 2;
    EXPECT_EQ(refusal(screw), "the root cannot be thicker than the shank");
    Bolt bolt = smallCatalogue().bolts.front();
    bolt.lengths = {Length{}};
    EXPECT_EQ(refusal(bolt), "a stocked length must be more than 0");
    HardwareForm form = smallCatalogue().hardware.front();
    form.holes.clear();
    EXPECT_EQ(refusal(form), "a handle has one hole at least");
    form = smallCatalogue().hardware.front();
    form.leastEngagement = form.threadDepth * 2;
    EXPECT_NE(refusal(form).find("least engagement"), std::string::npos);
    RunnerKind runner = smallCatalogue().runners.front();
    runner.rating = Mass();
    EXPECT_EQ(refusal(runner), "a rating must be more than 0");
    runner.rating.reset();
    runner.clearanceBelow = -Length::inches(1);
    EXPECT_EQ(refusal(runner), "a clearance cannot be negative");
    Species wood = smallCatalogue().species.front();
    wood.gravity = SpecificGravity{49, GravityBasis::Green};
    EXPECT_NE(refusal(wood).find("0.05"), std::string::npos);
    wood.gravity.reset();
    wood.name = "two\nlines";
    EXPECT_NE(refusal(wood).find("one line"), std::string::npos);
}

TEST(OwnEntries, OfTheProgramAreNotRemoved) {
    const Result<Project> removed = removeOwn(empty(), EntryKind::Bolt, "bolt-8-32");
    ASSERT_FALSE(removed.ok());
    EXPECT_EQ(removed.error().what, "there is no entry \"bolt-8-32\" of your own");
}

} // namespace
} // namespace frontwright
