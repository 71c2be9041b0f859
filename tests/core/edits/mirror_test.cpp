#include "core/edits/banks.h"
#include "core/edits/choices.h"
#include "core/edits/presets.h"
#include "core/edits/uses.h"
#include "tests/core/edits/edited.h"
#include "tests/core/plan/faced.h"
#include "tests/core/plan/planned.h"

#include <gtest/gtest.h>

#include <array>
#include <span>

namespace frontwright {
namespace {

using namespace frontwright::testing;

Project mirrored(const Project& project) {
    const Planned planned(project);
    return edited(mirrorCase(planned.project, planned.plan));
}
Project mirroredPart(const Project& project, std::span<const OpeningId> openings) {
    const Planned planned(project);
    return edited(mirrorRegion(planned.project, planned.plan, openings));
}

TEST(Mirroring, LeavesSeveralFrontsTheBoxBehindThem) {
    // The box is the first front's; after the turn another one stands first.
    Project project = faced(rowOf({share(opening()), share(opening())}, in(26)));
    BoxSpec box = project.fronts.box;
    box.sideThickness = in(0, 40);
    project = edited(setBox(project, {openingAt(project, 0)}, box));
    const Planned before(project), after(mirrored(project));
    EXPECT_EQ(before.front(0).box.sideThickness, in(0, 40));
    EXPECT_EQ(after.front(0).opening, before.front(1).opening);
    EXPECT_EQ(after.front(0).box, before.front(0).box);
    const Planned twice(mirrored(after.project));
    EXPECT_EQ(twice.front(0).box, before.front(0).box);
}

TEST(Mirroring, TurnsWhatAnOpenSpaceKeepsForLater) {
    Project project = rowOf({share(opening()), share(opening())}, in(26));
    const OpeningId first = openingAt(project, 0);
    project = edited(setFrontFit(project, {first}, Side::Left, {Fit::Gap, in(0, 8)}));
    const std::array one{first};
    project = edited(setUse(project, one, OpeningUse::OpenSpace));
    const Project after = mirrored(project);
    EXPECT_EQ(findOpening(after, first)->choices.fit.right, (SideFit{Fit::Gap, in(0, 8)}));
}

TEST(Mirroring, ExchangesLeftAndRight) {
    Project project = rowOf({fixed(in(5), opening({}, "narrow")),
                             share(rows({share(opening()), share(opening())}, in(1)))},
                            in(26));
    project.casework.frame.left = in(1);
    project.casework.frame.right = in(2);
    project.fronts.fit.left = {Fit::Gap, in(0, 8)};
    const Project after = mirrored(project);
    EXPECT_EQ(after.casework.frame.left, WrittenLength(in(2)));
    EXPECT_EQ(after.fronts.fit.right, (SideFit{Fit::Gap, in(0, 8)}));
    EXPECT_EQ(after.fronts.fit.left, project.fronts.fit.right);
    EXPECT_EQ(widths(after), (Sizes{in(20), in(20), in(5)}));
    EXPECT_EQ(findOpening(after, openingAt(after, 2))->name, "narrow");
    EXPECT_EQ(openingAt(after, 2), openingAt(project, 0)) << "ids travel along";
    EXPECT_EQ(openingAt(after, 0), openingAt(project, 1)) << "rows keep their order";
}

TEST(Mirroring, TwiceLeavesAllAsItWas) {
    for (std::uint64_t seed = 1; seed <= 150; ++seed) {
        Project project = randomProject(seed);
        Dice dice(seed);
        project.casework.frame.left = dice.sixtyFourths(32, 128);
        project = withOpenings(std::move(project), [&](Opening& leaf, std::size_t i) {
            if (i % 3 == 0)
                leaf.choices.profile = Profile{ProfileFamily::Chamfer,
                                               in(0, 16),
                                               in(0, 8),
                                               {},
                                               {true, false, i % 2 == 0, true}};
        });
        const Project once = mirrored(project);
        ASSERT_EQ(mirrored(once), project) << seed;
    }
}

TEST(Mirroring, PutsEveryOpeningWhereAMirrorShowsIt) {
    for (std::uint64_t seed = 1; seed <= 150; ++seed) {
        const Project project = anyProject(seed);
        const Planned planned(project);
        const auto result = mirrorCase(planned.project, planned.plan);
        if (!result.ok())
            continue; // a ratio without a reciprocal
        const Project& after = result.value();
        const Length width = project.casework.width;
        for (const PlacedOpening& before : layoutOf(project).openings)
            for (const PlacedOpening& now : layoutOf(after).openings)
                if (now.id == before.id) {
                    EXPECT_EQ(now.rect.bottom, before.rect.bottom) << seed;
                    EXPECT_EQ(now.rect.top, before.rect.top) << seed;
                    EXPECT_LE((now.rect.left - (width - before.rect.right)).magnitude(), in(0, 40))
                        << seed;
                }
    }
}

TEST(Mirroring, TurnsAnArithmeticRunOfColumns) {
    const RegionPtr columnsOfThree =
        columns({place(opening()), place(opening()), place(opening())}, in(1));
    const Project project =
        projectWith(graduated(columnsOfThree, ArithmeticRun{in(1)}), in(26) + in(3), in(20));
    EXPECT_EQ(widths(project), (Sizes{in(7), in(8), in(9)}));
    EXPECT_EQ(widths(mirrored(project)), (Sizes{in(9), in(8), in(7)}));
    EXPECT_EQ(mirrored(mirrored(project)), project);
}

TEST(Mirroring, TurnsARatioOnlyWhereItHasAReciprocal) {
    const auto run = [](std::int64_t millionths) {
        return projectWith(graduated(columns({place(opening()), place(opening())}, in(1)),
                                     GeometricRun{millionths}),
                           in(31), in(20));
    };
    EXPECT_EQ(mirrored(mirrored(run(1'250'000))), run(1'250'000)); // 5/4 and 4/5
    const Planned odd(run(1'900'000));                             // 0.526 315 789 …
    EXPECT_EQ(refusal(mirrorCase(odd.project, odd.plan)),
              "columns that grow by this ratio cannot be mirrored exactly; end the graduation "
              "first; the sizes stay");
}

TEST(Mirroring, TurnsWhatWasPlacedByHandByTheFrontsOwnWidth) {
    Project project = oneOpening(in(12), in(6)); // overlays 1/4 in: the front is 12 1/2 in wide
    const EditTarget one{openingAt(project, 0)};
    HardwareSpec hardware = project.fronts.hardware;
    hardware.placedAt = FrontPoint{in(4), in(3)};
    project = edited(setHardware(project, one, hardware));
    MountingSpec mounting = project.fronts.mounting;
    mounting.pattern = ScrewPattern::ByHand;
    mounting.placed = {{in(2), in(2)}};
    project = edited(setMounting(project, one, mounting));
    const Planned planned(project);
    const Project after = edited(mirrorCase(planned.project, planned.plan));
    const FrontChoices& choices = findOpening(after, *one.opening)->choices;
    EXPECT_EQ(choices.hardware->placedAt, (FrontPoint{in(8, 32), in(3)}));
    EXPECT_EQ(choices.mounting->placed.front(),
              (WallPoint{planned.front(0).box.width - in(2), in(2)}));
    EXPECT_EQ(mirrored(after), project);
}

TEST(Mirroring, KeepsWhoFollowsAProfilePreset) {
    Project project = banks(2, 1);
    const EditTarget one{openingAt(project, 0)};
    const Profile leftOnly{
        ProfileFamily::Chamfer, in(0, 16), in(0, 8), {}, {true, false, false, false}};
    project = edited(setProfile(project, one, leftOnly));
    project = edited(keepAsPreset(project, one, PresetKind::Profile, "At the wall"));
    const Project after = mirrored(project);
    EXPECT_EQ(originOf(after, one, PresetKind::Profile),
              (PresetOrigin{Origin::Preset, "At the wall"}));
    EXPECT_TRUE(after.presets.profile.front().value.sides.right);
    EXPECT_FALSE(after.presets.profile.front().value.sides.left);
}

TEST(MirroringAPart, TurnsTheSmallestPartWithColumnsThatHoldsTheOpenings) {
    const RegionPtr top = columns({fixed(in(4), opening()), share(opening())}, in(1));
    const RegionPtr bottom = columns({fixed(in(6), opening()), share(opening())}, in(1));
    const Project project =
        projectWith(rows({share(top), share(bottom)}, in(1)), in(24), in(24)); // 21 in inside
    const std::vector<OpeningId> inTop{openingAt(project, 1)};
    EXPECT_EQ(widths(mirroredPart(project, inTop)), (Sizes{in(16), in(4), in(6), in(14)}));
    const std::vector<OpeningId> inBoth{openingAt(project, 1), openingAt(project, 2)};
    const Project both = mirroredPart(project, inBoth);
    EXPECT_EQ(widths(both), (Sizes{in(16), in(4), in(14), in(6)}));
    EXPECT_EQ(mirroredPart(both, inBoth), project);
}

TEST(MirroringAPart, IsRefusedWhereThereAreNoColumns) {
    const Planned planned(bank(3));
    const std::vector<OpeningId> one{openingAt(planned.project, 0)};
    EXPECT_EQ(refusal(mirrorRegion(planned.project, planned.plan, one)),
              "there are no columns to mirror; split into columns first");
    EXPECT_FALSE(mirrorRegion(planned.project, planned.plan, {}).ok());
    const std::vector<OpeningId> lost{OpeningId{99}};
    EXPECT_FALSE(mirrorRegion(planned.project, planned.plan, lost).ok());
}

Project likeOtherSide(const Project& project, std::span<const OpeningId> openings) {
    const Planned planned(project);
    return edited(mirrorOnto(planned.project, planned.plan, openings));
}

TEST(OneSideLikeTheOther, DividesTheRightAsTheLeft) {
    // | bank of two | door-high opening | 6 in |  →  | bank | opening | bank mirrored |
    const Project project =
        rowOf({fixed(in(8), rows({fixed(in(5), opening()), share(opening())}, in(1))),
               share(opening()), fixed(in(6), opening({}, "odd"))},
              in(32));
    const std::array left{openingAt(project, 0)};
    const Project after = likeOtherSide(project, left);
    EXPECT_EQ(widths(after), (Sizes{in(8), in(8), in(14), in(8), in(8)}));
    EXPECT_EQ(heights(after)[3], in(5));
    EXPECT_EQ(openingAt(after, 0), openingAt(project, 0));
    EXPECT_EQ(openingAt(after, 2), openingAt(project, 2)) << "the middle stays";
    EXPECT_GE(openingAt(after, 3).number, project.nextId);
}

TEST(OneSideLikeTheOther, TakesTheSideThatIsSelected) {
    const Project project = rowOf({share(opening()), fixed(in(6), opening())}, in(13));
    const std::array right{openingAt(project, 1)};
    EXPECT_EQ(widths(likeOtherSide(project, right)), (Sizes{in(6), in(6)}));
}

TEST(OneSideLikeTheOther, TurnsWhatIsPlacedFromOneSide) {
    Project project = rowOf({share(opening()), share(opening())}, in(27));
    project = withChoices(std::move(project), 0, [&](FrontChoices& choices) {
        choices.hardware = project.fronts.hardware;
        choices.hardware->fittings = {{"label-holder", FittingAcross::FromLeft, in(3),
                                       FittingUpright::FromTop, in(2), std::nullopt}};
        choices.fit.left = SideFit{Fit::Overlay, in(0, 20)};
    });
    const std::array left{openingAt(project, 0)};
    const Project after = likeOtherSide(project, left);
    const FrontChoices& turned = findOpening(after, openingAt(after, 1))->choices;
    EXPECT_EQ(turned.hardware->fittings.front().across, FittingAcross::FromRight);
    EXPECT_EQ(turned.fit.right->amount, WrittenLength(in(0, 20)));
}

TEST(OneSideLikeTheOther, OfASymmetricalCaseChangesOnlyIds) {
    const Project project =
        rowOf({fixed(in(8), opening()), share(opening()), fixed(in(8), opening())}, in(32));
    const std::array left{openingAt(project, 0)};
    EXPECT_EQ(widths(likeOtherSide(project, left)), widths(project));
}

TEST(OneSideLikeTheOther, NeedsColumns) {
    const Planned planned(bankOf({share(opening()), share(opening())}, in(20)));
    const std::array one{openingAt(planned.project, 0)};
    EXPECT_FALSE(mirrorOnto(planned.project, planned.plan, one).ok());
}

} // namespace
} // namespace frontwright
