#include "core/case/child_sizes.h"
#include "core/edits/choices.h"
#include "core/edits/tree_paths.h"
#include "tests/core/edits/edited.h"
#include "tests/core/words/untold.h"

#include <gtest/gtest.h>

#include <set>

// Laws that hold for every tree; fixed seeds.
namespace frontwright {
namespace {

using namespace frontwright::testing;

constexpr std::uint64_t rounds = 150;

MemberId anyMember(const Project& project, Dice& dice) {
    const Layout layout = layoutOf(project);
    const auto last = static_cast<std::int64_t>(layout.members.size()) - 1;
    return layout.members[static_cast<std::size_t>(dice.between(0, last))].id;
}

CaseRect rectOf(const Project& project, MemberId id) {
    for (const PlacedMember& member : layoutOf(project).members)
        if (member.id == id)
            return member.rect;
    ADD_FAILURE() << "no such member";
    return {};
}

TEST(Drag, OfNothingChangesNothing) {
    for (std::uint64_t seed = 1; seed <= rounds; ++seed) {
        Dice dice(seed);
        const Project project = anyProject(seed);
        const DragOutcome outcome = dragged(project, anyMember(project, dice), Length());
        ASSERT_EQ(outcome.project, project) << seed;
        ASSERT_EQ(outcome.project.casework.divisions, project.casework.divisions) << seed;
        ASSERT_EQ(outcome.heldBecause, "");
    }
}

TEST(Drag, ThereAndBackGivesTheSameLayout) {
    std::size_t moved = 0;
    for (std::uint64_t seed = 1; seed <= 3 * rounds; ++seed) {
        Dice dice(seed);
        const Project project = anyProject(seed);
        const MemberId member = anyMember(project, dice);
        const DragOutcome there = dragged(project, member, dice.sixtyFourths(-400, 400));
        const DragOutcome back = dragged(there.project, member, -there.moved);
        moved += there.moved.isZero() ? 0 : 1;
        if (back.moved != -there.moved) // held where something was too small from the start
            EXPECT_NE(back.heldBecause, "") << seed;
        else
            EXPECT_TRUE(sameLayout(project, back.project)) << seed;
    }
    EXPECT_GT(moved, rounds);
}

TEST(Drag, MovesTheMemberByWhatItSays) {
    for (std::uint64_t seed = 1; seed <= rounds; ++seed) {
        Dice dice(seed);
        const Project project = anyProject(seed);
        const MemberId member = anyMember(project, dice);
        const Length delta = dice.sixtyFourths(-2'000, 2'000);
        const DragOutcome outcome = dragged(project, member, delta);
        const CaseRect before = rectOf(project, member);
        const CaseRect after = rectOf(outcome.project, member);
        if (member.number < firstFreeId)
            continue; // an outer member's outer edge stays
        const bool isStile = before.bottom == after.bottom && before.top == after.top;
        const CasePoint by = isStile ? CasePoint{outcome.moved, {}} : CasePoint{{}, outcome.moved};
        EXPECT_EQ(after, before.movedBy(by)) << seed;
        EXPECT_LE(outcome.moved.magnitude(), delta.magnitude() + in(0, 2)) << seed;
        EXPECT_EQ(outcome.moved.nanometres() % project.casework.grid.length.nanometres(), 0);
        EXPECT_EQ(outcome.heldBecause.empty(), (outcome.moved - delta).magnitude() <= in(0, 2))
            << seed << outcome.heldBecause;
    }
}

TEST(Drag, ChangesTwoSizesOfItsSplitAndNoOther) {
    std::size_t checked = 0;
    for (std::uint64_t seed = 1; seed <= 2 * rounds; ++seed) {
        Dice dice(seed);
        const Project project = anyProject(seed);
        const MemberId member = anyMember(project, dice);
        const DragOutcome outcome = dragged(project, member, dice.sixtyFourths(-300, 300));
        const auto place = placeOf(project.casework, member);
        if (!place || outcome.moved.isZero())
            continue;
        const auto sizesAt = [&](const Project& in) {
            const auto found = placeOf(in.casework, member);
            return sizedPlace(in.casework, SizePlace{found->path, found->split, found->member})
                .value()
                .sizes;
        };
        const Sizes before = sizesAt(project);
        const Sizes after = sizesAt(outcome.project);
        int changed = 0;
        for (std::size_t i = 0; i < before.size(); ++i)
            if (before[i] != after[i]) {
                ++changed;
                EXPECT_EQ((after[i] - before[i]).magnitude(), outcome.moved.magnitude()) << seed;
            }
        EXPECT_EQ(changed, 2) << seed;
        ++checked;
    }
    EXPECT_GT(checked, rounds / 2);
}

TEST(Drag, NeverLeavesAnOpeningUnderTheLeast) {
    for (std::uint64_t seed = 1; seed <= 2 * rounds; ++seed) {
        Dice dice(seed);
        const Project project = anyProject(seed); // openings are at least 3 in
        const Length far = dice.between(0, 1) == 0 ? in(500) : -in(500);
        const DragOutcome outcome = dragged(project, anyMember(project, dice), far);
        EXPECT_NE(outcome.heldBecause, "");
        for (const PlacedOpening& opening : layoutOf(outcome.project).openings) {
            EXPECT_GE(opening.rect.width(), project.limits.leastOpening.length) << seed;
            EXPECT_GE(opening.rect.height(), project.limits.leastOpening.length) << seed;
        }
    }
}

std::vector<OpeningId> someOpenings(const Layout& layout, Dice& dice) {
    const auto count = static_cast<std::int64_t>(layout.openings.size());
    const std::int64_t first = dice.between(0, count - 1);
    std::vector<OpeningId> ids;
    for (std::int64_t i = first; i < std::min(count, first + dice.between(1, 3)); ++i)
        ids.push_back(layout.openings[static_cast<std::size_t>(i)].id);
    return ids;
}

Result<Project> anyEdit(const Project& project, Dice& dice) {
    const Layout layout = layoutOf(project);
    const std::vector<OpeningId> ids = someOpenings(layout, dice);
    const OpeningId id = ids.front();
    const MemberId member = anyMember(project, dice);
    const auto direction = static_cast<Direction>(dice.between(0, 1));
    switch (dice.between(0, 11)) {
    case 0:
        return splitOpening(project, id, direction, static_cast<int>(dice.between(2, 4)),
                            dice.sixtyFourths(16, 128));
    case 1:
        return removeMember(project, member);
    case 2:
        return joinOpenings(project, ids);
    case 3:
        return setOpeningSize(project, id, direction, dice.sixtyFourths(100, 1'500));
    case 4:
        return setMemberWidth(project, member, dice.sixtyFourths(8, 200));
    case 5:
        return setHold(project, id, direction, static_cast<Hold>(dice.between(0, 1)));
    case 6:
        return makeEqual(project, ids, direction);
    case 7:
        return graduate(project, id, direction, ArithmeticRun{dice.sixtyFourths(-64, 96)});
    case 8:
        return graduate(project, id, direction, GeometricRun{dice.between(800'000, 1'400'000)});
    case 9:
        return endGraduation(project, id, direction);
    case 10:
        return setCaseSize(project, dice.sixtyFourths(2'000, 8'000),
                           dice.sixtyFourths(2'000, 8'000));
    default:
        return copyDivisions(project, id, ids.back());
    }
}

TEST(EveryEdit, LeavesACaseThatLaysOutWithDistinctIds) {
    std::size_t done = 0;
    for (std::uint64_t seed = 1; seed <= rounds; ++seed) {
        Dice dice(seed);
        Project project = anyProject(seed);
        for (int step = 0; step < 12; ++step) {
            const Project before = project;
            auto result = anyEdit(project, dice);
            ASSERT_EQ(project, before);
            if (!result.ok()) {
                EXPECT_NE(result.error().what, "");
                EXPECT_EQ(untold(result.error().sentence()), std::vector<std::string>{});
                continue;
            }
            ++done;
            project = std::move(result).value();
            const Layout layout = layoutOf(project);
            std::set<std::int32_t> ids;
            for (const PlacedOpening& opening : layout.openings)
                ids.insert(opening.id.number);
            for (const PlacedMember& member : layout.members)
                ids.insert(member.id.number);
            ASSERT_EQ(ids.size(), layout.openings.size() + layout.members.size()) << seed;
            ASSERT_LT(*ids.rbegin(), project.nextId) << seed;
        }
    }
    EXPECT_GT(done, 4 * rounds);
}

TEST(Undo, IsTheKeptProject) {
    // Two equal histories end in equal projects, step for step, with nothing shared.
    for (std::uint64_t seed = 1; seed <= 30; ++seed) {
        Dice first(seed);
        Dice second(seed);
        Project a = anyProject(seed);
        Project b = anyProject(seed);
        for (int step = 0; step < 8; ++step) {
            auto editedA = anyEdit(a, first);
            auto editedB = anyEdit(b, second);
            ASSERT_EQ(editedA.ok(), editedB.ok());
            if (!editedA.ok())
                continue;
            a = std::move(editedA).value();
            b = std::move(editedB).value();
            ASSERT_EQ(a, b) << seed;
        }
    }
}

TEST(Locking, KeepsTheLayoutOrIsRefusedForTheSakeOfARun) {
    std::size_t exact = 0;
    std::size_t rounded = 0;
    for (std::uint64_t seed = 1; seed <= 2 * rounds; ++seed) {
        Dice dice(seed);
        const Project project = anyProject(seed);
        const OpeningId id = someOpenings(layoutOf(project), dice).front();
        const auto direction = static_cast<Direction>(dice.between(0, 1));
        const auto place = sizePlace(project.casework, id, direction);
        if (!place.ok())
            continue;
        const bool wasLocked = holdOf(project, id, direction) == Hold::Locked;
        const Hold other = wasLocked ? Hold::Flexible : Hold::Locked;
        const auto result = setHold(project, id, direction, other);
        if (!result.ok()) {
            EXPECT_GT(demandOf(*place.value().split).places, 0) << result.error().sentence();
            continue;
        }
        EXPECT_EQ(holdOf(result.value(), id, direction), other);
        const Length tolerance = project.casework.grid.length * 8;
        EXPECT_TRUE(nearlySameLayout(project, result.value(), tolerance)) << seed;
        const bool isExact = sameLayout(project, result.value());
        EXPECT_TRUE(isExact || wasLocked || demandOf(*place.value().split).places > 0) << seed;
        ++(isExact ? exact : rounded);
    }
    EXPECT_GT(exact, 50U);
    EXPECT_LT(rounded, exact / 2);
}

} // namespace
} // namespace frontwright
