#include "core/case/layout.h"
#include "tests/core/case/laid_out.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using namespace frontwright::testing;

RegionPtr usedFor(OpeningUse use) {
    Opening made;
    made.use = use;
    return std::make_shared<const Region>(Region{std::move(made)});
}

RegionPtr face(RegionPtr divided) {
    Region region = *divided;
    std::get<Split>(region.content).divides = Divides::Face;
    return std::make_shared<const Region>(std::move(region));
}

/// Left a bank of an open space over a drawer, right a bank of two drawers' fronts on one box.
Project deskWithOneDeepDrawer() {
    return projectWith(
        columns({share(rows({share(usedFor(OpeningUse::OpenSpace)), share(opening())}, in(1))),
                 share(face(rows({share(opening()), share(opening())}, in(1))))},
                in(1)),
        in(36), in(34));
}

TEST(ADividedFace, IsOneOpeningBehindSeveralFronts) {
    const Layout layout = layoutOf(deskWithOneDeepDrawer());
    ASSERT_EQ(layout.openings.size(), 4U);
    ASSERT_EQ(layout.faces.size(), 1U);
    // Inside 33 × 31 from (1 1/2, 1 1/2): the right half, 16 wide
    EXPECT_EQ(layout.faces[0],
              (DividedFace{{in(18, 32), in(1, 32), in(34, 32), in(32, 32)}, 2, 2}));
    // (31 − 1) / 2 = 15 each, as in the bank beside it
    EXPECT_EQ(layout.openings[2].rect.height(), in(15));
    EXPECT_EQ(layout.openings[2].face, 0U);
    EXPECT_EQ(layout.openings[3].face, 0U);
    EXPECT_FALSE(layout.openings[0].face);
    EXPECT_EQ(layout.openings[2].rect.bottom, layout.openings[0].rect.bottom);
}

TEST(ADividedFace, HasNoMemberBetweenItsFronts) {
    const Layout layout = layoutOf(deskWithOneDeepDrawer());
    std::size_t rails = 0, missing = 0;
    for (const PlacedMember& member : layout.members) {
        rails += member.kind == MemberKind::Rail ? 1 : 0;
        missing += member.kind == MemberKind::NoRail ? 1 : 0;
        EXPECT_EQ(isBuilt(member.kind), member.kind != MemberKind::NoRail);
    }
    EXPECT_EQ(rails, 1U);
    EXPECT_EQ(missing, 1U);
}

TEST(ADividedFace, DividesAllThatIsWithinIt) {
    // Two columns, the left one of two rows: three fronts over one opening
    const Layout layout = layoutOf(projectWith(
        face(columns({share(rows({share(opening()), share(opening())}, in(1))), share(opening())},
                     in(1))),
        in(36), in(34)));
    ASSERT_EQ(layout.faces.size(), 1U);
    EXPECT_EQ(layout.faces[0], (DividedFace{{in(1, 32), in(1, 32), in(34, 32), in(32, 32)}, 0, 3}));
    for (std::size_t i = 4; i < layout.members.size(); ++i)
        EXPECT_FALSE(isBuilt(layout.members[i].kind));
}

TEST(ADividedFace, IsRefusedOverOpeningsForDifferentUses) {
    const Result<Layout> layout =
        layOut(projectWith(face(rows({share(opening()), share(usedFor(OpeningUse::Door))}, in(1))),
                           in(36), in(34))
                   .casework);
    ASSERT_FALSE(layout.ok());
    EXPECT_NE(layout.error().sentence().english().find("divided face"), std::string::npos);
}

TEST(ADividedFace, IsRefusedOverASpaceWithoutFronts) {
    const RegionPtr space = usedFor(OpeningUse::OpenSpace);
    EXPECT_FALSE(
        layOut(
            projectWith(face(rows({share(space), share(space)}, in(1))), in(36), in(34)).casework)
            .ok());
}

TEST(FrontsOnly, LeaveSpacesOutAndKeepMembersAndFacesInPlace) {
    const Project desk = deskWithOneDeepDrawer();
    const Layout whole = layoutOf(desk);
    const Layout fronts = withFrontsOnly(whole);
    ASSERT_EQ(fronts.openings.size(), 3U);
    EXPECT_EQ(fronts.openings[0].id, whole.openings[1].id);
    EXPECT_EQ(fronts.members.size(), whole.members.size());
    ASSERT_EQ(fronts.faces.size(), 1U);
    EXPECT_EQ(fronts.faces[0].first, 1U);
    EXPECT_EQ(fronts.faces[0].count, 2U);
    EXPECT_EQ(fronts.openings[1].face, 0U);
}

} // namespace
} // namespace frontwright
