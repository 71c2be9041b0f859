#include "core/case/divisions.h"
#include "tests/core/case/laid_out.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using namespace frontwright::testing;

Project chest() {
    return projectWith(columns({share(rows({fixed(in(6), opening()), share(opening())}, in(1))),
                                share(opening({}, "letters"))},
                               in(2)),
                       in(40), in(30));
}

TEST(Cases, AreEqualWhereTheirDivisionsAreThoughNothingIsShared) {
    const Project a = chest();
    const Project b = chest();
    ASSERT_NE(a.casework.divisions, b.casework.divisions);
    EXPECT_EQ(a.casework, b.casework);
    EXPECT_EQ(a, b);
}

TEST(Cases, DifferWhereOneDeepOpeningDoes) {
    const Project a = chest();
    const Project renamed = withOpenings(a, [](Opening& leaf, std::size_t index) {
        if (index == 1)
            leaf.name = "linen";
    });
    EXPECT_NE(a.casework, renamed.casework);
    EXPECT_NE(a, withChoices(a, 2, [](FrontChoices& c) { c.thickness = in(1); }));
}

TEST(Cases, DifferInEachOfTheirMeasures) {
    const Case base = chest().casework;
    const auto changed = [&](const auto& change) {
        Case copy = base;
        change(copy);
        return copy;
    };
    EXPECT_NE(base, changed([](Case& c) { c.width = in(41); }));
    EXPECT_NE(base, changed([](Case& c) { c.height = in(41); }));
    EXPECT_NE(base, changed([](Case& c) { c.depth = in(41); }));
    EXPECT_NE(base, changed([](Case& c) { c.frame.bottom = in(3); }));
    EXPECT_NE(base, changed([](Case& c) { c.frameThickness = in(2); }));
    EXPECT_NE(base, changed([](Case& c) { c.grid = in(1); }));
    EXPECT_NE(base, changed([](Case& c) { c.unknowns = {{"colour", "1"}}; }));
    EXPECT_NE(base, changed([](Case& c) { c.divisions = opening(); }));
}

TEST(Cases, WithoutDivisionsCanBeCompared) {
    EXPECT_EQ(Case{}, Case{});
    EXPECT_NE(Case{}, chest().casework);
    EXPECT_NE(chest().casework, Case{});
}

TEST(Children, DifferInRuleOrRegion) {
    const RegionPtr region = opening();
    EXPECT_EQ(share(region), share(opening()));
    EXPECT_NE(share(region), share(region, 2));
    EXPECT_NE(share(region), fixed(in(6), region));
    EXPECT_NE(share(region), share(opening({}, "linen")));
    EXPECT_NE(share(region), share(nullptr));
    EXPECT_EQ(share(nullptr), share(nullptr));
}

} // namespace
} // namespace frontwright
