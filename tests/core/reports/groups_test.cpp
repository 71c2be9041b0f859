#include "core/reports/groups.h"

#include "tests/core/plan/planned.h"

#include <gtest/gtest.h>

#include <algorithm>

using namespace frontwright;
using namespace frontwright::testing;

namespace {

std::vector<std::string> titles(const Planned& planned) {
    std::vector<std::string> result;
    for (const QuantityGroup& group : grouped(planned.project, planned.plan))
        result.push_back(group.title.english());
    return result;
}

} // namespace

TEST(Groups, OfABankOfTwoAreItsPartsInOrder) {
    const std::vector<std::string> expected{"Case",
                                            "Left stile",
                                            "Right stile",
                                            "Bottom rail",
                                            "Top rail",
                                            "Rail 1",
                                            "Front A1",
                                            "Front A2",
                                            "Spacer between A2 and A1",
                                            "Stop, left of A1",
                                            "Stop, right of A1",
                                            "Stop, top of A1",
                                            "Stop, left of A2",
                                            "Stop, right of A2",
                                            "Stop, bottom of A2"};
    EXPECT_EQ(titles(Planned(bank(2))), expected);
}

TEST(Groups, NameStilesRailsAndNamedFronts) {
    Project project =
        projectWith(columns({share(opening({}, "Cutlery")), share(opening())}, Length::inches(2)),
                    Length::inches(30), Length::inches(12));
    const auto found = titles(Planned(project));
    const auto has = [&](const char* title) {
        return std::find(found.begin(), found.end(), title) != found.end();
    };
    EXPECT_TRUE(has("Stile 1"));
    EXPECT_TRUE(has("Front Cutlery"));
    EXPECT_TRUE(has("Spacer between Cutlery and B1"));
}

TEST(Groups, HoldEveryNumberThatExistsOnce) {
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        const Planned planned(randomProject(seed));
        std::vector<Quantity> listed;
        for (const QuantityGroup& group : grouped(planned.project, planned.plan)) {
            EXPECT_FALSE(group.quantities.empty());
            for (const Quantity quantity : group.quantities) {
                EXPECT_TRUE(measureOf(planned.plan, quantity)) << key(quantity.kind);
                EXPECT_EQ(quantity.item, group.item);
                listed.push_back(quantity);
            }
        }
        std::vector<Quantity> existing;
        for (const Quantity quantity : allQuantities(planned.plan))
            if (measureOf(planned.plan, quantity))
                existing.push_back(quantity);
        ASSERT_EQ(listed, existing) << "seed " << seed;
    }
}

TEST(Groups, ComeOncePerPart) {
    const Planned planned(banks(3, 4));
    std::vector<std::pair<PlanPart, std::uint32_t>> parts;
    for (const QuantityGroup& group : grouped(planned.project, planned.plan))
        parts.emplace_back(group.kind, group.item);
    std::sort(parts.begin(), parts.end());
    EXPECT_EQ(std::adjacent_find(parts.begin(), parts.end()), parts.end());
    EXPECT_EQ(parts.size(), 1 + planned.plan.members.size() + planned.plan.fronts.size() +
                                planned.plan.spacers.size() + planned.plan.stops.size());
}

TEST(IndexName, SaysWhichOfSeveralIsMeant) {
    EXPECT_EQ(indexName({QuantityKind::HoleX, 0, 2}), "screw hole 3");
    EXPECT_EQ(indexName({QuantityKind::ScrewTipCover, 5, 0}), "screw hole 1");
    EXPECT_EQ(indexName({QuantityKind::HandleY, 0, 1}), "handle hole 2");
    EXPECT_EQ(indexName({QuantityKind::BoltLength, 0, 0}), "through wall and front");
    EXPECT_EQ(indexName({QuantityKind::BoltGrip, 0, 1}), "front only, counterbore");
    EXPECT_EQ(indexName({QuantityKind::Counterbore, 0, 2}), "front only, access hole");
    EXPECT_EQ(indexName({QuantityKind::FrontWidth, 0, 0}), "");
}
