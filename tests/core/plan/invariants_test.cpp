#include "tests/core/plan/planned.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::banks;
using testing::Planned;

constexpr Length oneNanometre = Length::fromNanometres(1);

/// What brokenInvariant says of a good plan after `harm`.
template<class Harm>
std::string after(Harm harm) {
    const Planned chest(banks(2, 3));
    Plan plan = chest.plan;
    EXPECT_EQ(brokenInvariant(plan), "");
    harm(plan);
    return brokenInvariant(plan);
}

TEST(Invariant, BreaksWhereAPartLeavesTheCase) {
    EXPECT_EQ(after([](Plan& plan) { plan.members[1].rect.right += oneNanometre; }),
              "member 2 does not lie in the case");
}

TEST(Invariant, BreaksWherePartsOverlap) {
    EXPECT_NE(after([](Plan& plan) {
                  plan.members[0].rect.right += oneNanometre;
              }).find("member 1 overlaps"),
              std::string::npos);
}

TEST(Invariant, BreaksWhereSomethingIsLeftOver) {
    EXPECT_EQ(after([](Plan& plan) { plan.members[0].rect.right -= oneNanometre; }),
              "openings and members leave a part of the case over");
    EXPECT_EQ(after([](Plan& plan) { plan.fronts.pop_back(); }),
              "openings and members leave a part of the case over");
}

TEST(Invariant, BreaksWhereAFrontIsNotItsOpeningAndOverlays) {
    EXPECT_NE(after([](Plan& plan) {
                  plan.fronts[2].overlay.top += oneNanometre;
              }).find("front, opening and overlays do not sum"),
              std::string::npos);
}

TEST(Invariant, BreaksWhereABoxDoesNotFillItsOpening) {
    EXPECT_NE(after([](Plan& plan) {
                  plan.fronts[2].box.width += oneNanometre;
              }).find("box, opening and clearances do not sum"),
              std::string::npos);
}

TEST(Invariant, BreaksWhereTheBoxIsNotTiedToItsFront) {
    EXPECT_NE(after([](Plan& plan) {
                  plan.fronts[2].box.wallOnFront.x += oneNanometre;
              }).find("the box's frame is not tied"),
              std::string::npos);
}

TEST(Invariant, BreaksWhereASpacerDoesNotFit) {
    EXPECT_NE(after([](Plan& plan) {
                  plan.spacers[0].width += oneNanometre;
              }).find("spacer and overlays do not sum"),
              std::string::npos);
}

TEST(Invariant, BreaksWhereAStopsSetUpsDiffer) {
    EXPECT_NE(after([](Plan& plan) {
                  plan.stops[0].fromFarEdge += oneNanometre;
              }).find("two set-ups do not sum"),
              std::string::npos);
}

} // namespace
} // namespace frontwright
