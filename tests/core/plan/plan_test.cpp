#include "core/plan/plan.h"

#include "tests/core/plan/planned.h"
#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::in;

using testing::bank;
using testing::banks;
using testing::oneOpening;
using testing::Planned;
using testing::smallCatalogue;
using testing::withChoices;
using testing::withOpenings;

Error errorOf(const Project& project) {
    const auto result = makePlan(project, smallCatalogue());
    return result.ok() ? Error{} : result.error();
}

TEST(Plan, HasOneFrontForEachOpeningInTheLayoutsOrder) {
    const Planned chest(banks(3, 4));
    const auto layout = layOut(chest.project.casework);
    ASSERT_EQ(chest.plan.fronts.size(), 12U);
    for (std::size_t i = 0; i < 12; ++i) {
        EXPECT_EQ(chest.front(i).opening, layout.value().openings[i].id);
        EXPECT_EQ(chest.front(i).openingRect, layout.value().openings[i].rect);
    }
    EXPECT_EQ(chest.plan.members.size(), 4U + 2U + 3U * 3U);
    EXPECT_EQ(chest.plan.members[0].id, leftStile);
    EXPECT_EQ(chest.plan.members[3].kind, MemberKind::OuterRail);
}

TEST(Plan, FindsFrontsAndMembersByTheirIds) {
    const Planned chest(testing::randomProject(4));
    ASSERT_GT(chest.plan.fronts.size(), 3U);
    for (const FrontPlan& front : chest.plan.fronts)
        EXPECT_EQ(chest.plan.frontOf(front.opening), &front);
    for (const MemberPlan& member : chest.plan.members)
        EXPECT_EQ(chest.plan.memberOf(member.id), &member);
    EXPECT_EQ(chest.plan.frontOf(OpeningId{leftStile.number}), nullptr);
    EXPECT_EQ(chest.plan.frontOf(OpeningId{1'000'000}), nullptr);
    EXPECT_EQ(chest.plan.memberOf(MemberId{0}), nullptr);
    EXPECT_EQ(Plan{}.frontOf(OpeningId{5}), nullptr);
}

TEST(Plan, RefersIntoItsProjectAndCatalogue) {
    const Planned chest(withChoices(bank(2), 1, [](FrontChoices& choices) {
        choices.profile =
            Profile{ProfileFamily::Chamfer, in(1), in(0, 16), {}, PerSide<bool>::all(true)};
    }));
    EXPECT_EQ(chest.front(0).profile, &chest.project.fronts.profile);
    EXPECT_EQ(chest.front(1).profile->family, ProfileFamily::Chamfer);
    EXPECT_EQ(chest.front(1).profile, &*chest.front(1).choices->profile);
    EXPECT_EQ(chest.front(0).mounting.screw, chest.catalogue.woodScrew("wood-screw-8"));
    EXPECT_EQ(chest.front(0).hardware->form, chest.catalogue.hardwareForm("knob-32"));
}

TEST(Plan, TakesWhatAnOpeningDecidesBeforeTheCases) {
    const Planned chest(withChoices(bank(3), 1, [](FrontChoices& choices) {
        choices.thickness = WrittenLength(in(0, 56));
        choices.profile =
            Profile{ProfileFamily::Chamfer, in(1), in(0, 16), {}, PerSide<bool>::all(true)};
        BoxSpec box = testing::smallDefaults().box;
        box.runner = "side-mounted";
        choices.box = box;
        MountingSpec mounting = testing::smallDefaults().mounting;
        mounting.recess = in(0, 12);
        choices.mounting = mounting;
        HardwareSpec hardware;
        hardware.form = "pull-96";
        choices.hardware = hardware;
    }));
    const FrontPlan& own = chest.front(1);
    EXPECT_EQ(own.thickness, in(0, 56));
    EXPECT_EQ(own.field, FrontRect::atOrigin(own.rect.width(), own.rect.height()).inset(in(1)));
    EXPECT_EQ(own.box.sideClearance, in(0, 32));
    EXPECT_EQ(own.mounting.recess, in(0, 12));
    EXPECT_EQ(own.hardware->form->id, "pull-96");
    for (std::size_t other : {0U, 2U}) {
        EXPECT_EQ(chest.front(other).thickness, in(0, 48));
        EXPECT_EQ(chest.front(other).box.sideClearance, in(0, 4));
        EXPECT_EQ(chest.front(other).mounting.recess, in(0, 8));
        EXPECT_EQ(chest.front(other).hardware->form->id, "knob-32");
    }
}

TEST(Plan, HasNoHardwareWhereNoFormIsChosen) {
    Project project = oneOpening(in(12), in(5));
    project.fronts.hardware.form.clear();
    EXPECT_FALSE(Planned(std::move(project)).front(0).hardware.has_value());
}

