#include "tests/core/plan/planned.h"

#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::in;
using testing::inset;
using testing::overlay;

using testing::bank;
using testing::oneOpening;
using testing::Planned;
using testing::withChoices;

TEST(FrontSize, IsTheOpeningPlusBothOverlays) {
    // 12 5/8 + 2 × 1/4 = 13 1/8: common practice, no source
    const Planned chest(oneOpening(in(12, 40), in(5)));
    EXPECT_EQ(chest.front(0).openingRect.width(), in(12, 40));
    EXPECT_EQ(chest.front(0).rect.width(), in(13, 8));
    EXPECT_EQ(chest.front(0).rect.height(), in(5, 32));
    EXPECT_EQ(chest.front(0).overlay, PerSide<Length>::all(in(0, 16)));
}

TEST(FrontSize, IsTheOpeningLessBothGapsWhereItIsInset) {
    Project project = oneOpening(in(12, 40), in(5));
    project.fronts.fit = FrontFit::all(inset(in(0, 6)));
    const Planned chest(std::move(project));
    EXPECT_EQ(chest.front(0).rect.width(), in(12, 28)); // 12 5/8 − 2 × 3/32
    EXPECT_EQ(chest.front(0).rect.height(), in(4, 52));
    EXPECT_EQ(chest.front(0).overlay, PerSide<Length>::all(-in(0, 6)));
}

TEST(FrontSize, MixesItsSides) {
    Project project = oneOpening(in(12), in(5));
    // Against a wall at the left; under a moulding at the top.
    project.fronts.fit = {overlay(in(0, 8)), overlay(in(0, 32)), overlay(in(0, 24)),
                          inset(in(0, 8))};
    const Planned chest(std::move(project));
    const FrontPlan& front = chest.front(0);
    EXPECT_EQ(front.rect.left, front.openingRect.left - in(0, 8));
    EXPECT_EQ(front.rect.right, front.openingRect.right + in(0, 32));
    EXPECT_EQ(front.rect.bottom, front.openingRect.bottom - in(0, 24));
    EXPECT_EQ(front.rect.top, front.openingRect.top - in(0, 8));
    EXPECT_EQ(front.fit, (PerSide<Fit>{Fit::Overlay, Fit::Overlay, Fit::Overlay, Fit::Inset}));
}

TEST(FrontSize, FollowsWhatItsOpeningDecides) {
    const Planned chest(withChoices(bank(3), 1, [](FrontChoices& choices) {
        choices.fit.left = overlay(in(0, 40));
        choices.fit.top = inset(in(0, 4));
    }));
    EXPECT_EQ(chest.front(0).overlay, PerSide<Length>::all(in(0, 16)));
    EXPECT_EQ(chest.front(1).overlay,
              (PerSide<Length>{in(0, 40), in(0, 16), in(0, 16), -in(0, 4)}));
    EXPECT_EQ(chest.front(2).overlay, PerSide<Length>::all(in(0, 16)));
}

TEST(FrontSize, LeavesTheBoxFlushWithTheFrameWhereAllSidesOverlay) {
    Project project = oneOpening(in(12), in(5));
    project.fronts.fit.left = {Fit::Gap, in(0, 8)};
    EXPECT_EQ(Planned(std::move(project)).front(0).box.setback, in(0));
}

TEST(FrontSize, SetsTheBoxBackByTheFrontsThicknessWhereASideIsInset) {
    Project project = oneOpening(in(12), in(5));
    project.fronts.fit.top = inset(in(0, 6));
    project.fronts.thickness = in(0, 56);
    EXPECT_EQ(Planned(std::move(project)).front(0).box.setback, in(0, 56));
}

TEST(FrontSize, IsExactOnBothGrids) {
    Project project = oneOpening(Length::fromMicrometres(320'700), in(5, 1));
    project.fronts.fit.left = overlay(Length::fromMicrometres(6'300));
    project.fronts.fit.right = overlay(Length::fromMicrometres(6'400));
    const Planned chest(std::move(project));
    EXPECT_EQ(chest.front(0).rect.width(), Length::fromMicrometres(333'400));
    EXPECT_EQ(chest.front(0).rect.height(), in(5, 33));
}

TEST(FrontSize, MirrorsWithTheCase) {
    const auto project = [](SideFit left, SideFit right) {
        Project result = oneOpening(in(12), in(5));
        result.fronts.fit.left = left;
        result.fronts.fit.right = right;
        return result;
    };
    const Planned one(project(overlay(in(0, 40)), inset(in(0, 7))));
    const Planned other(project(inset(in(0, 7)), overlay(in(0, 40))));
    EXPECT_EQ(one.front(0).rect.left, one.plan.outline.right - other.front(0).rect.right);
    EXPECT_EQ(one.front(0).rect.right, one.plan.outline.right - other.front(0).rect.left);
}

} // namespace
} // namespace frontwright
