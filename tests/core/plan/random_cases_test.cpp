#include "core/plan/facing.h"
#include "tests/core/plan/planned.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>

namespace frontwright {
namespace {

using testing::Planned;
using testing::randomProject;

constexpr std::uint64_t seeds = 120;

/// Laws that hold for every case, over cases by chance. The seed is told where one breaks.
template<class Law>
void holdsForRandomCases(Law law) {
    for (std::uint64_t seed = 0; seed < seeds; ++seed) {
        SCOPED_TRACE("seed " + std::to_string(seed));
        const Planned chest(randomProject(seed));
        law(chest, chest.plan);
        if (::testing::Test::HasFailure())
            return;
    }
}

TEST(RandomCase, IsTiledByItsPartsAndSumsEverywhere) {
    holdsForRandomCases(
        [](const Planned&, const Plan& plan) { EXPECT_EQ(brokenInvariant(plan), ""); });
}

TEST(RandomCase, HasNoOverlappingFrontsButThoseOfItsCollisions) {
    holdsForRandomCases([](const Planned&, const Plan& plan) {
        std::map<std::pair<std::uint32_t, std::uint32_t>, CaseRect> told;
        for (const Collision& c : plan.collisions)
            told[{c.first, c.second}] = c.common;
        ASSERT_EQ(told.size(), plan.collisions.size());
        std::size_t found = 0;
        for (std::uint32_t i = 0; i < plan.fronts.size(); ++i)
            for (std::uint32_t j = i + 1; j < plan.fronts.size(); ++j) {
                const CaseRect common = plan.fronts[i].rect.common(plan.fronts[j].rect);
                if (common.width() <= Length{} || common.height() <= Length{})
                    continue;
                ++found;
                ASSERT_TRUE(told.contains({i, j})) << i << " and " << j;
                EXPECT_EQ(told.at({i, j}), common);
            }
        EXPECT_EQ(found, told.size());
    });
}

TEST(RandomCase, GivesEveryGapAtLeastWhatIsAskedFor) {
    holdsForRandomCases([](const Planned& chest, const Plan& plan) {
        for (const FrontPlan& front : plan.fronts)
            for (Side side : allSides) {
                const auto& own = front.choices->fit[side];
                const SideFit& fit = own ? *own : chest.project.fronts.fit[side];
                EXPECT_EQ(front.fit[side], fit.fit);
                const Length gap = front.neighbours[side].gap;
                switch (fit.fit) {
                case Fit::Overlay:
                    EXPECT_EQ(front.overlay[side], fit.amount.length);
                    break;
                case Fit::Inset:
                    EXPECT_EQ(gap, fit.amount.length);
                    break;
                case Fit::Gap:
                    EXPECT_GE(gap, fit.amount.length);
                    break;
                }
            }
    });
}

TEST(RandomCase, HasGapsThatAgreeWithItsSpacersAndReveals) {
    holdsForRandomCases([](const Planned&, const Plan& plan) {
        for (const Spacer& spacer : plan.spacers) {
            const MemberPlan& member = plan.members[spacer.member];
            const FrontPlan& lower = plan.fronts[spacer.lower];
            const FrontPlan& upper = plan.fronts[spacer.upper];
            EXPECT_LE(lower.neighbours[sideOfLower(member.kind)].gap, spacer.width);
            EXPECT_LE(upper.neighbours[sideOfUpper(member.kind)].gap, spacer.width);
            EXPECT_LE(member.reveal.least, spacer.width);
            EXPECT_GT(spacer.along.size(), Length{});
        }
        for (const MemberPlan& member : plan.members) {
            EXPECT_TRUE(member.hasFronts);
            EXPECT_LE(member.reveal.least, member.reveal.greatest);
            EXPECT_LE(member.reveal.greatest, widthOf(member));
        }
    });
}

TEST(RandomCase, HasNeighboursThatFaceBack) {
    holdsForRandomCases([](const Planned&, const Plan& plan) {
        for (std::uint32_t i = 0; i < plan.fronts.size(); ++i)
            for (Side side : allSides) {
                const Neighbour& here = plan.fronts[i].neighbours[side];
                if (!here.front)
                    continue;
                const Neighbour& there = plan.fronts[*here.front].neighbours[opposite(side)];
                EXPECT_EQ(there.member, here.member);
                EXPECT_TRUE(there.front.has_value()) << "if not this front, then a nearer one";
            }
    });
}

TEST(RandomCase, NamesEveryFrontOnce) {
    holdsForRandomCases([](const Planned& chest, const Plan& plan) {
        std::map<std::string, int> labels;
        for (std::size_t i = 0; i < plan.fronts.size(); ++i)
            ++labels[chest.labelOf(i)];
        EXPECT_EQ(labels.size(), plan.fronts.size());
    });
}

/// The same tree seen in a mirror: columns in reverse, left and right fits exchanged.
RegionPtr mirrored(const RegionPtr& region) {
    Region copy = *region;
    if (auto* leaf = std::get_if<Opening>(&copy.content)) {
        std::swap(leaf->choices.fit.left, leaf->choices.fit.right);
    } else {
        auto& split = std::get<Split>(copy.content);
        for (Child& child : split.children)
            child.region = mirrored(child.region);
        if (split.direction == Direction::Columns) {
            std::reverse(split.children.begin(), split.children.end());
            std::reverse(split.members.begin(), split.members.end());
            split.remainderChild = split.children.size() - 1 - split.remainderChild;
        }
    }
    return std::make_shared<const Region>(std::move(copy));
}

TEST(RandomCase, MirrorsItsFronts) {
    holdsForRandomCases([](const Planned& chest, const Plan& plan) {
        Project project = chest.project;
        project.casework.divisions = mirrored(project.casework.divisions);
        std::swap(project.fronts.fit.left, project.fronts.fit.right);
        const Planned other(std::move(project));
        ASSERT_EQ(other.plan.fronts.size(), plan.fronts.size());
        EXPECT_EQ(other.plan.spacers.size(), plan.spacers.size());
        EXPECT_EQ(other.plan.stops.size(), plan.stops.size());
        EXPECT_EQ(other.plan.collisions.size(), plan.collisions.size());
        const Length width = plan.outline.width();
        // An odd nanometre goes to the right front in both, so sides may differ by one.
        const auto isNear = [](Length a, Length b) {
            return (a - b).magnitude() <= Length::fromNanometres(1);
        };
        for (const FrontPlan& front : plan.fronts) {
            const FrontPlan* image = other.plan.frontOf(front.opening);
            ASSERT_NE(image, nullptr);
            EXPECT_TRUE(isNear(image->rect.left, width - front.rect.right));
            EXPECT_TRUE(isNear(image->rect.right, width - front.rect.left));
            EXPECT_EQ(image->rect.bottom, front.rect.bottom);
            EXPECT_EQ(image->rect.top, front.rect.top);
        }
    });
}

TEST(RandomCases, AreWorthTheirRun) {
    std::size_t fronts = 0, collisions = 0, spacers = 0;
    for (std::uint64_t seed = 0; seed < seeds; ++seed) {
        const Planned chest{randomProject(seed)};
        fronts += chest.plan.fronts.size();
        collisions += chest.plan.collisions.size();
        spacers += chest.plan.spacers.size();
    }
    EXPECT_GT(fronts, 1'000U);
    EXPECT_GT(collisions, 50U);
    EXPECT_GT(spacers, 300U);
}

TEST(LargeCase, HoldsTheSameLaws) {
    const Planned chest(testing::banks(40, 50));
    EXPECT_EQ(chest.plan.fronts.size(), 2'000U);
    EXPECT_EQ(chest.plan.spacers.size(), 40U * 49U + 39U * 50U);
    EXPECT_EQ(chest.plan.stops.size(), 2U * (40U + 50U));
    EXPECT_EQ(brokenInvariant(chest.plan), "");
}

} // namespace
} // namespace frontwright