TEST(Plan, SolvesTheThinRimForEachProfileAndThickness) {
    // Wide chamfers, so that the rim bounds where screws may go. Twelve profiles in turn, so that
    // more are needed than are remembered.
    const Project project = withOpenings(banks(4, 6), [](Opening& leaf, std::size_t i) {
        leaf.choices.profile = Profile{ProfileFamily::Chamfer,
                                       in(3),
                                       in(0, 16 + static_cast<std::int64_t>(i % 12)),
                                       {},
                                       PerSide<bool>::all(true)};
        // And one profile in two thicknesses, one after the other.
        if (i >= 12)
            leaf.choices.profile =
                Profile{ProfileFamily::Chamfer, in(3), in(0, 32), {}, PerSide<bool>::all(true)};
        leaf.choices.thickness = WrittenLength(i % 2 == 0 ? in(0, 48) : in(0, 56));
    });
    const Planned chest(project);
    for (std::size_t i = 0; i < chest.plan.fronts.size(); ++i) {
        const FrontPlan& front = chest.front(i);
        const FrontRect outline = FrontRect::atOrigin(front.rect.width(), front.rect.height());
        const FrontStock stock{outline, front.field, front.thickness, front.profile,
                               front.box.wallThickness};
        const auto alone = planMounting(project.fronts.mounting, chest.catalogue, project.limits,
                                        {front.box, stock, &*front.hardware, nullptr, in(0, 8)});
        ASSERT_TRUE(alone.ok());
        EXPECT_EQ(front.mounting, alone.value()) << "front " << i;
    }
}

TEST(Plan, IsTheSameForTheSameProject) {
    const Project project = testing::randomProject(9);
    const Planned one(project), other(project);
    ASSERT_EQ(one.plan.fronts.size(), other.plan.fronts.size());
    for (std::size_t i = 0; i < one.plan.fronts.size(); ++i) {
        EXPECT_EQ(one.front(i).rect, other.front(i).rect);
        EXPECT_EQ(one.front(i).box, other.front(i).box);
        EXPECT_EQ(one.front(i).mounting.holes, other.front(i).mounting.holes);
    }
}

TEST(Plan, TellsWhichIdIsNotInTheCatalogueAndWhere) {
    Project project = bank(2);
    project.fronts.mounting.screw = "wood-screw-99";
    EXPECT_EQ(errorOf(project).place, "front A1");
    EXPECT_NE(errorOf(project).what.english().find("\"wood-screw-99\""), std::string::npos);

    project = withChoices(bank(3), 2, [](FrontChoices& choices) {
        HardwareSpec hardware;
        hardware.form = "knob-33";
        choices.hardware = hardware;
    });
    EXPECT_EQ(errorOf(project).place, "front A3");
    EXPECT_NE(errorOf(project).what.english().find("\"knob-33\""), std::string::npos);

    project = bank(1);
    project.fronts.box.runner = "flying";
    EXPECT_NE(errorOf(project).what.english().find("\"flying\""), std::string::npos);

    project = bank(1);
    project.fronts.stock.species = "ironwood";
    EXPECT_NE(errorOf(project).what.english().find("\"ironwood\""), std::string::npos);
}

TEST(Plan, NeedsNothingOfTheCatalogueThatEveryOpeningDecidesOtherwise) {
    Project project = bank(2);
    const MountingSpec mounting = project.fronts.mounting;
    project.fronts.mounting.screw = "wood-screw-99";
    EXPECT_TRUE(
        makePlan(withOpenings(project, [&](Opening& leaf,
                                           std::size_t) { leaf.choices.mounting = mounting; }),
                 smallCatalogue())
            .ok());
}

TEST(Plan, TellsAHandleWhoseBoltIsMissing) {
    Catalogue catalogue = smallCatalogue();
    catalogue.bolts.clear();
    const auto result = makePlan(bank(1), catalogue);
    ASSERT_FALSE(result.ok());
    EXPECT_NE(result.error().what.english().find("\"bolt-8-32\""), std::string::npos);
}

TEST(Plan, NeedsNoRunnerWhereTheBoxGivesItsClearances) {
    Project project = bank(1);
    project.fronts.box.runner.clear();
    EXPECT_NE(errorOf(project), Error{});
    project.fronts.box.sideClearance = WrittenLength(in(0, 8));
    project.fronts.box.clearanceBelow = WrittenLength(in(0, 8));
    EXPECT_NE(errorOf(project), Error{}) << "nothing tells what is left above";
    project.fronts.box.height = WrittenLength(in(4));
    EXPECT_EQ(errorOf(project), Error{});
}

TEST(Plan, IsNoneWhereTheCaseHasNoRoom) {
    Project project = bank(3);
    project.casework.height = in(4);
    EXPECT_NE(errorOf(project), Error{});
}

} // namespace
} // namespace frontwright
